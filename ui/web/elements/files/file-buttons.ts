/** Buttons for files: `hear-files.ts` hears them. */
import { html, type TemplateResult } from 'lit';
import { fileTools } from '../../../words/index.ts';
import { eitherName } from '../either-name.ts';

/** A button's `data-file` names what it does. The file's own input stands in the page: browsers open it only at a press. */
export function filesTools(): TemplateResult {
  return html`<div class="file-tools" role="group" aria-label=${fileTools.group}>
    <label class="plain file-input">
      <input type="file" class="unseen" multiple accept=".json,.csv,.txt,.tsv,.dat" data-file="open" />
      <span>${eitherName(fileTools.open, fileTools.short.open)}</span>
    </label>
    <button type="button" class="plain" data-file="save" aria-label=${fileTools.save}>
      ${eitherName(fileTools.save, fileTools.short.save)}
    </button>
    <button type="button" class="plain" data-file="link" aria-label=${fileTools.link}>
      ${eitherName(fileTools.link, fileTools.short.link)}
    </button>
  </div>`;
}

/** Stands beside a chart that can be saved. */
export function saveButton(key: string, title: string): TemplateResult {
  return html`<button
    type="button"
    class="quiet save-chart"
    data-save=${key}
    aria-haspopup="menu"
    aria-label=${fileTools.saveChart(title)}
  >
    ${fileTools.saveChartShort}
  </button>`;
}
