import { applyEdits } from '@tailshaft/language';
import { describe, expect, it } from 'vitest';
import { gravestFirst, rankOf } from '../../packages/cli/src/report/severity.js';
import { checkText } from '../support/check.js';
import { share } from '../support/share.js';
import { FRESH } from './fresh-vessels.js';
import { offeredFor } from './offered.js';

type Change = readonly [from: string, to: string];

/** A mistake that a person would make: what is told first, what is underlined, and what is offered first. */
const MISTAKES: readonly (readonly [
  keyof typeof FRESH,
  Change,
  code: string,
  underlined: string,
  first: RegExp | undefined,
])[] = [
  [
    'hybrid',
    ['hand right', 'hand left'],
    'rotation/propeller-hand',
    'left',
    /^Make the propeller of Centre right-hand: /,
  ],
  [
    'hybrid',
    ['ahead clutch A', 'ahead clutch B'],
    'rotation/ahead-clutch',
    'B',
    /^Run Centre ahead on clutch A: /,
  ],
  [
    'hybrid',
    ['rated medium 0.072', 'rated medium 0.05'],
    'capacity/gear-input-torque',
    'Maple-50',
    /^Fit a gear like Maple-50 with rated medium 0\.063 kW\/rpm/,
  ],
  ['hybrid', ['diameter 55 mm', 'diameter 40 mm'], 'shafting/diameter', '40 mm', /^Fit a 55 mm shaft: /],
  [
    'tug',
    ['hand right', 'hand left'],
    'rotation/propeller-hand',
    'left',
    /^Make the propeller of Centre right-hand: /,
  ],
  [
    'tug',
    ['rated heavy 0.21', 'rated heavy 0.17'],
    'capacity/gear-input-torque',
    'Oak-70',
    /^Fit a gear like Oak-70 with rated heavy 0\.21 kW\/rpm/,
  ],
  ['tug', ['diameter 110 mm', 'diameter 80 mm'], 'shafting/diameter', '80 mm', /^Fit a 100 mm shaft: /],
  // Whichever of nozzle and propeller is changed, the gap is measured again.
  ['tug', ['nozzle gap 8 mm', 'nozzle gap 20 mm'], 'propeller/nozzle-gap', '20 mm', undefined],
  [
    'leg',
    ['hand right', 'hand left'],
    'rotation/propeller-hand',
    'left',
    /^Make the propeller of Centre right-hand: /,
  ],
  [
    'leg',
    ['rated light 0.06', 'rated light 0.03'],
    'capacity/gear-input-torque',
    'Larkspur-1',
    /^Use 1\.95:1 of Larkspur-1/,
  ],
  ['leg', ['diameter 45 mm', 'diameter 28 mm'], 'shafting/diameter', '28 mm', /^Fit a 40 mm shaft: /],
  [
    'leg',
    ['pitch 17.5 in', 'pitch 22 in'],
    'propeller/absorbed-power',
    '22 in',
    /^Change the pitch of Centre to 17 1\/2 in: .*; the appendage resistance of the hull stays an open question/,
  ],
  [
    'V-drives',
    ['propeller hand right', 'propeller hand left'],
    'rotation/propeller-hand',
    'left',
    /^Make the propeller of Starboard right-hand: /,
  ],
  [
    'V-drives',
    ['gear ahead clutch B', 'gear ahead clutch A'],
    'rotation/propeller-hand',
    'right',
    /^Run Starboard ahead on clutch B: /,
  ],
  [
    'V-drives',
    ['flywheel forward', 'flywheel aft'],
    'rotation/line-turns-back',
    'aft',
    /^Face the flywheel of Port forward: .*; Starboard follows/,
  ],
  [
    'V-drives',
    ['rated light 0.14', 'rated light 0.1'],
    'capacity/gear-input-torque',
    'Sallow-32',
    /^Fit a gear like Sallow-32 with rated light 0\.13 kW\/rpm/,
  ],
  [
    'V-drives',
    ['diameter 55 mm', 'diameter 40 mm'],
    'shafting/diameter',
    '40 mm',
    /^Fit a 55 mm shaft: .*; Starboard follows/,
  ],
  [
    'V-drives',
    ['pitch 27 in', 'pitch 32 in'],
    'propeller/absorbed-power',
    '32 in',
    /^Change the pitch of Port to 28 1\/2 in: .*; Starboard follows/,
  ],
  [
    'controllable pitch',
    ['hand right', 'hand left'],
    'rotation/propeller-hand',
    'left',
    /^Make the propeller of Centre right-hand: /,
  ],
  [
    'controllable pitch',
    ['rated heavy 0.31', 'rated heavy 0.2'],
    'capacity/gear-input-torque',
    'Rowan-44',
    /^Fit a gear like Rowan-44 with rated heavy 0\.29 kW\/rpm/,
  ],
  [
    'controllable pitch',
    ['diameter 125 mm', 'diameter 95 mm'],
    'shafting/diameter',
    '95 mm',
    /^Fit a 120 mm shaft: /,
  ],
  // A trial is a record: what was read is looked into, and no edit puts it right.
  [
    'controllable pitch',
    ['engine speed 1600 rpm  shaft speed 353 rpm', 'engine speed 1490 rpm  shaft speed 329 rpm'],
    'trial/full-throttle',
    '1490 rpm',
    undefined,
  ],
];

describe('vessels of kinds that nobody wrote for a test', () => {
  it.each(Object.keys(FRESH) as (keyof typeof FRESH)[])('fail nothing as they are: %s', async kind => {
    const { findings } = await checkText(FRESH[kind]);
    expect(findings.filter(one => one.severity === 'error').map(one => one.message)).toEqual([]);
  });

  it.each(share(MISTAKES, 8))(
    '%s, %j: %s first, at %j',
    async (kind, [from, to], code, underlined, first) => {
      expect(FRESH[kind]).toContain(from);
      const text = FRESH[kind].replace(from, to);
      const offered = [...(await offeredFor(text))]
        .filter(({ finding }) => finding.severity === 'error' || finding.severity === 'warning')
        .sort((one, other) => gravestFirst(rankOf(one.finding), rankOf(other.finding)));
      const [{ finding, cures }] = offered as [(typeof offered)[number]];
      expect([finding.code, text.slice(finding.place.start, finding.place.end)]).toEqual([code, underlined]);
      const [cure] = cures;
      if (first === undefined) expect(cures).toEqual([]);
      else {
        expect(cure!.title).toMatch(first);
        expect(cure!.title).not.toMatch(/; but then |, (passage|quiet)\b/);
        const then = (await checkText(applyEdits(text, cure!.edits))).findings;
        expect(then.filter(one => one.severity === 'error').map(one => one.message)).toEqual([]);
      }
      // Another ratio is written so that the line does not mislead whoever reads it.
      const worse = offered
        .flatMap(one => one.cures)
        .filter(one => one.title.includes('"The ratio in the line is the exact'));
      expect(worse.map(one => one.title)).toEqual([]);
    },
  );
});
