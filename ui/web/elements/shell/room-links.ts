/** The row of links that stays in sight, one to each room. */
import { html, nothing, type TemplateResult } from 'lit';
import { shellWords } from '../../../words/index.ts';
import { type Room, rooms } from '../../app/page-state.ts';
import { eitherName } from '../either-name.ts';

export function roomLinks(inSight: Room | null): TemplateResult {
  return html`<nav class="rooms" aria-label=${shellWords.roomsName}>
    <ul>
      ${rooms.map(
        (room) =>
          html`<li>
            <a href="#${room}" aria-current=${room === inSight ? 'true' : nothing}>${
              room === 'heat'
                ? eitherName(shellWords.rooms.heat, shellWords.shortHeat)
                : shellWords.rooms[room]
            }</a>
          </li>`,
      )}
    </ul>
  </nav>`;
}
