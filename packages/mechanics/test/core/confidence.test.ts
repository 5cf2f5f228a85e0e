import {
  APPENDAGE_FACTORS_SOURCE,
  ATMOSPHERE_LESS_VAPOUR_SOURCE,
  B_SERIES_TESTED_AREA,
  BLADE_NUMBER_FACTORS_SOURCE,
  barredRangeStart,
  CLASS_CLEARANCE,
  CROUCH_CONSTANTS,
  CROUCH_CONSTANTS_SOURCE,
  citeSource,
  given,
  KELLER_ADDITION_SOURCE,
  OPEN_STERN_SOURCE,
  PLANING_TWIN_THRUST_DEDUCTION,
  REYNOLDS_LIMIT,
  type Source,
  type Value,
  workingText,
} from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { everyFormula } from '../held/index.js';

const formulas = [...everyFormula().values()];

/** What no text at hand bears out: the publication is known, its figures are recalled, or one copy of doubtful standing. */
const FROM_MEMORY = [
  // Shafts, bearings, couplings, vibration, air.
  'bearing span of line shafts, empirical',
  'class bearing span up to 350 rpm',
  'class bearing span over 350 rpm',
  'class fitted bolt diameter by shaft',
  'class key area',
  'simplified class shaft diameter of small craft',
  'lateral frequency of an overhung propeller by Panagopulos’ coefficients',
  'propeller damping by Archer’s factor',
  'engine damping from a magnifier',
  'elastomeric coupling damping',
  'saturation pressure of water vapour',
  'air pressure at a height',
  // Propellers.
  'Gawn thrust coefficient',
  'Gawn torque coefficient',
  'least expanded area ratio by Keller',
  'thrust loading limit by Burrill, 2.5 % back cavitation',
  'thrust loading limit by Burrill, 5 % back cavitation',
  'thrust loading limit by Burrill, 10 % back cavitation',
  'thrust loading limit, flat-face sections, 10 % back cavitation',
  'allowable blade loading, handbook',
  'blade loading, handbook',
  'expected slip, handbook',
  'propeller diameter, handbook',
  'least propeller diameter, handbook',
  'average pitch ratio, handbook',
  'greatest suitable pitch ratio, handbook',
  'least suitable pitch ratio, handbook',
  'bollard thrust, handbook',
  'propeller mass estimate, handbook',
  'entrained water inertia',
  // Hulls.
  'speed-length ratio from power, handbook',
  'displacement speed, handbook',
  'wake fraction, handbook, single screw',
  'wake fraction, handbook, twin screw',
  'wake fraction, planing twin screw',
  'appendage efficiency, planing twin screw',
  'Holtrop 1984 thrust deduction, single screw',
];

describe('formulas known only from memory', () => {
  it.each(FROM_MEMORY)('%s says so, in its source and in every working', name => {
    const formula = everyFormula().get(name)!;
    expect(formula.spec.source.confidence).toBe('from memory');
    expect(citeSource(formula.spec.source)).toMatch(/\(from memory\)$/);
    const inputs = Object.fromEntries(
      Object.entries(formula.spec.inputs).map(([key, dimension]) => [key, given(key, key, dimension, 3)]),
    );
    expect(workingText(formula(inputs as Record<string, Value<never>>))).toContain('(from memory)');
  });

  it('a coefficient of the propeller handbook is never passed off as read, but for the exponent 2.7 and 17 %', () => {
    const handbook = formulas.filter(({ spec }) => spec.source.title === 'Propeller Handbook');
    expect(handbook.length).toBeGreaterThan(0);
    for (const { spec } of handbook) expect(spec.source.confidence, spec.name).toBe('from memory');
  });
});

describe('figures known only from memory that stand in a table or a limit', () => {
  it.each<[string, Source]>([
    ['additions of Keller', KELLER_ADDITION_SOURCE],
    ['atmosphere less vapour pressure', ATMOSPHERE_LESS_VAPOUR_SOURCE],
    ["Crouch's constants", CROUCH_CONSTANTS_SOURCE],
    ['appendage factors', APPENDAGE_FACTORS_SOURCE],
    ['open stern', OPEN_STERN_SOURCE],
    ['factors for two and four blades', BLADE_NUMBER_FACTORS_SOURCE],
    ['planing thrust deduction', PLANING_TWIN_THRUST_DEDUCTION.source],
  ])('%s', (_, source) => {
    expect(citeSource(source)).toMatch(/\(from memory\)$/);
  });

  it("Crouch's constants are those of the handbook", () => {
    expect(CROUCH_CONSTANTS.map(one => one.knots)).toEqual([150, 190, 210, 220, 230]);
  });

  it('limits that are recalled say so where they are printed', () => {
    expect(REYNOLDS_LIMIT.condition).toContain('from memory');
    expect(B_SERIES_TESTED_AREA.condition).toContain('from memory');
    const [rule] = barredRangeStart.spec.range as readonly { condition: string }[];
    expect(rule!.condition).toContain('from memory');
    const recalled = formulas.flatMap(({ spec }) =>
      typeof spec.range === 'string' || !spec.name.startsWith('Holtrop') ? [] : spec.range,
    );
    const ours = recalled.filter(({ condition }) => !/from memory|our caution/.test(condition));
    expect(ours).toEqual([]);
  });

  it('which clearance each letter of the class table means was read off its figure, and says so', () => {
    for (const one of Object.values(CLASS_CLEARANCE)) expect(one.spec.source.clause).toContain('figure');
  });
});

describe('what is not settled is not computed', () => {
  const text = formulas
    .map(({ spec }) => [spec.name, spec.text, spec.source.author, spec.source.title].join(' '))
    .join('\n');
  it.each([
    [
      'loss of thrust and torque in cavitating flow by the KCA series, whose sign is open',
      /cavitating flow|ΔKT,cav/i,
    ],
    ['limits of transcritical flow by Blount and Hubble', /transcritical|1\.2 σ/i],
    ['oblique inflow by Hadler', /hadler|oblique/i],
    ["Wyman's speed, which meets its one published result only with three quarters of the power", /wyman/i],
    ['entrained water by Schwanecke', /schwanecke/i],
    ['crash stops', /crash/i],
    ['wake of twin screws as credited to Harvald', /harvald|0\.25 CB/i],
  ])('%s', (_, pattern) => {
    expect(text).not.toMatch(pattern);
  });
});
