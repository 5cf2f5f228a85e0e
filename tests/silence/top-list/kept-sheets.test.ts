import { RULES } from '@tailshaft/drivetrain';
import { expect, it } from 'vitest';
import { checkText } from '../../support/check.js';
import { ALL_RETAINED, withStatements } from './spec-of.js';

/** Rules that judge a sheet once, for whatever lines use it. */
const OF_SHEETS = [
  'rotation/accessory',
  'rotation/sheet-view',
  'rotation/train-sense',
  'rotation/unproven-source',
  'rotation/viewpoint',
];

it.each(OF_SHEETS)('%s: what is wrong as found is wrong where it is kept, and weighs as much', async rule => {
  const failing = RULES.find(one => one.id === rule)!.examples().failing;
  const kept = withStatements(
    failing,
    `  arrangement painted revises proposed {\n    shaftline Centre { ${ALL_RETAINED} }\n  }`,
  );
  const said = async (text: string) =>
    (await checkText(text)).check.vessels
      .flatMap(one => one.verdicts)
      .flatMap(one => [one, ...(one.folds ?? [])])
      .filter(one => one.rule === rule && one.outcome === 'fails');
  const [alone] = await said(failing);
  expect(
    (await said(kept)).map(one => [one.subject.split('.')[0], one.severity, one.asFound ?? false]),
  ).toEqual([
    ['proposed', 'note', true],
    ['painted', alone!.severity, false],
  ]);
});
