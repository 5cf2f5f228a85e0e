import { refusedWords } from '../../judge/cannot-tell-words.js';
import type { ArrangementContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { isAsFound } from '../../model/as-found.js';
import { type Apart, each } from '../../model/reads.js';
import { runningLines } from '../../model/running.js';
import type { Requirement, ShaftLine } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import { DEFER_PROPELLER } from '../propeller/sources.js';
import { stubRoutes } from '../rotation/edits.js';
import type { Rule, RuleInfo } from '../rule.js';
import { type Evaluated, type NamedQuantity, together, verificationOf } from './quantities/index.js';

const REQUIRED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  require shaft speed at most 1200 rpm at rated power "silencing note 4"\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'trace/requirement-met',
  title: 'Every required quantity is within its bound',
  mistakes: ['U13'],
  severity: 'error',
  criterion:
    'the quantity that a requirement names, as computed for the proposed arrangement, against its bound',
  source: { title: 'the requirement itself, by whoever set it', confidence: 'common practice' },
  manual:
    '"require" sets a bound on a computed quantity: speed at full power, shaft speed, shaft torque, tip ' +
    'speed, tip clearance, bollard thrust, propeller demand, gear torque margin. It is compared for the ' +
    'proposed arrangement, and the margin is shown; "in mode harbour" names its mode, otherwise the first ' +
    'mode is meant. Where it is not met, change what the quantity depends on, or agree another requirement ' +
    'with whoever set it.',
  caution: `${DEFER_PROPELLER} A predicted figure meets a requirement on paper; the trial must confirm it.`,
  limitOf: 'the owner’s requirement',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(REQUIRED, ['at most 1200 rpm', 'at most 1100 rpm']),
    passing: REQUIRED,
    cannotTell: changed(REQUIRED, ['power 300 kW at 2300 rpm', 'power unknown']),
  })),
};

export const REQUIREMENT_MET = { id: INFO.id, severity: INFO.severity, criterion: INFO.criterion };

export const requirementMet: Rule = { ...INFO, scope: 'arrangement', check };

function check(context: ArrangementContext): Apart<Verdict> | undefined {
  if (isAsFound(context.arrangement, context.vessel)) return undefined;
  return each(context.vessel.requirements, requirement => {
    const found = verificationOf(requirement);
    return found.by === 'quantity' ? judge(context, requirement, found.quantity, found.condition) : undefined;
  });
}

function judge(
  context: ArrangementContext,
  requirement: Requirement,
  quantity: NamedQuantity,
  condition: string | undefined,
): Verdict | Apart<Verdict> | undefined {
  const { arrangement, analysisOf } = context;
  const dimension = requirement.quantity!.value!.dimension;
  const evaluated = (line: ShaftLine) => {
    const running = inModeOf(line, requirement);
    const found =
      'missing' in running ? running : quantity.of(analysisOf(running.line), condition, dimension);
    return { line, found };
  };
  const on = (line: ShaftLine) =>
    verdict(context, requirement, quantity, condition, line.path, [evaluated(line)]);
  if (quantity.over === 'line') return each(arrangement.lines, on);
  const lines = arrangement.lines.map(evaluated);
  const untold = lines.find(({ found }) => found.value === undefined);
  if (untold) return on(untold.line);
  return lines.length > 0
    ? verdict(context, requirement, quantity, condition, arrangement.path, lines)
    : undefined;
}

/** The line in the mode that is required, or what keeps it from being told. */
function inModeOf(line: ShaftLine, { mode, origin }: Requirement): { readonly line: ShaftLine } | Evaluated {
  if (mode === undefined) return { line };
  const running = runningLines(line);
  const needs = new Needs();
  if (running && 'unclear' in running) needs.miss(running.unclear, running.unclear.at);
  else {
    const found = running?.lines.find(one => one.mode!.name === mode);
    if (found) return { line: found };
    needs.miss({ what: `mode ${mode} of ${line.name}`, host: line.origin, property: 'mode' }, origin);
  }
  return { value: undefined, missing: needs.missing };
}

function verdict(
  { analysisOf }: ArrangementContext,
  requirement: Requirement,
  quantity: NamedQuantity,
  condition: string | undefined,
  subject: string,
  lines: readonly { readonly line: ShaftLine; readonly found: Evaluated }[],
): Verdict {
  const say = sayFor(INFO, subject);
  const first = lines[0]!;
  const { tell } = analysisOf(first.line);
  const { mode } = requirement;
  const where = `${condition ? ` at ${condition}` : ''}${mode ? ` in mode ${mode}` : ''}`;
  const related = [{ at: (first.line.propeller ?? first.line).origin, message: `computed for ${subject}` }];
  const value = together(
    quantity,
    lines.map(({ found }) => found.value),
  );
  const required = requirement.quantity!.value!;
  if (!value) {
    const needs = new Needs();
    needs.take({ value: undefined, missing: first.found.missing });
    return say.cannotTell(needs, {
      place: requirement.origin,
      answers: requirement.origin,
      related: needs.missing.map(gap => ({
        at: gap.at ?? gap.host,
        message: `write ${gap.what} here`,
      })),
      message: refusedWords(`${subject}: ${quantity.name}${where}`, first.found.refusal, needs.missing),
      routes: () => stubRoutes(needs.missing),
    });
  }
  const least = requirement.bound === 'at least';
  const note = first.found.note ? ` ${first.found.note}` : '';
  const text = tell(value);
  const said = requirement.note ? ` (${requirement.note})` : '';
  return say.compare({
    place: requirement.origin,
    answers: requirement.origin,
    related,
    capacity: least ? value : required,
    demand: least ? required : value,
    criterion: requirement.written,
    workings: [value],
    message: `${subject}: ${quantity.name}${where} is ${text}; ${requirement.bound} ${requirement.quantity!.written} is required${said}.${note}`,
    failMessage: `${subject}: ${quantity.name}${where} is ${text}, and ${requirement.bound} ${requirement.quantity!.written} is required${said}.${note}`,
  });
}
