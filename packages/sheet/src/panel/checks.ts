import { findRule, type Outcome, type Verdict, worstFirst } from '@tailshaft/drivetrain';
import { percent } from '@tailshaft/mechanics';
import { element, joined, type Markup } from '../document/markup.js';
import { VERDICT_SIGN } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** How many checks that lack data stand in the open; the others are a click away. */
const OPEN = 4;

/** The checks that ask for attention: every failure, and the first of what could not be told. */
export function openChecksHtml(sheet: Sheet, verdicts: readonly Verdict[]): Markup {
  const failing = worstFirst(verdicts).filter(one => one.outcome === 'fails');
  const unsure = [
    ...verdicts.filter(one => one.outcome === 'cannot tell'),
    ...worstFirst(verdicts).filter(one => one.outcome === 'accepted'),
  ];
  const shown = [...failing, ...unsure.slice(0, OPEN)];
  if (shown.length === 0)
    return element(
      'p',
      {},
      verdicts.length > 0 ? 'Nothing fails and nothing is open.' : 'No check was made.',
    );
  return joined(
    element(
      'ul',
      { class: 'checks' },
      shown.map(one => check(sheet, one)),
    ),
    folded(sheet, 'more without data, or accepted', unsure.slice(OPEN)),
  );
}

/** What holds, and what does not apply, folded away. */
export function quietChecksHtml(sheet: Sheet, verdicts: readonly Verdict[]): Markup {
  const of = (outcome: Outcome) => verdicts.filter(one => one.outcome === outcome);
  return joined(folded(sheet, 'hold', of('holds')), folded(sheet, 'do not apply', of('does not apply')));
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
      one.margin === undefined ? undefined : `margin ${percent(one.margin)} · `,
      one.criterion
        ? `${one.criterion}${one.criterionChosenBy === 'default' ? ' (default)' : ''} · `
        : undefined,
      element('button', { type: 'button', class: 'rule', 'data-rule': one.rule }, one.rule),
    ),
  );
}
