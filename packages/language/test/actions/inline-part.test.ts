import { readFileSync } from 'node:fs';
import { compareVessels } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/support/share.js';
import { namedParts } from '../../src/actions/inline-part.js';
import { formatText } from '../../src/index.js';
import { Specs } from '../edit/specs.js';
import { VESSEL, CATALOGUE as WRITTEN, withChange } from '../server/specs.js';
import { Offers } from './actions.js';

/** Laid out as the formatter does, so that what is offered can be held to it. */
const CATALOGUE = formatText(WRITTEN);
const KIND = 'refactor.inline';
/** One line only, so that each entry has one place. */
const SINGLE = `${VESSEL.slice(0, VESSEL.indexOf('    shaftline Starboard'))}  }\n}\n`;
const FILES = { 'ternhaven.shaft': `import "parts"\n${SINGLE}`, 'parts.shaft': CATALOGUE };

/** The files after the offer was taken at these words of a file. */
async function inlined(
  files: Readonly<Record<string, string>>,
  words: string,
  path = Object.keys(files)[0]!,
): Promise<Record<string, string>> {
  const marked = { ...files, [path]: withChange(words, `<|>${words}`, files[path]) };
  const inOrder = { [path]: marked[path]!, ...marked };
  // The line is read before the catalogue is asked about it.
  const offers = await Offers.at(inOrder, KIND);
  expect(offers.titles).not.toBe('');
  return Object.fromEntries(Object.keys(files).map(one => [one, offers.after('Move the facts of', one)]));
}

async function meaning(files: Readonly<Record<string, string>>) {
  const specs = await Specs.read(files);
  const judged = specs.check.vessels[0]!;
  // A failure as found that has no margin is told with the name of its part, and that name is what moves. Without its
  // entry a part says nothing that differs from one.
  // The age of a sheet is judged at the entry or at the place that names it.
  const elsewhere = ['paper/place-against-entry', 'paper/sheet-age'];
  const verdicts = judged.verdicts.filter(one => !one.asFound && !elsewhere.includes(one.rule));
  return { specs, judged: { ...judged, verdicts } };
}

/** What every such change must keep: it reads, is laid out, and means what it meant. */
async function judgeChange(before: Record<string, string>, after: Record<string, string>): Promise<void> {
  const [was, is] = [await meaning(before), await meaning(after)];
  expect(is.specs.check.problems).toEqual([]);
  for (const text of Object.values(after)) expect(formatText(text)).toBe(text);
  const compared = compareVessels(was.judged, is.judged);
  expect(compared.changes.map(one => `${one.kind} ${'rule' in one ? one.rule : ''} ${one.words}`)).toEqual(
    [],
  );
  expect(compared.addedLines.length + compared.removedLines.length).toBe(0);
}

describe('the way back from the catalogue', () => {
  it('writes the facts of the only use in its line, with title and comments, and takes the entry away', async () => {
    const after = await inlined(FILES, 'Kittiwake-9 at');
    expect(after['ternhaven.shaft']!.split('arrangement')[1]).toMatchInlineSnapshot(`
      " proposed {
          shaftline Port {
            engine at medium {
              flywheel aft
              // six-cylinder diesel
              // A six-cylinder diesel.
              source "Kittiwake 9 data sheet, issue 2" dated 2025-01-20
              rotation standard viewed from flywheel
              fuel diesel
              cylinders 6
              cycle four-stroke
              rating medium {
                power 300 kW at 2300 rpm
                measured at crankshaft
                standard ISO-8665
                hours 3000 per year
              }
              low idle 650 rpm
              high idle 2530 rpm
              peak torque 1480 N.m at 1500 rpm
              housing SAE-3
            }
            gear Alder-63 ratio 2.04:1 ahead clutch A
            shaft { material high-strength-stainless  diameter 65 mm [drawing] }
            propeller { hand left [drawing]  blades 4  diameter 26 in  pitch 24 in  area ratio 0.72 }
          }
        }
      }
      "
    `);
    expect(after['parts.shaft']).not.toContain('Kittiwake');
    expect(after['parts.shaft']!.startsWith('gear Alder-63')).toBe(true);
    await judgeChange(FILES, after);
  });

  it('is offered on each part of a line', async () => {
    for (const words of ['Kittiwake-9 at', 'gear Alder-63', 'Alder-63 ratio', 'engine Kittiwake'])
      await judgeChange(FILES, await inlined(FILES, words));
  });

  it('keeps what the place says otherwise, and drops what the entry says of it', async () => {
    const place = '{ flywheel aft  low idle 660 rpm }';
    const files = {
      ...FILES,
      'ternhaven.shaft': withChange('{ flywheel aft }', place, FILES['ternhaven.shaft']),
    };
    const after = await inlined(files, 'Kittiwake-9 at');
    expect(after['ternhaven.shaft']!.match(/low idle/g)).toHaveLength(1);
    await judgeChange(files, after);
  });

  it('never touches a shift cable', async () => {
    const files = {
      ...FILES,
      'ternhaven.shaft': withChange(
        'ahead clutch A\n',
        'ahead clutch A { shift cable push for ahead  oil cooler fitted }\n',
        FILES['ternhaven.shaft'],
      ),
    };
    const after = await inlined(files, 'Alder-63 ratio');
    expect(after['ternhaven.shaft']).toContain(
      '        shift cable push for ahead\n        oil cooler fitted\n',
    );
    await judgeChange(files, after);
  });

  it('works in one file, with other line ends, and in a block of several lines', async () => {
    const text = `${CATALOGUE}\n${SINGLE}`
      .replace('{ flywheel aft }', '{\n        flywheel aft // seen\n      }')
      .replaceAll('// seen', ' // seen');
    const files = { 'ternhaven.shaft': text.replaceAll('\n', '\r\n') };
    const after = await inlined(files, 'Kittiwake-9 at');
    expect(after['ternhaven.shaft']).not.toMatch(/[^\r]\n/);
    await judgeChange(files, after);
  });

  it('undoes what the move to the catalogue did', async () => {
    const files = {
      'v.shaft': `import "parts"\n${SINGLE}`,
      'parts.shaft': CATALOGUE,
    };
    const cut = { ...files, 'v.shaft': files['v.shaft'].replace('propeller {', 'prop<|>eller {') };
    const offers = await Offers.at(cut, 'refactor.extract');
    const extracted = Object.fromEntries(
      Object.keys(files).map(one => [one, offers.after('Move this', one)]),
    );
    await judgeChange(files, extracted);
    const back = await inlined(extracted, 'propeller Ternhaven');
    expect(back['parts.shaft']).toBe(files['parts.shaft']);
    await judgeChange(files, back);
  });
});

it('a gear that another line mirrors moves without a change of meaning: the mirror has the same gear', async () => {
  const twin = `${SINGLE.slice(0, SINGLE.lastIndexOf('  }\n}'))}    shaftline Starboard mirrors Port { ahead clutch B  propeller hand right }\n  }\n}\n`;
  const files = { 'ternhaven.shaft': formatText(`import "parts"\n${twin}`), 'parts.shaft': CATALOGUE };
  const { judged } = await meaning(files);
  expect(judged.verdicts.some(one => one.rule === 'rotation/propeller-hand')).toBe(true);
  await judgeChange(files, await inlined(files, 'Alder-63 ratio'));
});

describe('on real specs', () => {
  const example = (path: string) =>
    formatText(readFileSync(new URL(`../../../../examples/${path}.shaft`, import.meta.url), 'utf8'));
  const catalogue = Object.fromEntries(
    ['couplings', 'engines', 'gears', 'materials', 'motors'].map(one => [
      `catalogue/${one}.shaft`,
      example(`catalogue/${one}`),
    ]),
  );
  it.each(
    share(
      [
        'pilot-cutter/ternhaven',
        'motor-launch/reedmouth',
        'service-vessel/skerrowby',
        'sport-boat/quickgrass',
        'workboat/saltmarsh',
        'ferry/brackle',
      ],
      2,
    ),
  )('every part of %s that has one place moves there without a change of meaning', async path => {
    const home = `${path}.shaft`;
    const files = { [home]: example(path), ...catalogue };
    const { specs } = await meaning(files);
    for (const { part } of share(namedParts(specs.reading), 1)) {
      const at = part.namePlace!.start;
      const text = files[home]!;
      const offers = await Offers.at({ ...files, [home]: `${text.slice(0, at)}<|>${text.slice(at)}` }, KIND);
      if (offers.actions.length === 0) continue;
      const after = Object.fromEntries(
        Object.keys(files).map(one => [one, offers.after('Move the facts', one)]),
      );
      await judgeChange(files, after);
    }
  });
});

describe('it is not offered', () => {
  const titles = async (files: string | Record<string, string>) => (await Offers.at(files, KIND)).titles;
  it('where more than one line uses the entry', async () => {
    expect(await titles(`${CATALOGUE}\n${VESSEL.replace('gear Alder', 'gear <|>Alder')}`)).toBe('');
    expect(await titles(`${CATALOGUE}\n${SINGLE.replace('gear Alder', 'gear <|>Alder')}`)).not.toBe('');
  });
  it('on a part that is kept or modified, or whose entry cannot be read', async () => {
    const broken = withChange('  fuel diesel\n', '  fuel diesel\n  feul petrol\n', CATALOGUE);
    expect(await titles(`${broken}\n${SINGLE.replace('engine Kitti', 'engine <|>Kitti')}`)).toBe('');
    const revised = `${SINGLE.replace(/\}\n$/, '')}  arrangement later revises proposed {
    shaftline Port {
      retain engine
      modify gear <|>Rowan-7
      retain shaft
      retain propeller
    }
  }
}
`;
    expect(await titles(`${CATALOGUE}\n${revised}`)).toBe('');
    expect(await titles(`${CATALOGUE}\n${revised.replace('modify', 'replace')}`)).toContain('gear Rowan-7');
  });
  it('where a line mirrors the part and the entry says what has a hand', async () => {
    const mirrored = `${SINGLE.slice(0, SINGLE.lastIndexOf('  }\n}'))}    shaftline Starboard mirrors Port { ahead clutch B  propeller hand right }\n  }\n}\n`;
    const at = (words: string) => `${CATALOGUE}\n${mirrored.replace(words, `<|>${words}`)}`;
    expect(await titles(at('Kittiwake-9 at'))).toBe('');
    expect(await titles(at('Alder-63 ratio'))).not.toBe('');
    const coupled = at('Damper-1').replace(
      'engine Kittiwake-9 at',
      'coupling <|>Damper-1\n      engine Kittiwake-9 at',
    );
    const damper = 'coupling Damper-1 {\n  kind damper\n  flywheel size 11.5\n}\n';
    expect(await titles(damper + coupled)).not.toBe('');
  });
  it('on the entry that nobody uses', async () => {
    expect(await titles(`${CATALOGUE.replace('gear Rowan', 'gear <|>Rowan')}\n${SINGLE}`)).toBe('');
    expect(await titles(`${CATALOGUE.replace('gear Alder', 'gear <|>Alder')}\n${SINGLE}`)).toContain(
      'gear Alder-63',
    );
  });
});
