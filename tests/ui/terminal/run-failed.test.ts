import { fileURLToPath } from 'node:url';
import { describe, expect, it, vi } from 'vitest';
import { tankful } from './fake-terminal.ts';

const failure = vi.hoisted(() => ({ message: '' }));

vi.mock('../../../sim/index.ts', async (original) => ({
  ...(await original<typeof import('../../../sim/index.ts')>()),
  simulate: () => {
    throw new Error(failure.message);
  },
}));

const boat = fileURLToPath(new URL('../../../scenarios/boat.json', import.meta.url));

describe('a run that fails', () => {
  it('ends with 1 and names what failed', async () => {
    failure.message = 'store.layer[3] became NaN at 5 s';
    expect(await tankful('run', boat)).toEqual({
      code: 1,
      out: '',
      err: 'the run - expected to finish - got store.layer[3] became NaN at 5 s - change the scenario where the message points.\n',
    });
  });

  it('says what the simulation says in the house form as it is', async () => {
    failure.message = 'run on day 2 - expected at most 3000 switchings - got more - widen the dead band';
    expect(await tankful('run', boat)).toEqual({ code: 1, out: '', err: `${failure.message}.\n` });
  });
});
