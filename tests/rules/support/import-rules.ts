/** Who may import whom. The tables are the house's shape; DEVELOPERS.md draws it. */
import {
  cruise,
  type ICruiseResult,
  type IForbiddenRuleType,
  type IRegularForbiddenRuleType,
} from 'dependency-cruiser';

type From = IRegularForbiddenRuleType['from'];
type To = IRegularForbiddenRuleType['to'];

/** Inside sim, beside its own folder, a folder may import these. */
const below: Record<string, string[]> = {
  quantity: [],
  numerics: [],
  physics: ['quantity', 'numerics'],
  parts: ['quantity', 'numerics', 'physics'],
  plant: ['quantity', 'numerics', 'physics', 'parts'],
  run: ['quantity', 'numerics', 'physics', 'parts', 'plant'],
  scenario: ['quantity', 'physics', 'parts/(description\\.ts|weather)'],
  answers: ['quantity', 'numerics', 'physics', 'parts', 'plant', 'run', 'scenario'],
};

/** A package may be imported only from these places (regular expressions on the path). */
const packageHomes: Record<string, string> = {
  odex: '^sim/numerics/integrator\\.ts$',
  zod: '^sim/scenario/',
  d3: '^ui/web/charts/',
  'd3-dsv': '^sim/parts/weather/',
  lit: '^ui/web/elements/',
  idb: '^ui/web/app/shelf/shelf-db\\.ts$',
  commander: '^ui/terminal/',
};

const folderRules = Object.entries(below).map(([folder, allowed]) =>
  rule(`sim/${folder} imports only what lies below it`, `^sim/${folder}/`, {
    path: '^(sim|ui|tests|scripts|scenarios)/',
    pathNot: `^sim/(${[folder, ...allowed].join('|')})(/|$)`,
  }),
);
const packageRules = Object.entries(packageHomes).map(([name, home]) =>
  rule(
    `${name} stays at home`,
    { path: '^(sim|ui)/', pathNot: home },
    { path: `(^|/)node_modules/${name}/` },
  ),
);
export const importRules: IForbiddenRuleType[] = [
  ...folderRules,
  ...packageRules,
  rule('no circle', '.', { circular: true }),
  rule('sim/index.ts opens sim only', '^sim/index\\.ts$', { path: '.', pathNot: '^sim/' }),
  rule('ui reaches sim through its index', '^ui/', { path: '^sim/', pathNot: '^sim/index\\.ts$' }),
  rule('ui/words knows no screen', '^ui/words/', { path: '^ui/(web|terminal)/' }),
  rule('ui takes its words through their index', '^ui/(web|terminal)/', {
    path: '^ui/words/',
    pathNot: '^ui/words/index\\.ts$',
  }),
  rule('page and terminal are strangers', '^ui/web/', { path: '^ui/terminal/' }),
  rule('terminal and page are strangers', '^ui/terminal/', { path: '^ui/web/' }),
  rule('charts know no element', '^ui/web/charts/', { path: '^ui/web/(elements|app|worker)/' }),
  rule('the worker draws nothing', '^ui/web/worker/', { path: '^ui/web/(elements|charts)/' }),
  rule(
    'Node is for the terminal',
    { path: '^(sim|ui)/', pathNot: '^ui/terminal/' },
    { dependencyTypes: ['core'] },
  ),
  rule('what ships imports no test and no script', '^(sim|ui)/', { path: '^(tests|scripts)/' }),
  rule('every import is found', '.', { couldNotResolve: true }),
  rule('no package comes in unasked', '^(sim|ui)/', {
    path: 'node_modules/',
    pathNot: `node_modules/(${Object.keys(packageHomes).join('|')})/`,
  }),
];

function rule(name: string, from: string | From, to: To): IForbiddenRuleType {
  return { name, severity: 'error', from: typeof from === 'string' ? { path: from } : from, to };
}

/** Looks at every module of sim and ui under `baseDir` and holds it against the rules. */
export async function cruiseTree(baseDir: string): Promise<ICruiseResult> {
  const { output } = await cruise(
    ['sim', 'ui'],
    {
      baseDir,
      validate: true,
      ruleSet: { forbidden: importRules },
      doNotFollow: { path: 'node_modules' },
      tsPreCompilationDeps: true,
    },
    { conditionNames: ['import', 'module', 'default'], extensions: ['.ts', '.js', '.mjs', '.json'] },
  );
  if (typeof output === 'string')
    throw new Error(`dependency-cruiser - expected a result - got text: ${output}`);
  return output;
}
