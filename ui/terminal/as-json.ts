/** A run as JSON: figures in SI by glossary key, the ledger in kWh, the series by channel. */
import type { Result } from '../../sim/index.ts';

const J_per_kWh = 3.6e6;

/** Single-precision samples carry about seven digits; more would only print their rounding. */
function samples(values: Float32Array): (number | null)[] {
  return Array.from(values, (value) => (Number.isFinite(value) ? Number(value.toPrecision(7)) : null));
}

export function resultAsJson(result: Result, wall_s: number): string {
  const { ledger, series } = result;
  const paths = ledger.paths.map(({ key, side, energy_J }) => ({
    key,
    side,
    energy_kWh: energy_J / J_per_kWh,
  }));
  const layers = Array.from({ length: series.layers }, (_, layer) =>
    samples(series.layer_C.filter((_value, i) => i % series.layers === layer)),
  );
  const content = {
    name: result.name,
    first_day: result.first_day,
    days: result.days,
    figures: result.figures,
    ledger: {
      paths,
      stored_change_kWh: ledger.stored_change_J / J_per_kWh,
      throughput_kWh: ledger.throughput_J / J_per_kWh,
      residual_percent: ledger.residual_percent,
    },
    events: result.events,
    cautions: result.cautions,
    series: {
      interval_s: series.interval_s,
      time_s: Array.from(series.time_s),
      height_m: Array.from(series.height_m),
      /** One list per layer, bottom first. */
      layer_C: layers,
      channels: Object.fromEntries(
        Object.entries(series.channels).map(([key, values]) => [key, samples(values)]),
      ),
    },
    run: { ...result.run, wall_s },
  };
  // One line a member: the figures can be read, and the series do not fill a thousand lines.
  const lines = Object.entries(content).map(
    ([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`,
  );
  return `{\n${lines.join(',\n')}\n}\n`;
}
