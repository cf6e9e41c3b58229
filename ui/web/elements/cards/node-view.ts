/** Whatever stands in a card: an entry, values that belong together, or a list of them. */
import { html, nothing, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { Assumed, OutlineGroup, OutlineList, OutlineNode } from '../../../../sim/index.ts';
import {
  cardWords,
  decidingWords,
  fromSim,
  sentenceCase,
  sourceText,
  troubleLine,
} from '../../../words/index.ts';
import { opensWhen } from '../opens-when.ts';
import { below, counted, itemName, type Placed } from './card-plan.ts';
import { cautionsAt } from './cautions-at.ts';
import { entryControl } from './entry-control.ts';
import { idOf, problemAt } from './entry-view.ts';
import type { Hands } from './hands.ts';

/** More than this in an item, and it is folded away behind its name. */
const mostOpen = 4;

export function placedNodes(placed: readonly Placed[], hands: Hands): TemplateResult {
  const siblings = placed.map(({ node }) => node);
  return html`<div class="cells">
    ${repeat(
      placed,
      ({ node }) => node.path,
      ({ node, label }) => nodeView(node, label, siblings, hands),
    )}
  </div>`;
}

function nodeView(
  node: OutlineNode,
  label: string,
  siblings: readonly OutlineNode[],
  hands: Hands,
): TemplateResult {
  switch (node.kind) {
    case 'entry':
      return entryControl(node, labelOf(node, label), siblings, hands);
    case 'group':
      return groupView(node, label, hands);
    case 'list':
      return listView(node, label, hands);
  }
}

/** Single values in the open, every whole folded behind its name. */
export function foldedNodes(placed: readonly Placed[], hands: Hands): TemplateResult {
  const [entries, wholes] = [true, false].map((single) =>
    placed.filter(({ node }) => (node.kind === 'entry') === single),
  );
  return html`${placedNodes(entries, hands)}
  ${repeat(
    wholes,
    ({ node }) => node.path,
    ({ node, label }) =>
      html`<details class="fold" ${opensWhen(isWrong(node, hands))}>
        <summary>${label}<span class="counts">${countsOf(node)}</span></summary>
        ${node.kind === 'list' ? listView(node, label, hands) : groupView(node as OutlineGroup, label, hands)}
      </details>`,
  )}`;
}

function countsOf(node: OutlineNode): string {
  const { given, assumed } = counted([node]);
  return given + assumed === 0 ? fromSim(node.absent ?? '') : cardWords.within(given, assumed);
}

/** The word that decides is named for what it decides, unless it stands for the whole. */
function labelOf(node: OutlineNode, label: string): string {
  return node.kind === 'entry' && node.decides !== null ? (decidingWords[node.decides] ?? label) : label;
}

function groupView(group: OutlineGroup, label: string, hands: Hands): TemplateResult {
  return html`<fieldset class="group" id=${idOf(group.path)} tabindex="-1">
    <legend>${label}</legend>
    ${insideGroup(group, label, hands)}
  </fieldset>`;
}

function insideGroup(group: OutlineGroup, label: string, hands: Hands): TemplateResult {
  const { nodes } = group;
  const inside = nodes.map((node) => ({ node, label: sentenceCase(fromSim(node.label)) }));
  return html`${absence(group, label, hands)} ${source(group, hands)} ${placedNodes(inside, within(group, hands))}
  ${forgetWhole(group, label, hands)}
  ${wholeTrouble(group, label, hands)} ${cautionsAt(group.path, hands)}`;
}

function listView(list: OutlineList, label: string, hands: Hands): TemplateResult {
  const { items, count } = list;
  const single = items.every((item) => item.kind === 'entry');
  const fixed = count[0] === count[1];
  const elsewhere = hands.elsewhere.has(list.path);
  return html`<fieldset class="list ${single ? 'single' : ''}" id=${idOf(list.path)} tabindex="-1">
    <legend>${label}</legend>
    ${items.length === 0 ? absence(list, label, hands) : source(list, hands)}
    <div class="items">
      ${repeat(
        items,
        ({ path }) => path,
        (item) => itemView(item, list, within(list, hands)),
      )}
    </div>
    <div class="list-actions">
      ${
        fixed || elsewhere || items.length >= count[1] || (items.length === 0 && list.need !== 'default')
          ? nothing
          : action(cardWords.add, label, () => hands.add(list, label))
      }
      ${forgetWhole(list, label, hands)}
    </div>
    ${wholeTrouble(list, label, hands)} ${cautionsAt(list.path, hands)}
  </fieldset>`;
}

function itemView(item: OutlineNode, list: OutlineList, hands: Hands): TemplateResult {
  // What stands elsewhere in the card is missing from the list: the item's own place counts.
  const index = Number(/\[(\d+)\]$/.exec(item.path)?.[1] ?? 0);
  const name = itemName(item, index, list.count);
  if (item.kind === 'entry') return entryControl(item, name, list.items, hands, { compact: true });
  const ofList = `${sentenceCase(fromSim(list.label))}, ${name}`;
  const remove =
    list.items.length > list.count[0] && !hands.elsewhere.has(list.path)
      ? action(cardWords.remove, ofList, () => hands.remove(list, index, ofList))
      : nothing;
  if (item.kind === 'group' && item.nodes.length > mostOpen) {
    return html`<details class="item" ${opensWhen(isWrong(item, hands))}>
      <summary>${sentenceCase(name)}</summary>
      <div class="inside">${insideGroup(item, name, hands)} ${remove}</div>
    </details>`;
  }
  return html`<fieldset class="item" id=${idOf(item.path)} tabindex="-1">
    <legend>${sentenceCase(name)}</legend>
    ${item.kind === 'group' ? insideGroup(item, name, hands) : listView(item, name, hands)} ${remove}
  </fieldset>`;
}

/** Whether something in it is wrong, so that it must not stay folded away. */
export function isWrong({ path }: OutlineNode, { around: { problems, typed } }: Hands): boolean {
  const inside = (each: string) =>
    each === path || each.startsWith(`${path}.`) || each.startsWith(`${path}[`);
  return problems.some((problem) => inside(problem.path)) || Object.keys(typed).some(inside);
}

/** What stands in for a thing that the file is silent about, and the way to describe it. */
export function absence(
  node: OutlineGroup | OutlineList,
  label: string,
  hands: Hands,
): TemplateResult | typeof nothing {
  if (node.given || (node.kind === 'group' && node.nodes.length > 0)) return nothing;
  const grows = node.kind === 'list' && node.need === 'default';
  const absent = node.absent === null ? '' : `${fromSim(node.absent)}.`;
  const words = grows ? cardWords.none : node.assumed ? sourceText(node.assumed) : absent;
  const button = grows
    ? nothing
    : action(node.need === 'optional' ? cardWords.add : cardWords.describe, label, () =>
        hands.describe(node, label),
      );
  return html`<p class="lines">${sentenceCase(words)}</p>
    ${button}`;
}

/** Where a whole comes from that stands in as such; what is merely a collection of its parts comes from nowhere. */
function source(whole: OutlineGroup | OutlineList, { around }: Hands): TemplateResult | typeof nothing {
  const from = wholeSource(whole);
  if (from === null || below(whole).length === 0) return nothing;
  const text = sourceText(from);
  if (around.sourced && sourceText(around.sourced) === text) return nothing;
  return html`<p class="lines"><span class="mark">${cardWords.assumed}</span> ${text}</p>`;
}

function wholeSource({ given, assumed }: OutlineGroup | OutlineList): Assumed | null {
  const empty = JSON.stringify(assumed?.value) === '{}';
  return given || !assumed || empty ? null : assumed;
}

/** Inside a whole that has said where it comes from, its parts need not say it again. */
function within(whole: OutlineGroup | OutlineList, hands: Hands): Hands {
  const sourced = wholeSource(whole);
  return sourced === null ? hands : { ...hands, around: { ...hands.around, sourced } };
}

/** Takes a whole out of the file, where its parts cannot be taken out one by one. */
function forgetWhole(
  node: OutlineGroup | OutlineList,
  label: string,
  hands: Hands,
): TemplateResult | typeof nothing {
  if (!node.given || node.need === 'required' || hands.elsewhere.has(node.path)) return nothing;
  if (node.need === 'default' && (node.kind === 'list' || !node.whole)) return nothing;
  const words = node.need === 'optional' ? cardWords.leaveOut : cardWords.dontKnow;
  return action(words, label, () => hands.forget(node, label, undefined));
}

function wholeTrouble(node: OutlineNode, label: string, hands: Hands): TemplateResult | typeof nothing {
  const trouble = problemAt(node.path, label, hands.around);
  return trouble ? html`<p class="trouble">${troubleLine(trouble)}</p>` : nothing;
}

function action(words: string, label: string, act: () => void): TemplateResult {
  return html`<button type="button" class="quiet" aria-label="${words}: ${label}" @click=${act}>
    ${words}
  </button>`;
}
