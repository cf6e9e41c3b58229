/** What the rooms show just now: of which design and days, how good it is, and what is under way. */
import { html, nothing, type TemplateResult } from 'lit';
import { shellWords } from '../../../words/index.ts';
import type { Page } from '../../app/page.ts';
import { isStale, type PageState } from '../../app/page-state.ts';
import { shownWords } from '../../app/page-words.ts';

export function runLine(state: PageState, page: Page): TemplateResult {
  const { estimate, progress, pinned, shown, design } = state;
  // Until the first quick look at what a hand moves there is nothing to say, unless it cannot be run.
  const stale = isStale(state) && (state.preview === null || state.problems.length > 0);
  // An example's note is its own: a design made from it may be anything.
  const isExample = (state.kept?.id ?? null) === null;
  const note = isExample && page.catalogue.find(({ id }) => id === design.id)?.note;
  return html`<div class="run-line ${stale ? 'stale' : ''}">
    <div class="run-words">
      ${
        estimate
          ? html`<p class="shown"><strong>${estimateWords(estimate.result.days, estimate.ofDays)}</strong></p>`
          : nothing
      }
      <div class=${estimate ? 'room-kept' : ''}>
        <p class=${estimate ? '' : 'shown'}>
          ${stale ? html`<strong>${shellWords.lastGood}</strong> ` : nothing} ${shown ? shownWords(shown) : nothing}
        </p>
        ${note ? html`<p class="about">${note}</p>` : nothing}
      </div>
      <p class="unseen" role="status">${shown && !stale && !estimate ? shownWords(shown) : nothing}</p>
    </div>
    <div class="run-tools">
      ${
        progress === null
          ? nothing
          : html`<progress max="1" .value=${progress} aria-label=${shellWords.running}></progress>
            <button type="button" class="plain" @click=${() => page.stop()}>${shellWords.stop}</button>`
      }
      ${
        progress === null && stale && state.preview === null && state.problems.length === 0
          ? html`<button type="button" class="plain" @click=${() => page.run()}>${shellWords.again}</button>`
          : nothing
      }
      ${
        shown === null || pinned?.scenario === design.scenario
          ? nothing
          : html`<button type="button" class="plain" ?disabled=${stale} @click=${() => page.pin()}>
            ${pinned ? shellWords.pinAgain : shellWords.pin}
          </button>`
      }
      ${
        pinned
          ? html`<button type="button" class="plain" @click=${() => page.unpin()}>${shellWords.unpin}</button>`
          : nothing
      }
    </div>
  </div>`;
}

function estimateWords(days: number, of: number): string {
  return days < of ? shellWords.firstDays(days, of) : shellWords.estimate;
}
