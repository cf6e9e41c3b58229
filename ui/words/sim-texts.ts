/**
 * What `sim` says, in this language: its English text beside ours, with `{}` where something stands in between. A
 * translation may order what it takes over by number, `{1}` before `{0}`. `npm run -s texts` lists all there is to say.
 * English is what `sim` speaks.
 */
export const simTexts: Readonly<Record<string, string>> = {};
