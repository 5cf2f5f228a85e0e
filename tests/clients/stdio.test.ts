import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { CodeAction } from 'vscode-languageserver-protocol';
import { handRoute } from '../workbench/subject.js';
import { mistakenExample } from './mistaken-example.js';
import { StdioClient } from './stdio.js';
import { applyEdits, editsFor, positionAt } from './text-edits.js';

describe('a client that knows only the protocol', () => {
  const example = mistakenExample();
  const client = new StdioClient();

  it('is led from the finding to the mended text, and the server leaves when told', async () => {
    const uri = pathToFileURL(example.spec).href;
    try {
      await client.initialize(example.folder);
      await client.open(uri, example.text);
      const found = await client.waitDiagnostics(uri, all => all.some(each => each.code === rule));
      const finding = found.find(each => each.code === rule)!;

      const hover = await client.hover(uri, positionAt(example.text, example.place + 1));
      expect(JSON.stringify(hover?.contents)).toMatch(/hand/i);

      const actions = await client.codeAction(uri, finding.range, [finding]);
      const route = handRoute(example.right);
      const chosen = actions?.find((each): each is CodeAction => 'edit' in each && route.test(each.title));
      expect(chosen, JSON.stringify(actions)).toBeDefined();
      const mended = applyEdits(example.text, editsFor(uri, chosen?.edit));
      expect(mended).toBe(example.asWritten);

      await client.change(uri, mended);
      await client.waitDiagnostics(uri, all => all.every(each => each.code !== rule));
      expect(await client.shutdown()).toBe(0);
    } finally {
      client.kill();
      example.remove();
    }
  });
});

const rule = 'rotation/propeller-hand';
