import { describe, expect, it } from 'vitest';
import {
  type Acceptance,
  compareArrangements,
  compareSpecs,
  compareVessels,
  EMPTY_CATALOGUE,
  entriesOf,
  isSame,
  keptWords,
  type SpecChange,
  sectionsOf,
  type Vessel,
  vesselMarkdown,
} from '../../src/index.js';
import {
  arrangement,
  count,
  engineEntry,
  evidently,
  gearEntry,
  judged,
  type PlainLine,
  place,
  quantity,
  ratio,
  rotation,
  sense,
  vessel,
} from '../build.js';

const ENGINE = engineEntry('Kittiwake-9', {
  rotation: rotation('standard', 'flywheel'),
  ratings: [
    {
      duty: 'medium',
      power: { y: quantity('power', '300 kW'), x: quantity('rotational speed', '2300 rpm') },
    },
  ],
  lowIdle: quantity('rotational speed', '650 rpm'),
});
const GEAR = gearEntry('Alder-63', {
  ratios: [
    {
      nominal: ratio('2.04:1'),
      exact: ratio('2.043:1'),
      clutches: [
        { name: 'A', output: sense('same'), ahead: 'continuous' },
        { name: 'B', output: sense('opposite'), ahead: 'continuous' },
      ],
    },
  ],
});
const line = (clutch: 'A' | 'B', hand: 'left' | 'right', more: Partial<PlainLine> = {}): PlainLine => ({
  engine: { from: ENGINE, at: 'medium', flywheelFaces: 'aft' },
  gear: { from: GEAR, ratio: '2.04:1', ahead: clutch },
  shafts: [{ diameter: quantity('length', '65 mm') }],
  propeller: {
    hand,
    blades: count(4),
    diameter: quantity('length', '26 in'),
    pitch: quantity('length', '24 in'),
  },
  ...more,
});
const twin = (port = line('A', 'left'), starboard = line('B', 'right'), more: Partial<Vessel> = {}) =>
  vessel({ arrangements: [arrangement('proposed', { Port: port, Starboard: starboard })], ...more });

const compare = (before: Vessel, after: Vessel) =>
  compareVessels(
    { vessel: before, verdicts: judged(before, []) },
    { vessel: after, verdicts: judged(after, []) },
  );
const words = (changes: readonly SpecChange[], kind: SpecChange['kind']) =>
  changes.filter(one => one.kind === kind).map(one => `${one.subject}: ${one.words}`);

describe('nothing', () => {
  it('is found between a vessel and itself', () => {
    const comparison = compare(twin(), twin());
    expect(comparison.changes).toEqual([]);
    expect(keptWords(comparison)).toBe('all of proposed.Port; all of proposed.Starboard');
  });

  it('is found when lines change their order', () => {
    const other = vessel({
      arrangements: [arrangement('proposed', { Starboard: line('B', 'right'), Port: line('A', 'left') })],
    });
    expect(compare(twin(), other).changes).toEqual([]);
  });
});

describe('what follows', () => {
  it('is the sense and the hand when the clutch is another', () => {
    const { changes } = compare(twin(), twin(line('B', 'left')));
    expect(words(changes, 'derived').slice(0, 3)).toEqual([
      'proposed.Port: shaft sense ahead: counter-clockwise seen from aft → clockwise seen from aft',
      'proposed.Port: propeller hand needed: left → right',
      'proposed.Port: propeller turns: outward → inward',
    ]);
  });

  it('is every speed when the idle of the engine is another, and no torque', () => {
    const idle = engineEntry('Kittiwake-9', {
      ...plainEngine(),
      lowIdle: quantity('rotational speed', '600 rpm'),
    });
    const { changes } = compare(
      twin(line('A', 'left'), line('B', 'right')),
      twin(line('A', 'left', { engine: { from: idle, at: 'medium', flywheelFaces: 'aft' } })),
    );
    const derived = changes.flatMap(one => (one.kind === 'derived' ? [one] : []));
    expect(derived.map(one => one.what).sort()).toEqual(['estimated speed at idle', 'shaft speed at idle']);
    for (const one of derived) expect(one.share).toBeCloseTo(600 / 650 - 1, 12);
  });

  it('tells a figure that is lost before one that changed', () => {
    const open = line('A', 'left', { propeller: { hand: 'left', diameter: quantity('length', '30 in') } });
    const derived = words(compare(twin(), twin(open)).changes, 'derived');
    expect(derived[0]).toMatch(/^proposed\.Port: estimated speed at idle: .* → not known$/);
    expect(derived[1]).toMatch(/tip speed at rated power: .* \(\+15 %\)$/);
  });
});

describe('parts', () => {
  it('are kept, modified, replaced, added and removed', () => {
    const after = line('A', 'left', {
      engine: { from: engineEntry('Fulmar-6', plainEngine()), at: 'medium', flywheelFaces: 'aft' },
      shafts: [{ diameter: quantity('length', '70 mm') }],
      couplings: [{ torque: quantity('torque', '900 N.m') }],
    });
    const { propeller: _propeller, ...bare } = after;
    const { changes, kept } = compare(twin(), twin(bare));
    expect(words(changes, 'part')).toEqual([
      'proposed.Port: propeller removed: hand left, blades 4, diameter 26 in, pitch 24 in',
      'proposed.Port: engine replaced: Kittiwake-9 at medium → Fulmar-6 at medium',
      'proposed.Port: coupling added: declared in place',
      'proposed.Port: shaft modified: diameter 65 mm → 70 mm',
    ]);
    expect(kept.filter(one => one.subject === 'proposed.Port').map(one => one.role)).toEqual(['gear']);
  });

  it('move between sides only when the other side has lost them', () => {
    const [big, small] = ['28 in', '26 in'].map(size => ({
      hand: 'left' as const,
      diameter: quantity('length', size),
    }));
    const fates = (one: PlainLine['propeller'], other: PlainLine['propeller']) =>
      compare(
        twin(line('A', 'left', { propeller: big! }), line('B', 'right', { propeller: small! })),
        twin(line('A', 'left', { propeller: one! }), line('B', 'right', { propeller: other! })),
      ).changes.flatMap(change => (change.kind === 'part' ? [`${change.subject} ${change.fate}`] : []));
    expect(fates(small, big)).toEqual([
      'proposed.Port moved between sides',
      'proposed.Starboard moved between sides',
    ]);
    expect(fates(small, small)).toEqual(['proposed.Port modified']);
  });

  it('move by their serial number', () => {
    const numbered = (serial: string, size: string) => ({
      engine: {
        from: ENGINE,
        at: 'medium',
        flywheelFaces: 'aft' as const,
        serial,
        mass: quantity('mass', size),
      },
    });
    const { changes } = compare(
      twin(line('A', 'left', numbered('17', '900 kg')), line('B', 'right', numbered('18', '900 kg'))),
      twin(line('A', 'left', numbered('18', '910 kg')), line('B', 'right', numbered('17', '900 kg'))),
    );
    expect(words(changes, 'part').map(one => one.split(':')[1])).toEqual([
      ' engine moved here from Starboard',
      ' engine moved here from Port',
    ]);
  });
});

describe('one side only', () => {
  const pitch = (inches: string) =>
    line('A', 'left', { propeller: { hand: 'left', pitch: quantity('length', inches) } });
  const other = (inches: string) =>
    line('B', 'right', { propeller: { hand: 'right', pitch: quantity('length', inches) } });

  it.each([
    [
      'changed on one',
      pitch('25 in'),
      other('24 in'),
      /^proposed\.Port: changed here and not on proposed\.Starboard: propeller pitch 24 in → 25 in/,
    ],
    [
      'changed otherwise on the other',
      pitch('25 in'),
      other('26 in'),
      /^proposed\.Port: done differently on the two sides: .*25 in, but on proposed\.Starboard .*26 in/,
    ],
  ])('%s', (_name, port, starboard, expected) => {
    const found = words(
      compare(twin(pitch('24 in'), other('24 in')), twin(port, starboard)).changes,
      'one-sided',
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(expected);
  });

  it('not where both sides changed alike, or each as its side needs', () => {
    const alike = compare(twin(pitch('24 in'), other('24 in')), twin(pitch('25 in'), other('25 in')));
    expect(words(alike.changes, 'one-sided')).toEqual([]);
    const handed = compare(
      twin(line('A', 'left'), line('B', 'right')),
      twin(line('B', 'right'), line('A', 'left')),
    );
    expect(words(handed.changes, 'one-sided')).toEqual([]);
  });
});

describe('acceptances', () => {
  const acceptance = (more: Partial<Acceptance> = {}): Acceptance => ({
    origin: place('accept'),
    rule: 'capacity/example',
    on: 'Port',
    by: 'class surveyor',
    because: 'one season',
    ...more,
  });
  const accepting = (more?: Partial<Acceptance>) =>
    twin(undefined, undefined, { acceptances: [acceptance(more)] });
  const verdict = (outcome: 'accepted' | 'holds' | 'fails') => ({
    ...judgedOnce(),
    outcome,
    subject: 'proposed.Port',
  });

  it('are told when they are no longer needed', () => {
    const { changes } = compareVessels(
      { vessel: accepting(), verdicts: [verdict('accepted')] },
      { vessel: accepting(), verdicts: [verdict('holds')] },
    );
    expect(words(changes, 'statement')).toEqual([
      expect.stringMatching(/^proposed\.Port: acceptance of capacity\/example is no longer needed/),
    ]);
  });

  it('are told when they no longer cover', () => {
    const { changes } = compareVessels(
      { vessel: accepting({ until: '2027-01-01' }), verdicts: [verdict('accepted')] },
      { vessel: accepting({ until: '2026-01-01' }), verdicts: [verdict('fails')] },
    );
    expect(changes[0]).toMatchObject({ kind: 'verdict', movement: 'no longer accepted' });
    expect(words(changes, 'statement')[0]).toMatch(/until 2027-01-01.* → .*until 2026-01-01/);
  });
});

describe('statements', () => {
  const criteria = (margin: string, tip: string) =>
    twin(undefined, undefined, {
      criteria: {
        origin: place('criteria'),
        gearTorqueMargin: { value: ratio(margin), written: margin, origin: place('margin') },
        tipSpeed: { value: quantity('speed', tip), written: tip, origin: place('tip') },
      },
    });

  it.each([
    ['10 %', '5 %', '40 m/s', '40 m/s', ['relaxed']],
    ['5 %', '10 %', '40 m/s', '40 m/s', ['tightened']],
    ['5 %', '5 %', '40 m/s', '45 m/s', ['relaxed']],
    ['5 %', '5 %', '45 m/s', '40 m/s', ['tightened']],
    ['5 %', '5 %', '45 m/s', '45 m/s', []],
  ])('of criteria are relaxed or tightened: %s to %s, %s to %s', (a, b, c, d, tendencies) => {
    const { changes } = compare(criteria(a, c), criteria(b, d));
    expect(changes.flatMap(one => (one.kind === 'statement' ? [one.tendency] : []))).toEqual(tendencies);
    expect(changes.filter(one => one.kind === 'silent')).toHaveLength(tendencies[0] === 'relaxed' ? 1 : 0);
  });
});

describe('arrangements', () => {
  const existing = arrangement('existing', { Port: line('A', 'left'), Starboard: line('B', 'right') });
  const proposed = arrangement(
    'proposed',
    {
      Port: line('A', 'left', {
        propeller: { hand: 'left', change: 'replaced', diameter: quantity('length', '26 in') },
      }),
      Starboard: line('B', 'right'),
    },
    { before: existing },
  );
  const about = vessel({ arrangements: [existing, proposed] });

  it('take the words of the revision for what is replaced', () => {
    const { changes } = compareArrangements({ vessel: about, verdicts: [] }, existing, proposed);
    expect(words(changes, 'part')[0]).toMatch(/^Port: engine replaced by another such: Kittiwake-9/);
    expect(words(changes, 'part').some(one => one.startsWith('Port: propeller replaced: '))).toBe(true);
    expect(words(changes, 'silent')).toEqual([]);
  });
});

describe('sets', () => {
  it('tell vessels and entries apart by name, and one that goes by another name from one that came', () => {
    const set = (names: string[], gears: string[]) => ({
      vessels: names.map(name => ({ vessel: { ...twin(), name }, verdicts: [] })),
      entries: entriesOf({ ...EMPTY_CATALOGUE, gears: gears.map(name => ({ ...GEAR, name })) }),
    });
    const comparison = compareSpecs(
      set(['Ternhaven', 'Saltmarsh'], ['Alder-63']),
      set(['Saltmarsh', 'Quickgrass'], ['Alder-63', 'Rowan-7']),
    );
    expect(comparison.vessels.flatMap(one => one.changes.map(change => change.words))).toEqual([
      'vessel Ternhaven renamed Quickgrass',
    ]);
    const came = compareSpecs(set(['Ternhaven'], []), set(['Ternhaven', 'Quickgrass'], []));
    expect(came.addedVessels.map(one => one.vessel.name)).toEqual(['Quickgrass']);
    expect(came.vessels).toEqual([]);
    expect(comparison.entries.map(one => one.words)).toEqual(['gear Rowan-7 added']);
    expect(isSame(compareSpecs(set(['A', 'B'], ['C']), set(['B', 'A'], ['C'])))).toBe(true);
  });
});

describe('the sections of a report', () => {
  it('join lines that change alike, and show evidence that weakened', () => {
    const shaft = (kind: 'measured' | 'hearsay') => ({
      shafts: [{ diameter: evidently(quantity('length', '65 mm'), kind) }],
    });
    const comparison = compare(
      twin(line('A', 'left', shaft('measured')), line('B', 'right', shaft('measured'))),
      twin(line('A', 'left', shaft('hearsay')), line('B', 'right', shaft('hearsay'))),
    );
    const [section, ...more] = sectionsOf(comparison);
    expect(more).toEqual([]);
    expect(section?.lines.map(one => one.subjects)).toEqual([['proposed.Port', 'proposed.Starboard']]);
    expect(vesselMarkdown(comparison)).toContain(
      '- proposed.Port, proposed.Starboard: shaft, diameter 65 mm: weaker evidence, measured → hearsay',
    );
  });
});

function plainEngine() {
  return {
    rotation: rotation('standard', 'flywheel'),
    ratings: [
      {
        duty: 'medium',
        power: { y: quantity('power', '300 kW'), x: quantity('rotational speed', '2300 rpm') },
      },
    ],
    lowIdle: quantity('rotational speed', '650 rpm'),
  };
}

function judgedOnce() {
  return {
    rule: 'capacity/example',
    severity: 'error' as const,
    place: place('here'),
    message: 'said',
    related: [],
    missing: [],
    workings: [],
    steps: [],
    explains: [],
    routes: () => [],
  };
}
