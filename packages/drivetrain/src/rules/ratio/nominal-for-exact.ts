import type { Value } from '@tailshaft/mechanics';
import { percent } from '@tailshaft/mechanics';
import { ratioConsequence } from '../../analysis/propeller-law.js';
import { ratioWords } from '../../analysis/telling.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Gear } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { ratioTolerance } from '../planned.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { ratioSharedByAnotherClutch } from './clutch-ratio.js';
import { exactAmount } from './exact-amount.js';
import { TOOTH_COUNTS } from './sources.js';

const INFO: RuleInfo = {
  id: 'ratio/nominal-for-exact',
  title: 'The ratio in the line is the exact ratio',
  mistakes: ['T01'],
  severity: 'warning',
  criterion:
    'ratio written in the line against the exact ratio ahead; difference at most 0.5 % unless the criteria set ' +
    'another limit',
  source: TOOTH_COUNTS,
  manual:
    'A gear is sold by its nominal ratio; its tooth counts give the exact one. The shaft turns at the exact ' +
    'ratio, and the propeller absorbs power roughly as the cube of shaft speed: 2 % in ratio is more than 6 ' +
    '% in power. Every calculation here uses the exact ratio where it is declared. Where the line names a ' +
    'ratio that differs by more than the criterion, people who read the line will order a propeller for the ' +
    'wrong speed. Write the exact ratio of the ahead clutch in the line, and keep the nominal one in the ' +
    'catalogue entry.',
  caution:
    'Take the exact ratio from the plate or the sheet of that gear and clutch; two clutches may differ.',
  limitOf: 'the rounding of the ratio as it is written',
  noFigure: 'two statements of one thing, either of which may be true',
  curesRecord: true,
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(
      SINGLE_LINE,
      ['ratio 2.04:1 exact 2.043:1', 'ratio 2:1 exact 1.958:1'],
      ['ratio 2.04:1 ahead', 'ratio 2:1 ahead'],
    ),
    passing: SINGLE_LINE,
    cannotTell: changed(SINGLE_LINE, ['ratio 2.04:1 exact 2.043:1', 'ratio 2.04:1']),
  })),
};

export const nominalForExact: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Verdict | undefined {
  const { line, vessel, analysis } = context;
  const { gear } = line;
  if (!gear) return undefined;
  const say = sayFor(INFO, line.path);
  const place = gear.ratioUsed?.origin ?? gear.variant?.nominalFact.origin ?? gear.origin;
  const needs = new Needs();
  const found = needs.take(analysis.gearRatio('ahead')!);
  if (!found) {
    return say.cannotTell(needs, {
      place,
      message: cannotTellWords(`${line.name}: the exact ratio`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  if (found.basis === 'nominal') {
    missExact(gear, needs);
    return say.cannotTell(needs, {
      place,
      message:
        `${line.name}: the exact ratio of ${nameOf(gear)} is not declared; the nominal ${ratioWords(found.value.si)} is used ` +
        `for every speed and torque here. The plate or sheet gives it: 2 % of ratio is more than 6 % of propeller power.`,
      workings: [found.value],
      routes: () => stubRoutes(needs.missing),
    });
  }
  const exact = found.value;
  const written = gear.ratioUsed?.value ?? gear.variant?.nominal;
  const { share, criterion } = ratioTolerance(vessel);
  if (!written || !gear.ratioUsed || Math.abs(written.si / exact.si - 1) <= share) {
    return say.holds({
      place,
      message: `${line.name}: the exact ratio ahead is ${ratioWords(exact.si)}, and all speeds are computed with it.`,
      criterion,
      workings: [exact],
    });
  }
  if (ratioSharedByAnotherClutch(gear, written, share)) return undefined;
  return say.fails({
    place,
    criterion,
    workings: [exact, ...Object.values(ratioConsequence(written, exact, vessel))],
    message: consequence(context, written, exact),
    related: exact.origin ? [{ at: exact.origin, message: `exact ratio ${ratioWords(exact.si)}` }] : [],
    routes: () => [
      {
        title: `Write the exact ratio ${ratioWords(exact.si)}: the spec then shows the true shaft speed`,
        edits: [{ do: 'replace', at: place, value: exactAmount(exact) }],
        preferred: true,
      },
    ],
  });
}

function consequence(
  { line, vessel, analysis }: LineContext,
  written: Value<'ratio'>,
  exact: Value<'ratio'>,
): string {
  const { speed, power } = ratioConsequence(written, exact, vessel);
  const way = speed.si > 0 ? 'higher' : 'lower';
  const at = analysis.rated.value?.speed;
  const speeds = at
    ? ` (${analysis.tell({ ...at, si: at.si / exact.si })} instead of ${analysis.tell({ ...at, si: at.si / written.si })} at rated speed)`
    : '';
  return (
    `${line.name}: the exact ratio ahead is ${ratioWords(exact.si)}, the line says ${ratioWords(written.si)}. Shaft speed is ` +
    `${percent(Math.abs(speed.si))} ${way}${speeds} and propeller power about ${percent(Math.abs(power.si))} ${way} than the line suggests.`
  );
}

/** Where the exact ratio is to be written: in the block of the offered ratio. */
function missExact(gear: Gear, needs: Needs): void {
  const { variant } = gear;
  const offered = variant && variant.origin !== gear.origin;
  const nominal = variant?.nominal.written ?? gear.ratioUsed?.written ?? '';
  needs.miss(
    {
      what: `exact ratio of ${nameOf(gear)}`,
      host: offered ? variant.origin : home(gear),
      property: offered ? 'exact' : `ratio ${nominal} exact`,
    },
    variant?.exact?.origin,
  );
}
