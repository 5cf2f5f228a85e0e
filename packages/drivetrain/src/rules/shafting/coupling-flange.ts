import {
  compareFlanges,
  given,
  type InterfaceDifference,
  type Flange as Mating,
  type Value,
} from '@tailshaft/mechanics';
import { asStated, type NewValue, quantityOf } from '@tailshaft/vocabulary';
import { outputBefore, outputCouplings } from '../../analysis/couplings.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Flange } from '../../model/gear.js';
import { home, nameOf, statementOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling } from '../../model/shafting.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { DEFER, PART_SHEET } from './sources.js';

export const WITH_HALF_COUPLING = changed(
  SINGLE_LINE,
  [
    '  slip device offered\n',
    '  slip device offered\n  output flange { outside diameter 146 mm  bolt circle 121 mm  bolts 4 x 1/2 in  pilot 63.5 mm female }\n',
  ],
  [
    'shaft material high-strength-stainless {',
    `coupling Half-146 "half-coupling for the shaft" {
  source "Half 146 drawing" dated 2024-09-01
  kind rigid
  bore 65 mm
  key width 18 mm
  flange { outside diameter 146 mm  bolt circle 121 mm  bolts 4 x 1/2 in  pilot 63.5 mm male }
}

shaft material high-strength-stainless {`,
  ],
  [
    '      shaft { material high-strength-stainless  diameter 65 mm [drawing] }',
    '      coupling Half-146\n      shaft { material high-strength-stainless  diameter 65 mm [drawing]  coupling key width 18 mm }',
  ],
);

const INFO: RuleInfo = {
  id: 'shafting/coupling-flange',
  title: 'Gear flange and shaft coupling bolt together',
  mistakes: ['L10'],
  severity: 'error',
  criterion: 'bolt circle, number and size of bolts, pilot kind and diameter of the two flanges',
  source: PART_SHEET,
  manual:
    'Output flanges follow no common standard and must be compared by dimensions. One that nearly fits gets ' +
    'turned down and redrilled, is then out of true or too thin, and knocks at every shift. State both flanges: ' +
    'outside diameter, bolt circle, bolts, pilot male or female. Order a half-coupling for this gear, or an ' +
    'adapter that its maker offers; never turn down or redrill a flange without the maker’s consent.',
  caution: `${DEFER} Face run-out and bolt grade are checked at fitting.`,
  // What two flanges may leave unsaid and still be compared.
  noFigure: 'several sizes must be those of the other flange together',
  standsWithout: ['outside diameter', 'thickness'],
  examples: examples(() => ({
    failing: changed(WITH_HALF_COUPLING, [
      'bolt circle 121 mm  bolts 4 x 1/2 in  pilot 63.5 mm male',
      'bolt circle 108 mm  bolts 4 x 7/16 in  pilot 63.5 mm female',
    ]),
    passing: WITH_HALF_COUPLING,
    cannotTell: changed(WITH_HALF_COUPLING, ['  pilot 63.5 mm male', '']),
  })),
};

export const couplingFlange: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  const { line } = context;
  // Between two lengths of shaft no flange of a gear is met.
  return each(outputCouplings(line), one =>
    one.flange && outputBefore(line, one) ? judge(context, one) : undefined,
  );
}

function judge({ line }: LineContext, coupling: Coupling): Verdict {
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const place = coupling.flange!.origin;
  const output = outputBefore(line, coupling)!;
  const what = `${line.name}: whether ${nameOf(coupling)} fits ${output.name}`;
  if (!output.flange) {
    needs.miss({
      what: `output flange of ${output.name}`,
      host: home(output.part),
      property: 'output flange',
    });
    return waits(say, needs, place, what);
  }
  const differences = compareFlanges(matingOf(output.flange), matingOf(coupling.flange!));
  for (const one of differences) {
    if (one.result !== 'not stated' || OPTIONAL.has(one.feature)) continue;
    const property = PROPERTY[one.feature] ?? one.feature;
    if (one.on !== 'other') {
      needs.miss({
        what: `${one.feature} of the flange of ${output.name}`,
        host: output.flange.origin,
        property,
      });
    }
    if (one.on !== 'one') {
      needs.miss({ what: `${one.feature} of the flange of ${nameOf(coupling)}`, host: place, property });
    }
  }
  const wrong = differences.filter(one => one.result === 'differs' && one.prevents);
  const related = [{ at: output.flange.origin, message: `flange of ${output.name}` }];
  if (wrong.length > 0) {
    return say.fails({
      place,
      related,
      message: `${line.name}: the flanges of ${output.name} and ${nameOf(coupling)} do not match: ${wrong.map(words).join('; ')}. Fit a half-coupling made for this gear, or its maker’s adapter; do not turn down or redrill without the maker’s consent.`,
      routes: () => matingRoutes(coupling, output.flange!, wrong, output.name),
    });
  }
  if (needs.any) return waits(say, needs, place, what, { related });
  const minor = differences.filter(one => one.result === 'differs');
  const note =
    minor.length > 0 ? ` They differ in ${minor.map(words).join('; ')}, which does not prevent fitting.` : '';
  return say.holds({
    place,
    related,
    message: `${line.name}: the flanges of ${output.name} and ${nameOf(coupling)} match: bolt circle, bolts and pilot agree.${note}`,
  });
}

/** A half-coupling that is still to be ordered is made for the flange that it meets. */
function matingRoutes(
  coupling: Coupling,
  theirs: Flange,
  wrong: readonly InterfaceDifference[],
  name: string,
): Route[] {
  const own = coupling.flange!;
  if (coupling.entry || !['new', 'replaced'].includes(statementOf(coupling))) return [];
  const fields = [...new Set(wrong.map(one => FIELD[one.feature]))];
  const edits = fields.flatMap((field): ModelEdit[] => {
    if (field === 'pilot') return theirs.pilot?.value ? [set('pilot', matingPilot(theirs.pilot.value))] : [];
    const fact = field && theirs[field];
    return fact ? [set(WORDS[field], asStated(fact))] : [];
  });
  if (edits.length < fields.length) return [];
  const what = fields.map(
    field => `${WORDS[field!]} ${field === 'pilot' ? 'to match' : theirs[field!]!.written}`,
  );
  return [{ title: `Order the half-coupling for the flange of ${name}: ${what.join(', ')}`, edits }];

  function set(property: string, value: NewValue): ModelEdit {
    return { do: 'set', host: own.origin, property, value };
  }
}

/** A spigot goes into a recess. */
function matingPilot({ diameter, kind }: NonNullable<NonNullable<Flange['pilot']>['value']>): NewValue {
  return { is: 'pilot', diameter: quantityOf(diameter!), kind: kind === 'male' ? 'female' : 'male' };
}

const WORDS = { boltCircle: 'bolt circle', bolts: 'bolts', pilot: 'pilot' } as const;
const FIELD: Readonly<Record<string, keyof typeof WORDS>> = {
  'bolt circle': 'boltCircle',
  'number of bolts': 'bolts',
  'bolt size': 'bolts',
  pilot: 'pilot',
  'pilot diameter': 'pilot',
};

/** What two flanges may leave unsaid and still be compared. */
const OPTIONAL = new Set(['outside diameter', 'thickness']);

const PROPERTY: Readonly<Record<string, string>> = {
  'number of bolts': 'bolts',
  'bolt size': 'bolts',
  'pilot diameter': 'pilot',
};

function matingOf(flange: Flange): Mating {
  const bolts = flange.bolts?.value;
  const pilot = flange.pilot?.value;
  return {
    outsideDiameter: flange.outsideDiameter?.value,
    boltCircle: flange.boltCircle?.value,
    bolts: bolts && given('bolts', 'z', 'number', bolts.count, { written: String(bolts.count) }),
    boltSize: bolts?.size,
    pilot: pilot?.kind,
    pilotDiameter: pilot?.diameter,
    thickness: flange.thickness?.value,
  };
}

function words(one: InterfaceDifference): string {
  if (one.result !== 'differs') return one.feature;
  const said = (side: Value | string) =>
    typeof side === 'string' ? side : (side.written ?? String(side.si));
  return `${one.feature} ${said(one.one)} against ${said(one.other)}`;
}
