import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Severity, Verdict } from '../../judge/verdict.js';
import { type Damage, type DamageKind, damagesOf, damageWords, sizesAndRatings } from '../../model/damage.js';
import { nameOf, type Part } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { MADE_GOOD } from './damage-specs.js';
import { DEFER, PRACTICE } from './sources.js';

const INFO: RuleInfo = {
  id: 'shafting/damage-made-good',
  title: 'A damaged part is made good before it is retained',
  mistakes: [],
  severity: 'error',
  criterion: 'damage recorded for a part of the line, and the repair recorded with it',
  source: PRACTICE,
  manual:
    'The figures of a part apply to a sound part: a cracked shaft is unsafe at any diameter, and a bent one whirls at any speed. Record it in a "damage" block of the part: what was found, where, when, and by whom. ' +
    'Until the block says what was done ("made good"), no check passes on the sizes and ratings of that part, and what failed still fails. Replace the part, or make it good, prove it, and write how. Tell class and flag ' +
    'before the work, where the vessel has them: a casualty to the machinery has its own notices.',
  caution:
    `${DEFER} Whether a bent shaft may be straightened, or a crack ground out, depends on its material; many ` +
    'yards and societies allow neither.',
  noFigure: 'no number is compared',
  noCure: 'Only replacement or repair settles it.',
  examples: examples(() => ({
    failing: changed(MADE_GOOD, [
      '          made good "straightened, 0.05 mm between centres, crack-tested"\n          made good on 2025-12-01\n',
      '',
    ]),
    passing: MADE_GOOD,
    cannotTell: changed(MADE_GOOD, ['seen by "yard foreman, shaft drawn"', 'seen by unknown']),
  })),
};

export const damageMadeGood: Rule = { ...INFO, scope: 'line', check };

/** What may be run on with while it is watched. */
const LESSER: ReadonlySet<DamageKind> = new Set<DamageKind>(['worn', 'corroded', 'struck', 'overheated']);

function check({ line }: LineContext): Apart<Verdict> {
  return each(line.chain, part => each(damagesOf(part), one => judge(line.name, part, one)));
}

function judge(line: string, part: Part, damage: Damage): Verdict {
  const say = sayFor(INFO, part.path);
  const needs = new Needs();
  const record = `${line}: ${nameOf(part)} was found ${damageWords(damage)}`;
  const severity: Severity = LESSER.has(damage.what) ? 'warning' : 'error';
  const done = damage.madeGood;
  if (!done) {
    return say.fails({
      place: damage.origin,
      severity,
      outweighs: sizesAndRatings(part),
      message: `${record}, and the spec does not say that it was made good. No check passes on its figures until then: replace it, or make it good and state how. Notify class and flag, where the vessel has them.`,
    });
  }
  const ask = (fact: Damage['at'] | Damage['seenBy'], what: string, property: string) =>
    needs.fact<string>(fact, {
      what: `${what} ${nameOf(part)} of ${line} was found ${damage.what}`,
      host: damage.origin,
      property,
    });
  needs.fact(done, {
    what: `what was done about ${nameOf(part)} of ${line}`,
    host: damage.origin,
    property: 'made good',
  });
  ask(damage.at, 'where', 'at');
  ask(damage.dated, 'when', 'dated');
  const who = ask(damage.seenBy, 'by whom', 'seen by');
  if (needs.any) return waits(say, needs, damage.origin, `${record}: whether it may be retained`);
  return say.holds({
    place: damage.origin,
    message: `${record} (${who}), and made good: ${done!.value}.`,
  });
}
