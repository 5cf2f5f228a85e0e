import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { playSession, type SessionReport } from './editor-session.js';
import { mistakenExample } from './mistaken-example.js';
import { positionAt } from './text-edits.js';

const script = join(import.meta.dirname, 'neovim-session.lua');

describe('Neovim', () => {
  const example = mistakenExample();
  let seen: SessionReport;

  beforeAll(async () => {
    const route = `\\c\\<${example.right}\\>.*hand\\|hand.*\\<${example.right}\\>`;
    seen = await playSession('nvim', ['--headless', '--clean', '-c', `luafile ${script}`], example, route);
  });
  afterAll(() => example.remove());

  it('shows the finding on the line of the wrong hand', () => {
    expect(seen.message).toMatch(/hand/i);
    expect(seen.line).toBe(positionAt(example.text, example.place).line);
  });

  it('shows a hover over the hand', () => {
    expect(seen.hover).toMatch(/hand/i);
  });

  it('mends the spec by the fix chosen from its menu', () => {
    expect(seen.titles.length).toBeGreaterThan(0);
    expect(seen.text).toBe(example.asWritten);
  });

  it('keeps no finding afterwards', () => {
    expect(seen.left).toBe(0);
  });
});
