/** Holds a file against the field catalogue: its structure and every text in it, all problems at once. */
import { quote } from './calendar.ts';
import { expectation } from './expectation.ts';
import type { Field, Fields } from './field.ts';
import { nearestWord } from './nearest.ts';
import { describeValue, type Problem, pathText } from './problem.ts';
import { readText } from './read-field.ts';
import { readNumberValue } from './read-number.ts';

type Steps = readonly PropertyKey[];

/** Problems of a value that stands for a field, one per wrong value, one per unknown key. Follows the catalogue only: no file is too deep. */
export function problemsOf(field: Field, value: unknown, steps: Steps = []): Problem[] {
  const wrong = (): Problem[] => {
    const { expected, fix } = expectation(field, value);
    return [{ path: pathText(steps), expected, got: describeValue(value), fix }];
  };
  switch (field.kind) {
    case 'quantity':
    case 'days':
    case 'date': {
      if (typeof value !== 'string') return wrong();
      const read = readText(field, value);
      if (read.ok) return [];
      const { expected, got, fix } = read;
      return [{ path: pathText(steps), expected, got, fix }];
    }
    case 'number': {
      const read = readNumberValue(field, value);
      if (read.ok) return [];
      const { expected, got, fix } = read;
      return [{ path: pathText(steps), expected, got, fix }];
    }
    case 'choice':
      return (field.choices as readonly unknown[]).includes(value) ? [] : wrong();
    case 'text':
      return typeof value === 'string' && value.length >= 1 && value.length <= field.longest ? [] : wrong();
    case 'flag':
      return typeof value === 'boolean' ? [] : wrong();
    case 'list': {
      if (!Array.isArray(value)) return wrong();
      const [fewest, most] = field.count;
      // By number, not by what is there: a list may have holes.
      const many = Math.min(value.length, most);
      const items = Array.from({ length: many }, (_, i) =>
        problemsOf(field.of, value[i], [...steps, i]),
      ).flat();
      return value.length < fewest || value.length > most ? [...wrong(), ...items] : items;
    }
    case 'group':
      return isPart(value) ? problemsIn(field.fields, value, steps) : wrong();
    case 'variants': {
      if (!isPart(value)) return wrong();
      const word = own(value, field.by);
      if (typeof word === 'string' && Object.hasOwn(field.cases, word))
        return problemsIn(field.cases[word], value, steps, field.by);
      const { expected, fix } = expectation({ kind: 'word', choices: Object.keys(field.cases) }, word);
      return [{ path: pathText([...steps, field.by]), expected, got: describeValue(word), fix }];
    }
  }
}

/** @param by key that was looked at before */
function problemsIn(fields: Fields, part: Record<string, unknown>, steps: Steps, by?: string): Problem[] {
  const known = Object.entries(fields).flatMap(([key, field]) => {
    const value = own(part, key);
    const may = field.presence.need !== 'required';
    return value === undefined && may ? [] : problemsOf(field, value, [...steps, key]);
  });
  const names = [...(by === undefined ? [] : [by]), ...Object.keys(fields)];
  const strangers = Object.keys(part).filter((key) => !names.includes(key));
  return [...known, ...strangers.map((key) => stranger(key, names, steps))];
}

function stranger(key: string, names: string[], steps: Steps): Problem {
  const near = nearestWord(key, names);
  return {
    path: pathText([...steps, key]),
    expected: `one of ${names.join(', ')}`,
    got: `the unknown name ${quote(key)}`,
    fix: near ? `did you mean "${near}"?` : 'remove it, or move it where it belongs',
  };
}

function isPart(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function own(part: Record<string, unknown>, key: string): unknown {
  return Object.hasOwn(part, key) ? part[key] : undefined;
}
