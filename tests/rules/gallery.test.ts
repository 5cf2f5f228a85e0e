import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { RULES } from '@tailshaft/drivetrain';
import { formatText } from '@tailshaft/language';
import { expect, it } from 'vitest';
import { type Checked, checkText } from '../support/check.js';

/** `examples/mistakes` is made from the rules: run with UPDATE_GALLERY=1 after a rule changed. */
const folder = join(import.meta.dirname, '..', '..', 'examples', 'mistakes');
const update = process.env.UPDATE_GALLERY !== undefined;
const fileOf = (id: string) => id.replace('/', '-');

/** Each finding on a line: place, weight, rule, message. */
function expected(checked: Checked): string {
  return checked.findings
    .map(one => {
      const before = checked.text.slice(0, one.place.start).split('\n');
      return `${before.length}:${before.at(-1)!.length + 1} ${one.severity} ${one.code}\n    ${one.message}\n`;
    })
    .join('');
}

if (update) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
}

it.each(RULES.map(rule => [rule.id, rule] as const))(
  '%s has its mistake in the gallery',
  async (id, rule) => {
    const spec = join(folder, `${fileOf(id)}.shaft`);
    const finding = join(folder, `${fileOf(id)}.expected.txt`);
    const text = formatText(
      `// ${rule.title}. ${rule.mistakes.length > 0 ? `Mistake ${rule.mistakes.join(', ')}. ` : ''}See: tailshaft explain ${id}\n\n${rule.examples().failing}`,
    );
    const found = expected(await checkText(text));
    if (update) {
      writeFileSync(spec, text);
      writeFileSync(finding, found);
    }
    expect(readFileSync(spec, 'utf8')).toBe(text);
    expect(readFileSync(finding, 'utf8')).toBe(found);
  },
);

it('holds nothing else', () => {
  const known = new Set(
    RULES.flatMap(rule => [`${fileOf(rule.id)}.shaft`, `${fileOf(rule.id)}.expected.txt`]),
  );
  expect(existsSync(folder) ? readdirSync(folder).filter(name => !known.has(name)) : []).toEqual([]);
});
