/** A pool whose code is loaded when something is first asked of it. */
import type { Pool, UnderWay } from './pool.ts';
import type { Attached } from './protocol.ts';

export function latePool(load: () => Promise<Pool>): Pool {
  let loading: Promise<Pool> | null = null;
  let attached: Attached | null = null;

  function there(): Promise<Pool> {
    loading ??= load().then((pool) => {
      if (attached) pool.attach(attached);
      return pool;
    });
    return loading;
  }

  /** What is stopped before it could begin is begun and stopped: whoever asked hears of it. */
  function begin(start: (pool: Pool) => UnderWay, failed: (problem: string) => void): UnderWay {
    let stopped = false;
    let underWay: UnderWay | null = null;
    there().then(
      (pool) => {
        underWay = start(pool);
        if (stopped) underWay.stop();
      },
      (error) => {
        // Whoever asks again has it loaded again.
        loading = null;
        failed(String(error));
      },
    );
    return {
      stop() {
        stopped = true;
        underWay?.stop();
      },
    };
  }

  return {
    attach(files) {
      attached = files;
      void loading?.then((pool) => pool.attach(files));
    },
    answer: (key, scenario, heard) => begin((pool) => pool.answer(key, scenario, heard), heard.failed),
    range: (vary, scenario, heard) => begin((pool) => pool.range(vary, scenario, heard), heard.failed),
    measure: (measurement, scenario, heard) =>
      begin((pool) => pool.measure(measurement, scenario, heard), heard.failed),
    detail: (scenario, stretch, heard) =>
      begin(
        (pool) => pool.detail(scenario, stretch, heard),
        () => {},
      ),
    endAnswers: () => void loading?.then((pool) => pool.endAnswers()),
  };
}
