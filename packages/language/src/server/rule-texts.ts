import type { Rule } from '@tailshaft/drivetrain';
import type { Connection } from 'vscode-languageserver';

/** The page of a finding in Markdown by its code, where the pages are installed beside a server that carries none. */
export type PageOf = (code: string) => Promise<string | undefined>;

/** What a person reads of a rule beside its title and what it compares. */
export type RuleTexts = Pick<Rule, 'manual' | 'caution'>;

/**
 * The texts of a rule, from itself or from its page: they are a twentieth of a server and seldom asked for, so one that
 * has the pages beside it is built without them.
 */
export async function textsOf(rule: Rule, pageOf: PageOf): Promise<RuleTexts> {
  return rule.manual ? rule : textsInPage((await pageOf(rule.id)) ?? '');
}

/** Found where `manual/rule-page.ts` puts them: behind title and kind, and under *Limits*. */
export function textsInPage(page: string): RuleTexts {
  return {
    manual: page.split('\n\n')[2] ?? '',
    caution: /^- \*\*Limits:\*\* (.*)$/m.exec(page)?.[1] ?? '',
  };
}

/** Asked of a client that has the pages: `{ code }` is answered with `{ text }`, or null where there is no such page. */
export const PAGE = 'tailshaft/page';

interface PagesClient {
  readonly connection?: Pick<Connection, 'sendRequest'>;
  readonly asksForPages?: boolean;
}

/** Pages by way of the client, each asked for once; without one that has them there are none. */
export function pagesOfClient(
  { connection, asksForPages }: PagesClient,
  log: (what: string, error: unknown) => void,
): PageOf {
  const asked = new Map<string, Promise<string | undefined>>();
  return async code => {
    if (!asksForPages || !connection) return undefined;
    const page =
      asked.get(code) ??
      connection.sendRequest<{ readonly text: string } | null>(PAGE, { code }).then(
        answer => answer?.text,
        error => {
          asked.delete(code);
          log(`asking for the page of ${code}`, error);
          return undefined;
        },
      );
    asked.set(code, page);
    return page;
  };
}
