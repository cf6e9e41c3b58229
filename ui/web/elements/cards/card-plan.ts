/** What a card shows first, and what it keeps under "More about this part". */
import { type FilledDefault, type OutlineNode, outlineOf, type Scenario } from '../../../../sim/index.ts';
import { fromSim, itemLabel, nameText, partTitle, sentenceCase } from '../../../words/index.ts';

/** A node with its name as it stands in the card. */
export interface Placed {
  label: string;
  node: OutlineNode;
}

export interface Counted {
  given: number;
  assumed: number;
}

export interface CardPlan {
  title: string;
  root: OutlineNode;
  everyday: Placed[];
  more: Placed[];
  /** Paths of all that stands among the everyday values. */
  asked: ReadonlySet<string>;
  /** Values of the whole part, and of those under More. */
  all: Counted;
  moreCount: Counted;
}

/** Three questions that anybody at the store can answer. */
const everydayCount = 3;

/** The card of the part at a path; null where there is no such part. */
export function planOf(scenario: Scenario, path: string, filled: readonly FilledDefault[]): CardPlan | null {
  const root = outlineOf(scenario, path, filled);
  if (!root) return null;
  const everyday = everydayPaths(path, scenario)
    .flatMap((each) => placed(root, path === '' ? each : `${path}.${each}`, null))
    .filter(({ node }) => node.need !== 'optional' || node.given)
    .slice(0, everydayCount)
    .map(({ label, node }) => ({ label, node: plainest(node) }));
  const first = new Set(everyday.flatMap(({ node }) => leavesOf(node)));
  const rest = root.kind === 'group' ? root.nodes.flatMap((node) => without(node, first)) : [];
  return {
    title: partTitle(path, nameOf(root)),
    root,
    everyday,
    more: rest.map((node) => ({ label: sentenceCase(fromSim(node.label)), node })),
    asked: new Set(everyday.flatMap(({ node }) => nodesIn(node)).map(({ path }) => path)),
    all: counted([root]),
    moreCount: counted(rest),
  };
}

/** Paths below a part, in the order in which they are asked; of those that are there, the first are taken. */
function everydayPaths(path: string, scenario: Scenario): string[] {
  switch (path.replace(/\[\d+\]/g, '')) {
    case 'store':
      return ['inside', 'water_depth', 'insulation.sides'];
    case 'coils':
      return ['tube', 'roll_length', 'rolls'];
    case 'engine':
      return ['fuel_use', 'runs', 'typical_load', 'load_by_hour'];
    case 'collector':
      return ['size', 'tilt', 'facing'];
    case 'supply':
      return ['cold.temperature', 'cold.start', 'pump.open_flow', 'pump.cut_out'];
    case 'taps':
      return scenario.taps?.showers?.length
        ? ['showers[0].people', 'showers[0].lasts', 'showers[0].flow']
        : ['showers', 'draws', 'mixing_valve'];
    case 'taps.showers':
      return ['people', 'lasts', 'flow'];
    case 'taps.draws':
      return ['volume', 'lasts', 'flow', 'temperature'];
    case 'backup':
      return ['max_heat', 'fuel', 'set'];
    case 'weather':
      return ['kind', 'climate', 'air', 'sun', 'file', 'rest', 'seed'];
    case 'site':
      return ['latitude', 'altitude', 'longitude'];
    case 'run':
      return ['from', 'days', 'start'];
    case 'prices':
      return [`${scenario.engine?.fuel ?? 'diesel'}_per_litre`, 'copper_per_kg', 'foam_per_m2_25mm'];
    default:
      return [];
  }
}

/** The node at a path, named with the whole it is taken out of. */
function placed(at: OutlineNode, path: string, whole: string | null): Placed[] {
  for (const node of below(at)) {
    const name = named(node);
    if (node.path === path)
      return [{ label: whole === null ? name : `${whole}: ${fromSim(node.label)}`, node }];
    const inside = node.kind === 'entry' || !within(path, node.path) ? [] : placed(node, path, name);
    if (inside.length > 0) return inside;
  }
  return [];
}

function within(path: string, whole: string): boolean {
  return path.startsWith(`${whole}.`) || path.startsWith(`${whole}[`);
}

export function below(node: OutlineNode): readonly OutlineNode[] {
  if (node.kind === 'entry') return [];
  return node.kind === 'group' ? node.nodes : node.items;
}

/** A node and all that is in it. */
export function nodesIn(node: OutlineNode): OutlineNode[] {
  return [node, ...below(node).flatMap(nodesIn)];
}

/** A thing's own name where it has one. */
function named(node: OutlineNode): string {
  return sentenceCase(nameOf(node) ?? fromSim(node.label));
}

function nameOf(node: OutlineNode): string | null {
  if (node.kind !== 'group') return null;
  const name = node.nodes.find(({ path }) => path === `${node.path}.name`);
  return name?.kind === 'entry' && typeof name.value === 'string' ? nameText(name.value) : null;
}

/** What the item of a list is called: by its own name, else by month or number. */
export function itemName(item: OutlineNode, index: number, count: readonly [number, number]): string {
  return nameOf(item) ?? itemLabel(item.label, index, count);
}

/** A whole as it is asked for at first: only what must be said of it, was said, or stands in with the whole. */
function plainest(node: OutlineNode): OutlineNode {
  if (node.kind === 'entry') return node;
  const asWhole = ({ assumed }: OutlineNode) =>
    node.assumed?.how !== null && assumed?.source === node.assumed?.source;
  const kept = below(node).filter(
    (each) => each.kind !== 'entry' || each.need === 'required' || each.given || asWhole(each),
  );
  return withBelow(node, kept.map(plainest));
}

/** Paths of entries, and of wholes that are empty. */
function leavesOf(node: OutlineNode): string[] {
  const inside = below(node);
  return inside.length === 0 ? [node.path] : inside.flatMap(leavesOf);
}

/** A node without what already stands elsewhere; nothing where nothing is left. */
function without(node: OutlineNode, elsewhere: ReadonlySet<string>): OutlineNode[] {
  if (elsewhere.has(node.path)) return [];
  if (below(node).length === 0) return [node];
  const rest = below(node).flatMap((each) => without(each, elsewhere));
  return rest.length === 0 ? [] : [withBelow(node, rest)];
}

function withBelow(node: OutlineNode, inside: OutlineNode[]): OutlineNode {
  if (node.kind === 'entry') return node;
  return node.kind === 'list' ? { ...node, items: inside } : { ...node, nodes: inside };
}

/** Single values that the file gives and that it leaves to assumptions. */
export function counted(nodes: readonly OutlineNode[]): Counted {
  let [given, assumed] = [0, 0];
  for (const node of nodes) {
    if (node.kind === 'entry') {
      if (node.given) given++;
      else if (node.assumed) assumed++;
      continue;
    }
    const inside = counted(below(node));
    given += inside.given;
    assumed += inside.assumed;
  }
  return { given, assumed };
}
