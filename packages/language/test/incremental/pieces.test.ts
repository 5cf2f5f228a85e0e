import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { findRule, type Verdict } from '@tailshaft/drivetrain';
import { EmptyFileSystem, type LangiumDocument, URI } from 'langium';
import { afterEach, describe, expect, it } from 'vitest';
import { share, times } from '../../../../tests/support/share.js';
import { findingsOf } from '../../src/project/findings.js';
import { createTailshaftCore } from '../../src/services/module.js';
import { Testbed } from '../server/testbed.js';

const example = (path: string) =>
  readFileSync(resolve(import.meta.dirname, '../../../../examples', path), 'utf8');
const CATALOGUE = ['engines', 'gears', 'materials'].map(one => example(`catalogue/${one}.shaft`)).join('\n');
const VESSEL = example('pilot-cutter/ternhaven.shaft').replace(/^import.*$/m, '');
const TWO = `${CATALOGUE}\n${VESSEL}\n${VESSEL.replace('vessel Ternhaven', 'vessel Second').replace('hand left  blades 4', 'hand right  blades 4')}`;

const CHANGES: readonly (readonly [string, (text: string) => string])[] = [
  ['a letter in a comment', edit('Harbour pilot', 'Harbour  pilot')],
  ['a number in the first vessel', edit('diameter 28.5 in', 'diameter 128.5 in')],
  ['a line before everything', (text: string) => `// new\n${text}`],
  ['a catalogue entry of one vessel', edit('rated medium 0.162', 'rated medium 0.0162')],
  ['the name of an entry', edit('engine Kittiwake-9 "', 'engine Kittiwake-10 "')],
  ['a brace left open', edit('hull planing {', 'hull planing { {')],
  ['a brace too many', edit('  require propellers', '  }\n  require propellers')],
  ['a mark left open', edit('[drawing "T-100 rev B"]', '[drawing "T-100 rev B"')],
  ['a string left open', edit('"diesel repower"', '"diesel repower')],
  ['an open comment', edit('criteria {', '/* criteria {')],
  ['a statement of two statements', edit('\nvessel Second', '\nshaft\nmaterial X { }\nvessel Second')],
  ['nothing but the import word', edit('/// Harbour', 'import\n/// Harbour')],
  ['a vessel taken out', (text: string) => text.slice(0, text.indexOf('vessel Second'))],
  ['the same vessel twice', (text: string) => `${text}\n${VESSEL}`],
  ['an unknown part', edit('replace engine Kittiwake-9', 'replace engine Kittiwake-8')],
  ['Windows line ends', (text: string) => text.replace(/\n/g, '\r\n')],
];

describe('a file read statement by statement', () => {
  let bed: Testbed | undefined;
  afterEach(() => {
    bed = undefined;
  });

  it.each(share(CHANGES, 3))(
    'says after %s, and after taking it back, what a fresh reading says',
    async (_what, change) => {
      bed = new Testbed();
      const changed = change(TWO);
      expect(changed).not.toBe(TWO);
      await compare(bed, TWO);
      await compare(bed, changed);
      await compare(bed, TWO);
    },
  );

  it.each(share(CHANGES, 3))(
    'says of %s, before anybody writes it, what a fresh reading says',
    async (_what, change) => {
      bed = new Testbed();
      const document = await bed.open(TWO);
      const { project } = bed.services;
      const changed = change(TWO);
      const before = told(project, document);
      const { problems, check, said } = project.supposing(
        document,
        new Map([[document.uri.toString(), changed]]),
      );
      const other = await readAfresh(changed);
      const wanted = fresh.language.project.check(other);
      expect(check().vessels.map(verdictsOf)).toEqual(wanted.vessels.map(verdictsOf));
      expect(check().entries.map(verdictsOf)).toEqual(wanted.entries.map(verdictsOf));
      const known = wanted.problems.map(one => one.message);
      expect(problems.map(one => one.message).filter(one => !known.includes(one))).toEqual([]);
      const rule = findRule('shafting/diameter')!;
      for (const judged of wanted.vessels)
        expect(verdictsOf({ verdicts: said(rule, judged.vessel.name) })).toEqual(
          wanted.vessels
            .filter(one => one.vessel.name === judged.vessel.name)
            .flatMap(verdictsOf)
            .filter(one => one.startsWith(`${rule.id} `)),
        );
      expect(told(project, document)).toEqual(before);
    },
  );

  it('says what a fresh reading says, whatever is typed and taken out', async () => {
    bed = new Testbed();
    const random = randomFrom(7);
    const bits = [
      '{',
      '}',
      '"',
      '\n',
      ' ',
      '1',
      'hand left',
      '// ',
      '[',
      ']',
      'vessel X { }\n',
      '\nengine Y { }\n',
      '/*',
    ];
    let text = TWO;
    for (let step = 0; step < times(2, 100); step++) {
      const at = Math.floor(random() * text.length);
      const out = random() < 0.5 ? Math.floor(random() * 12) : 0;
      const into = random() < 0.7 ? bits[Math.floor(random() * bits.length)]! : '';
      text = text.slice(0, at) + into + text.slice(at + out);
      await compare(bed, text);
      // Broken text stays broken for ever: begin again now and then.
      if (step % 6 === 5) text = TWO;
    }
  });
});

const fresh = createTailshaftCore(EmptyFileSystem);
fresh.language.project.today = () => '2026-06-01';
let count = 0;

/** The findings of the edited document against those of a document that was never anything else. */
async function compare(bed: Testbed, text: string): Promise<void> {
  const edited = await bed.open(text);
  const other = await readAfresh(text);
  expect(told(bed.services.project, edited)).toEqual(told(fresh.language.project, other));
}

async function readAfresh(text: string): Promise<LangiumDocument> {
  const uri = URI.file(`/fresh-${count++}.shaft`);
  const document = fresh.shared.workspace.LangiumDocumentFactory.fromString(text, uri);
  await fresh.language.project.load(document);
  return document;
}

function verdictsOf({ verdicts }: { readonly verdicts: readonly Verdict[] }): string[] {
  return verdicts.map(
    one => `${one.rule} ${one.subject} ${one.outcome} ${one.severity} ${one.margin} ${one.message}`,
  );
}

function told(project: typeof fresh.language.project, document: LangiumDocument): string[] {
  const check = project.check(document);
  const uri = document.uri.toString();
  const at = (place: { uri?: string; start: number; end: number }) =>
    `${place.uri === uri ? '' : place.uri}${place.start}-${place.end}`;
  const findings = findingsOf(check).map(
    one =>
      `${at(one.place)} ${one.code} ${one.message} ${one.related.map(other => at(other.place)).join(' ')} ${JSON.stringify(one.problem?.choices ?? [])}`,
  );
  const model = check.vessels.map(({ vessel }) =>
    JSON.stringify(
      vessel.arrangements.map(one => one.lines.map(line => line.chain.map(part => at(part.origin as never)))),
    ),
  );
  return [...findings, ...model];
}

function edit(from: string, to: string): (text: string) => string {
  return text => text.replace(from, to);
}

/** The same numbers each time (the generator of Park and Miller, 1988). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16807) % 2147483647;
    return state / 2147483647;
  };
}
