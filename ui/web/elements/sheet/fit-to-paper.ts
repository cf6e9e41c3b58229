/**
 * Makes two pages of the sheet: the largest type that holds all, what height is left to the drawing, and as many
 * assumptions as there is room for. Measured with the styles of paper on, before anything is painted.
 */
import { givenWords } from '../../../words/index.ts';

/** Sizes of type that are tried [pt], the largest first; the last is taken whatever comes of it. */
const TYPE_PT = [9, 8.5, 8, 7.5, 7, 6.5, 6];
/** Least height of the drawing [px] for its words to stand clear of each other. */
const LEAST_DRAWING_PX = 350;
/** Assumptions that paper has at the least, where there are so many. */
const LEAST_ASSUMPTIONS = 6;
/** Rather small type than fewer of them than these, down to this size [pt]. */
const WANTED_ASSUMPTIONS = 12;
const COMFORTABLE_PT = 8;
/** Paper sets type a hair wider than a screen: room left at the foot [px]. */
const SLACK_PX = 6;

export function fitToPaper(sheet: HTMLElement, paper: CSSStyleSheet): { drawing_px: number } {
  paper.media.mediaText = 'all';
  try {
    fitAssumptions(sheet);
    return { drawing_px: fitFirst(sheet) };
  } finally {
    paper.media.mediaText = 'print';
  }
}

/** The first page: everything but the drawing by its type, the rest is the drawing's. */
function fitFirst(sheet: HTMLElement): number {
  const page = sheet.querySelector<HTMLElement>('.sheet-page.first');
  const figure = page?.querySelector<HTMLElement>('.sheet-figure');
  if (!page || !figure) return LEAST_DRAWING_PX;
  for (const size of TYPE_PT) {
    setType(page, size);
    figure.style.height = '0';
    const left = page.clientHeight - contentHeight(page) - SLACK_PX;
    figure.style.height = '';
    if (left >= LEAST_DRAWING_PX || size === TYPE_PT.at(-1)) return Math.max(60, Math.floor(left));
  }
  return LEAST_DRAWING_PX;
}

/** Height that the page's children take, but for the room before its foot. */
function contentHeight(page: HTMLElement): number {
  const [first, foot] = [page.firstElementChild, page.lastElementChild];
  const last = foot?.previousElementSibling;
  if (!first || !last || !foot) return 0;
  const over = last.getBoundingClientRect().bottom - first.getBoundingClientRect().top;
  return over + foot.getBoundingClientRect().height;
}

/** The second page: columns that overflow grow to the side. */
function fitAssumptions(sheet: HTMLElement): void {
  const page = sheet.querySelector<HTMLElement>('.sheet-page.second');
  const columns = page?.querySelector<HTMLElement>('.sheet-columns');
  const more = page?.querySelector<HTMLElement>('.more');
  if (!page || !columns || !more) return;
  const items = [...page.querySelectorAll<HTMLElement>('.assumptions li')];
  const show = (many: number) => {
    let hidden = 0;
    for (const [i, item] of items.entries()) {
      item.classList.toggle('off-paper', i >= many);
      if (i >= many) hidden += Number(item.dataset.count);
    }
    more.textContent = items.length === 0 ? '' : givenWords.more(hidden);
  };
  const fits = (many: number) => {
    show(many);
    return columns.scrollWidth <= columns.clientWidth + 1;
  };
  for (const size of TYPE_PT) {
    setType(page, size);
    const wanted = size >= COMFORTABLE_PT ? WANTED_ASSUMPTIONS : LEAST_ASSUMPTIONS;
    if (fits(Math.min(wanted, items.length))) break;
  }
  let [low, high] = [0, items.length];
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  show(low);
}

function setType(page: HTMLElement, size_pt: number): void {
  page.style.setProperty('--type', `${size_pt}pt`);
}
