import type { LexerResult } from 'langium';

type LexerError = LexerResult['errors'][number];

/** Signs at which Unicode ends a line and a spec does not, and those that show a text in another order than it has. */
const ANY = /[\v\f\u0085\u2028\u2029\u202a-\u202e\u2066-\u2069]/;
const TURNS = /[\u202a-\u202e\u2066-\u2069]/;
/** A line that seems to end there, with something behind it that is still the comment. */
const SEEMS_TO_END = /[\v\f\u0085\u2028\u2029](?=.*[^\s\u0085])/s;

/** As in `open-comment.ts`: what is quoted, and comments of a line or of several. */
const LOOK =
  /[\d\u00BC-\u00BE\u2150-\u215E]"(?![^\s}\])\u00D7,;])|"[^"\r\n]*"?|\/\/[^\r\n]*|\/\*[\s\S]*?\*\//g;

/**
 * Comments and quoted texts that are read otherwise than they look: half of a comment may look like a statement that is
 * judged, and a figure like another. Between words such signs are errors by themselves, or space.
 */
export function misleadingSigns(text: string): LexerError[] {
  if (!ANY.test(text)) return [];
  const errors: LexerError[] = [];
  for (const { 0: found, index } of text.matchAll(LOOK)) {
    if (!/^["/]/.test(found)) continue;
    const ends = found.startsWith('//') ? found.search(SEEMS_TO_END) : -1;
    const at = [ends, found.search(TURNS)].filter(one => one >= 0).sort((a, b) => a - b)[0];
    if (at === undefined) continue;
    const sign = `U+${found.charCodeAt(at).toString(16).padStart(4, '0').toUpperCase()}`;
    const before = text.slice(0, index + at).split('\n');
    errors.push({
      offset: index + at,
      length: 1,
      line: before.length,
      column: before.at(-1)!.length + 1,
      message:
        at === ends
          ? `The line only seems to end here (${sign}): what follows is still the comment, and is not read. Break the line, or delete the sign.`
          : `An invisible sign (${sign}) shows this text in another order than it is read in. Delete it.`,
    });
  }
  return errors;
}
