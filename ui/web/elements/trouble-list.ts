/** Where it stands why the design cannot be run; announced when it appears. */
import { html, nothing, type TemplateResult } from 'lit';
import type { Problem, Scenario } from '../../../sim/index.ts';
import { load } from './later.ts';

/** The container always stands: a region that arrives together with its words is often not announced. */
export function troubleList(problems: readonly Problem[], scenario: Scenario): TemplateResult {
  if (problems.length > 0) void load('tankful-troubles');
  return html`<div class="troubles" role="alert">
    ${
      problems.length > 0
        ? html`<tankful-troubles .problems=${problems} .scenario=${scenario}></tankful-troubles>`
        : nothing
    }
  </div>`;
}
