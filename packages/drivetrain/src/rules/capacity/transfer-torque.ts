import { given, percent, renamed, strandSideLoad } from '@tailshaft/mechanics';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact } from '../../model/fact.js';
import type { Transfer } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, apart, each, isSaid } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { judgeKnown } from '../known-half.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { atLeast, greatestTorqueAt } from './greatest-torque.js';
import { DEFER, PART_SHEET } from './sources.js';

/** A chain stage behind the gear, which keeps the sense. */
export const WITH_TRANSFER = changed(
  SINGLE_LINE,
  [
    'shaft material high-strength',
    `transfer Reed-2 "chain stage" {
  source "Reed 2 sheet" dated 2024-05-02
  kind chain
  output same seen from aft
  turns the line back no
  exact 1.0:1
  torque at most 3600 N.m
  thrust at most 40 kN
  input speed at most 2000 rpm
}

shaft material high-strength`,
  ],
  ['      shaft { material', '      transfer Reed-2\n      shaft { material'],
);

const INFO: RuleInfo = {
  id: 'capacity/transfer-torque',
  title: 'Input torque is within the transfer rating',
  mistakes: [],
  severity: 'error',
  criterion: 'greatest torque that enters a V-drive, belt or chain stage against the rating on its sheet',
  source: PART_SHEET,
  manual:
    'A V-drive, belt or chain stage stands behind the engine or behind the gear. Behind a gear it carries engine ' +
    'torque times the ratio, which is easily overlooked when the gear is exchanged for a deeper one. The ' +
    'greatest engine torque is carried to its input and compared with its rating. Fit a larger stage, or move ' +
    'part of the ratio behind it. A belt or chain also pulls sideways on the shaft with its input wheel: twice ' +
    'the torque over the wheel diameter, times the strand factor. Where a side load is allowed, it is compared.',
  caution: `${DEFER} Sheets of belts and chains require a service factor of their own on top.`,
  limitOf: 'the maker’s rating',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_TRANSFER, ['torque at most 3600 N.m', 'torque at most 2400 N.m']),
    passing: WITH_TRANSFER,
    cannotTell: changed(WITH_TRANSFER, ['  torque at most 3600 N.m\n', '']),
  })),
};

export const transferTorque: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.transfers, transfer =>
    apart(
      () => judge(context, transfer),
      () => sideLoad(context, transfer),
    ),
  );
}

/** What belt or chain pulls sideways, where the spec says anything of it. */
function sideLoad({ line, analysis }: LineContext, transfer: Transfer): Verdict | undefined {
  const isSpoken =
    isSaid(() => transfer.sideLoad) ||
    isSaid(() => transfer.wheelDiameter) ||
    isSaid(() => transfer.strandFactor);
  if (!isSpoken) return undefined;
  const say = sayFor(INFO, line.path);
  const name = nameOf(transfer);
  const place = transfer.nameOrigin ?? transfer.origin;
  const needs = new Needs();
  const ask = <T>(fact: Fact<T> | undefined, what: string, property: string) =>
    needs.fact(fact, { what: `${what} of ${name}`, host: home(transfer), property });
  const allowed = ask(
    transfer.sideLoad,
    'side load that the shaft with the input wheel may take,',
    'side load at most',
  );
  const diameter = ask(transfer.wheelDiameter, 'diameter of the input wheel', 'input wheel diameter');
  const strandFactor =
    transfer.kind?.value === 'chain' && !isSaid(() => transfer.strandFactor)
      ? given('strand factor', 'f', 'number', 1, {
          assumed: 'the other strand of a chain is slack',
          replaceWith: 'strand factor',
        })
      : ask(transfer.strandFactor, 'strand factor', 'strand factor');
  const torque = greatestTorqueAt(analysis, transfer, needs);
  const what = `${line.name}: whether the side load of ${name} is within what its shaft may take`;
  if (!allowed || !diameter || !strandFactor || !torque) return waits(say, needs, place, what, {});
  const load = strandSideLoad({
    torque,
    diameter: renamed(diameter, 'input wheel diameter', 'd'),
    strandFactor: renamed(strandFactor, 'strand factor', 'f'),
  });
  return judgeKnown(say, needs, {
    place,
    capacity: allowed,
    demand: load,
    workings: [load],
    what,
    numbers: `${name} pulls sideways on the shaft with its input wheel by ${atLeast(analysis)}${analysis.tell(load)}; it may take ${analysis.tell(allowed)}`,
    remedy: `: ${percent(load.si / allowed.si - 1)} too much. Fit a larger input wheel, or carry the wheel in bearings of its own.`,
    related: [{ at: transfer.sideLoad!.origin, message: 'side load that is allowed' }],
  });
}

function judge({ line, analysis }: LineContext, transfer: Transfer): Verdict {
  const say = sayFor(INFO, line.path);
  const name = nameOf(transfer);
  const place = transfer.nameOrigin ?? transfer.origin;
  const needs = new Needs();
  const allowed = needs.fact(transfer.torque, {
    what: `torque rating of ${name}`,
    host: home(transfer),
    property: 'torque at most',
  });
  const torque = greatestTorqueAt(analysis, transfer, needs);
  const what = `${line.name}: whether input torque is within the rating of ${name}`;
  if (!allowed || !torque) {
    const known = torque
      ? `${atLeast(analysis)}${analysis.tell(torque)} enter it`
      : allowed && `it is rated for ${analysis.tell(allowed)}`;
    return waits(say, needs, place, what, { ...(known ? { known } : {}), workings: torque ? [torque] : [] });
  }
  return judgeKnown(say, needs, {
    place,
    capacity: allowed,
    demand: torque,
    workings: [torque],
    what,
    numbers: `input torque of ${name} is ${atLeast(analysis)}${analysis.tell(torque)}; it is rated for ${analysis.tell(allowed)}`,
    remedy: `: ${percent(torque.si / allowed.si - 1)} too much. Fit one rated for it, or less ratio before it.`,
    related: [{ at: transfer.torque!.origin, message: 'its torque rating' }],
  });
}
