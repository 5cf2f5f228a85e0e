import { describe, expect, it } from 'vitest';
import { checkText } from '../../../../tests/support/check.js';
import { changed, SINGLE_LINE } from '../../../drivetrain/src/rules/example-specs.js';
import { formatText } from '../../src/format/index.js';

/** Signs that Unicode breaks a line at (UAX 14, classes BK and NL), where no editor that we know of does. */
const BREAKS = ['\v', '\f', '\u0085', '\u2028', '\u2029'];
/** Signs that show a text in another order than it is read in (UAX 9, explicit formatting). */
const TURNS = ['\u202a', '\u202b', '\u202c', '\u202d', '\u202e', '\u2066', '\u2067', '\u2068', '\u2069'];
const CODE = (sign: string) => `U+${sign.charCodeAt(0).toString(16).padStart(4, '0').toUpperCase()}`;

const FIRST = 'vessel Ternhaven';
const errorsOf = async (text: string) =>
  (await checkText(text)).check.problems.filter(one => one.code === 'text/syntax');

describe('what a comment or a quoted text shows is what is read', () => {
  it.each(BREAKS)('a line that only seems to end within a comment: %j', async sign => {
    // Everything behind the sign is a comment, though it looks like a line of its own.
    const text = changed(SINGLE_LINE, [FIRST, `// as built${sign}${FIRST}`]);
    const found = await errorsOf(text);
    expect(found.map(one => text.slice(one.start, one.end))).toContain(sign);
    expect(found.map(one => one.message).join()).toContain(CODE(sign));
  });

  it.each(BREAKS)('unless nothing stands behind it: %j', async sign => {
    expect(await errorsOf(changed(SINGLE_LINE, [FIRST, `// as built${sign} \n${FIRST}`]))).toEqual([]);
    expect(await errorsOf(changed(SINGLE_LINE, [FIRST, `/* as${sign}built */\n${FIRST}`]))).toEqual([]);
  });

  it.each(TURNS)('text that is shown in another order: %s', async sign => {
    for (const where of [`// as ${sign}built\n`, `/* as ${sign}built */ `, `/// as ${sign}built\n`]) {
      const text = changed(SINGLE_LINE, [FIRST, `${where}${FIRST}`]);
      const [found, ...more] = await errorsOf(text);
      expect(text.slice(found!.start, found!.end)).toBe(sign);
      expect(found!.message).toContain(CODE(sign));
      expect(more).toEqual([]);
    }
    const quoted = `vessel A "as ${sign}built" { }\n`;
    expect((await errorsOf(quoted)).map(one => quoted.slice(one.start, one.end))).toEqual([sign]);
  });

  it('is told once for each comment or text, and laid out without a change', async () => {
    const text = '// a\u202eb\u2028c\n// d\u202ee\nvessel A "\u202ef" { }\n';
    expect((await errorsOf(text)).map(one => one.start)).toEqual([4, 13, 26]);
    expect(formatText(text)).toBe(text);
  });

  it('says nothing of letters from other scripts and their own marks', async () => {
    expect(await errorsOf('// שלום\u200f, سلام\u200e, Fløy\u00a0x\nvessel A "שלום" { }\n')).toEqual([]);
  });
});
