import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pathOf, withPageLinks } from '../../packages/vscode/src/pages/page-links.js';

const PAGES = join(import.meta.dirname, '../../packages/vscode/dist/manual.json');

describe('the links of a page inside the editor', () => {
  it('lead to pages that travel with the extension', () => {
    const pages = JSON.parse(readFileSync(PAGES, 'utf8')) as Record<string, string>;
    const lost: string[] = [];
    let relative = 0;
    for (const [page, text] of Object.entries(pages)) {
      if (!page.endsWith('.md')) continue;
      for (const [, target] of text.matchAll(/\]\(([^)\s]+)\)/g)) {
        const path = pathOf(target!, page);
        if (path === undefined) continue;
        relative += 1;
        if (!(path in pages)) lost.push(`${page}: ${target}`);
      }
    }
    expect(relative).toBeGreaterThan(500);
    expect(lost).toEqual([]);
  });

  it('open by a command, and places in the page and outside stay as they are', () => {
    const html = withPageLinks(
      '<a href="../../../../examples/mistakes/bases/twin-lines.shaft">a</a><a href="#x">b</a><a href="https://example.org">c</a>',
      '/packages/drivetrain/manual/rotation/same-hand.md',
      'tailshaft.explainRule',
    );
    const path = encodeURIComponent('["examples/mistakes/bases/twin-lines.shaft"]');
    expect(html).toBe(
      `<a href="command:tailshaft.explainRule?${path}">a</a><a href="#x">b</a><a href="https://example.org">c</a>`,
    );
  });
});
