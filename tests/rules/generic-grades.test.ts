import { applyEdits, formatText, textEditsFor } from '@tailshaft/language';
import { shaftMaterials } from '@tailshaft/mechanics';
import { describe, expect, it } from 'vitest';
import { SINGLE_LINE } from '../../packages/drivetrain/src/rules/example-specs.js';
import { type Checked, checkText } from '../support/check.js';

/** The example line with a shaft of a material that nobody declares. */
const shaftOf = (material: string) =>
  formatText(
    SINGLE_LINE.replace(/shaft material high-strength-stainless \{[\s\S]*?\n\}\n+/, '').replace(
      'material high-strength-stainless ',
      `material ${material} `,
    ),
  );

const finding = (checked: Checked) => checked.findings.find(one => one.code === 'shafting/material-named');

const grades = async (material: string) =>
  (finding(await checkText(shaftOf(material)))?.verdict?.routes() ?? [])
    .flatMap(route => /^Declare (.*?) as an entry/.exec(route.title)?.[1] ?? [])
    .sort();

describe('a shaft of a material that is declared nowhere', () => {
  it.each([
    ['S31600', ['austenitic stainless 316']],
    ['naval-brass', ['naval brass']],
    ['bronze', ['naval brass']],
    ['nickel-alloy', ['age-hardened nickel-copper 500', 'nickel-copper 400']],
    ['unheard-of', shaftMaterials.map(one => one.name).sort()],
  ])('%s: is offered the generic grades that the words may mean', async (material, expected) => {
    expect(await grades(material)).toEqual(expected);
  });

  it('has each grade declared with the figures of the table, in front of the vessel', async () => {
    const spec = shaftOf('unheard-of');
    const before = await checkText(spec);
    const routes = finding(before)!
      .verdict!.routes()
      .filter(one => !one.stub);
    expect(routes).toHaveLength(shaftMaterials.length);
    for (const route of routes) {
      const after = applyEdits(
        spec,
        textEditsFor(route.edits, () => spec),
      );
      const checked = await checkText(after);
      expect(
        checked.findings.filter(one => one.problem),
        after,
      ).toEqual([]);
      expect(finding(checked), after).toBeUndefined();
      expect(formatText(after)).toBe(after);
      expect(checked.check.entries).toHaveLength(before.check.entries.length + 1);
    }
  });
});
