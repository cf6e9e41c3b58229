/** Elements that are not in the first picture: their code is loaded when they come near the window, or are asked for. */
const code = {
  'tankful-answer': () => import('./answers/tankful-answer.ts'),
  'tankful-card': () => import('./cards/tankful-card.ts'),
  'tankful-compare': () => import('./shell/tankful-compare.ts'),
  'tankful-measured': () => import('./measured/tankful-measured.ts'),
  'tankful-parts-list': () => import('./section/tankful-parts-list.ts'),
  'tankful-days-table': () => import('./tankful-days-table.ts'),
  'tankful-heat': () => import('./tankful-heat.ts'),
  'tankful-said': () => import('./shell/tankful-said.ts'),
  'tankful-sheet': () => import('./sheet/tankful-sheet.ts'),
  'tankful-troubles': () => import('./shell/tankful-troubles.ts'),
  'tankful-range': () => import('./shell/tankful-range.ts'),
  'tankful-figures': () => import('./tankful-figures.ts'),
} satisfies Record<string, () => Promise<unknown>>;

type Later = keyof typeof code;

/** Loads an element's code; what stands in the page already comes to life. */
export async function load(tag: Later): Promise<void> {
  await code[tag]();
}

/** Loads everything there is. */
export async function loadAll(): Promise<void> {
  await Promise.all(Object.values(code).map((each) => each()));
}

/** Loads what lies within a window's height of what is seen, until the returned function is called. */
export function loadWhenNear(root: ParentNode): () => void {
  const near = new IntersectionObserver(
    (seen) => {
      for (const { isIntersecting, target } of seen) {
        if (!isIntersecting) continue;
        near.unobserve(target);
        void load(target.localName as Later);
      }
    },
    { rootMargin: '0px 0px 100% 0px' },
  );
  for (const element of root.querySelectorAll(Object.keys(code).join())) near.observe(element);
  return () => near.disconnect();
}
