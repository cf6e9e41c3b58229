import { describe, expect, it } from 'vitest';
import {
  altitudeDerating,
  exhaustWaterShare,
  FUELS,
  fuelLineThrough,
  usualFuelLine,
} from '../../../sim/physics/combustion.ts';
import { carrierEvaporation, levelFaceFilm, shahEvaporation } from '../../../sim/physics/evaporation.ts';
import {
  counterflowEffectiveness,
  crossflowEffectiveness,
  demandPumpPressure,
  hotShare,
  inletFroude,
  orificeFlow,
} from '../../../sim/physics/heat-exchange.ts';
import {
  cylinderSideConductance,
  flatFaceConductance,
  pipeConductance,
  STORE_FILMS,
  windFilm,
} from '../../../sim/physics/insulation.ts';
import { airSaturationPressure, dewPoint, moistAirDensity } from '../../../sim/physics/moist-air.ts';
import { waterDensity } from '../../../sim/physics/water.ts';

const room = { air_C: 20, relative_humidity: 0.5, pressure_Pa: 101_325 };

describe('evaporation', () => {
  it('rises with the water’s temperature up to and past boiling, without a jump or an infinity', () => {
    let last = shahEvaporation(0, room);
    for (let t = 0; t <= 110; t += 0.1) {
      const rate = shahEvaporation(t, room);
      expect(rate).toBeGreaterThanOrEqual(last * 0.999);
      expect(rate - last).toBeLessThan(0.02 * rate + 1e-6);
      expect(Number.isFinite(rate)).toBe(true);
      last = rate;
    }
  });

  it('is none into air that would condense on the water', () => {
    expect(shahEvaporation(5, { ...room, relative_humidity: 0.9 })).toBe(0);
    expect(carrierEvaporation(800, 1200, 1, 2.4e6)).toBe(0);
  });

  it('goes on by room air alone where the air above is lighter than at the surface', () => {
    const rate = shahEvaporation(15, { ...room, air_C: 35, relative_humidity: 0.1 });
    expect(rate).toBeGreaterThan(0);
    expect(rate).toBeLessThan(shahEvaporation(40, room));
  });
});

describe('films', () => {
  it('over a warm level face stir the air, over a cold one let it lie', () => {
    expect(levelFaceFilm(60, 20, 1)).toBeCloseTo(1.52 * 40 ** (1 / 3), 12);
    expect(levelFaceFilm(20, 60, 1)).toBeLessThan(levelFaceFilm(60, 20, 1));
    expect(levelFaceFilm(20, 20, 1)).toBe(0);
  });

  it('grow with wind', () => {
    expect(windFilm(3)).toBeGreaterThan(windFilm(0));
  });
});

describe('conductances', () => {
  const wool = [{ thickness_m: 0.1, resistance_m2K_W: 2.5 }];

  it('of a wide cylinder is its side laid flat', () => {
    const side = cylinderSideConductance(50, 1, wool, STORE_FILMS);
    const flat = flatFaceConductance(Math.PI * 50, wool, STORE_FILMS);
    expect(side / flat).toBeCloseTo(1, 2);
    expect(side).toBeGreaterThan(flat);
  });

  it('keep a resistance that has no thickness', () => {
    const bare = cylinderSideConductance(0.6, 1, [{ thickness_m: 0, resistance_m2K_W: 2 }], STORE_FILMS);
    expect(bare).toBeCloseTo(
      flatFaceConductance(Math.PI * 0.6, [{ thickness_m: 0, resistance_m2K_W: 2 }], STORE_FILMS),
      12,
    );
  });

  it('of sheets in a row do not depend on how a sheet is cut', () => {
    const halves = [
      { thickness_m: 0.05, resistance_m2K_W: 1.25 },
      { thickness_m: 0.05, resistance_m2K_W: 1.25 },
    ];
    expect(cylinderSideConductance(0.6, 1, halves, STORE_FILMS)).toBeCloseTo(
      cylinderSideConductance(0.6, 1, wool, STORE_FILMS),
      12,
    );
  });

  it('of a bare pipe is its surface times the film, and foam cuts it', () => {
    expect(pipeConductance(0.022, 0, 0.038, 10)).toBeCloseTo(10 * Math.PI * 0.022, 12);
    // shared/physics.md 8: 15-22 mm pipe in 13-20 mm foam loses 0.15-0.25 W/(m K).
    expect(pipeConductance(0.022, 0.019, 0.038, 10)).toBeGreaterThan(0.15);
    expect(pipeConductance(0.015, 0.013, 0.038, 10)).toBeLessThan(0.25);
  });
});

describe('air', () => {
  it('has the dew point whose saturation pressure it carries, over ice and water', () => {
    for (const t of [-60, -20, -0.5, 0.5, 30, 95])
      expect(dewPoint(airSaturationPressure(t))).toBeCloseTo(t, 6);
  });

  it('is lighter when damp', () => {
    expect(moistAirDensity(20, 2000, 101_325)).toBeLessThan(moistAirDensity(20, 0, 101_325));
    expect(moistAirDensity(15, 0, 101_325)).toBeCloseTo(1.225, 3); // ISO 2533, sea level
  });
});

describe('exchangers', () => {
  it('at equal flows give NTU / (1 + NTU), and approach it', () => {
    expect(counterflowEffectiveness(3, 1)).toBe(0.75);
    expect(counterflowEffectiveness(3, 1 - 1e-7)).toBeCloseTo(0.75, 6);
  });

  it('crossed lie below counterflow and above nothing', () => {
    for (const ntu of [0.5, 1, 2, 4]) {
      expect(crossflowEffectiveness(ntu, 0.6)).toBeLessThan(counterflowEffectiveness(ntu, 0.6));
      expect(crossflowEffectiveness(ntu, 0.6)).toBeGreaterThan(0.25);
    }
  });
});

describe('valve, head and pump', () => {
  it('mixing takes all hot water when it is short of heat, none when the cold will do', () => {
    expect(hotShare(38, 10, 40)).toBe(1);
    expect(hotShare(60, 41, 40)).toBe(0);
    expect(hotShare(30, 35, 33)).toBe(0);
  });

  it('a head passes nothing without pressure', () => {
    expect(orificeFlow(-5, 1, 10)).toBe(0);
    expect(orificeFlow(0, 1, 10)).toBe(0);
  });

  it('a pump’s pressure falls from cut-out to nothing at open flow, without a step', () => {
    expect(demandPumpPressure(0, 2e-4, 3e5)).toBe(3e5);
    expect(demandPumpPressure(2e-4, 2e-4, 3e5)).toBe(0);
    expect(demandPumpPressure(4e-4, 2e-4, 3e5)).toBe(0);
    for (let q = 0; q < 2.1e-4; q += 1e-6) {
      const step = demandPumpPressure(q, 2e-4, 3e5) - demandPumpPressure(q + 1e-6, 2e-4, 3e5);
      expect(step).toBeGreaterThanOrEqual(0);
      expect(step).toBeLessThan(0.011 * 3e5);
    }
  });

  it('water entering slowly and wide keeps the layers', () => {
    const difference = waterDensity(10) - waterDensity(60);
    expect(inletFroude(0.02, difference, 990, 0.02)).toBeLessThan(1);
    expect(inletFroude(1, difference, 990, 0.014)).toBeGreaterThan(2);
  });
});

describe('fuel', () => {
  it('line passes through both readings', () => {
    const line = fuelLineThrough({ output_W: 1000, fuel_kg_s: 2e-4 }, { output_W: 5000, fuel_kg_s: 4e-4 });
    expect(line.no_load_kg_s + line.slope_kg_J * 5000).toBeCloseTo(4e-4, 15);
    expect(line.no_load_kg_s).toBeCloseTo(1.5e-4, 15);
  });

  it.each([
    [1000, 2e-4, 1000, 4e-4],
    [1000, 4e-4, 5000, 2e-4],
    [1000, 1e-4, 2000, 4e-4],
  ])('line through %f W %f and %f W %f kg/s is refused', (low_W, low, high_W, high) => {
    expect(() =>
      fuelLineThrough({ output_W: low_W, fuel_kg_s: low }, { output_W: high_W, fuel_kg_s: high }),
    ).toThrow(/expected more fuel at more output/);
  });

  it('an unmeasured set turns its usual share of rated fuel into output', () => {
    const line = usualFuelLine('spark', 5000, FUELS.gasoline.lower_heating_value_J_kg);
    const rated = (line.no_load_kg_s + line.slope_kg_J * 5000) * FUELS.gasoline.lower_heating_value_J_kg;
    expect(5000 / rated).toBeCloseTo(0.21, 12);
  });

  it('exhaust gets drier with more air, and an engine weaker with altitude', () => {
    expect(exhaustWaterShare(12, 23, 2)).toBeLessThan(exhaustWaterShare(12, 23, 1));
    expect(altitudeDerating(-300)).toBe(1);
    expect(altitudeDerating(20_000)).toBe(0);
  });
});
