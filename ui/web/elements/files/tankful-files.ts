/** What became of files and links: opened, saved, copied, or why not, and what to do then. */
import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { Problem } from '../../../../sim/index.ts';
import { fileWords, numberFormat, troubleLine } from '../../../words/index.ts';
import { linkOf, readLink } from '../../app/files/link.ts';
import { readText } from '../../app/files/read-text.ts';
import { type Saved, saveFile } from '../../app/files/save-file.ts';
import { saveToFile } from '../../app/files/save-to-file.ts';
import {
  mostFiles,
  openDesign,
  type Taken,
  takeFiles,
  takeWeather,
  weatherFileOf,
} from '../../app/files/take-files.ts';
import type { Page } from '../../app/page.ts';
import type { Design } from '../../app/page-state.ts';
import { LightElement } from '../light-element.ts';

interface Notice {
  words: string[];
  problems: readonly Problem[];
  /** A weather file that is to be saved by itself. */
  aside?: string;
}

/** Programs that cut links cut them about here [letters]. */
const longLink = 2000;
const letters = numberFormat();

@customElement('tankful-files')
export class TankfulFiles extends LightElement {
  @property({ attribute: false }) page!: Page;
  @property({ attribute: false }) design!: Design;

  @state() private notices: Notice[] = [];
  /** Shown where it could not be copied. */
  @state() private link: string | null = null;
  @state() private hovered = false;
  @query('.link-field') private field!: HTMLInputElement | null;

  override render(): TemplateResult {
    const { notices, link, hovered } = this;
    const missing = this.missing();
    const any = notices.length > 0 || link !== null;
    return html`
      ${hovered ? html`<p class="drop-hint">${fileWords.drop}</p>` : nothing}
      ${missing === null ? nothing : this.wayOut(missing)}
      <div class="file-notices ${any ? 'panel' : ''}">
        <div role="status">${notices.map((notice) => this.notice(notice))}</div>
        ${link === null ? nothing : linkField(link)}
        ${
          any
            ? html`<button type="button" class="quiet" @click=${this.close}>${fileWords.close}</button>`
            : nothing
        }
      </div>
    `;
  }

  private notice({ words, problems, aside }: Notice): TemplateResult {
    return html`<p>${words.join(' ')}</p>
      ${
        problems.length > 0
          ? html`<ul class="troubles">
            ${problems.map((problem) => html`<li>${troubleLine({ where: problem.path, ...problem })}</li>`)}
          </ul>`
          : nothing
      }
      ${
        aside === undefined
          ? nothing
          : html`<button type="button" class="plain" @click=${() => this.saveAside(aside)}>
            ${fileWords.saveAside(aside)}
          </button>`
      }`;
  }

  /** The weather file that the design names and that is not at hand. */
  private missing(): string | null {
    const { scenario, attached } = this.design;
    const named = weatherFileOf(scenario);
    return named === null || (attached && Object.hasOwn(attached, named)) ? null : named;
  }

  private wayOut(file: string): TemplateResult {
    return html`<div class="panel missing-file">
      <p>${fileWords.missing(file)}</p>
      <label class="plain file-input">
        <input type="file" class="unseen" accept=".csv,.txt,.tsv,.dat" @change=${this.onGiven} />
        <span>${fileWords.give}</span>
      </label>
      <button type="button" class="plain" @click=${this.makeWeather}>${fileWords.make}</button>
    </div>`;
  }

  async open(files: readonly File[]): Promise<void> {
    const taken = await takeFiles(this.page, files);
    const notices = taken.map(noticeOf);
    if (files.length > mostFiles) notices.push({ words: [fileWords.tooMany(mostFiles)], problems: [] });
    await this.tell(...notices);
  }

  async openLink(fragment: string): Promise<void> {
    const { taken, problems } = await openDesign(this.page, await readLink(fragment));
    // Loaded again, the page goes on with what became of the design, not with the link.
    history.replaceState(history.state, '', location.pathname + location.search);
    if (taken && problems.length > 0)
      await this.tell({ words: [fileWords.openedLink, fileWords.notSound], problems: [] });
    else await this.tell({ words: [taken ? fileWords.openedLink : fileWords.refusedLink], problems });
  }

  async save(): Promise<void> {
    const { design } = this;
    await this.tellSaved(await saveToFile(design), this.asideOf(design));
  }

  async copyLink(): Promise<void> {
    const { design } = this;
    const link = location.href.replace(/#.*$/, '') + (await linkOf(design.scenario));
    const many = letters.format(link.length);
    const copied = await copy(link);
    const aside = this.asideOf(design);
    await this.tell({
      words: [
        copied ? fileWords.copied(many) : fileWords.notCopied(many),
        ...(isHere() ? [fileWords.ownAddress] : []),
        ...(link.length > longLink ? [fileWords.longLink(letters.format(longLink))] : []),
        ...(aside === undefined ? [] : [fileWords.aside(aside)]),
      ],
      problems: [],
      ...(aside === undefined ? {} : { aside }),
    });
    if (copied) return;
    this.link = link;
    await this.updateComplete;
    this.field?.focus();
    this.field?.select();
  }

  /** While files are held over the page. */
  hover(over: boolean): void {
    this.hovered = over;
  }

  async drop(files: readonly File[]): Promise<void> {
    this.hovered = false;
    if (files.length > 0) await this.open(files);
  }

  private asideOf({ scenario, attached }: Design): string | undefined {
    const named = weatherFileOf(scenario);
    return named !== null && attached && Object.hasOwn(attached, named) ? named : undefined;
  }

  private async saveAside(name: string): Promise<void> {
    const text = this.design.attached?.[name];
    if (text !== undefined)
      await this.tellSaved(await saveFile(name, new Blob([text], { type: 'text/csv' })));
  }

  private async tellSaved(saved: Saved, aside?: string): Promise<void> {
    if (saved.how === 'left') return;
    const words =
      saved.how === 'failed'
        ? fileWords.notSaved(saved.why)
        : saved.how === 'saved'
          ? fileWords.saved(saved.name)
          : fileWords.downloaded(saved.name);
    await this.tell(
      aside === undefined
        ? { words: [words], problems: [] }
        : { words: [words, fileWords.aside(aside)], problems: [], aside },
    );
  }

  private readonly onGiven = async ({ target }: Event): Promise<void> => {
    const [file] = (target as HTMLInputElement).files ?? [];
    const name = this.missing();
    if (!file || name === null) return;
    const read = await readText(file);
    if (!read.ok) await this.tell({ words: [fileWords.refused(file.name)], problems: read.problems });
    else {
      takeWeather(this.page, name, read.text);
      await this.tell({ words: [fileWords.weather(file.name)], problems: [] });
    }
  };

  private readonly makeWeather = (): void => {
    this.page.commit([{ path: 'weather', value: { kind: 'by latitude' } }], fileWords.made);
  };

  private readonly close = (): void => {
    this.notices = [];
    this.link = null;
    // The button goes with what it closes: the keyboard goes on at the first of the buttons for files.
    document.querySelector<HTMLElement>('[data-file]')?.focus({ preventScroll: true });
  };

  private async tell(...notices: Notice[]): Promise<void> {
    // A region must stand before words come into it, or they are not announced.
    await this.updateComplete;
    this.link = null;
    this.notices = notices;
    await this.updateComplete;
  }
}

function noticeOf({ name, as, problems, encoding }: Taken): Notice {
  const words = {
    design: fileWords.opened(name),
    weather: fileWords.weather(name),
    log: fileWords.log(name),
    kept: fileWords.kept(name),
    refused: fileWords.refused(name),
  }[as];
  const unsound = as === 'design' && problems.length > 0;
  return {
    words: [
      words,
      ...(unsound ? [fileWords.notSound] : []),
      ...(encoding === null ? [] : [fileWords.encoding(encoding)]),
    ],
    // The page tells those of the design that stands in it.
    problems: as === 'refused' ? problems : [],
  };
}

function linkField(link: string): TemplateResult {
  return html`<label class="wide">
    <span>${fileWords.linkName}</span>
    <input class="link-field" readonly .value=${link} />
  </label>`;
}

async function copy(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** Whether the page's address means nothing on another computer. */
function isHere(): boolean {
  return location.protocol === 'file:' || /^(localhost|127\.|\[::1\])/.test(location.hostname);
}
