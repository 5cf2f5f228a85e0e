import { given, isInInches, percent, type Value } from '@tailshaft/mechanics';
import { amount, named, spell } from '@tailshaft/vocabulary';
import { classKey, type KeyStrength, keyStrength, keysOf } from '../../analysis/key-strength.js';
import { ratedShaftLoad, shaftStrength } from '../../analysis/shaft-strength.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Criterion, Verdict } from '../../judge/verdict.js';
import { statementOf } from '../../model/part.js';
import { type Apart, apart, each } from '../../model/reads.js';
import type { Shaft } from '../../model/shafting.js';
import type { ShaftKey } from '../../model/strength.js';
import { atLeast, greatestTorqueAt } from '../capacity/greatest-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import { BORED } from '../propeller/example-bore.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER } from './sources.js';

const KEYED = changed(
  BORED,
  ['  torsional yield 70000 psi\n', '  torsional yield 70000 psi\n  tensile yield 725 MPa\n'],
  [
    'keyway width 5/8 in }',
    'keyway width 5/8 in  key propeller { height 7/16 in  length 5 in  material high-strength-stainless } }',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/key-strength',
  title: 'Each key is long enough for the torque',
  mistakes: [],
  severity: 'error',
  estimate: USUAL_ESTIMATE,
  criterion: 'length of the key against the length needed in shear and crushing under the greatest torque',
  source: {
    author: 'T. H. Wentzell',
    title: 'Machine Design',
    clause: 'keys, with the factor 2.5 of example 15.1',
    confidence: 'published',
  },
  manual:
    'A key that is too short shears, or its sides crush and the keyway cracks. Where a key is declared, it carries the greatest engine torque behind the ratio alone: in shear over width and length, in ' +
    'crushing over half its height. The limit is its yield over a factor of 2.5; "key factor at least 2" ' +
    'in the criteria sets another. ' +
    'Its diameter is taken at half the taper, or at the coupling end. Where the class formula judges the shaft, ' +
    'the shear area that class practice requires of the propeller key is checked as well. Fit a longer key, a ' +
    'stronger one, or a thicker end.',
  caution:
    `${DEFER} Friction of taper and press fit is not counted, nor is the softer metal of the hub: ask the ` +
    'propeller maker. The class area is from memory.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(KEYED, ['length 5 in', 'length 1 3/4 in']),
    passing: KEYED,
    cannotTell: changed(KEYED, ['height 7/16 in  ', '']),
  })),
};

export const keyStrengthRule: Rule = { ...INFO, scope: 'line', check };

const DEFAULT_FACTOR = 2.5;

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.shafts, shaft => each(keysOf(shaft), key => judge(context, shaft, key)));
}

function judge(context: LineContext, shaft: Shaft, key: ShaftKey): Verdict | Apart<Verdict> {
  const { line, analysis, catalogue } = context;
  const say = sayFor(INFO, `${shaft.path}.${key.name}-key`);
  const needs = new Needs();
  const factor = factorOf(context);
  const torque = greatestTorqueAt(analysis, shaft, needs);
  const strength = keyStrength(shaft, key, torque, factor.value, catalogue, needs);
  const place = key.length?.origin ?? key.origin;
  const what = `${line.name}: whether the ${key.name} key carries the torque`;
  if (!strength || !torque) {
    const known = torque && `${atLeast(analysis)}${analysis.tell(torque)} pass`;
    return waits(say, needs, place, what, known ? { known } : {});
  }
  const { length, width, diameter, inShear, inCrushing } = strength;
  const shears = inShear.si >= inCrushing.si;
  const demand = shears ? inShear : inCrushing;
  const numbers =
    `the ${key.name} key is ${analysis.tell(length, 3)} long and ${analysis.tell(width, 3)} wide at ${analysis.tell(diameter, 3)} of shaft; ` +
    `${atLeast(analysis)}${analysis.tell(torque)} requires ${analysis.tell(inShear, 3)} in shear and ${analysis.tell(inCrushing, 3)} in crushing`;
  const own = judgeKnown(say, needs, {
    place,
    capacity: length,
    demand,
    criterion: { said: `${INFO.criterion}, factor ${factor.said}`, chosenBy: factor.chosenBy },
    workings: [shears ? inCrushing : inShear],
    what,
    numbers,
    remedy: `. It ${shears ? 'shears' : 'crushes'} first: fit a longer key, a stronger one or a thicker end.`,
    routes: () => routes(context, shaft, key, demand, torque),
  });
  return apart(
    () => own,
    () => byClass(context, shaft, key, strength),
  );
}

/** The area that class practice wants of a propeller key, where the class formula judges the shaft and can be worked out. */
function byClass(
  context: LineContext,
  shaft: Shaft,
  key: ShaftKey,
  strength: KeyStrength,
): Verdict | undefined {
  const { line, analysis, vessel } = context;
  const chosen = vessel.criteria?.shaftDiameter?.some(one => one.value?.formula === 'class');
  // The area is that of propeller keys; class says it of no other.
  if (!chosen || key.name !== 'propeller') return undefined;
  const needs = new Needs();
  const say = sayFor(INFO, `${shaft.path}.${key.name}-key`);
  const load = ratedShaftLoad(analysis, shaft, needs);
  const criterion = { formula: 'class', said: 'class formula', chosenBy: 'author' } as const;
  const shaftBy = load && shaftStrength(shaft, load, criterion, shaft === line.shafts.at(-1), needs);
  const place = key.length?.origin ?? key.origin;
  if (!shaftBy) {
    return waits(
      say,
      needs,
      place,
      `${line.name}: whether the ${key.name} key has the area of class practice`,
    );
  }
  const { area, needed } = classKey(strength, shaftBy.needed);
  const numbers = `by class practice the ${key.name} key needs a shear area of ${mm2(needed)} for a rule diameter of ${analysis.tell(shaftBy.needed, 3)}; it has ${mm2(area)}`;
  return say.compare({
    place,
    capacity: area,
    demand: needed,
    criterion: 'class key area d³/(2.55 d₁) (from memory)',
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. Fit a longer or wider key.`,
    routes: () => longer(shaft, key, needed.si / strength.width.si),
  });
}

function mm2(area: Value<'area'>): string {
  return `${Math.round(area.si * 1e6)} mm²`;
}

function factorOf({ vessel }: LineContext): Criterion & { readonly value: Value<'number'> } {
  const own = vessel.criteria?.keyFactor;
  if (own?.value) {
    const { origin, written } = own;
    return {
      value: given('factor of the key', 'n', 'number', own.value.si, { origin, written }),
      said: written,
      chosenBy: 'author',
    };
  }
  const assumed = `${DEFAULT_FACTOR}: of the published example; the spec chooses none`;
  return {
    value: given('factor of the key', 'n', 'number', DEFAULT_FACTOR, { assumed }),
    said: `${DEFAULT_FACTOR}`,
    chosenBy: 'default',
  };
}

function routes(
  context: LineContext,
  shaft: Shaft,
  key: ShaftKey,
  demand: Value<'length'>,
  torque: Value<'torque'>,
): Route[] {
  return [...longer(shaft, key, demand.si), ...stronger(context, shaft, key, torque)];
}

/** The next length in steps of 5 mm or a quarter inch that passes, where the taper has room for it. */
function longer(shaft: Shaft, key: ShaftKey, needed: number): Route[] {
  const inches = isInInches(key.length?.value);
  const step = inches ? 0.25 * 0.0254 : 0.005;
  const steps = Math.ceil(needed / step - 1e-9);
  const length = steps * step;
  const room = key.name === 'propeller' ? shaft.taperLength?.value?.si : undefined;
  if (!key.length || statementOf(shaft) === 'retained' || (room !== undefined && length > room)) return [];
  const value = amount({ dimension: 'length', si: length, unit: inches ? 'in' : 'mm' });
  return [
    {
      title: `Make the ${key.name} key ${spell(value)} long: margin ${percent(length / needed - 1)}; check that keyways and hub have room`,
      edits: [{ do: 'replace', at: key.length.origin, value }],
    },
  ];
}

/** Grades of the catalogue that bear the torque at this length, strongest first. */
function stronger(context: LineContext, shaft: Shaft, key: ShaftKey, torque: Value<'torque'>): Route[] {
  const { material } = key;
  if (!material || key.tensileYield || statementOf(shaft) === 'retained') return [];
  return context.catalogue.materials
    .flatMap(grade => {
      const other: ShaftKey = { ...key, material: { ...material, value: grade.name, written: grade.name } };
      const strength = keyStrength(
        shaft,
        other,
        torque,
        factorOf(context).value,
        context.catalogue,
        new Needs(),
      );
      if (!strength) return [];
      const margin = strength.length.si / Math.max(strength.inShear.si, strength.inCrushing.si) - 1;
      return margin >= 0 && grade.name !== material.value ? [{ grade, margin }] : [];
    })
    .sort((one, other) => other.margin - one.margin)
    .slice(0, 3)
    .map(({ grade, margin }) => ({
      title: `Make the ${key.name} key of ${grade.name}: margin ${percent(margin)}`,
      edits: [{ do: 'replace', at: material.origin, value: named(grade.name) }],
    }));
}
