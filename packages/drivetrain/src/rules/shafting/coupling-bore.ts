import { compareBoreAndShaft, couplingBoreGuide, type Value } from '@tailshaft/mechanics';
import { amount, asStated, type NewValue, spell } from '@tailshaft/vocabulary';
import { shaftBehind } from '../../analysis/couplings.js';
import { sizesForward, thickest } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import { asMissing, Needs } from '../../judge/needs.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { home, nameOf, statementOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { Coupling, Shaft } from '../../model/shafting.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { writeInPlace } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_HALF_COUPLING } from './coupling-flange.js';
import { DEFER } from './sources.js';
import { usualKeyWidth } from './usual-key.js';

const INFO: RuleInfo = {
  id: 'shafting/coupling-bore',
  title: 'The half-coupling is bored and keyed for the shaft',
  mistakes: ['L11'],
  severity: 'error',
  criterion: 'bore and key width of the half-coupling against the shaft end that it fits',
  source: couplingBoreGuide.source,
  manual:
    'The half-coupling sits on the shaft by a light press fit and a key. Bored for another shaft it either ' +
    'cannot be fitted or is loose, and a loose coupling frets and lets the shaft move aft. Compare bore and key ' +
    'width with the shaft end; write "coupling end diameter" where that differs from the shaft diameter. Order ' +
    'the half-coupling for this shaft.',
  caution: `${DEFER} Nominal sizes are compared here; the fit itself is 0.0005 to 0.001 in of clearance and is measured.`,
  noFigure: 'bore and key must be those of the shaft together',
  examples: examples(() => ({
    failing: changed(WITH_HALF_COUPLING, ['bore 65 mm', 'bore 60 mm']),
    passing: WITH_HALF_COUPLING,
    cannotTell: changed(WITH_HALF_COUPLING, ['  key width 18 mm\n', '']),
  })),
};

export const couplingBore: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.couplings, one => (one.bore || one.keyWidth ? judge(context, one) : undefined));
}

function judge({ line, analysis }: LineContext, coupling: Coupling): Verdict | undefined {
  const shaft = shaftBehind(line, coupling);
  if (!shaft) return undefined;
  const say = sayFor(INFO, line.path);
  const needs = new Needs();
  const name = nameOf(coupling);
  const bore = needs.fact(coupling.bore, { what: `bore of ${name}`, host: home(coupling), property: 'bore' });
  const wantedKey = { what: `key width of ${name}`, host: home(coupling), property: 'key width' };
  const key = needs.fact(coupling.keyWidth, wantedKey);
  const end = shaft.couplingEnd
    ? needs.fact(shaft.couplingEnd, {
        what: 'diameter of the coupling end of the shaft',
        host: shaft.origin,
        property: 'coupling end diameter',
      })
    : forwardDiameter(shaft, needs);
  const shaftKey = needs.fact(shaft.couplingKeyWidth, {
    what: 'key width of the shaft in its coupling',
    host: shaft.origin,
    property: 'coupling key width',
  });
  const place = coupling.bore?.origin ?? coupling.origin;
  const wrong = compareBoreAndShaft(
    { diameter: bore, keyWidth: key },
    { diameter: end, keyWidth: shaftKey },
  ).filter(one => one.result === 'differs');
  const numbers = [
    ...(bore && end ? [`bored ${analysis.tell(bore)}, the shaft end is ${analysis.tell(end)}`] : []),
    ...(key && shaftKey ? [`keyed ${analysis.tell(key)}, the shaft ${analysis.tell(shaftKey)}`] : []),
  ].join('; ');
  if (wrong.length > 0) {
    return say.fails({
      place,
      message: `${line.name}: ${name} is ${numbers}. It does not fit this shaft: order the half-coupling for it; do not fit a sleeve.`,
      related: [{ at: (shaft.couplingEnd ?? shaft.diameter ?? shaft).origin, message: 'the shaft end' }],
      // A key that fits a keyway that nobody measured is asked for with it.
      open: shaftKey ? needs.missing : [...needs.missing, asMissing(wantedKey)],
      routes: () => fittingRoutes(coupling, shaft),
    });
  }
  if (needs.any) return waits(say, needs, place, `${line.name}: whether ${name} fits the shaft`);
  return say.holds({ place, message: `${line.name}: ${name} is ${numbers}: it fits.` });
}

/**
 * The half-coupling bored for the shaft end, or the end of a new shaft turned down for the bore. The keyway of a new shaft is
 * cut for the key of the coupling; that of a shaft that stays is looked at, not chosen.
 */
function fittingRoutes(coupling: Coupling, shaft: Shaft): Route[] {
  const { bore, keyWidth } = coupling;
  const end = shaft.couplingEnd ?? shaft.diameter;
  const isNew = ['new', 'replaced'].includes(statementOf(shaft));
  const theirs = shaft.couplingKeyWidth;
  if (!bore?.value || !end?.value) return [];
  const routes: Route[] = [];
  // Where nobody knows a key the bore alone is put right, and the key stays asked for.
  if (!keyWidth?.value && !theirs?.value)
    return end.written === bore.written
      ? []
      : [
          {
            title: `Order the half-coupling bored ${end.written} instead of ${bore.written}`,
            edits: ordered(coupling, [{ property: 'bore', value: asStated(end) }]),
          },
        ];
  if (!keyWidth?.value) return [];
  const usual = isNew && !theirs ? usualKeyWidth(end.value) : undefined;
  const key = theirs?.value ? asStated(theirs) : usual && amount(usual);
  if (key !== undefined)
    routes.push({
      title: `Order the half-coupling bored ${end.written} instead of ${bore.written}${theirs ? '' : `, with the usual key for that shaft, ${spell(key)}`}`,
      edits: [
        ...ordered(coupling, [
          ...(end.written === bore.written ? [] : [{ property: 'bore', value: asStated(end) }]),
          ...(spell(key) === keyWidth.written ? [] : [{ property: 'key width', value: key }]),
        ]),
        ...(theirs ? [] : [writeInPlace(shaft, 'coupling key width', key)]),
      ],
    });
  if (isNew && bore.value.si <= (shaft.diameter?.value?.si ?? 0))
    routes.push({
      title: `Turn the coupling end of the shaft to ${bore.written} instead of ${end.written}, with its ${keyWidth.written} key`,
      edits: [
        writeInPlace(shaft, 'coupling end diameter', asStated(bore)),
        writeInPlace(shaft, 'coupling key width', asStated(keyWidth)),
      ],
    });
  return routes;
}

/** A kept half-coupling with another bore is another one. */
function ordered(
  coupling: Coupling,
  facts: readonly { readonly property: string; readonly value: NewValue }[],
): ModelEdit[] {
  if (statementOf(coupling) !== 'retained')
    return facts.map(({ property, value }) => writeInPlace(coupling, property, value));
  const name = coupling.entry?.name;
  return name === undefined
    ? []
    : [{ do: 'state', at: coupling.origin, statement: { action: 'replace', role: 'coupling', name, facts } }];
}

function forwardDiameter(shaft: Shaft, needs: Needs): Value<'length'> | undefined {
  const sizes = sizesForward(shaft, needs);
  return sizes && thickest(sizes).size.outsideDiameter;
}
