import { describe, expect, test } from 'vitest';
import { arrangement, evidently, open, rotation, sense, transferEntry, vessel } from '../build.js';
import {
  type Change,
  engine,
  findings,
  found,
  gear,
  line,
  OPPOSITE,
  only,
  routesOf,
} from './rotation-parts.js';

const single = (change: Change, more: object = {}) =>
  vessel({ arrangements: [arrangement('proposed', { Centre: { ...line(change), ...more } })] });

describe('rotation/line-turns-back', () => {
  const vDrive = (seen: 'from aft' | 'each seen at its own end' | undefined, word: 'same' | 'opposite') =>
    gear({
      layout: { word: 'V-drive' },
      clutches: [{ name: 'B', output: sense(word, seen), ahead: 'continuous' }],
    });
  const forward = { flywheelFaces: 'forward' as const };

  // Standard engine, flywheel forward: clockwise seen from aft before the gear (the same crankshaft from its other end).
  test.each([
    ['from aft', 'same', 'right'],
    ['from aft', 'opposite', 'left'],
    ['each seen at its own end', 'same', 'left'],
    ['each seen at its own end', 'opposite', 'right'],
  ] as const)('V-drive, output %s %s: %s-hand', (seen, word, hand) => {
    const about = single({ engine: forward, gear: { from: vDrive(seen, word) }, propeller: { hand } });
    expect(findings(about)).toEqual([]);
    const wrong = single({
      engine: forward,
      gear: { from: vDrive(seen, word) },
      propeller: { hand: hand === 'left' ? 'right' : 'left' },
    });
    expect(findings(wrong)).toEqual(['fails rotation/propeller-hand on proposed.Centre']);
  });

  test.each([
    ['V-drive behind a flywheel that faces aft', { gear: { from: vDrive('from aft', 'same') } }, 'fails'],
    ['flywheel forward and nothing turns back', { engine: forward }, 'fails'],
    [
      'V-drive and no facing',
      { engine: { flywheelFaces: open<'aft'>() }, gear: { from: vDrive('from aft', 'same') } },
      'cannot tell',
    ],
    [
      'V-drive without a viewpoint for its output',
      { engine: forward, gear: { from: vDrive(undefined, 'same') } },
      'cannot tell',
    ],
    [
      'flywheel forward and layout not stated',
      { engine: forward, gear: { from: gear({ layout: undefined }) } },
      'cannot tell',
    ],
  ] as const)('%s', (_, change, outcome) => {
    expect(findings(single(change as never))).toEqual([
      `${outcome} rotation/line-turns-back on proposed.Centre`,
    ]);
  });

  test('layout not stated, flywheel aft: the line cannot turn back, so the word can be taken', () => {
    expect(findings(single({ gear: { from: gear({ layout: undefined }) } }))).toEqual([]);
  });

  test('facing that is hearsay closes nothing', () => {
    expect(findings(single({ engine: { flywheelFaces: evidently('aft', 'hearsay') } }))).toEqual([
      'fails rotation/unproven-source on proposed.Centre',
    ]);
  });

  test('offers the facing that lets the power leave aft, with what it leads to', () => {
    const about = single({
      engine: { flywheelFaces: undefined },
      gear: { from: vDrive('from aft', 'same') },
    });
    expect(routesOf(only(about))).toEqual([
      'Face the flywheel of Centre forward: the shaft then turns clockwise ahead and needs a right-hand propeller [proposed.Centre.engine: flywheel forward]',
      '(stub) Write "flywheel unknown": the sheet then lists which way the flywheel of engine Kittiwake-9 faces as an open question [proposed.Centre.engine: flywheel unknown]',
    ]);
  });

  test('offers both viewpoints of an output with what each means', () => {
    const about = single({ engine: forward, gear: { from: vDrive(undefined, 'same') } });
    const at = 'gear Alder-63.ratio 2.04:1.clutch B.output';
    expect(routesOf(only(about))).toEqual([
      `Write "output same seen from aft": seen from aft, gear Alder-63 then keeps the rotation [${at} := same seen from aft]`,
      `Write "output same each seen at its own end": seen from aft, gear Alder-63 then reverses the rotation [${at} := same each seen at its own end]`,
    ]);
  });

  test('a remote V-drive behind a straight gear turns the line back as well', () => {
    const box = transferEntry('Vee-2', { kind: 'gear V-drive', output: sense('opposite', 'from aft') });
    const transfers = [{ from: box }];
    const about = (hand: 'left' | 'right', flywheelFaces: 'aft' | 'forward') =>
      findings(single({ engine: { flywheelFaces }, propeller: { hand } }, { transfers }));
    // Standard, flywheel forward: +1; clutch B −1; box −1: clockwise.
    expect(about('right', 'forward')).toEqual([]);
    expect(about('left', 'forward')).toEqual(['fails rotation/propeller-hand on proposed.Centre']);
    expect(about('right', 'aft')).toEqual(['fails rotation/line-turns-back on proposed.Centre']);
  });

  test('a transfer that does not say its sense is asked for it', () => {
    const transfers = [{ from: transferEntry('Belt-1', { kind: 'belt', turnsBack: 'no' }) }];
    const verdict = only(single({}, { transfers }));
    expect(verdict.missing.map(gap => gap.what)).toEqual(['output sense of transfer Belt-1']);
  });
});

describe('rotation/pump-index', () => {
  const byPump = gear({ inputRotation: rotation('either by pump index') });
  test.each([
    ['set as the engine turns', { from: byPump, pumpIndex: rotation('standard') }, {}, []],
    [
      'set as the engine turns, in plain words',
      { from: byPump, pumpIndex: rotation('clockwise', 'front') },
      {},
      [],
    ],
    [
      'set for the other',
      { from: byPump, pumpIndex: rotation('opposite') },
      {},
      ['fails rotation/pump-index on proposed.Centre'],
    ],
    [
      'set for a turn without a viewpoint',
      { from: byPump, pumpIndex: rotation('clockwise') },
      {},
      ['cannot tell rotation/pump-index on proposed.Centre'],
    ],
    ['setting not stated', { from: byPump }, {}, ['cannot tell rotation/pump-index on proposed.Centre']],
    [
      'opposite engine',
      { from: byPump, pumpIndex: rotation('opposite'), ahead: 'A' },
      { from: engine({ rotation: OPPOSITE }) },
      [],
    ],
    ['a gear that needs no setting', { from: gear({ inputRotation: rotation('either') }) }, {}, []],
  ] as const)('%s', (_, ofGear, ofEngine, expected) => {
    expect(findings(single({ gear: ofGear, engine: ofEngine }))).toEqual(expected);
  });

  test('the facing of the engine does not change its pump', () => {
    const from = gear({
      layout: { word: 'V-drive' },
      inputRotation: rotation('either by pump index'),
      clutches: [{ name: 'B', output: sense('same', 'from aft'), ahead: 'continuous' }],
    });
    const change = {
      engine: { flywheelFaces: 'forward' as const },
      gear: { from, pumpIndex: rotation('standard') },
    };
    expect(findings(single(change))).toEqual([]);
  });

  test('offers to set it', () => {
    expect(routesOf(only(single({ gear: { from: byPump, pumpIndex: rotation('opposite') } })))).toEqual([
      'Set the pump of Centre for standard, as its engine turns (a work item for the yard) [proposed.Centre.gear: pump set for standard]',
    ]);
  });
});

describe('rotation/shift-cable', () => {
  test.each([
    ['push engages the ahead clutch', { pushEngages: 'B', shiftCable: 'push for ahead' }, []],
    ['pull engages the ahead clutch', { pushEngages: 'A', shiftCable: 'pull for ahead' }, []],
    [
      'push would engage the other clutch',
      { pushEngages: 'A', shiftCable: 'push for ahead' },
      ['fails rotation/shift-cable on proposed.Centre'],
    ],
    [
      'pull would engage the other clutch',
      { pushEngages: 'B', shiftCable: 'pull for ahead' },
      ['fails rotation/shift-cable on proposed.Centre'],
    ],
    ['cable not stated', { pushEngages: 'A' }, ['cannot tell rotation/shift-cable on proposed.Centre']],
    [
      'gear lever not stated',
      { shiftCable: 'push for ahead' },
      ['cannot tell rotation/shift-cable on proposed.Centre'],
    ],
  ] as const)('%s', (_, ofGear, expected) => {
    const all = found(single({ gear: ofGear }));
    expect(all.map(one => `${one.outcome} ${one.rule} on ${one.subject}`)).toEqual(expected);
    expect(all.flatMap(one => one.routes())).toEqual([]);
  });
});
