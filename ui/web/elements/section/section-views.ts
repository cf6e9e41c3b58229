/** Pieces of the section: a handle, and the drawing in words. */
import { html, nothing, type TemplateResult } from 'lit';
import { type LegendLine, sectionWords, type Units } from '../../../words/index.ts';
import type { SectionHandle } from '../../charts/section/handles.ts';
import { handleNumber } from '../../charts/section/steps.ts';

export function handleView(
  handle: SectionHandle,
  units: Units,
  held: boolean,
  width: number,
): TemplateResult {
  const { key, label, text, misfit, x, y, grows, value_m, least_m, most_m } = handle;
  const number = (value: number) => String(handleNumber(value, units));
  // The words stand on the side of the handle that has room for them.
  const side = x > width / 2 ? 'to-left' : 'to-right';
  return html`<div
    class="handle ${grows} ${held ? 'held' : ''}"
    .style=${`left:${x.toFixed(1)}px;top:${y.toFixed(1)}px`}
    data-key=${key}
    role="slider"
    tabindex="0"
    aria-label=${label}
    aria-orientation=${grows === 'left' ? 'horizontal' : 'vertical'}
    aria-valuemin=${number(least_m)}
    aria-valuemax=${number(most_m)}
    aria-valuenow=${number(value_m)}
    aria-valuetext=${misfit === '' ? text : `${text}; ${misfit}`}
  >
    <span class="bubble ${side}" aria-hidden="true"><strong>${label}</strong> ${unbroken(text)}</span>
  </div>`;
}

/** What does not fit stands apart and is said; the rest can be folded away. */
export function legendView(lines: readonly LegendLine[], open: boolean): TemplateResult {
  const wrong = lines.filter((line) => line.wrong);
  const rest = lines.filter((line) => !line.wrong);
  return html`
    <div class="section-misfits" role="status">
      ${
        wrong.length > 0
          ? html`<ul>
            ${wrong.map((line) => html`<li>${badge(line.mark)}<strong>${line.title}:</strong> ${unbroken(line.text)}</li>`)}
          </ul>`
          : nothing
      }
    </div>
    <details class="section-legend" ?open=${open}>
      <summary>${sectionWords.legend}</summary>
      <dl>
        ${rest.map(
          ({ mark, title, text }) =>
            html`<div><dt>${badge(mark)}${title}</dt><dd>${unbroken(text)}</dd></div>`,
        )}
      </dl>
    </details>
  `;
}

function badge(mark: string): TemplateResult | typeof nothing {
  return mark === '' ? nothing : html`<span class="badge">${mark}</span> `;
}

/** A fraction of the tape stays on the line of its inches, and a number on that of its unit. */
export function unbroken(text: string): string {
  return text.replace(
    /(?<=\d) (?=\d+\/\d)|(?<=\d) (?=(?:in|ft|mm|m|gal|gpm|L|lb|kg|psi|kPa|kW|K|h|min|s)\b|°)/g,
    '\u00a0',
  );
}
