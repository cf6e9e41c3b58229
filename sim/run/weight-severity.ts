/** How serious a store's weight is: by what floors are built for. */
import type { PlantDescription } from '../parts/description.ts';
import { filledWeight } from '../parts/filled-weight.ts';
import { storeGeometry } from '../parts/store/geometry.ts';
import { SEVERITIES, type Severity } from './severities.ts';

/** Floors of houses are built for about 40 lb/ft2 [kg/m2]. */
const FLOOR_KG_M2 = 195;

/** Of the store as filled, not as it stands when much has boiled off. Source: shared/trade.md section 6. */
export function weightSeverity({ store, coils }: Pick<PlantDescription, 'store' | 'coils'>): Severity {
  const { bottom_m2, surface_m2 } = storeGeometry(store.shape, store.water_depth_m, 1);
  const load_kg_m2 = filledWeight(store, coils).filled_kg / (bottom_m2 || surface_m2);
  return load_kg_m2 > FLOOR_KG_M2 ? 'warning' : SEVERITIES.weight;
}
