/** A page that holds one card and a design, and does with the card's edits what the whole page does: for tests. */
import {
  type Edit,
  edited,
  type ReadScenario,
  readScenario,
  type Scenario,
  simulate,
} from '../../../sim/index.ts';
import type { PageEvents } from '../../../ui/web/app/events.ts';
import { TankfulCard } from '../../../ui/web/elements/cards/tankful-card.ts';

export interface CardStand {
  scenario: Scenario;
  /** Edits and ranges that the card asked for, in order. */
  heard: unknown[];
  open(scenario: Scenario, path: string, more?: Partial<TankfulCard>): void;
}

const card = new TankfulCard();
const stand: CardStand = {
  scenario: {} as Scenario,
  heard: [],
  open(scenario, path, more = {}) {
    Object.assign(card, { path, typed: {}, problems: [] }, more);
    take(scenario);
    const read = readScenario(scenario);
    if (read.ok) card.cautions = simulate(read.plant).cautions;
    if (!card.isConnected) document.querySelector('main')?.append(card);
  },
};

function take(scenario: Scenario): void {
  stand.scenario = scenario;
  const read: ReadScenario = readScenario(scenario);
  card.scenario = scenario;
  card.problems = read.ok ? [] : read.problems;
  if (read.ok) Object.assign(card, { filled: read.filled, notes: read.notes });
}

function hear<Name extends keyof PageEvents>(name: Name, act: (detail: PageEvents[Name]) => void): void {
  card.addEventListener(name, (event) => act((event as CustomEvent<PageEvents[Name]>).detail));
}
hear('commit-edits', ({ edits }: { edits: Edit[] }) => {
  stand.heard.push(...edits);
  take(edited(stand.scenario, edits));
});
hear('typed', ({ path, text }) => {
  const { [path]: _, ...others } = card.typed;
  card.typed = text === null ? others : { ...others, [path]: text };
});
hear('try-range', (spec) => stand.heard.push(spec));
hear('open-part', (detail) => stand.heard.push(detail));

Object.assign(globalThis, { stand });
