/** What reads weather files; a worker loads it when one is attached. */
export { withWeather } from '../../../sim/index.ts';
