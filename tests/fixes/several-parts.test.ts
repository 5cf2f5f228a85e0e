import { wantedParts } from '@tailshaft/drivetrain';
import { applyEdits, type Offer, textEditsFor } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { changed } from '../silence/top-list/spec-of.js';
import { checkText } from '../support/check.js';
import { faultsOf } from './apply.js';
import { type Offered, offeredFor } from './offered.js';

const ENGINE = '      engine Kittiwake-9 at medium { flywheel aft }\n';
const SHAFT = 'shaft { material high-strength-stainless  diameter 65 mm [drawing] }';
const BOX = 'transfer { kind gears  output same seen from aft  turns the line back no  exact 1.5:1 }';
const thin = (mm: number) => `shaft { material high-strength-stainless  diameter ${mm} mm }`;
const MODES = `      mode passage { driven by first engine }
      mode harbour { driven by second engine }
`;

/** A shaft ahead of a box and one behind it, both too thin. */
const TWO_SHAFTS = changed(SINGLE_LINE, [SHAFT, `${thin(30)}\n      ${BOX}\n      ${thin(35)}`]);
/** Two engines of one sort, of which neither is rated for the duty. */
const TWO_ENGINES = changed(
  SINGLE_LINE,
  [ENGINE, `${ENGINE}${ENGINE}`],
  ['ahead clutch B\n', `ahead clutch B\n${MODES}`],
  ['duty medium {', 'duty heavy {'],
);

/** The same vessel, with an arrangement behind it that keeps all of these by a statement for each role. */
function kept(spec: string, roles: readonly string[], modes = ''): string {
  const lines = roles.map(role => `      retain ${role}\n`).join('');
  const end = spec.lastIndexOf('}');
  return `${spec.slice(0, end)}  arrangement later revises proposed {\n    shaftline Centre {\n${lines}${modes}    }\n  }\n}\n`;
}

async function failures(text: string, rule: string, arrangement: string): Promise<Offered[]> {
  expect((await checkText(text)).check.problems).toEqual([]);
  const found = (await offeredFor(text)).filter(
    ({ finding }) =>
      finding.code === rule &&
      finding.verdict?.outcome === 'fails' &&
      finding.verdict.subject.startsWith(arrangement),
  );
  expect(found).not.toEqual([]);
  return found;
}

/** The ways out in the last arrangement, each of which keeps its promise. */
async function curesOf(text: string, rule: string, arrangement: string): Promise<Offer[]> {
  const before = await checkText(text);
  const found = await failures(text, rule, arrangement);
  for (const one of found)
    for (const cure of one.cures) expect(await faultsOf(before, one, cure)).toEqual([]);
  return found.flatMap(one => one.cures);
}

const lastPart = (text: string, { edits }: Offer) => {
  const after = applyEdits(text, edits);
  return after.slice(after.lastIndexOf('shaftline Centre'));
};

describe('several parts that go wrong together are put right together', () => {
  it('makes each of two shafts thick enough', async () => {
    const [first] = await curesOf(TWO_SHAFTS, 'shafting/diameter', 'proposed');
    expect(first?.title).toMatch(/^Make each shaft no thinner than \d+ mm anywhere: margin \d+ %/);
    expect(lastPart(TWO_SHAFTS, first!).match(/diameter \d+ mm/g)).not.toContain('diameter 35 mm');
  });

  it('replaces both of two shafts that one statement keeps, each where it stood', async () => {
    const text = kept(TWO_SHAFTS, ['engine', 'gear', 'shaft', 'transfer', 'propeller']);
    const [first] = await curesOf(text, 'shafting/diameter', 'later');
    expect(first?.title).toMatch(/^Make each shaft no thinner than /);
    const roles = lastPart(text, first!).match(/(retain|replace) \w+/g);
    expect(roles).toEqual([
      ...['retain engine', 'retain gear', 'replace shaft', 'retain transfer'],
      ...['replace shaft', 'retain propeller'],
    ]);
  });

  for (const [arrangement, text, fitted] of [
    ['proposed', TWO_ENGINES, 'engine Kittiwake-9-wanted at heavy'],
    [
      'later',
      kept(TWO_ENGINES, ['engine', 'gear', 'shaft', 'propeller'], MODES),
      'replace engine Kittiwake-9-wanted at heavy',
    ],
  ] as const)
    it(`fits two engines of another sort where there are two of one, ${arrangement}`, async () => {
      const { finding } = (await failures(text, 'capacity/engine-duty', arrangement))[0]!;
      const [route] = wantedParts(finding.verdict!, finding.vessel!);
      expect(route?.title).toContain('a heavy rating of');
      const edits = textEditsFor(route!.edits, () => text);
      const after = applyEdits(text, edits);
      const line = after.slice(after.lastIndexOf('shaftline Centre'));
      expect(line.split(fitted)).toHaveLength(3);
      expect(line).not.toContain('retain engine');
      const check = await checkText(after);
      expect(check.check.problems).toEqual([]);
      const said = check.check.vessels.flatMap(one => one.verdicts);
      const own = said.filter(
        one => one.rule === 'capacity/engine-duty' && one.subject.startsWith(arrangement),
      );
      expect(own.map(one => one.outcome)).toEqual(['holds']);
    });

  it('finds a gear of which both inputs are rated for their engines', async () => {
    const input = (which: string) =>
      `    input shaft ${which} { clutch B output opposite ahead continuous  rated medium 0.12 kW/rpm }\n`;
    const text = changed(
      SINGLE_LINE,
      [ENGINE, `${ENGINE}${ENGINE}`],
      ['ahead clutch B\n', `ahead clutch B\n${MODES}`],
      [
        `    clutch A output same ahead continuous
    clutch B output opposite ahead continuous
    rated medium 0.18 kW/rpm
`,
        input('first') + input('second'),
      ],
    );
    const { finding } = (await failures(text, 'capacity/gear-input-torque', 'proposed'))[0]!;
    const [route] = wantedParts(finding.verdict!, finding.vessel!);
    expect(route?.title).toMatch(/^Fit a gear like Alder-63 with rated medium 0\.1[5-9]\d* kW\/rpm \(margin/);
    const after = await checkText(
      applyEdits(
        text,
        textEditsFor(route!.edits, () => text),
      ),
    );
    const said = after.check.vessels.flatMap(one => one.verdicts);
    expect(said.filter(one => one.rule === 'capacity/gear-input-torque').map(one => one.outcome)).toEqual([
      'holds',
    ]);
  });
});

describe('one of several parts that one statement keeps', () => {
  const all = ['engine', 'gear', 'shaft', 'transfer', 'propeller'];
  /** Of the shaft behind the box nobody says how thick it is, or of what it is. */
  const open = (lacks: string) =>
    changed(SINGLE_LINE, [SHAFT, `${thin(80)}\n      ${BOX}\n      ${thin(80).replace(lacks, '')}`]);
  const offers = async (text: string) =>
    (await offeredFor(text))
      .filter(({ finding }) => finding.verdict?.subject.startsWith('later'))
      .flatMap(one => [...one.cures, ...one.questions]);

  for (const [lacks, property] of [
    ['  diameter 80 mm', 'diameter'],
    [' material high-strength-stainless ', 'material'],
  ] as const)
    for (const statement of [
      'retain shaft',
      'retain shaft { examined 2025-10-01 }',
      'modify shaft { examined 2025-10-01 }',
    ]) {
      it(`is never said to be ${property} unknown by what is said of all: ${statement}`, async () => {
        const text = kept(open(lacks), all).replace('retain shaft', statement);
        expect((await checkText(text)).check.problems).toEqual([]);
        const written = (await offers(text)).map(one => lastPart(text, one));
        // The box between them is asked about.
        expect(written.length).toBeGreaterThan(0);
        for (const one of written) expect(one).toContain(`${statement}\n`);
      });
    }
});
