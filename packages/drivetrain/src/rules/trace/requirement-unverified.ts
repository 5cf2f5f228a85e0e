import type { Context } from '../../judge/context.js';
import type { NewRequirement, Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { proposalsOf } from '../../model/as-found.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { NAMED_QUANTITIES, verificationOf } from './quantities/index.js';

const REQUIRED = changed(SINGLE_LINE, [
  '  arrangement proposed {',
  '  require shaft torque at most 3000 N.m at full power "shafting note 2"\n  arrangement proposed {',
]);

const INFO: RuleInfo = {
  id: 'trace/requirement-unverified',
  title: 'Every requirement is verified by a check',
  mistakes: ['U13'],
  severity: 'warning',
  criterion:
    'each requirement is compared with a quantity that is computed here, or judged by a rule of its own',
  source: { title: 'requirement tracing as design offices keep it', confidence: 'common practice' },
  manual:
    'A requirement that nothing verifies is forgotten until the trial. The quantities that can be required are ' +
    `${NAMED_QUANTITIES.map(one => one.name).join(', ')}, the speed in gear at idle, trolling speed, and the ` +
    'turning sense of the propellers. Word the requirement so that one of these verifies it. Where only a ' +
    'document or a trial can, accept the finding and name who verifies it and how.',
  caution: 'Some requirements are verified by document or trial only; this rule cannot know that they are.',
  noFigure: 'no number is compared',
  curesRecord: true,
  noCure: 'Only a requirement on a computed quantity can be verified.',
  overModes: 'asks every mover',
  examples: examples(() => ({
    failing: changed(REQUIRED, [
      'require shaft torque at most 3000 N.m at full power',
      'require noise at most 72 percent',
    ]),
    passing: REQUIRED,
    cannotTell:
      'Whether a check stands behind a requirement shows from its words alone; nothing has to be known for it.',
  })),
};

export const requirementUnverified: Rule = { ...INFO, scope: 'vessel', check };

function check(context: Context): Verdict | Apart<Verdict> {
  const { vessel } = context;
  const say = sayFor(INFO, vessel.name);
  const built = proposalsOf(vessel).some(one => one.lines.length > 0);
  const open = each(vessel.requirements, requirement => {
    const found = verificationOf(requirement);
    if (found.by === 'unread') return undefined;
    const why =
      found.by === 'nothing' ? found.why : built ? undefined : 'there is no shaft line to compare it with';
    if (why === undefined) return undefined;
    const meant = found.by === 'nothing' ? found.meant : undefined;
    const routes = (): Route[] =>
      meant
        ? [
            {
              title: `Require ${meantWords(meant)}: a check computes that`,
              edits: [{ do: 'require', at: requirement.origin, requirement: meant }],
            },
          ]
        : [];
    return say.fails({
      place: requirement.origin,
      answers: requirement.origin,
      message: `Nothing verifies "require ${requirement.written}": ${why}. Word it so that a check verifies it, or accept this and name who verifies it.`,
      routes,
    });
  });
  const first = vessel.requirements[0];
  const unread = vessel.requirements.some(one => verificationOf(one).by === 'unread');
  if (open.length > 0 || !first || unread) return open;
  return say.holds({
    place: first.origin,
    message: `${vessel.name}: each of ${vessel.requirements.length} requirement${vessel.requirements.length > 1 ? 's' : ''} is judged by a check, which says whether it is met.`,
  });
}

function meantWords({ about, bound, quantity, condition, mode }: NewRequirement): string {
  return `${about} ${bound} ${quantity.written}${condition === undefined ? '' : ` at ${condition}`}${mode === undefined ? '' : ` in mode ${mode}`}`;
}
