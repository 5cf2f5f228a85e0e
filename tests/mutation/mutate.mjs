// Mutation testing: `node tests/mutation/mutate.mjs [--sample N] [--seed S] [--all] [path ...]`,
// see tests/README.md.
// The mutants of several sources are put into them side by side, their suites are loaded once, and every test that meets
// a mutant runs again under it. What no test tells apart is printed.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { parseArgs } from 'node:util';
import { BaseSequencer, startVitest } from 'vitest/node';
import { equivalentIn } from './equivalent.mjs';
import { instrument } from './instrument.mjs';

const root = resolve(import.meta.dirname, '../..');
const { values: given, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: 'string' },
    seed: { type: 'string', default: '1' },
    all: { type: 'boolean' },
    least: { type: 'string' },
    /** So many sources share one run: loading the suites takes longer than most tests. */
    batch: { type: 'string', default: '16' },
    /** What trying one mutant may cost, in seconds of the processor. */
    time: { type: 'string', default: '3' },
    /** Only these suites, where all of them take too long: the score is the lower for it. */
    suites: { type: 'string', multiple: true },
  },
});

/** What is mutated, and the suites that should see it. */
const FIELDS = [
  {
    under: 'packages/drivetrain/src/rules',
    suites: [
      'tests/rules',
      'packages/drivetrain/test',
      'tests/trials.test.ts',
      'tests/margins.property.test.ts',
    ],
  },
  {
    under: 'packages/drivetrain/src/analysis',
    suites: [
      'tests/rules',
      'packages/drivetrain/test',
      'tests/examples-methods.test.ts',
      'tests/published-clutches.test.ts',
      'tests/published-trains.test.ts',
    ],
  },
  { under: 'packages/mechanics/src', suites: ['packages/mechanics/test'] },
];

const sources = FIELDS.flatMap(field => sourcesIn(field.under).map(path => ({ path, field })));
const wanted = chosen(sources);
let killed = 0;
let all = 0;
const reports = mkdtempSync(join(tmpdir(), 'mutation-'));
process.env.MUTATION_REPORT = join(reports, 'report.json');
process.env.MUTATION_TIME = `${1000 * Number(given.time)}`;
for (const batch of batches(wanted)) {
  for (const { path, mutants } of await tryTogether(batch)) {
    const alive = mutants.filter(one => !one.killed);
    killed += mutants.length - alive.length;
    all += mutants.length;
    if (mutants.length > 0)
      console.log(`${path}: ${mutants.length - alive.length} of ${mutants.length} killed`);
    for (const one of alive)
      console.log(
        `    ${path}:${one.line}${one.reached ? (one.givenUp ? ' (out of time)' : '') : ' (not reached)'}: ${one.from}  →  ${one.to}`,
      );
  }
}
rmSync(reports, { recursive: true, force: true });
const score = all === 0 ? 1 : killed / all;
console.log(`${killed} of ${all} mutants killed, ${(100 * score).toFixed(1)} %, in ${wanted.length} sources`);
process.exit(score * 100 < Number(given.least ?? 0) ? 1 : 0);

/** Sources of one field, so many at a time. */
function batches(sources) {
  const size = Number(given.batch);
  return FIELDS.flatMap(field => {
    const own = sources.filter(one => one.field === field);
    return Array.from({ length: Math.ceil(own.length / size) }, (_, at) =>
      own.slice(at * size, (at + 1) * size),
    );
  });
}

async function tryTogether(batch) {
  let next = 1;
  const sources = batch.map(({ path }) => {
    const file = join(root, path);
    const first = next;
    const { mutants } = instrument(readFileSync(file, 'utf8'), first);
    next += mutants.length;
    const equivalent = equivalentIn(path);
    const tried = mutants.filter(one => !equivalent(one));
    return { path, file, first, mutants: tried, left: mutants.filter(equivalent).map(one => one.id) };
  });
  if (next === 1) return [];
  process.env.MUTATION_LEFT_OUT = JSON.stringify(sources.flatMap(one => one.left));
  const byFile = new Map(sources.map(one => [one.file, one]));
  const suites = given.suites ?? batch[0].field.suites;
  const plugin = {
    name: 'mutants',
    enforce: 'pre',
    transform: (code, id) => {
      const source = byFile.get(id.split('?')[0]);
      return source && { code: instrument(code, source.first).text, map: null };
    },
  };
  const vitest = await startVitest(
    'test',
    suites,
    {
      root,
      config: false,
      watch: false,
      reporters: process.env.MUTATION_LOUD ? ['dot'] : [{}],
      isolate: false,
      maxWorkers: 1,
      pool: 'forks',
      runner: join(import.meta.dirname, 'runner.ts'),
      include: ['packages/*/test/**/*.test.ts', 'tests/**/*.test.ts'],
      exclude: [
        '**/node_modules/**',
        'tests/workbench/**',
        'tests/clients/**',
        '**/*.long.test.ts',
        'tests/silence/**',
        'tests/rules/isolation.test.ts',
        'tests/rules/missing-data.test.ts',

        'tests/rules/criterion-chooser.test.ts',
      ],
      setupFiles: ['packages/language/scripts/group-by.mjs'],
      // A test runs once for each mutant that it meets.
      testTimeout: 3_600_000,
      sequence: { sequencer: nearestFirst(batch.map(one => one.path)) },
    },
    { plugins: [plugin] },
  );
  const failed = vitest.state
    .getFiles()
    .filter(one => one.result?.state === 'fail')
    .map(one => relative(root, one.filepath));
  await vitest.close();
  if (failed.length > 0) console.log(`    fails as it stands: ${failed.join(', ')}`);
  const report = JSON.parse(readFileSync(process.env.MUTATION_REPORT, 'utf8'));
  const told = new Set(report.killed.map(([id]) => id));
  const reached = new Set(report.reached);
  const givenUp = new Set(report.given);
  return sources.map(({ path, mutants }) => ({
    path,
    mutants: mutants.map(one => ({
      ...one,
      killed: told.has(one.id),
      reached: reached.has(one.id),
      givenUp: givenUp.has(one.id),
    })),
  }));
}

/** Suites of the folders that are mutated come first: they tell most mutants, and each has a time of its own. */
function nearestFirst(paths) {
  const near = new Set(
    paths.flatMap(path => path.split('/').slice(3)).map(part => part.replace(/\.ts$/, '')),
  );
  const far = file =>
    file.moduleId
      .slice(root.length)
      .split(/[/.]/)
      .some(part => near.has(part))
      ? 0
      : 1;
  return class extends BaseSequencer {
    async sort(files) {
      return [...files].sort((a, b) => far(a) - far(b) || a.moduleId.localeCompare(b.moduleId));
    }
  };
}

function sourcesIn(folder) {
  return readdirSync(join(root, folder), { recursive: true, encoding: 'utf8' })
    .filter(path => path.endsWith('.ts'))
    .map(path => `${folder}/${path.replaceAll('\\', '/')}`)
    .sort();
}

function chosen(all) {
  const named = positionals.length > 0;
  const from = named ? all.filter(one => positionals.some(path => one.path.includes(path))) : all;
  if (given.all || (named && given.sample === undefined)) return from;
  const count = Number(given.sample ?? 12);
  const seed = Number(given.seed);
  if (from.length <= count) return from;
  const step = from.length / count;
  return Array.from(
    { length: count },
    (_, index) => from[Math.floor((index + (((index + 1) * 0.618034 * seed) % 1)) * step)],
  );
}
