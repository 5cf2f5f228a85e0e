import { RULES } from '@tailshaft/drivetrain';
import { describe, expect, it } from 'vitest';
import { rulePage } from '../../src/manual/rule-page.js';
import { ruleHover } from '../../src/server/hover/rule.js';
import { PAGE, pagesOfClient, textsInPage, textsOf } from '../../src/server/rule-texts.js';

const rule = RULES.find(one => one.id === 'speed/tip-speed')!;
const bare = { ...rule, manual: '', caution: '' };

describe('the texts of a rule', () => {
  it.each(RULES.map(one => [one.id, one] as const))('%s: are found in its page', (_, one) => {
    const { manual, caution } = textsInPage(rulePage(one, []));
    expect({ manual, caution }).toEqual({ manual: one.manual, caution: one.caution });
  });

  it('come from the rule itself where it has them', async () => {
    const nobody = () => Promise.reject(new Error('asked'));
    expect(await textsOf(rule, nobody)).toBe(rule);
    expect(await ruleHover(rule.id, nobody)).toContain(rule.caution);
  });

  it('and are left out where neither has', async () => {
    expect(await textsOf(bare, async () => undefined)).toEqual({ manual: '', caution: '' });
  });
});

describe('pages by way of the client', () => {
  const asking = (answer: () => Promise<unknown>) => {
    const asked: unknown[] = [];
    const said: string[] = [];
    const connection = { sendRequest: (...given: unknown[]) => asked.push(given) && answer() };
    const pageOf = pagesOfClient({ connection, asksForPages: true } as never, what => said.push(what));
    return { asked, said, pageOf };
  };

  it('are asked for once', async () => {
    const { asked, pageOf } = asking(async () => ({ text: rulePage(rule, []) }));
    expect((await textsOf(bare, pageOf)).manual).toBe(rule.manual);
    await textsOf(bare, pageOf);
    expect(asked).toEqual([[PAGE, { code: rule.id }]]);
  });

  it('are asked for again where the client failed, and its failure is told to the log', async () => {
    const { asked, said, pageOf } = asking(() => Promise.reject(new Error('no such method')));
    expect(await pageOf(rule.id)).toBeUndefined();
    expect(await pageOf(rule.id)).toBeUndefined();
    expect(asked).toHaveLength(2);
    expect(said[0]).toContain(rule.id);
  });

  it('are not asked of a client that was not said to have them', async () => {
    const connection = { sendRequest: () => Promise.reject(new Error('asked')) };
    const pageOf = pagesOfClient({ connection } as never, () => {});
    expect(await pageOf(rule.id)).toBeUndefined();
  });
});
