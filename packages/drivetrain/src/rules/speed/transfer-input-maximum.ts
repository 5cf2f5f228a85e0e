import { speedEntering } from '../../analysis/speeds.js';
import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Transfer } from '../../model/gear.js';
import { home, nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { DEFER, PART_SHEET } from '../capacity/sources.js';
import { WITH_TRANSFER } from '../capacity/transfer-torque.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';

const INFO: RuleInfo = {
  id: 'speed/transfer-input-maximum',
  title: 'Input speed is within the transfer’s limit',
  mistakes: [],
  severity: 'error',
  criterion:
    'governed speed of the engine, through the stages before it, against the greatest input speed of the transfer',
  source: PART_SHEET,
  manual:
    'A V-drive, belt or chain stage has a greatest input speed of its own. Before the gear it sees the high idle ' +
    'of the engine; behind the gear it sees that divided by the ratio, so a gear with less reduction may ' +
    'overspeed it. Lower the governed speed with the maker’s consent, put more ratio before the stage, or choose ' +
    'another stage.',
  caution: DEFER,
  limitOf: 'the maker’s limit',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(WITH_TRANSFER, ['input speed at most 2000 rpm', 'input speed at most 1200 rpm']),
    passing: WITH_TRANSFER,
    cannotTell: changed(WITH_TRANSFER, ['  input speed at most 2000 rpm\n', '']),
  })),
};

export const transferInputMaximum: Rule = { ...INFO, scope: 'line', check };

function check(context: LineContext): Apart<Verdict> | undefined {
  const { line } = context;
  if (!(line.engine || line.motor)) return undefined;
  return each(line.transfers, transfer => judge(context, transfer));
}

function judge(context: LineContext, transfer: Transfer): Verdict {
  const { line, analysis } = context;
  const say = sayFor(INFO, line.path);
  const name = nameOf(transfer);
  const needs = new Needs();
  const limit = needs.fact(transfer.inputSpeedMax, {
    what: `greatest input speed of ${name}`,
    host: home(transfer),
    property: 'input speed at most',
  });
  const speed = speedEntering(line, transfer, needs.take(analysis.governedSpeed), needs);
  const place = transfer.nameOrigin ?? transfer.origin;
  if (!limit || !speed) {
    return say.cannotTell(needs, {
      place: needs.missing[0]?.at ?? place,
      message: cannotTellWords(`${line.name}: whether ${name} can be overspeeded`, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const numbers = `the input of ${name} turns up to ${analysis.tell(speed)}; its sheet allows ${analysis.tell(limit)}`;
  return say.compare({
    place,
    capacity: limit,
    demand: speed,
    workings: [speed],
    message: `${line.name}: ${numbers}.`,
    failMessage: `${line.name}: ${numbers}. Put more ratio before it, lower the governed speed, or fit another stage.`,
    related: [{ at: transfer.inputSpeedMax!.origin, message: 'greatest input speed' }],
  });
}
