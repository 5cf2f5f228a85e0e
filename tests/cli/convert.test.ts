import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { meaningOf } from '@tailshaft/drivetrain';
import type { EntryReading } from '@tailshaft/language';
import { ENTRY_VOCABULARY, type Vocabulary } from '@tailshaft/vocabulary';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';
import { times } from '../support/share.js';
import { folders, TRACE, tailshaft } from './run.js';

const root = resolve(import.meta.dirname, '../..');
const cwd = folders()();
const toCsv = (spec: string) => tailshaft('convert - --from spec', { cwd, input: spec });
const fromCsv = (csv: string) => tailshaft('convert -', { cwd, input: csv });

/** Every property of a kind by its example, in every block of it. */
function everything({ rows, blocks }: Vocabulary): string {
  const own = rows.map(row => row.example);
  const inner = blocks.map(({ words, block, example }) => {
    const head = example.slice(words.length).split('{')[0]!.trim();
    return `${words} ${head.split(' ')[0] ?? ''} { ${everything(block)} }`;
  });
  return [...own, ...inner].join('\n');
}

async function meaningOfEntries(spec: string): Promise<string[]> {
  const { check } = await checkText(spec);
  expect(check.problems.filter(one => one.severity === 'error' && one.code !== 'text/import')).toEqual([]);
  return check.entries.map(({ reading }: { reading: EntryReading }) =>
    [
      reading.kind,
      reading.name,
      reading.title ?? '',
      reading.doc ?? '',
      meaningOf(reading.facts.fields),
      JSON.stringify(evidenceOf(reading)),
    ].join(' | '),
  );
}

/** What was written and how it is known, whichever column came first. */
const evidenceOf = ({ facts }: EntryReading) =>
  facts.facts.map(one => JSON.stringify([one.row.words, one.fact?.written, one.fact?.evidence])).sort();

async function roundTrip(spec: string): Promise<void> {
  const there = toCsv(spec);
  expect(there.stderr).not.toMatch(TRACE);
  expect(there.status).toBe(0);
  const back = fromCsv(there.stdout);
  expect(back.stderr).toMatch(/, 0 rows refused\n$/);
  expect(back.status).toBe(0);
  expect(await meaningOfEntries(back.stdout)).toEqual(await meaningOfEntries(spec));
  // And the other way round: the table comes back as it was.
  expect(toCsv(back.stdout).stdout).toBe(there.stdout);
}

describe('a catalogue as a table and back', () => {
  it.each(Object.entries(ENTRY_VOCABULARY).filter(([kind]) => kind !== 'practice'))(
    'loses nothing of a %s that says everything',
    async (kind, vocabulary) => {
      await roundTrip(
        `/// A remark, with "quotation marks".\n${kind} Teal-40 "the whole of it" {\n${everything(vocabulary)}\n}\n`,
      );
    },
  );

  const catalogues = readdirSync(join(root, 'examples/catalogue')).filter(one => one.endsWith('.shaft'));
  it.each(catalogues)('loses nothing of examples/catalogue/%s', async name => {
    await roundTrip(readFileSync(join(root, 'examples/catalogue', name), 'utf8'));
  });

  it('puts the unit of a column into its header, and mixed or evidenced cells as they are written', () => {
    const { stdout } = toCsv(
      'coupling Elm-4 { mass 14 kg  torque at most 950 N.m }\ncoupling Elm-6 { mass 16.5 kg  torque at most 700 lbf.ft [sheet] }\n',
    );
    expect(stdout).toBe(
      'kind,name,title,remark,mass [kg],torque at most\ncoupling,Elm-4,,,14,950 N.m\ncoupling,Elm-6,,,16.5,700 lbf.ft [sheet]\n',
    );
  });

  it('carries comments: each stands before its entry when it comes back, and those of a vessel stay with it', async () => {
    const spec = [
      '// From the list of 2025.',
      '',
      '/// A remark.',
      '// Asked for again.',
      '/// Its last line.',
      'coupling Elm-4 {',
      '  mass 14 kg // weighed',
      '  /* two lines,',
      '   * "quoted" */',
      '  torque at most 950 N.m',
      '}',
      'vessel Ternhaven {',
      '  // stays here',
      '}',
      'coupling Elm-6 { mass 16 kg }',
      '/// The end.',
      '',
    ].join('\n');
    const { stdout, stderr } = toCsv(spec);
    expect(stdout.split('\n')[0]).toBe('kind,name,title,remark,comments,mass [kg],torque at most [N.m]');
    expect(stderr).toContain('comments stand in the column "comments", and before their entry');
    const back = fromCsv(stdout);
    expect(back.status).toBe(0);
    expect(back.stdout).toBe(
      [
        '// From the list of 2025.',
        '// A remark.',
        '// Asked for again.',
        '// weighed',
        '// two lines,',
        '// "quoted"',
        '/// Its last line.',
        'coupling Elm-4 {',
        '  mass 14 kg',
        '  torque at most 950 N.m',
        '}',
        '',
        '// The end.',
        'coupling Elm-6 {',
        '  mass 16 kg',
        '}',
        '',
      ].join('\n'),
    );
    await roundTrip(spec.replace(/vessel[^}]*}\n/, ''));
    expect(toCsv(back.stdout).stdout).toBe(stdout);
  });

  it('makes nothing but comments of a column of them', () => {
    const { stdout } = fromCsv(
      'kind,name,comments,mass [kg]\ncoupling,Elm-4,"one\n} vessel X {\n/ /* three",14\n',
    );
    expect(stdout).toBe('// one\n// } vessel X {\n// / /* three\ncoupling Elm-4 {\n  mass 14 kg\n}\n');
  });

  it('round-trips generated entries', async () => {
    const number = fc
      .double({ min: 1.5, max: 900, noNaN: true })
      .map(one => String(Number(one.toPrecision(4))));
    const entry = fc.record({
      mass: fc.option(fc.tuple(number, fc.constantFrom('kg', 'lb'))),
      torque: fc.option(
        fc.tuple(
          number,
          fc.constantFrom('N.m', 'lbf.ft', 'kN.m'),
          fc.constantFrom('', ' [sheet]', ' [measured 2026-01-14]'),
        ),
      ),
      title: fc.option(
        fc
          .string({ maxLength: 20 })
          .filter(one => !/["\r\n\\]/.test(one) && one.trim() === one && one !== ''),
      ),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(entry, { minLength: 1, maxLength: 5 }), async entries => {
        const spec = entries
          .map(({ mass, torque, title }, index) =>
            [
              `coupling Part-${index}${title ? ` "${title}"` : ''} {`,
              ...(mass ? [`  mass ${mass.join(' ')}`] : []),
              ...(torque ? [`  torque at most ${torque[0]} ${torque[1]}${torque[2]}`] : []),
              '}',
            ].join('\n'),
          )
          .join('\n');
        await roundTrip(spec);
      }),
      { numRuns: times(6, 15) },
    );
  });
});

describe('rows that are refused', () => {
  it.each(['mass kg', 'mass (kg)', 'mass, kg'])('say where the unit of "%s" belongs', header => {
    const { status, stderr } = fromCsv(`kind,name,"${header}"\ncoupling,Elm-4,14\n`);
    expect(status).toBe(1);
    expect(stderr).toContain('The unit of a column stands in square brackets: "mass [kg]".');
  });

  it('say nothing of units where the header has none', () => {
    const { stderr } = fromCsv('kind,name,torque at most\ncoupling,Elm-4,14\n');
    expect(stderr).toContain('line 2, torque at most: ');
    expect(stderr).not.toContain('square brackets');
  });

  it('are told with line, column and why, and the others are taken', () => {
    const csv = [
      'kind,name,title,mass [kg],torque at most,colour',
      'coupling,Elm-4,,14,950 N.m,',
      'coupling,Elm-5,,heavy,950 N.m,',
      'coupling,Elm-6,,14,950 kg,',
      'coupling,Elm-7,,14,950,',
      'widget,Elm-8,,14,,',
      'coupling,,,14,,',
      'coupling,Elm-4,,15,,',
      'coupling,Elm-9,,14,,blue',
      'coupling,Elm-10,,14 } vessel X { ,,',
      'coupling,Elm-11,,14,,,extra',
    ].join('\n');
    const { status, stdout, stderr } = fromCsv(csv);
    expect(status).toBe(1);
    expect(stdout).toBe('coupling Elm-4 {\n  mass 14 kg\n  torque at most 950 N.m\n}\n');
    expect(stderr).toMatch(/standard input: 1 entry taken, 9 rows refused\n/);
    for (const line of [
      / line 3, mass \[kg\]: /,
      / line 4, torque at most: /,
      / line 5, torque at most: /,
      / line 6, kind: "widget" is no kind of catalogue entry/,
      / line 7, name: the entry has no name/,
      / line 8, name: coupling Elm-4 stands in the table already/,
      / line 9, colour: /,
      / line 10, mass \[kg\]: braces cannot stand in a cell/,
      / line 11: it has a cell without a header/,
    ])
      expect(stderr).toMatch(line);
  });

  it.each([
    ['', 'has no header'],
    ['kind,name\n"coupling,Elm-4\n', 'is no table'],
  ])('a text that is no table is refused whole: %j', (csv, why) => {
    const { status, stdout, stderr } = fromCsv(csv);
    expect([status, stdout]).toEqual([2, '']);
    expect(stderr).toContain(why);
  });

  it('whatever is in the cells, every row is taken or told, and nothing breaks out of its entry', () => {
    const base =
      'kind,name,title,remark,mass [kg],torque at most\ncoupling,Elm-4,t,r,14,950 N.m\ncoupling,Elm-6,,,16,700 N.m\n';
    const noise = fc.constantFrom(
      '"',
      ',',
      '\n',
      '{',
      '}',
      '//',
      '/*',
      '[',
      ']',
      '=',
      "'",
      ';',
      '\t',
      'é',
      '0',
      ' ',
      'unknown',
      'kg',
      '\u0000',
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(base.length), noise), { minLength: 1, maxLength: 6 }), edits => {
        const csv = edits.reduce((text, [at, what]) => text.slice(0, at) + what + text.slice(at), base);
        const { status, stdout, stderr } = fromCsv(csv);
        expect(stderr).not.toMatch(TRACE);
        expect([0, 1, 2]).toContain(status);
        if (status === 2) return;
        const told = /: (\d+) entr(?:y|ies) taken, (\d+) rows? refused/.exec(stderr)!;
        expect((stdout.match(/^[a-z ]+ \S+.* \{$/gm) ?? []).length).toBe(Number(told[1]));
        if (Number(told[1]) > 0) expect(toCsv(stdout).status).toBe(0);
      }),
      { numRuns: times(20, 60) },
    );
  });
});

describe('trial readings from a table', () => {
  it('are runs of a trial, with the units of their headers', async () => {
    const csv =
      'run;at;engine speed [rpm];speed [kn];smoke\nPort;full throttle;2310;24.3;none\nStarboard;full throttle;2290;;\nPort;flat out;2300;;\n';
    const { status, stdout, stderr } = tailshaft('convert - --trial sea --of proposed --dated 2026-02-20', {
      cwd,
      input: csv,
    });
    expect(status).toBe(1);
    expect(stderr).toMatch(/2 runs taken, 1 row refused\n {2}line 4, at: /);
    expect(stdout).toContain('trial "sea" of proposed dated 2026-02-20 {');
    const spec = `vessel Tern { arrangement proposed { shaftline Port { } shaftline Starboard { } }\n${stdout} }`;
    const [vessel] = (await checkText(spec)).check.vessels;
    expect(
      vessel!.vessel.trials?.[0]?.runs.map(one => [
        one.line,
        one.at?.value,
        one.engineSpeed?.written,
        one.speed?.written,
      ]),
    ).toEqual([
      ['Port', 'full throttle', '2310 rpm', '24.3 kn'],
      ['Starboard', 'full throttle', '2290 rpm', undefined],
    ]);
  });
});
