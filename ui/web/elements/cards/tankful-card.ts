/**
 * The card of one part: three everyday values first, all others behind "More about this part".
 *
 * The card changes nothing itself: it tells the page by `commit-edits`, `typed`, `try-range` and `open-part`.
 */
import { html, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import {
  adding,
  type Caution,
  type Changes,
  deciding,
  describing,
  entering,
  type FilledDefault,
  type Note,
  type OutlineEntry,
  type OutlineGroup,
  type OutlineList,
  type OutlineNode,
  outlineOf,
  type Problem,
  pathSteps,
  removing,
  type Scenario,
  valueAt,
} from '../../../../sim/index.ts';
import {
  boxText,
  cardWords,
  fileText,
  readTyped,
  shelfWords,
  troubleLine,
  type Units,
  understoodText,
} from '../../../words/index.ts';
import { tell } from '../../app/events.ts';
import { LightElement } from '../light-element.ts';
import { opensWhen } from '../opens-when.ts';
import { cautionsIn, type PlacedCaution } from './card-cautions.ts';
import { type CardPlan, nodesIn, planOf } from './card-plan.ts';
import { cautionsAt } from './cautions-at.ts';
import { type DoubtEnd, doubtAt, doubtEdit, endEdit, type Sureness } from './doubt-spec.ts';
import { idOf, isUnder, refusedTyping, strayTroubles } from './entry-view.ts';
import type { Hands } from './hands.ts';
import { absence, foldedNodes, isWrong, placedNodes } from './node-view.ts';
import { type RangeBox, readRange, usualRange } from './range-spec.ts';

@customElement('tankful-card')
export class TankfulCard extends LightElement {
  /** Path of the part: `store`, `coils[0]`, `taps.draws[2]`. */
  @property() path = '';
  @property({ attribute: false }) scenario!: Scenario;
  /** What the last reading filled in, what it noted, and what was wrong. */
  @property({ attribute: false }) filled: readonly FilledDefault[] = [];
  @property({ attribute: false }) notes: readonly Note[] = [];
  @property({ attribute: false }) problems: readonly Problem[] = [];
  /** By path: text that could not be read. */
  @property({ attribute: false }) typed: Readonly<Record<string, string>> = {};
  /** Of the last run. */
  @property({ attribute: false }) cautions: readonly Caution[] = [];
  @property({ attribute: false }) units: Units = 'US';
  /** Another tab has the design open. */
  @property({ attribute: false }) readOnly = false;

  @state() private draft: { path: string; text: string } | null = null;
  @state() private examples: ReadonlySet<string> = new Set();
  /** What the boxes of ranges that were opened hold at first. */
  @state() private ranges: ReadonlyMap<string, Record<RangeBox, string>> = new Map();
  @state() private rangeTrouble: Hands['rangeTrouble'] = null;
  @state() private doubtTrouble: Hands['doubtTrouble'] = null;
  @state() private said = '';
  /** What was entered last and not taken. */
  @state() private refused: readonly Problem[] = [];

  private called = '';
  /** What a thing had under a word that it no longer goes by. */
  private readonly dropped = new Map<string, Record<string, unknown>>();
  /** Where to stand once the button that was pressed is gone. */
  private wanted: string | null = null;

  override render(): TemplateResult | typeof nothing {
    const plan = planOf(this.scenario, this.path, this.filled);
    if (!plan) return nothing;
    this.called = plan.title;
    const hands = this.hands(plan);
    const inMore = { ...hands, elsewhere: plan.asked };
    return html`<section class="card panel" aria-labelledby="card-title" @focusin=${this.arrived}>
      ${keyed(this.path, this.content(plan, hands, inMore))}
      <p class="unseen" role="status">${this.said}</p>
    </section>`;
  }

  protected override willUpdate(changed: PropertyValues): void {
    if (changed.has('readOnly')) this.refused = [];
  }

  protected override updated(_changed: PropertyValues): void {
    if (this.wanted === null || document.activeElement !== document.body) return;
    const found = this.querySelector<HTMLElement>(`#${this.wanted}`);
    if (!found) return;
    this.wanted = null;
    found.focus();
  }

  private readonly arrived = (): void => {
    this.wanted = null;
  };

  private content(plan: CardPlan, hands: Hands, inMore: Hands): TemplateResult {
    const { title, root, everyday, more, all, moreCount } = plan;
    const shown = new Set(nodesIn(root).map(({ path }) => path));
    const stray = strayTroubles(this.path, shown, this.problems);
    const open = more.some(({ node }) => isWrong(node, hands));
    return html`
      <div class="card-head">
        <h3 id="card-title">${title}</h3>
        <button type="button" class="quiet" aria-label="${cardWords.close}: ${title}" @click=${this.close}>
          ${cardWords.close}
        </button>
      </div>
      <p class="lines">${cardWords.count(all.given, all.assumed)}</p>
      ${cautionsAt(root.path, hands)} ${stray.map((each) => html`<p class="trouble">${troubleLine(each)}</p>`)}
      ${root.kind === 'entry' ? nothing : absence(root, title, hands)}
      <div class="everyday">${placedNodes(everyday, hands)}</div>
      ${
        more.length === 0
          ? nothing
          : html`<details class="more" ${opensWhen(open)}>
              <summary>${cardWords.more(moreCount.given + moreCount.assumed, moreCount.assumed)}</summary>
              ${foldedNodes(more, inMore)}
            </details>`
      }
    `;
  }

  private hands({ root, asked }: CardPlan): Hands {
    const { units, rangeTrouble, doubtTrouble, notes, typed, draft, examples } = this;
    const problems = [...this.refused, ...this.problems];
    return {
      around: { problems, notes, typed, units, draft, examples, sourced: null },
      units,
      rangeTrouble,
      doubtTrouble,
      doubtAt: (path) => doubtAt(this.scenario, path),
      elsewhere: new Set(),
      cautions: this.placedCautions(root, asked),
      draft: ({ path }, text) => {
        this.draft = { path, text };
      },
      enter: this.enter,
      restore: this.restore,
      decide: this.decide,
      forget: this.forget,
      describe: this.describe,
      add: this.add,
      remove: this.takeOut,
      mark: this.mark,
      markEnd: this.markEnd,
      rangeOf: ({ path }) => this.ranges.get(path) ?? { from: '', to: '', n: '' },
      openRange: (entry) => {
        this.ranges = new Map(this.ranges).set(entry.path, usualRange(entry, units, this));
      },
      tryRange: this.tryRange,
    };
  }

  /** What must not be missed stands at the head of the card where its own place is folded away. */
  private placedCautions(root: OutlineNode, open: ReadonlySet<string>): PlacedCaution[] {
    return cautionsIn(this.path, this.scenario, this.cautions, root).map((placed) =>
      placed.caution.severity === 'note' || open.has(placed.path) ? placed : { ...placed, path: root.path },
    );
  }

  private readonly enter = (entry: OutlineEntry, label: string, text: string): void => {
    this.draft = null;
    this.refused = [];
    const { path, field } = entry;
    const read = readTyped(field, text);
    if (!read.ok) {
      tell(this, 'typed', { path, text });
      this.said = troubleLine(refusedTyping(entry, label, read));
      return;
    }
    const { value } = read.value;
    if (path in this.typed) tell(this, 'typed', { path, text: null });
    this.wanted = null;
    this.examples = this.examplesBut(path);
    // Entered as it stands, an assumption becomes the owner's own word; a given value does not change.
    if (!entry.given || value !== entry.value) {
      this.commit(entering(this.scenario, path, value, this.filled), label, path, text);
      if (this.refused.length > 0) return;
    }
    this.said = cardWords.understood(
      label,
      understoodText(field, String(value), this.units) ?? boxText(field, fileText(path, String(value))),
    );
  };

  private readonly restore = ({ path }: OutlineEntry): void => {
    this.draft = null;
    if (path in this.typed) tell(this, 'typed', { path, text: null });
  };

  private readonly decide = (entry: OutlineEntry, label: string, word: string): void => {
    const path = entry.path.slice(0, -(entry.decides?.length ?? 0) - 1);
    const old = valueAt(this.scenario, pathSteps(path));
    if (typeof old === 'object' && old !== null) {
      this.dropped.set(`${path} ${entry.value}`, old as Record<string, unknown>);
    }
    const before = this.dropped.get(`${path} ${word}`);
    this.commit(deciding(this.scenario, path, word, this.filled, before), label);
  };

  private readonly forget = (node: OutlineNode, label: string, value: unknown): void => {
    const { path } = node;
    this.wanted = idOf(path);
    if (path in this.typed) tell(this, 'typed', { path, text: null });
    if (value === undefined) this.commit({ edits: [{ path, value }], examples: [] }, label);
    else {
      const { edits } = entering(this.scenario, path, value, this.filled);
      this.commit({ edits, examples: [path] }, label);
    }
  };

  private readonly describe = ({ path }: OutlineGroup | OutlineList, label: string): void => {
    this.wanted = idOf(path);
    this.commit(describing(this.scenario, path, this.filled), label);
  };

  private readonly add = ({ path }: OutlineList, label: string): void => {
    this.commit(adding(this.scenario, path, this.filled), label);
  };

  private readonly takeOut = ({ path }: OutlineList, index: number, label: string): void => {
    this.wanted = idOf(path);
    this.commit(removing(this.scenario, path, index, this.filled), label);
  };

  private readonly mark = (entry: OutlineEntry, label: string, sureness: Sureness): void => {
    this.doubtTrouble = null;
    const edits = [doubtEdit(this, entry, sureness, this.units)];
    this.commit({ edits, examples: [] }, cardWords.doubt.legend(label));
  };

  private readonly markEnd = (entry: OutlineEntry, label: string, end: DoubtEnd, typed: string): void => {
    const found = endEdit(this.scenario, entry, end, typed);
    this.doubtTrouble = found.ok ? null : { path: entry.path, end, trouble: found.trouble };
    if (found.ok) this.commit({ edits: [found.edit], examples: [] }, cardWords.doubt.legend(label));
    else this.said = troubleLine(found.trouble);
  };

  private readonly tryRange = (entry: OutlineEntry, label: string, typed: Record<RangeBox, string>): void => {
    const read = readRange(entry, typed);
    this.rangeTrouble = read.ok ? null : { path: entry.path, box: read.box, trouble: read.trouble };
    this.said = read.ok ? `${cardWords.range.title}: ${label}` : troubleLine(read.trouble);
    if (read.ok) tell(this, 'try-range', read.spec);
  };

  /** The examples that are left once a value has been entered; one that was a whole falls into its parts. */
  private examplesBut(path: string): ReadonlySet<string> {
    if (!isUnder(path, this.examples)) return this.examples;
    const root = outlineOf(this.scenario, this.path, this.filled);
    const left = (root ? nodesIn(root) : [])
      .filter((node) => node.kind === 'entry' && node.given && node.path !== path)
      .map((node) => node.path);
    return new Set(left.filter((each) => isUnder(each, this.examples)));
  }

  private commit(
    { edits, examples }: Changes,
    label: string,
    path = edits[0]?.path ?? '',
    got = label,
  ): void {
    if (examples.length > 0) this.examples = new Set([...this.examples, ...examples]);
    tell(this, 'commit-edits', { edits, gesture: cardWords.understood(this.called, label) });
    const { expected, fix } = shelfWords.refusedEntry;
    this.refused = this.readOnly ? [{ path, expected, got: `"${got}"`, fix }] : [];
    if (this.readOnly) this.said = troubleLine({ where: label, expected, got: `"${got}"`, fix });
  }

  private readonly close = (): void => tell(this, 'open-part', { path: null });
}
