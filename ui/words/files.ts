/** Words about files and links: opening, saving, sharing, and what is wrong with one. */
import { sizeWords } from './sizes.ts';

/** Why a link with a design cannot be read: parts of the one shape of an error. */
export const linkWords = {
  where: 'the link',
  empty: {
    expected: 'a design after #d=',
    got: 'nothing',
    fix: 'copy the whole link again, to its last letter',
  },
  long: (letters: number, most: number) => ({
    expected: `at most ${most.toLocaleString('en-US')} letters`,
    got: letters.toLocaleString('en-US'),
    fix: 'ask for the design as a file',
  }),
  form: (got: string) => ({
    expected: 'a link of the form this page knows, #d=1',
    got: `the form "${got}"`,
    fix: 'load the page again to have its newest version, or ask for the design as a file',
  }),
  letters: {
    expected: 'letters, digits, - and _',
    got: 'something else, or a letter too few',
    fix: 'copy the whole link again: a message may have broken or bent it',
  },
  cut: {
    expected: 'a whole design',
    got: 'a part of one',
    fix: 'copy the whole link again, to its last letter, or ask for the design as a file',
  },
  changed: {
    expected: 'the letters that were sent',
    got: 'others',
    fix: 'copy the link again: a message may have bent it; or ask for the design as a file',
  },
  bomb: (bytes: number) => ({
    expected: `a design of at most ${sizeWords(bytes)}`,
    got: 'one that would unpack to more',
    fix: 'do not use this link; ask for the design as a file',
  }),
} as const;
