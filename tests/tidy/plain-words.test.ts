import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { RULES } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { TEXT_FINDINGS } from '../../packages/language/src/manual/text-findings.js';
import { everyBlock } from '../../packages/vocabulary/test/every-row.js';

const root = join(import.meta.dirname, '../..');

/** Turns of phrase that only a translation would choose, with what a surveyor writes. */
const REFUSED: readonly (readonly [phrase: RegExp, instead: string])[] = [
  [/cannot be told\b(?! apart)/, 'cannot tell whether ...'],
  [/\b(?:is|are) told\b/, 'is reported'],
  [/says? (?:nothing|little) (?:of|about)\b/, 'does not cover, has no data on'],
  [/\bstands? on the (?:sheet|beds)\b/, 'is listed on the sheet, lines up with the beds'],
  [/\b(?:below|above) nil\b/, 'below zero'],
  [/\bwhat becomes of\b/, 'state an action for'],
  [/\bfor want of\b/, 'for lack of'],
  [/\bput(?:s)? (?:it |them |this )?right\b/, 'correct'],
  [/\bwaits? for (?:\$\{|it\b|them\b)/, 'needs'],
  [/\b(?:come|comes) to rest\b/, 'seats'],
  [/\bnobody can\b|\bnobody knows\b/, 'it is unclear'],
  [/(?<!there )\bis no (?:number|date|property|vessel|ratio|prediction|proof)\b/, 'is not a'],
  [/\bwhen not said\b/, 'when not stated'],
  [/\bborne out\b/, 'confirms'],
  [/\bhas (?:no )?part in it\b/, 'plays no part'],
  [/\bWhat sort of\b/, 'Kind of'],
];

const PACKAGES = ['drivetrain', 'language', 'sheet', 'cli', 'vscode', 'vocabulary'];

/** Lines of a source that hold words for people: not its comments. */
function spokenLines(source: string): string[] {
  return source.split('\n').filter(line => {
    const code = line.trim();
    return /['"`]/.test(code) && !/^(?:\/\/|\/\*|\*)/.test(code);
  });
}

it('what people read is plain trade English', () => {
  const found = PACKAGES.flatMap(name => {
    const folder = join(root, 'packages', name, 'src');
    return readdirSync(folder, { recursive: true, encoding: 'utf8' })
      .filter(path => path.endsWith('.ts') && !path.includes('generated'))
      .flatMap(path =>
        spokenLines(readFileSync(join(folder, path), 'utf8')).flatMap(line =>
          REFUSED.filter(([phrase]) => phrase.test(line)).map(
            ([, instead]) => `${name}/${path}: ${line.trim()} (write: ${instead})`,
          ),
        ),
      );
  });
  expect(found).toEqual([]);
});

/** Words from one stop to the next that a reader takes in at once. */
const MOST = 40;

it('no page, caution or hover runs on', () => {
  const texts = [
    ...RULES.flatMap(({ id, manual, caution, title, criterion }) =>
      [manual, caution, title, criterion].map(text => [id, text ?? ''] as const),
    ),
    ...TEXT_FINDINGS.flatMap(({ code, title, manual }) => [title, manual].map(text => [code, text] as const)),
    ...everyBlock().flatMap(([path, { rows, blocks }]) =>
      [...rows, ...blocks].map(({ words, doc }) => [`${path} ${words}`, doc] as const),
    ),
  ];
  const long = texts.flatMap(([of, text]) =>
    text
      .split(/[.:;!?] /)
      .filter(part => part.split(/\s+/).length > MOST)
      .map(part => `${of}: ${part}`),
  );
  expect(long).toEqual([]);
});
