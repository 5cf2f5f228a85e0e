import { describe, expect, it } from 'vitest';
import { changed, SINGLE_LINE } from '../../../drivetrain/src/rules/example-specs.js';
import { listed, Testbed } from './testbed.js';

describe('diagnostics', () => {
  it('leaves a sound spec alone', async () => {
    const document = await new Testbed().open(SINGLE_LINE);
    expect(listed(document.diagnostics)).toBe('');
  });
  it('x', async () => {
    const document = await new Testbed().open(changed(SINGLE_LINE, ['low idle 650 rpm', 'low idle 650 rmp']));
    expect(listed(document.diagnostics)).toBe('');
  });
});
