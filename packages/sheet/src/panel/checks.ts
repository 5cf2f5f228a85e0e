import { findRule, type Outcome, type Verdict } from '@tailshaft/drivetrain';
import { element, joined, type Markup } from '../document/markup.js';
import { VERDICT_SIGN } from '../document/text.js';
import type { Sheet } from '../sheet.js';
import { percentWords } from '../words.js';

const LOUD: readonly Outcome[] = ['fails', 'cannot tell', 'accepted'];

/** The checks with their verdicts: what asks for attention in the open, the rest folded away. */
export function checksHtml(sheet: Sheet, verdicts: readonly Verdict[]): Markup {
  const loud = LOUD.flatMap(outcome => verdicts.filter(one => one.outcome === outcome));
  const of = (outcome: Outcome) => verdicts.filter(one => one.outcome === outcome);
  return joined(
    loud.length > 0
      ? element(
          'ul',
          { class: 'checks' },
          loud.map(one => check(sheet, one)),
        )
      : element(
          'p',
          {},
          verdicts.length > 0 ? 'Nothing fails and nothing is left open.' : 'No check was made.',
        ),
    folded(sheet, 'hold', of('holds')),
    folded(sheet, 'do not apply', of('does not apply')),
  );
}

function folded(sheet: Sheet, words: string, verdicts: readonly Verdict[]): Markup {
  if (verdicts.length === 0) return joined();
  return element(
    'details',
    { 'data-keep': words },
    element('summary', {}, `${verdicts.length} ${words}`),
    element(
      'ul',
      { class: 'checks' },
      verdicts.map(one => check(sheet, one)),
    ),
  );
}

/** One check: a button that leads to the text, what it says, and a way to its page. */
function check(sheet: Sheet, one: Verdict): Markup {
  const title = findRule(one.rule)?.title ?? one.rule;
  const heading = joined(
    element(
      'span',
      { class: `verdict ${one.outcome.replaceAll(' ', '-')}` },
      element('span', { class: 'sign', 'aria-hidden': 'true' }, VERDICT_SIGN[one.outcome]),
      ` ${one.outcome}`,
    ),
    ' ',
    element('span', { class: 'title' }, `${one.subject}: ${title}`),
  );
  const place = sheet.input.placeKey?.(one.place);
  return element(
    'li',
    { class: 'check' },
    place === undefined
      ? element('p', {}, heading)
      : element('button', { type: 'button', class: 'go', 'data-place': place }, heading),
    element('p', {}, one.message),
    element(
      'p',
      { class: 'quiet' },
      one.margin === undefined ? undefined : `margin ${percentWords(one.margin)} · `,
      one.criterion ? `${one.criterion} · ` : undefined,
      element('button', { type: 'button', class: 'rule', 'data-rule': one.rule }, one.rule),
    ),
  );
}
