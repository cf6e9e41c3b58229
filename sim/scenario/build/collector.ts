/** The collector: its rating and optics by kind where no certificate is at hand, its loop and controller. */
import type {
  CoilDescription,
  CollectorDescription,
  Fluid,
  Incidence,
  PlantDescription,
} from '../../parts/description.ts';
import { quote } from '../calendar.ts';
import type { Desk } from '../desk.ts';
import type { Band } from '../field.ts';
import { collector as field } from '../fields/collector.ts';
import type { ScenarioValues } from '../fields/index.ts';
import { fluidFrom, noteFreezing, pipeConductanceFrom } from './shared.ts';

type CollectorRead = NonNullable<ScenarioValues['collector']>;
type Kind = CollectorRead['kind'];
type Basis = CollectorDescription['basis'];

const STEPS = ['collector'] as const;
const DEGREE = Math.PI / 180;

/**
 * Typical ratings by kind and by the area they count on (from memory of certificates, physics.md 8): tubes keep
 * 0.6 to 0.7 of the light on their absorber; gross area is up to 1.6 times the aperture of tubes, 1.1 of plates.
 */
const USUAL_RATING: Record<Kind, Record<Basis, [eta0: number, a1: number, a2: number]>> = {
  'evacuated tubes': {
    absorber: [0.65, 1.4, 0.006],
    aperture: [0.65, 1.3, 0.006],
    gross: [0.45, 0.9, 0.004],
  },
  'flat plate': { absorber: [0.79, 3.9, 0.013], aperture: [0.79, 3.9, 0.013], gross: [0.72, 3.6, 0.012] },
};
/** eta0 one would still believe. */
const ETA0_BAND: Record<Kind, number> = { 'evacuated tubes': 0.05, 'flat plate': 0.04 };

const USUAL_INCIDENCE: Record<Kind, NonNullable<CollectorRead['incidence']>> = {
  'flat plate': { kind: 'single', b0: 0.15 },
  // Round absorbers keep facing a sun that moves across them, until neighbours shade each other.
  'evacuated tubes': {
    kind: 'two-way',
    angle: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90].map((degrees) => degrees * DEGREE),
    lengthwise: [1, 1, 0.99, 0.98, 0.95, 0.92, 0.85, 0.71, 0.29, 0],
    crosswise: [1, 1.01, 1.04, 1.1, 1.19, 1.3, 1.34, 1.25, 0.9, 0],
  },
};
const USUAL = {
  'evacuated tubes': { diffuse: 1, heat_capacity: 10_000, ceiling: 250 },
  'flat plate': { diffuse: 0.92, heat_capacity: 7500, ceiling: 180 },
} as const;

/** Controllers closer than this switch thousands of times a week. */
const NARROW_BAND_K = 2;

/** The collector's description, or null where something in it is refused. */
export function collectorFrom(
  desk: Desk,
  read: CollectorRead,
  site: PlantDescription['site'] | null,
  coils: readonly CoilDescription[] | null,
): CollectorDescription | null {
  const before = desk.problems.length;
  const fluid = fluidOf(desk, read);
  const incidence = incidenceOf(desk, read);
  checkController(desk, read);
  if (desk.problems.length > before || !fluid || !incidence || !site || !coils) return null;
  const usual = USUAL[read.kind];
  const { size } = read;
  const area_m2 = size.by === 'tubes' ? size.tubes * size.absorber_each : size.area;
  const basis = size.by === 'tubes' ? 'absorber' : size.basis;
  const tubes = size.by === 'tubes' ? size.tubes : null;
  const rating = ratingOf(desk, read, basis);
  const drained = read.loop === 'drain-back';
  return {
    name: read.name,
    coil: read.coil,
    kind: read.kind,
    area_m2,
    basis,
    tubes,
    eta0: rating.eta0,
    a1_W_m2K: rating.a1,
    a2_W_m2K2: rating.a2,
    incidence,
    diffuse_modifier: desk.complete(field, STEPS, 'diffuse_modifier', read.diffuse_modifier, () => ({
      value: usual.diffuse,
    })),
    heat_capacity_J_m2K: desk.complete(field, STEPS, 'heat_capacity', read.heat_capacity, () => ({
      value: usual.heat_capacity,
    })),
    ceiling_C: desk.complete(field, STEPS, 'ceiling', read.ceiling, () => ({ value: usual.ceiling })),
    tilt_rad: desk.complete(field, STEPS, 'tilt', read.tilt, () => ({
      value: Math.min(Math.PI / 2, Math.abs(site.latitude_rad) + 15 * DEGREE),
    })),
    azimuth_rad: desk.complete(field, STEPS, 'facing', read.facing, () => ({
      value: site.latitude_rad >= 0 ? Math.PI : 0,
    })),
    horizon: read.horizon
      .map(({ direction, height }) => ({ azimuth_rad: direction % (2 * Math.PI), elevation_rad: height }))
      .sort((a, b) => a.azimuth_rad - b.azimuth_rad),
    shade_by_month: desk.complete(field, STEPS, 'shade', read.shade, () => ({
      value: Array(12).fill(0),
    })),
    fluid,
    loop: read.loop,
    pump_flow_m3_s: desk.complete(field, STEPS, 'pump_flow', read.pump_flow, () => ({
      value: tubes === null ? area_m2 * FLOW_BY_AREA : tubes * FLOW_BY_TUBE,
    })),
    pump_power_W: read.pump_power,
    on_K: read.on,
    off_K: read.off,
    high_limit_C: read.high_limit,
    pipes: {
      length_m: read.pipes.length,
      conductance_W_mK: pipeConductanceFrom(
        desk,
        [...STEPS, 'pipes'],
        field.fields.pipes.fields,
        read.pipes,
        read.pipes.outside,
      ),
      outdoor_share: read.pipes.outdoor_share,
    },
    check_valve: read.check_valve,
    night_loss_W_K: desk.complete(field, STEPS, 'night_loss', read.night_loss, () => ({
      ...(read.check_valve || drained ? { value: 0, band: null } : { value: 3 }),
    })),
  };
}

const GALLON_A_MINUTE = 3.785411784e-3 / 60;
const FLOW_BY_TUBE = 0.045 * GALLON_A_MINUTE;
const FLOW_BY_AREA = (0.03 * GALLON_A_MINUTE) / 0.09290304;

function ratingOf(desk: Desk, read: CollectorRead, basis: Basis) {
  if (read.rating !== null) return read.rating;
  const rating = field.fields.rating;
  const [eta0, a1, a2] = USUAL_RATING[read.kind][basis];
  const more = ETA0_BAND[read.kind];
  const tell = (key: keyof typeof rating.fields, value: number, band: Band | null) =>
    desk.tell(rating, [...STEPS, 'rating', key], rating.fields[key], value, band);
  tell('eta0', eta0, [(eta0 - more).toFixed(2), (eta0 + more).toFixed(2)]);
  tell('a1', a1, null);
  tell('a2', a2, null);
  return { eta0, a1, a2 };
}

function fluidOf(desk: Desk, read: CollectorRead): Fluid | null {
  const group = field.fields.fluid;
  const steps = [...STEPS, 'fluid'];
  const given = desk.complete(field, STEPS, 'fluid', read.fluid, () => {
    const kind = read.loop === 'drain-back' ? 'water' : 'propylene glycol';
    return { value: { kind, share: null, share_by: 'volume' } as const };
  });
  return fluidFrom(desk, steps, group, given, 0.4);
}

function incidenceOf(desk: Desk, read: CollectorRead): Incidence | null {
  const given = desk.complete(field, STEPS, 'incidence', read.incidence, () => ({
    value: USUAL_INCIDENCE[read.kind],
  }));
  if (given.kind === 'single') return given;
  const steps = [...STEPS, 'incidence'];
  for (const key of ['lengthwise', 'crosswise'] as const) {
    if (given[key].length !== given.angle.length) {
      desk.problem(
        [...steps, key],
        `as many factors as angles, ${given.angle.length}`,
        `${given[key].length}`,
        'give one factor for each angle',
      );
    }
    if (given[key][0] !== 1)
      desk.problem(
        [...steps, key, 0],
        'the factor 1 at the angle 0',
        `${given[key][0]}`,
        'factors count from straight sun',
      );
  }
  const rising = given.angle.every((angle, i) => i === 0 || angle > given.angle[i - 1]);
  if (given.angle[0] !== 0 || !rising) {
    desk.problem(
      [...steps, 'angle'],
      'angles that rise from 0',
      'another order',
      'sort them, beginning with "0 deg"',
    );
  }
  return {
    kind: 'two-way',
    angle_rad: given.angle,
    lengthwise: given.lengthwise,
    crosswise: given.crosswise,
  };
}

function checkController(desk: Desk, read: CollectorRead): void {
  const kelvin = (k: number) => `${Math.round(k * 100) / 100} K`;
  if (read.off >= read.on) {
    desk.problem(
      [...STEPS, 'off'],
      `less than "on", ${kelvin(read.on)}`,
      kelvin(read.off),
      'the pump must stop at a smaller difference than it starts at: try 8 K and 4 K',
    );
  } else if (read.on - read.off < NARROW_BAND_K) {
    desk.note(
      [...STEPS, 'off'],
      `only ${kelvin(read.on - read.off)} lie between starting and stopping: the pump will switch thousands of times a week; 4 K is usual`,
    );
  }
  const directions = read.horizon.map(({ direction }) => direction % (2 * Math.PI));
  const twice = directions.findIndex((direction, i) => directions.indexOf(direction) !== i);
  if (twice >= 0) {
    desk.problem(
      [...STEPS, 'horizon', twice, 'direction'],
      'each direction once',
      'the same direction twice',
      `remove one of the two ${quote('horizon')} points`,
    );
  }
}

/** Notes a loop that can freeze where it stands full at night. */
export function noteCollectorFreezing(desk: Desk, collector: CollectorDescription, coldest_C: number): void {
  if (collector.loop === 'filled')
    noteFreezing(
      desk,
      [...STEPS, 'fluid'],
      collector.fluid,
      coldest_C,
      'the filled loop',
      'the coldest hour of this weather',
    );
  if (collector.high_limit_C > 95)
    desk.note([...STEPS, 'high_limit'], `${desk.temperature(collector.high_limit_C)} is close to boiling`);
}
