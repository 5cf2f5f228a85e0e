import { describe, expect, it } from 'vitest';
import { SPEC, withChange } from './specs.js';
import { positionOf, Testbed } from './testbed.js';

const bed = new Testbed();

/** The hover at the beginning of these words of the spec. */
async function hover(words: string, spec = SPEC): Promise<string> {
  const offset = spec.indexOf(words);
  if (offset < 0) throw new Error(`the spec does not say "${words}"`);
  const document = await bed.open(spec);
  const found = await bed.services.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return found ? (found.contents as { value: string }).value : '';
}

describe('hover on a property', () => {
  it('says what it means, what its value looks like, and an example', async () => {
    expect(await hover('low idle')).toMatchInlineSnapshot(`
      "**low idle** · engine

      Governed minimum speed.

      Value: a rotational speed with its unit. \`unknown\` marks an open question.

      \`\`\`tailshaft
      low idle 650 rpm
      \`\`\`"
    `);
    expect(await hover('clutch A output')).toContain('output sense and whether it may run ahead');
    expect(await hover('at medium')).toContain('by its duty class');
  });
});

describe('hover on a value', () => {
  it('says it in other units, how it is known, and what it drives, with the working', async () => {
    const text = await hover('300 kW');
    expect(text).toContain('**300 kW** = 300000 W; 402.3 hp, 407.9 PS');
    expect(text).toContain('**2300 rpm** = 240.86 rad/s');
    expect(text).toContain('Evidence: none stated here.');
    expect(text).toContain('shaft torque at rated power: **2468 N·m** (proposed.Port, proposed.Starboard)');
    expect(text).toMatch(/capacity\/gear-input-torque of proposed\.Port: holds, margin \*\*\+\d+ %\*\*/);
    expect(text).toContain('`T = 300 kW / 2300 rpm = 1246 N·m`');
    expect(text).toContain('2300 rpm');
  });
  it('follows only what rests on it', async () => {
    const text = await hover('650 rpm');
    expect(text).toContain('shaft speed at idle');
    expect(text).not.toContain('at rated power');
  });
  it('says how it is known', async () => {
    expect(await hover('65 mm [drawing]')).toContain('Known how: taken from a drawing.');
    expect(await hover('65 mm', withChange('65 mm [drawing]', '65 mm [hearsay]'))).toContain(
      'hearsay: no rotation check passes on it',
    );
  });
  it('says the same rotation in the words of every convention', async () => {
    expect(await hover('standard viewed')).toMatchInlineSnapshot(`
      "**rotation** · Which way the crankshaft turns, and from where that is seen. Standard is counter-clockwise at the flywheel end (SAE J824).

      \`standard viewed from flywheel\`

      The same rotation elsewhere:

      - SAE J824, viewed from flywheel: standard (counter-clockwise)
      - US inboard trade, viewed from flywheel: LH, standard
      - ISO 1204, viewed from flywheel: counter-clockwise (left)
      - DIN 73021, viewed from front: right (clockwise)
      - front end of the engine, viewed from front: clockwise"
    `);
  });
  it('names an open question', async () => {
    expect(await hover('unknown', withChange('650 rpm', 'unknown'))).toContain('An open question');
  });
});

describe('hover on a unit', () => {
  it('says what it is, and the value in others', async () => {
    const text = await hover('kW at 2300');
    expect(text).toContain('**kilowatt**');
    expect(text).toContain('**300 kW** = 300000 W; 402.3 hp');
    expect(text).not.toContain('2300');
  });
});

describe('hover on parts and lines', () => {
  it('shows an entry with its source, its users and how it fares', async () => {
    for (const words of ['Kittiwake-9 "six', 'Kittiwake-9 at']) {
      const text = await hover(words);
      expect(text).toContain('**engine Kittiwake-9** · six-cylinder diesel');
      expect(text).toContain('A six-cylinder diesel.');
      expect(text).toContain('Source: "Kittiwake 9 data sheet, issue 2" dated 2025-01-20');
      expect(text).toContain('Used in Ternhaven proposed.Port, Ternhaven proposed.Starboard.');
      expect(text).toMatch(/Checks of this part: \d+ hold, 0 fail, 0 cannot tell/);
    }
    expect(await hover('Rowan-7 "small')).toContain('Not used by a vessel that is loaded.');
    expect(await hover('high-strength-stainless  diam')).toContain('Used in Ternhaven proposed.Port');
  });
  it('tells the rotation of the line on its hand, step by step', async () => {
    const text = await hover('left [drawing]');
    expect(text).toContain('1. engine Kittiwake-9: standard (SAE J824)');
    expect(text).toContain('2. gear Alder-63, clutch A: output same as input');
    expect(text).toContain('It needs a **left-hand** propeller.');
    const wrong = await hover('right [drawing]', withChange('hand left', 'hand right'));
    expect(wrong).toContain('It needs a **left-hand** propeller, and has a right-hand one.');
  });
  it('counts the checks of line, arrangement and vessel', async () => {
    expect(await hover('Port {')).toMatch(/shaft line proposed\.Port\*\* · \d+ hold, 0 fail, 0 cannot tell/);
    expect(await hover('Port {')).toContain('shaft speed at rated power: **1126 rpm**');
    expect(await hover('Ternhaven')).toMatch(/All checks: \d+ hold, 0 fail/);
    const failing = await hover('proposed {', withChange('hand left', 'hand right'));
    expect(failing).toMatch(/1 fails.*\n\n- \*\*fails\*\* rotation\/propeller-hand/);
  });
  it('explains the words of the trade', async () => {
    expect(await hover('continuous')).toContain('full power ahead for as long as the vessel runs');
    expect(await hover('medium { hours')).toContain('Medium duty class');
    expect(await hover('same ahead')).toContain('both seen from aft');
  });
  it('shows the page of a rule where it is accepted', async () => {
    const accepting = withChange(
      '    }\n  }\n}\n',
      '    }\n  }\n  accept rotation/propeller-hand on Port\n}\n',
    );
    const text = await hover('rotation/propeller-hand', accepting);
    expect(text).toContain('**rotation/propeller-hand** · The propeller drives ahead with the lever ahead');
    expect(text).toContain('Criterion: ');
  });
});

describe('hover on nothing', () => {
  it('says nothing', async () => {
    expect(await hover('{ hours')).toBe('');
    expect(await hover('// quiet', `${SPEC}// quiet\n`)).toBe('');
  });
});
