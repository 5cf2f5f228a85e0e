import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';

const packages = join(import.meta.dirname, '..', '..', 'packages');
const sources = (name: string) =>
  readdirSync(join(packages, name, 'src'), { recursive: true, encoding: 'utf8' })
    .filter(path => path.endsWith('.ts'))
    .map(path => {
      const text = readFileSync(join(packages, name, 'src', path), 'utf8');
      return { path, text: text.replace(/\/\*(?! @__PURE__)[\s\S]*?\*\//g, '').replace(/^\s*\/\/.*$/gm, '') };
    });

interface Declared {
  readonly name: string;
  readonly path: string;
  readonly exported: boolean;
  readonly isFormula: boolean;
  readonly words: ReadonlySet<string>;
}

const wordsOf = (text: string) => new Set(text.match(/\w+/g));
const FORMULA = / = (\/\* @__PURE__ \*\/ )?formula\(/;

/** What stands at the top level of the files of mechanics, each with the words in it. */
const declared: readonly Declared[] = sources('mechanics')
  .filter(({ path }) => !path.endsWith('index.ts'))
  .flatMap(({ path, text }) =>
    text.split(/^(?=(?:export )?(?:const|function|class|interface|type)\b)/m).flatMap(piece => {
      const head = /^(export )?(?:const|function|class|interface|type) (\w+)/.exec(piece);
      if (!head) return [];
      const exported = head[1] !== undefined;
      const isFormula = exported && FORMULA.test(piece.split('\n')[0]!);
      return [{ name: head[2]!, path, exported, isFormula, words: wordsOf(piece) }];
    }),
  );

/** Names that other packages say, and all that these rest on. */
function reached(): ReadonlySet<Declared> {
  const byName = new Map<string, Declared[]>();
  for (const one of declared) byName.set(one.name, [...(byName.get(one.name) ?? []), one]);
  const seen = new Set<Declared>();
  const waiting: Declared[] = [];
  const meet = (words: ReadonlySet<string>, path: string) => {
    for (const word of words)
      for (const one of byName.get(word) ?? [])
        if (!seen.has(one) && (one.exported || one.path === path)) {
          seen.add(one);
          waiting.push(one);
        }
  };
  for (const name of readdirSync(packages).filter(one => one !== 'mechanics'))
    for (const { path, text } of sources(name)) meet(wordsOf(text), `${name}/${path}`);
  for (let one = waiting.pop(); one; one = waiting.pop()) meet(one.words, one.path);
  return seen;
}

const formulas = declared.filter(one => one.isFormula);

it('every formula is reached from a spec; what only holds others to account stands in packages/mechanics/test/held', () => {
  expect(formulas.length).toBeGreaterThan(0);
  const seen = reached();
  expect(formulas.filter(one => !seen.has(one)).map(one => one.name)).toEqual([]);
});

it('a bundle may leave out what nobody calls', () => {
  const impure = sources('mechanics').flatMap(({ path, text }) =>
    text.split('\n').flatMap(line => (/ = formula\(/.test(line) ? [`${path}: ${line}`] : [])),
  );
  expect(impure).toEqual([]);
});

it('exports nothing that no other file says', () => {
  const packagesWithSources = readdirSync(packages);
  const files = packagesWithSources.flatMap(name =>
    sources(name).map(({ path, text }) => ({ path: `${name}/${path}`, text, words: wordsOf(text) })),
  );
  const elsewhere = new Map<string, Set<string>>();
  const say = (word: string, path: string) => {
    const said = elsewhere.get(word);
    if (said) said.add(path);
    else elsewhere.set(word, new Set([path]));
  };
  for (const { path, text, words } of files)
    if (!passesOn(path, text)) for (const word of words) say(word, path);
  for (const [path, text] of otherTexts()) for (const word of wordsOf(text)) say(word, path);
  const unsaid = files
    .filter(({ path }) => !path.includes('/generated/'))
    .flatMap(({ path, text }) =>
      [...text.matchAll(/^export (?:async )?(?:abstract )?(?:const|function\*?|class) (\w+)/gm)]
        .map(found => found[1]!)
        .filter(name => [...(elsewhere.get(name) ?? [])].every(one => one === path))
        .map(name => `${path}: ${name}`),
    );
  expect(unsaid).toEqual([]);
});

/** What nothing in the packages says, with why it stays there for tests to say. */
const FOR_TESTS: Readonly<Record<string, string>> = {
  'holzerResidual holzerChainFrequencies holzerBranchedFrequencies holzerTree modalDampingRatio spanEnds':
    'second methods that hold the solvers to account',
  'classShaftExclusions propellerToShaftDiameter hubTaperTolerances inchShaftEnd smallCraftClassFactors':
    'tables held to their print, of which rules use other rows',
  'installationAngleGuides lineShaftLoading rubberBearingClearance CLASS_CLEARANCE CLASS_CLEARANCE_BY_DIAMETER':
    'guides held to their print',
  'BOLLARD_PULL_PER_POWER HUB_OVERHANG_LIMIT USUAL_SEA_MARGIN USUAL_ENGINE_MARGIN HANDBOOK_PITCH_RATIO WET_FRICTION WET_FRICTION_BOUND':
    'guides held to their print',
  'CROUCH_CONSTANTS CROUCH_CONSTANTS_SOURCE APPENDAGE_FACTORS_SOURCE OPEN_STERN_SOURCE KELLER_ADDITION_SOURCE':
    'sources of constants, held to how well they are known',
  'ATMOSPHERE_LESS_VAPOUR_SOURCE BLADE_NUMBER_FACTORS_SOURCE BEVAN_VIBRATIONS EULER_BERNOULLI ARCHER_FACTOR':
    'sources of constants, held to how well they are known',
  'assemblyConditions overallEfficiency ratedLoad compareTapers assumptionsBehind bladeRateOrder':
    'steps that published examples are worked out by',
  'workingText unitsOfKind EMPTY_CATALOGUE HAND cures':
    'what tests read results, vocabulary and ways out with',
};

it('keeps nothing that only tests say, but for a reason', () => {
  const reasons = Object.keys(FOR_TESTS).flatMap(names => names.split(' '));
  const said = new Map<string, number>();
  const all = readdirSync(packages).flatMap(name =>
    sources(name).map(({ path, text }) => ({ path: `${name}/${path}`, text })),
  );
  for (const { path, text } of all)
    if (!passesOn(path, text))
      for (const word of text.match(/\w+/g) ?? []) said.set(word, (said.get(word) ?? 0) + 1);
  const scripts = [...otherTexts()].filter(([path]) => !/(^|\/)tests?\//.test(path) || path.includes('docs'));
  const ofScripts = new Set(scripts.flatMap(([, text]) => [...wordsOf(text)]));
  const idle = all
    .filter(({ path }) => !path.includes('/generated/'))
    .flatMap(({ text }) => [
      ...text.matchAll(/^export (?:async )?(?:abstract )?(?:const|function\*?|class) (\w+)/gm),
    ])
    .map(found => found[1]!)
    .filter(name => said.get(name) === 1 && !ofScripts.has(name));
  expect(idle.filter(name => !reasons.includes(name))).toEqual([]);
  expect(reasons.filter(name => !idle.includes(name))).toEqual([]);
});

/** A file that only passes on what others export. */
function passesOn(path: string, text: string): boolean {
  return path.endsWith('index.ts') && !/^import /m.test(text);
}

/** Tests and build scripts, which reach what they need as well. */
function* otherTexts(): Iterable<readonly [path: string, text: string]> {
  const root = join(packages, '..');
  const folders = ['tests', '.ci', ...readdirSync(packages).map(name => join('packages', name))];
  for (const folder of folders)
    for (const path of readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' }))
      if (/\.m?[tj]s$/.test(path) && !/(^|\/)(src|dist|node_modules)\//.test(path))
        yield [join(folder, path), readFileSync(join(root, folder, path), 'utf8')];
}
