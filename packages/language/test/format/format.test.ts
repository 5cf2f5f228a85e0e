import { readdirSync, readFileSync } from 'node:fs';
import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { share } from '../../../../tests/support/share.js';
import { formatText } from '../../src/format/format-text.js';

describe('the formatter', () => {
  const cases: [what: string, before: string, after: string][] = [
    [
      'indents by two spaces, one statement a line',
      'vessel V {\nhull planing\n      arrangement a { \n shaftline Port {\n gear G   ratio 2:1\n}}}\n',
      'vessel V {\n  hull planing\n  arrangement a {\n    shaftline Port {\n      gear G ratio 2:1\n    }\n  }\n}\n',
    ],
    [
      'sets apart numbers and units',
      'engine E {\n  mass 980kg\n  rating medium{power 300kW at 2300rpm}\n}\n',
      'engine E {\n  mass 980 kg\n  rating medium { power 300 kW at 2300 rpm }\n}\n',
    ],
    [
      'sets apart the ends of a range',
      'gear G { oil pressure 20..24bar }\n',
      'gear G { oil pressure 20 .. 24 bar }\n',
    ],
    [
      'leaves fractions, ratios, dates and hyphens whole',
      'shaft material M { source "S-201  rev C" dated 2025-03-01 }\ngear G { ratio 2.04:1 exact 2.043:1 }\n',
      'shaft material M { source "S-201  rev C" dated 2025-03-01 }\ngear G { ratio 2.04:1 exact 2.043:1 }\n',
    ],
    [
      'puts two spaces between facts of a line',
      'propeller P { blades 4 diameter 23 in     pitch 24 in }\n',
      'propeller P { blades 4  diameter 23 in  pitch 24 in }\n',
    ],
    [
      'puts each fact of a longer block on its line',
      'propeller P {\n  blades 4  diameter 23 in\n  pitch 24 in }\n',
      'propeller P {\n  blades 4\n  diameter 23 in\n  pitch 24 in\n}\n',
    ],
    [
      'keeps what belongs to a clutch on its line',
      'gear G {\n  clutch A output same ahead continuous clutch B output opposite\n  rated medium    0.112kW/rpm from 1000..2600rpm\n}\n',
      'gear G {\n  clutch A  output same  ahead continuous\n  clutch B  output opposite\n  rated medium 0.112 kW/rpm  from 1000 .. 2600 rpm\n}\n',
    ],
    [
      'puts evidence behind its value',
      'propeller P { hand left[ measured 2026-01-14 ] blades 3 [plate] }\n',
      'propeller P { hand left [measured 2026-01-14]  blades 3 [plate] }\n',
    ],
    [
      'breaks a line that is too long',
      `propeller P { source "${'x'.repeat(80)}" dated 2025-04-04  blades 4 }\n`,
      `propeller P {\n  source "${'x'.repeat(80)}" dated 2025-04-04\n  blades 4\n}\n`,
    ],
    ['keeps an empty block as it was', 'gear G {}\ngear H {\n\n}\n', 'gear G { }\ngear H {\n}\n'],
    ['brings the brace up to its header', 'gear G\n{\n  mass 9 kg\n}\n', 'gear G {\n  mass 9 kg\n}\n'],
    [
      'keeps comments of every kind',
      '// first\n/* a\n   b */\n/// doc\ngear G { // old\n    // own line\n  mass 9 kg// trailing\n  /* inside */ layout V-drive /* behind */\n  // last\n}// end\n',
      '// first\n/* a\n   b */\n/// doc\ngear G {  // old\n  // own line\n  mass 9 kg  // trailing\n  /* inside */ layout V-drive  /* behind */\n  // last\n}  // end\n',
    ],
    [
      'keeps comments between the words of a header',
      'gear /* a */ G // old\n{ mass 9 kg }\n',
      'gear /* a */ G  // old\n{ mass 9 kg }\n',
    ],
    [
      'keeps at most one blank line between groups',
      'gear G {\n\n\n  mass 9 kg\n\n\n\n  layout V-drive\n\n}\n\n\n\ngear H { }\n',
      'gear G {\n  mass 9 kg\n\n  layout V-drive\n}\n\ngear H { }\n',
    ],
    [
      'keeps the lines of a sentence',
      'vessel V {\n  accept shafting/span-guide on Port.shaft because "x"\n         by "class surveyor" until 2027-03-01\n  require   speed at most 5.0kn\n}\n',
      'vessel V {\n  accept shafting/span-guide on Port.shaft because "x"\n      by "class surveyor" until 2027-03-01\n  require speed at most 5.0 kn\n}\n',
    ],
    [
      'keeps a short line on its line',
      'vessel V {\n  arrangement a {\n    shaftline Starboard mirrors Port {ahead clutch B propeller hand right}\n  }\n}\n',
      'vessel V {\n  arrangement a {\n    shaftline Starboard mirrors Port { ahead clutch B  propeller hand right }\n  }\n}\n',
    ],
    ['puts statements that share a line on their own', 'gear G { } gear H { }\n', 'gear G { }\ngear H { }\n'],
    ['adds no line end at the end', 'gear G { }', 'gear G { }'],
    ['drops blank lines around the text', '\n\ngear G { }\n\n\n', 'gear G { }\n'],
    ['leaves an empty text alone', '', ''],
  ];
  it.each(cases)('%s', (_, before, after) => {
    expect(formatText(before)).toBe(after);
    expect(formatText(after)).toBe(after);
    const dos = before.replaceAll('\n', '\r\n');
    expect(formatText(dos)).toBe(after.replaceAll('\n', '\r\n'));
    expect(formatText(`\uFEFF${dos}`)).toBe(`\uFEFF${after.replaceAll('\n', '\r\n')}`);
  });
});

describe('what cannot be read', () => {
  const cases: [what: string, before: string, after: string][] = [
    [
      'is left alone as a block, and the rest is not',
      'gear G {\n mass   9kg\n   colour    red\n}\ngear H {\n mass   9kg\n}\n',
      'gear G {\n mass   9kg\n   colour    red\n}\ngear H {\n  mass 9 kg\n}\n',
    ],
    [
      'is left alone inside a line',
      'vessel V {\n arrangement a {\nshaftline Port {\ngear   G\nblah   blah\npropeller   { blades 4 }\n}}}\n',
      'vessel V {\n  arrangement a {\n    shaftline Port {\n      gear G\n      blah   blah\n      propeller { blades 4 }\n    }\n  }\n}\n',
    ],
    [
      'is left alone from a brace that is never closed',
      'gear   G { mass 9kg }\nvessel   V {\n hull   planing\n',
      'gear G { mass 9 kg }\nvessel   V {\n hull   planing\n',
    ],
    [
      'is left alone around an open quote',
      'gear   G {\n source "sheet\n mass 9kg\n}\n',
      'gear G {\n source "sheet\n mass 9kg\n}\n',
    ],
    [
      'is left alone where a value is missing',
      'gear   G {\n mass\n layout   V-drive\n}\n',
      'gear G {\n mass\n layout   V-drive\n}\n',
    ],
    [
      'is left alone behind an extra brace',
      'gear   G { }\n}\n  gear   H { }\n',
      'gear G { }\n}\ngear H { }\n',
    ],
    [
      'keeps an open quote in a header from what follows',
      'gear   G "title\n{ mass   9kg }\n',
      'gear G "title\n{ mass 9 kg }\n',
    ],
  ];
  it.each(cases)('%s', (_, before, after) => {
    expect(formatText(before)).toBe(after);
    expect(formatText(after)).toBe(after);
  });
});

describe('specs that exist', () => {
  it('are changed by nothing but space, and only once', () => {
    const specs = RULES.flatMap(rule => Object.values(rule.examples())).filter(one => one.includes('{'));
    expect(specs.length).toBeGreaterThan(5);
    for (const spec of share([...specs, ...files('examples')], 120)) {
      const once = formatText(spec);
      expect(once.replace(/\s/g, '')).toBe(spec.replace(/\s/g, ''));
      expect(formatText(once)).toBe(once);
    }
  });
});

/** Texts of all specs in a folder of the project. */
function files(folder: string): string[] {
  const root = new URL(`../../../../${folder}/`, import.meta.url);
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .filter(path => path.endsWith('.shaft'))
    .map(path => readFileSync(new URL(path, root), 'utf8'));
}
