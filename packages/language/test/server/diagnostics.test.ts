import { describe, expect, it } from 'vitest';
import { SPEC, withChange } from './specs.js';
import { listed, Testbed } from './testbed.js';

describe('diagnostics', () => {
  it('leave a sound spec alone', async () => {
    const document = await new Testbed().open(SPEC);
    expect(listed(document.diagnostics)).toBe('');
  });

  it('carry the rule, related places and what code actions need', async () => {
    const document = await new Testbed().open(withChange('hand left [drawing]', 'hand right [drawing]'));
    const found = document.diagnostics!.find(one => one.code === 'rotation/propeller-hand')!;
    const text = document.textDocument;
    expect(text.getText(found.range)).toBe('right');
    expect(found.source).toBe('tailshaft');
    expect(found.codeDescription).toBeUndefined();
    expect(found.relatedInformation!.length).toBeGreaterThan(1);
    expect(found.data).toMatchObject({
      code: 'rotation/propeller-hand',
      subject: 'proposed.Port',
      outcome: 'fails',
    });
  });

  it('never pass a file whose checks broke off', async () => {
    const bed = new Testbed();
    bed.services.project.check = () => {
      throw new Error('the keel fell off');
    };
    await expect(bed.open(SPEC)).rejects.toThrow('the keel fell off');
    const [document] = bed.services.shared.workspace.LangiumDocuments.all.toArray();
    expect(listed(document!.diagnostics)).toMatch(/^1:1 error internal\/check-failed: .*it has no result/);
  });
});
