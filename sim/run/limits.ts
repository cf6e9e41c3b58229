/** What runs and answers warn from. */

/** Copper's usual ceiling of speed for hot water [m/s]: 5 ft/s. */
export const TUBE_SPEED = 1.524;
/** Pressure most heads and heaters need [Pa]: 20 psi. */
export const LEAST_PRESSURE = 137_895;
/** PEX tube is rated to 180 F at 100 psi [C]: above, at less pressure only. */
export const PEX_C = 82.2;
/** A store this near its boiling point is as good as boiling [K]. */
export const NEAR_BOILING_K = 8;
