/** The project's own text files, found on disk so that a file counts before it is committed. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { root } from '../../../scripts/build.mjs';

export { root };

/** Paths below `folder`, relative to the root, with forward slashes, sorted; none if there is no such folder. */
export function filesBelow(folder: string): string[] {
  if (!existsSync(join(root, folder))) return [];
  const found: string[] = [];
  for (const name of readdirSync(join(root, folder)).sort()) {
    const path = `${folder}/${name}`;
    if (statSync(join(root, path)).isDirectory()) found.push(...filesBelow(path));
    else found.push(path);
  }
  return found;
}

export function read(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

export function parse(path: string): ts.SourceFile {
  return ts.createSourceFile(path, read(path), ts.ScriptTarget.ES2022, true);
}

/** Every node of a file, parents first. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  for (const child of node.getChildren()) yield* nodesOf(child);
}

/** `path:line`, as an editor opens it. */
export function placeOf(node: ts.Node): string {
  const file = node.getSourceFile();
  return `${file.fileName}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}`;
}

/** What is written by hand: the code and its style sheets and pages. */
export function ownCode(): string[] {
  return ['sim', 'ui', 'tests', 'scripts']
    .flatMap(filesBelow)
    .filter((path) => /\.(ts|mts|mjs|js|css|html)$/.test(path));
}
