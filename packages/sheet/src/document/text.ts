import type { Outcome } from '@tailshaft/drivetrain';
import type { Origin } from '@tailshaft/mechanics';

/** Running text of the sheet, with the few marks that it knows. */
export type Text = string | Mark | readonly Text[];

export type Mark =
  | { readonly as: 'strong' | 'code' | 'quiet' | 'warning' | 'together'; readonly text: Text }
  /** A verdict: a sign and a word, never a colour alone. */
  | { readonly as: 'verdict'; readonly outcome: Outcome }
  /** A place of the spec: `ternhaven.shaft:23`. */
  | { readonly as: 'place'; readonly text: string; readonly origin: Origin }
  /** A reference within the sheet: `W12`. */
  | { readonly as: 'reference'; readonly text: string; readonly to: string }
  /** What a host does when somebody presses it: words alone where there is none. */
  | { readonly as: 'act'; readonly text: string; readonly act: string }
  | { readonly as: 'anchor'; readonly text: string; readonly id: string }
  | { readonly as: 'break' };

export const strong = (text: Text): Mark => ({ as: 'strong', text });
export const code = (text: Text): Mark => ({ as: 'code', text });
export const quiet = (text: Text): Mark => ({ as: 'quiet', text });
export const warning = (text: Text): Mark => ({ as: 'warning', text });
export const verdict = (outcome: Outcome): Mark => ({ as: 'verdict', outcome });
/** Words that stay on one line. */
export const together = (text: Text): Mark => ({ as: 'together', text });
export const lineBreak: Mark = { as: 'break' };

/** Parts with something between them; empty ones are left out. */
export function separated(between: Text, ...parts: readonly (Text | undefined)[]): Text {
  const kept = parts.filter((one): one is Text => one !== undefined && one !== '');
  return kept.flatMap((one, index) => (index === 0 ? [one] : [between, one]));
}

/** A sign for each verdict, for those who do not see the colour. */
export const VERDICT_SIGN: Readonly<Record<Outcome, string>> = {
  holds: '✓',
  fails: '✕',
  'cannot tell': '?',
  'does not apply': '–',
  accepted: '⚑',
};

/** The words alone. */
export function plainText(text: Text): string {
  if (typeof text === 'string') return text;
  if (!('as' in text)) return text.map(plainText).join('');
  if (text.as === 'verdict') return `${VERDICT_SIGN[text.outcome]} ${text.outcome}`;
  if (text.as === 'break') return '\n';
  return plainText(text.text);
}
