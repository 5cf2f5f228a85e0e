import {
  BLADE_NUMBER_FACTORS,
  given,
  largestPropeller,
  percent,
  tipClearanceAfterChange,
  tipGapNeeded,
  type Value,
} from '@tailshaft/mechanics';
import { amount, quantityOf } from '@tailshaft/vocabulary';
import { hasTipRoom, type TipRoom, tipRoomOf, wantedTipShare } from '../../analysis/clearance.js';
import { isDucted } from '../../analysis/propulsion/blades.js';
import { rounded, sizeAt } from '../../analysis/propulsion/other-size.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor, USUAL_ESTIMATE } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isSaid } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { PLACED } from './example-place.js';
import { roundedGap, writePropeller } from './propeller-edits.js';
import { demandWords } from './run-words.js';
import { DEFER_PROPELLER } from './sources.js';

const INFO: RuleInfo = {
  id: 'propeller/tip-clearance',
  title: 'Tip clearance meets the chosen share of the diameter',
  mistakes: ['P01'],
  severity: 'warning',
  estimate: USUAL_ESTIMATE,
  criterion:
    'tip clearance over propeller diameter against the share chosen in the criteria; 15 % where none is chosen',
  source: { title: 'tip clearance of 15 % of the diameter for motor craft', confidence: 'common practice' },
  manual:
    'Each blade that passes close under the hull gives it a pressure pulse: the results are noise, ' +
    'vibration, cavitation erosion and loose fastenings. About 10 % of the diameter is quoted for small slow ' +
    'sailing craft, 15 % for motor craft, 17 % in one handbook, 20 % and more for fast or heavily loaded ' +
    'vessels; the criteria choose: "tip clearance at least 15 %". Write the tip clearance as measured, or ' +
    '"axis to hull". Fit a smaller diameter, with more blades or area where the load requires it, or change ' +
    'shaft speed together with the propeller.',
  caution: `${DEFER_PROPELLER} Class rules have clearances of their own, which grow with power.`,
  examples: examples(() => ({
    failing: changed(PLACED, ['axis to hull 430 mm', 'axis to hull 400 mm']),
    passing: PLACED,
    cannotTell: changed(PLACED, ['axis to hull 430 mm [measured 2026-01-14]', 'axis to hull unknown']),
  })),
};

export const tipClearance: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { propeller } = line;
  if (!propeller) return undefined;
  const asked =
    hasTipRoom(propeller) ||
    vessel.criteria?.tipClearance ||
    propeller.rudderClearance ||
    propeller.strutClearance;
  if (!asked) return undefined;
  const say = sayFor(INFO, line.path);
  if (isDucted(propeller))
    return say.doesNotApply({
      place: propeller.nozzle!.origin,
      message: `${line.name}: the propeller turns in a nozzle, so the nozzle gap applies instead.`,
    });
  const needs = new Needs();
  const { share, criterion } = wantedTipShare(vessel);
  const room = tipRoomOf(propeller, needs);
  const propellerDiameter = propeller.diameter?.value;
  const wantedOf = (diameter: Value<'length'>) =>
    tipGapNeeded({
      propellerDiameter: diameter,
      clearanceShare: given('share required', 'c/D', 'ratio', share, { assumed: criterion.said }),
    });
  if (!room && propellerDiameter) needs.found(wantedOf(propellerDiameter));
  const fact = isSaid(() => propeller.tipClearance) ? propeller.tipClearance : propeller.axisToHull;
  const place = propeller.diameter?.origin ?? propeller.origin;
  if (!room) return waits(say, needs, place, `${line.name}: the tip clearance`);
  const needed = wantedOf(room.diameter);
  const leaves = `${line.name}: a ${propeller.diameter!.written} propeller leaves ${analysis.tell(room.gap, 3)} to the hull, ${percent(room.share.si)} of its diameter`;
  const related = fact ? [{ at: fact.origin, message: `${fact.written} here` }] : [];
  const common = { place, related, criterion, workings: [room.gap, room.share, needed] };
  if (!(room.gap.si > 0)) {
    return say.fails({
      ...common,
      severity: 'error',
      message: `${line.name}: a ${propeller.diameter!.written} propeller does not fit: the blade tips would be ${analysis.tell(negated(room.gap), 3)} inside the hull.`,
      routes: () => routes(context, room, share),
    });
  }
  return say.compare({
    ...common,
    capacity: room.gap,
    demand: needed,
    message: `${leaves}; ${criterion.said} is required.`,
    failMessage: `${leaves}; ${criterion.said} is required, ${analysis.tell(needed, 3)} here.`,
    routes: () => (room.gap.si < needed.si ? routes(context, room, share) : []),
  });
}

function negated(value: Value<'length'>): Value<'length'> {
  return { ...value, si: -value.si };
}

function routes(context: LineContext, room: TipRoom, share: number): Route[] {
  const { line, vessel, analysis } = context;
  const propeller = line.propeller!;
  const limit = largestPropeller({
    axisToHull: given('shaft axis to hull', 's', 'length', room.gap.si + room.diameter.si / 2),
    clearanceShare: given('share required', 'c/D', 'ratio', share),
  });
  const diameter = rounded(limit.si, propeller.diameter!.value!, true);
  if (!(diameter.si > 0)) return [];
  const gap = tipClearanceAfterChange({
    clearance: room.gap,
    diameter: room.diameter,
    newDiameter: diameter,
  });
  const leaves = `${analysis.tell(gap, 3)} to the hull, ${percent(gap.si / diameter.si)}`;
  const clearance = propeller.tipClearance
    ? { 'tip clearance': roundedGap(gap, propeller.tipClearance.value!) }
    : {};
  const then = analysis.propulsion?.value && sizeAt(line, vessel, 'diameter', diameter)?.propulsion;
  const asks = then ? `; with the pitch kept it absorbs ${demandWords(then)}` : '';
  const all: Route[] = [
    {
      title: `Make the diameter ${diameter.written}: ${leaves}${asks}`,
      edits: writePropeller(propeller, { diameter: amount(quantityOf(diameter)), ...clearance }),
      preferred: true,
    },
  ];
  const four = BLADE_NUMBER_FACTORS[4];
  const pitch = propeller.pitch?.value;
  if (propeller.blades?.value?.si === 3 && pitch && room.diameter.si * four.diameter <= limit.si) {
    const smaller = rounded(room.diameter.si * four.diameter, propeller.diameter!.value!, true);
    const finer = rounded(pitch.si * four.pitch, pitch);
    const left = tipClearanceAfterChange({
      clearance: room.gap,
      diameter: room.diameter,
      newDiameter: smaller,
    });
    all.push({
      title: `Take four blades of ${smaller.written} by ${finer.written}, by the handbook's factors (from memory): ${analysis.tell(left, 3)} to the hull, ${percent(left.si / smaller.si)}`,
      edits: writePropeller(propeller, {
        blades: amount({ dimension: 'number', si: 4 }),
        diameter: amount(quantityOf(smaller)),
        pitch: amount(quantityOf(finer)),
        ...(propeller.tipClearance
          ? { 'tip clearance': roundedGap(left, propeller.tipClearance.value!) }
          : {}),
      }),
    });
  }
  return all;
}
