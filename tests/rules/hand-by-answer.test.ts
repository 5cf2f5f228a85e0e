import { findRule } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { checkText } from '../support/check.js';

const SPEC = findRule('rotation/propeller-hand')!.examples().passing;
const without = (...parts: readonly string[]) =>
  parts.reduce((text, part) => {
    if (!text.includes(part)) throw new Error(`nothing reads ${part}`);
    return text.replace(part, '');
  }, SPEC);

/** How each answer is written, in the place of what was taken out. */
const WRITTEN: Readonly<Record<string, readonly [out: string, put: string]>> = {
  'engine rotation standard': [
    '  rotation standard viewed from flywheel\n',
    '  rotation standard viewed from flywheel\n',
  ],
  'engine rotation opposite': [
    '  rotation standard viewed from flywheel\n',
    '  rotation opposite viewed from flywheel\n',
  ],
  'flywheel aft': [' { flywheel aft }', ' { flywheel aft }'],
  'flywheel forward': [' { flywheel aft }', ' { flywheel forward }'],
  'ahead clutch A': [' ahead clutch B', ' ahead clutch A'],
  'ahead clutch B': [' ahead clutch B', ' ahead clutch B'],
};

async function handOf(text: string) {
  const { check } = await checkText(text);
  return check.vessels[0]!.verdicts.flatMap(one => [one, ...(one.folds ?? [])]).find(
    one => one.rule === 'rotation/propeller-hand',
  )!;
}

describe('the table of answers on rotation', () => {
  it.each([
    ['engine rotation', ['  rotation standard viewed from flywheel\n'], 2],
    ['which clutch runs ahead', [' ahead clutch B'], 2],
    ['engine rotation and clutch', ['  rotation standard viewed from flywheel\n', ' ahead clutch B'], 4],
    ['which way the flywheel faces', [' { flywheel aft }'], 2],
  ] as const)('says for each answer what the check would find: %s', async (_, taken, rows) => {
    const open = await handOf(without(...taken));
    expect(open.outcome).toBe('cannot tell');
    expect(open.byAnswer).toHaveLength(rows);
    for (const { given, result } of open.byAnswer!) {
      let text = SPEC;
      for (const answer of given) {
        const [out, put] = WRITTEN[answer]!;
        expect(text).toContain(out);
        text = text.replace(out, put);
      }
      const told = await handOf(text);
      expect(told.outcome, `${given.join(', ')}: ${result}; ${told.message}`).toBe(
        result.endsWith('as listed') ? 'holds' : 'fails',
      );
      expect(open.message).toContain(`With ${given.join(' and ')}: ${result}.`);
    }
  });

  it('names the hand that is needed where the hand alone is missing', async () => {
    const open = await handOf(SPEC.replace('hand right [drawing]  ', ''));
    expect(open.outcome).toBe('cannot tell');
    expect(open.byAnswer).toBeUndefined();
    expect(open.message).toContain('which needs a right-hand one');
  });
});

describe('a wrong hand', () => {
  it('offers an engine of the catalogue that turns the other way, with what it gives', async () => {
    const engine = /engine Kittiwake-9[\s\S]*?\n}\n/.exec(SPEC)![0];
    const other = engine
      .replace('Kittiwake-9', 'Other-9')
      .replace('rotation standard', 'rotation opposite')
      .replace('300 kW', '285 kW');
    const { check } = await checkText(
      `${other}\n${SPEC.replace('hand right [drawing]', 'hand left [drawing]')}`,
    );
    const wrong = check.vessels[0]!.verdicts.find(one => one.rule === 'rotation/propeller-hand')!;
    expect(wrong.outcome).toBe('fails');
    expect(wrong.routes().map(one => one.title)).toContain(
      'Fit engine Other-9, which turns the other way: 285 kW, 5 % less power',
    );
  });
});
