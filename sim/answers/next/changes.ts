/** Affordable changes of a design, each as edits that the scenario's reader accepts, with what it costs once. */
import type { CoilDescription, PlantDescription, Prices } from '../../parts/description.ts';
import { insideHeight, storeGeometry } from '../../parts/store/geometry.ts';
import { formatQuantity } from '../../quantity/index.ts';
import { type ReadContext, readScenario, type Scenario } from '../../scenario/index.ts';
import { coilPrice } from '../coil/candidates.ts';
import { type Edit, edited } from '../edit.ts';
import { presentThickness, THICKNESS_COUNT, variantOf } from '../store/variants.ts';
import { sizeEdits, sizePrice } from '../sun/sizes.ts';

export type ChangeKey =
  | 'roll_series'
  | 'roll_parallel'
  | 'to_parallel'
  | 'spread'
  | 'foam'
  | 'close_lid'
  | 'seal_lid'
  | 'engine_valve'
  | 'loop_valve'
  | 'more_tubes'
  | 'more_area'
  | 'hour_less'
  | 'hour_more';

export interface Change {
  key: ChangeKey;
  /** Name of the coil or the part, or how many tubes or m2 more. */
  what: string | number;
  edits: Edit[];
  /** Money once, at prices; null where something has no price. */
  cost(prices: Prices): number | null;
}

interface Design {
  scenario: Scenario;
  context: ReadContext;
  plant: PlantDescription;
}

/** Every change that this design has a place for. */
export function changesFor(design: Design): Change[] {
  const { coils } = design.plant;
  return [
    ...coils.flatMap((coil, i) => (isUsed(design.plant, coil) ? coilChanges(design, coil, i) : [])),
    ...foam(design),
    ...lid(design),
    ...valves(design),
    ...collector(design),
    ...hours(design),
  ];
}

function isUsed({ engine, collector, taps }: PlantDescription, { name }: CoilDescription): boolean {
  return [engine, collector, taps].some((user) => user?.coil === name);
}

const free = () => 0;

function coilChanges(design: Design, coil: CoilDescription, i: number): Change[] {
  const { scenario } = design;
  const raw = scenario.coils?.[i];
  const put = (key: string, value: unknown): Edit => ({ path: `coils[${i}].${key}`, value });
  const rolls = put('rolls', coil.rolls + 1);
  const laid = (join: CoilDescription['join']) => ({ ...coil, rolls: coil.rolls + 1, join });
  const priced = (other: CoilDescription) => (prices: Prices) => {
    const [was, is] = [coil, other].map((each) => coilPrice(each, prices));
    return was === null || is === null ? null : is - was;
  };
  const one = coil.rolls === 1;
  const wide = (raw?.side_by_side ?? 1) + 1;
  // Where the turns do not fit one above the other, a winding more beside them; and as deep as it then reaches.
  const fitting = (edits: Edit[]) =>
    firstSound(design, [
      edits,
      [...edits, put('side_by_side', wide)],
      [...edits, put('side_by_side', wide), put('to', undefined)],
    ]);
  const change = (key: ChangeKey, edits: Edit[], cost: Change['cost']): Change[] => {
    const sound = fitting(edits);
    return sound ? [{ key, what: coil.name, edits: sound, cost }] : [];
  };
  const joins = one ? (['series', 'parallel'] as const) : [coil.join];
  const closer = { touching: 'finger gap', 'finger gap': 'spread', spread: null }[coil.spacing];
  // A pitch or a bundling that was measured says more than the word.
  const measured = raw?.pitch !== undefined || raw?.bundling !== undefined;
  return [
    ...joins.flatMap((join) => change(`roll_${join}`, [rolls, put('join', join)], priced(laid(join)))),
    ...(!one && coil.join === 'series'
      ? change('to_parallel', [put('join', 'parallel')], priced({ ...coil, join: 'parallel' }))
      : []),
    ...(closer && !measured ? change('spread', [put('spacing', closer)], free) : []),
  ];
}

function firstSound({ scenario, context }: Design, tries: readonly Edit[][]): Edit[] | null {
  return tries.find((edits) => readScenario(edited(scenario, edits), context).ok) ?? null;
}

/** The next thicker insulation. */
function foam({ plant, scenario }: Design): Change[] {
  const thickness = presentThickness(plant) + 1;
  if (thickness >= THICKNESS_COUNT) return [];
  const at = (prices: Prices) =>
    variantOf({ ...plant, prices }, scenario, { thickness, lid: plant.store.lid, volume: 1 });
  return [
    {
      key: 'foam',
      what: '',
      edits: at(plant.prices).edits,
      cost: (prices) => at(prices).foam_money,
    },
  ];
}

/** What a seal leaves of the vapour that got past a closed lid: judgement. */
const SEALED = 0.5;

function lid({ plant: { store }, scenario }: Design): Change[] {
  const { surface_m2 } = storeGeometry(store.shape, store.water_depth_m, 10);
  const round_m = 4 * Math.sqrt(surface_m2);
  const seal = (prices: Prices) => round_m * prices.lid_seal_per_m;
  const forget =
    scenario.store.vapour_escape === undefined ? [] : [{ path: 'store.vapour_escape', value: undefined }];
  if (store.lid === 'ajar')
    return [
      {
        key: 'close_lid',
        what: store.lid,
        edits: [{ path: 'store.lid', value: 'closed' }, ...forget],
        cost: seal,
      },
    ];
  if (store.lid === 'open') {
    const cover_m2 = storeGeometry(store.shape, insideHeight(store.shape), 10).bottom_m2;
    const cost = (prices: Prices) => seal(prices) + 2 * cover_m2 * prices.foam_per_m2_25mm;
    return [
      { key: 'close_lid', what: store.lid, edits: [{ path: 'store.lid', value: 'closed' }, ...forget], cost },
    ];
  }
  const value = `${Number((100 * SEALED * store.vapour_share).toPrecision(3))} %`;
  if (!(store.vapour_share > 0)) return [];
  return [{ key: 'seal_lid', what: store.lid, edits: [{ path: 'store.vapour_escape', value }], cost: seal }];
}

function valves({ plant: { engine, collector } }: Design): Change[] {
  const cost = ({ check_valve_each }: Prices) => check_valve_each;
  const fitted = (key: ChangeKey, part: string, loss: string, what: string): Change => ({
    key,
    what,
    edits: [
      { path: `${part}.check_valve`, value: true },
      { path: `${part}.${loss}`, value: undefined },
    ],
    cost,
  });
  return [
    ...(engine && engine.standby_loss_W_K > 0
      ? [fitted('engine_valve', 'engine', 'standby_loss', engine.name)]
      : []),
    ...(collector && collector.night_loss_W_K > 0
      ? [fitted('loop_valve', 'collector', 'night_loss', collector.name)]
      : []),
  ];
}

/** A quarter more, in whole tubes and at least five of them. */
const MORE = 0.25;
const FEWEST_TUBES = 5;

function collector({ plant, scenario }: Design): Change[] {
  const own = plant.collector;
  if (!own) return [];
  const { tubes, area_m2 } = own;
  const more = tubes === null ? MORE * area_m2 : Math.max(FEWEST_TUBES, Math.round(MORE * tubes));
  const times = 1 + more / (tubes ?? area_m2);
  const size =
    tubes === null
      ? { path: 'collector.size.area', value: `${Number((area_m2 + more).toPrecision(6))} m2` }
      : { path: 'collector.size.tubes', value: tubes + more };
  const edits = sizeEdits(own, scenario, times, size);
  const at = (scale: number) => ({
    area_m2: area_m2 * scale,
    tubes: tubes === null ? null : tubes * scale,
    present: false,
    edits,
  });
  const cost = (prices: Prices) => sizePrice(at(times), prices) - sizePrice(at(1), prices);
  return [{ key: tubes === null ? 'more_area' : 'more_tubes', what: more, edits, cost }];
}

const HOUR = 3600;
const DAY = 86_400;

/** The longest span of a timetable an hour shorter, or longer; an engine that is called has no hours of its own. */
function hours(design: Design): Change[] {
  const runs = design.plant.engine?.runs;
  if (runs?.kind !== 'timetable' || runs.spans.length === 0) return [];
  const lengths = runs.spans.map(({ from_s, to_s }) => to_s - from_s);
  const i = lengths.indexOf(Math.max(...lengths));
  const to = (to_s: number) => [
    { path: `engine.runs.spans[${i}].to`, value: formatQuantity(to_s, 'clock', 'SI') },
  ];
  const { to_s } = runs.spans[i];
  const change = (key: ChangeKey, edits: Edit[]): Change[] =>
    firstSound(design, [edits]) ? [{ key, what: design.plant.engine?.name ?? '', edits, cost: free }] : [];
  return [
    ...(lengths[i] > HOUR ? change('hour_less', to(to_s - HOUR)) : []),
    ...(to_s + HOUR <= DAY ? change('hour_more', to(to_s + HOUR)) : []),
  ];
}
