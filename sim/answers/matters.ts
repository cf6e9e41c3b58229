/** Which doubts can move heat and temperatures; the others would only cost runs. */

/** Paths, or ends of them, that set off a caution, cost money or move the heat by less than is computed. */
const IDLE = [
  /^prices\b/,
  /^run\b/,
  /^backup\b/,
  /^site\b/,
  /\.coldest_return$/,
  /\.limit$/,
  /\.humidity$/,
  /\.swing$/,
  /\.warmest$/,
  /\bpump_power$/,
  /\bpump\.power$/,
];

export function movesHeat(path: string): boolean {
  return !IDLE.some((idle) => idle.test(path));
}

export function movesMoney(path: string): boolean {
  return /^prices\b/.test(path);
}
