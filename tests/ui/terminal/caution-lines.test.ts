import { describe, expect, it } from 'vitest';
import type { Answer } from '../../../sim/index.ts';
import { answerText } from '../../../ui/terminal/answer-report.ts';
import { cautionLines, licensedLines } from '../../../ui/terminal/caution-lines.ts';
import type { Screen } from '../../../ui/terminal/screen.ts';
import { answerWords, licensedWords, sayIn } from '../../../ui/words/index.ts';
import { hours, store } from '../hand-made-answers.ts';
import { next } from '../hand-made-doubts.ts';
import { breaks } from '../hand-made-failures.ts';

const screen: Screen = { width: 400, unicode: true, colour: false };
const textOf = (answer: Answer) =>
  answerText({ answer, words: answerWords[answer.key], filled: [], say: sayIn('US') }, screen).split('\n');

describe('the cautions of an answer in the terminal', () => {
  it.each([hours, store, next, breaks])(
    '$key defers once to code and licence, after its cautions',
    (answer) => {
      const lines = textOf(answer);
      const marked = lines.filter((line) => /^ {2}! (Danger|Warning|Note): .*\*/.test(line));
      expect(marked.length).toBeGreaterThan(0);
      const at = lines.indexOf(`* ${licensedWords}`);
      expect(lines[at - 1]).toMatch(/^ {2}! /);
      expect(lines.filter((line) => line.includes(licensedWords))).toHaveLength(1);
    },
  );

  it('do not where none of them asks for it', () => {
    const answer: Answer = { ...hours, cautions: [{ key: 'never_ran_cold', severity: 'note' }] };
    expect(textOf(answer).join()).not.toContain(licensedWords);
  });

  it('say how serious each is', () => {
    expect(textOf(hours).some((line) => line.startsWith('  ! Danger: Carbon monoxide. * '))).toBe(true);
  });
});

describe('cautionLines', () => {
  it('marks what code decides, behind the title or, without one, the sentence', () => {
    const shown = { severity: 'danger', text: 'It burns.', licensed: licensedWords } as const;
    expect(cautionLines({ ...shown, title: 'Hot' }, screen)).toEqual(['  ! Danger: Hot. * It burns.']);
    expect(cautionLines({ ...shown, title: null }, screen)).toEqual(['  ! Danger: It burns. *']);
    expect(cautionLines({ ...shown, title: 'Hot', licensed: null }, screen)).toEqual([
      '  ! Danger: Hot. It burns.',
    ]);
    expect(licensedLines([shown], screen)).toEqual([`* ${licensedWords}`]);
  });
});
