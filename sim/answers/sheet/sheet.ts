/** What a builder pins up in the shed: measures, cut list, fittings, probes, weights; all SI, nothing said in words. */

import type { StoreDescription } from '../../parts/description.ts';
import { insideHeight } from '../../parts/store/geometry.ts';
import type { SectionFacts } from '../section/facts.ts';
import { type Probe, probesOf } from '../section/probes.ts';
import { type CoilSheet, coilSheets } from './coils.ts';
import { type Fitting, fittingsOf } from './fittings.ts';
import { linerPiece, type PanelCut, panelCuts, sheetsThickness, sideThickness } from './panels.ts';
import { type TubeCut, tubeCuts } from './tube-cuts.ts';
import { type StoreWeight, storeWeight } from './weight.ts';

export interface BuildSheet {
  store: {
    shape: StoreDescription['shape'];
    inside_height_m: number;
    water_depth_m: number;
    /** From the water to the rim. */
    freeboard_m: number;
    /** Wall and insulation around the inside: at the sides, below, above. */
    around_m: { sides: number; below: number; above: number };
    liner: ReturnType<typeof linerPiece>;
  };
  coils: CoilSheet[];
  tubes: TubeCut[];
  panels: PanelCut[];
  fittings: Fitting[];
  probes: Probe[];
  /** Heights of the thermometers on a stick. */
  stick_m: number[];
  weight: StoreWeight;
}

/** Thermometers on a stick: shared/trade.md section 5 has five in a depth of 32 in. */
const ON_STICK = 5;

/** The sheet of a plant. Heights are above the inside bottom; stick heights are the middles of equal layers. */
export function buildSheet(facts: SectionFacts): BuildSheet {
  const { store } = facts;
  const { shape, water_depth_m, insulation, wall } = store;
  const inside_height_m = insideHeight(shape);
  const coils = coilSheets(facts);
  return {
    store: {
      shape,
      inside_height_m,
      water_depth_m,
      freeboard_m: inside_height_m - water_depth_m,
      around_m: {
        sides: sideThickness(store),
        below: wall.thickness_m + sheetsThickness(insulation.bottom),
        above: store.lid === 'open' ? 0 : sheetsThickness(insulation.lid),
      },
      liner: linerPiece(store),
    },
    coils,
    tubes: tubeCuts(facts),
    panels: panelCuts(store),
    fittings: fittingsOf(facts, coils),
    probes: probesOf(facts),
    stick_m: Array.from({ length: ON_STICK }, (_, i) => ((i + 0.5) / ON_STICK) * water_depth_m),
    weight: storeWeight(store, facts.coils),
  };
}
