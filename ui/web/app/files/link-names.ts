/**
 * Names that a link writes as one byte each, in their order. Links of this form stand in people's letters for ever: the
 * list is frozen. A name that is not in it is spelled out, which costs a few characters and nothing else.
 */
export const linkNames: readonly string[] = [
  'a1 a2 air allowed altitude area at b0 backup basis below bottom bridges bundling by check_valve',
  'climate coil coil_diameter coils cold coldest_return collector conductance coolant coolant_flow',
  'coolant_volume currency cut_out days diameter direction doubts draws efficiency engine eta0',
  'exhaust_exchanger exhaust_share facing faults fed_from file first_weekday fitted flow fluid foam',
  'format fouling from fuel fuel_use full gap ground height high_limit horizon humidity incidence input',
  'inside insulation interval jacket_share join kind lasts latitude layers length lid lift limit liner',
  'load_by_hour longitude loop make_up make_up_temperature material max_heat mixing_valve name',
  'night_loss note off on open_flow outdoor_share outlet output outside pattern people pipe pipes pitch',
  'power prices probe pump pump_flow pump_power radiator rated_output rating refill resistance rest',
  'roll_length rolls run runs seed set shade shape share share_by showers side_by_side sides site size',
  'snow spacing spans standby_loss stands start starts store sun supply swing taps temperature',
  'thermostat thickness tilt time_zone to tolerance top tube tubes typical_load unsure until',
  'vapour_escape version volume wall water_depth weather where width',
].flatMap((line) => line.split(' '));
