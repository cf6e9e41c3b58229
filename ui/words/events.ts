/** Words for the events of a run: what happened to the part that logged it. */
export const eventWords = {
  'engine.start': 'started',
  'engine.stop': 'stopped',
  'collector.pump.on': 'pump on',
  'collector.pump.off': 'pump off',
  'collector.high_limit': 'held off by the high limit',
  'collector.high_limit.over': 'high limit over',
  'store.boiling': 'began to boil',
  'store.boiling.over': 'stopped boiling',
  'fault.begins': 'fails, as played',
  'fault.over': 'works again',
  'spell.begins': 'begins, as played',
  'spell.over': 'is over',
  'cistern.frozen': 'half frozen',
  'cistern.thawed': 'thawing',
} as const;

/** An event's words; one without words is shown by its bare name. */
export function eventLabel(name: string): string {
  return Object.hasOwn(eventWords, name) ? eventWords[name as keyof typeof eventWords] : name;
}
