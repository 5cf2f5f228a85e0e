import { silentTopics } from '@tailshaft/drivetrain';
import { element, joined, type Markup } from '../document/markup.js';
import type { Sheet } from '../sheet.js';

/** Of what the spec says nothing in these lines or their arrangement, so that no check spoke: a click away, but counted. */
export function notLookedAtHtml(sheet: Sheet, paths: readonly string[]): Markup {
  const topics = silentTopics(sheet.vessel, sheet.input.verdicts).filter(one =>
    one.subjects.some(path => paths.includes(path)),
  );
  if (topics.length === 0) return joined();
  return element(
    'details',
    { 'data-keep': 'not assessed' },
    element('summary', {}, `${topics.length} not assessed (nothing declared)`),
    element(
      'ul',
      {},
      topics.map(one =>
        element(
          'li',
          {},
          `${one.of}: `,
          one.rules.flatMap((rule, index) => [
            index > 0 ? ', ' : '',
            element('button', { type: 'button', class: 'rule', 'data-rule': rule }, rule),
          ]),
        ),
      ),
    ),
  );
}
