import type { OutlineNode } from '../../../../sim/scenario/index.ts';

/** A node and all below it. */
export function nodesOf(node: OutlineNode | null): OutlineNode[] {
  if (!node) return [];
  const below = node.kind === 'entry' ? [] : node.kind === 'group' ? node.nodes : node.items;
  return [node, ...below.flatMap(nodesOf)];
}
