import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';

const script = join(import.meta.dirname, 'import-direction.mjs');

describe('the direction of imports', () => {
  it('holds in this repository', () => {
    expect(lookOver()).toEqual({ status: 0, said: '' });
  });

  it.each([
    ['mechanics', "import { judge } from '@tailshaft/drivetrain';", 'may import no other package'],
    ['drivetrain', "export * from '@tailshaft/language';", 'drivetrain may import mechanics, vocabulary'],
    ['vocabulary', "import { judge } from '@tailshaft/drivetrain';", 'vocabulary may import mechanics'],
    ['language', "import { draw } from '@tailshaft/sheet';", 'language may import mechanics, vocabulary'],
    ['sheet', "import type { Spec } from '@tailshaft/language';", 'sheet may import mechanics, vocabulary'],
    ['mechanics', "import { readFileSync } from 'node:fs';", 'knows neither Node'],
    ['drivetrain', "import path from 'path';", 'knows neither Node'],
    ['sheet', "import {\n  URI,\n} from 'vscode-uri';", 'knows neither Node'],
    ['drivetrain', "const late = import('langium');", 'knows neither Node'],
    ['cli', "import { judge } from '../../drivetrain/src/index.js';", 'by its name'],
    ['cli', "import { judge } from '@tailshaft/drivetrain/src/index.js';", 'doors that its manifest names'],
  ])('refuses in %s: %s', (name, line, why) => {
    const { status, said } = lookOver({ [`packages/${name}/src/a.ts`]: line });
    expect(said).toContain(why);
    expect(status).toBe(1);
  });

  it('refuses a circle of files, and names its members', () => {
    const { status, said } = lookOver({
      'packages/mechanics/src/a.ts': "import './b.js';",
      'packages/mechanics/src/b.ts': "import type { C } from './c.js';",
      'packages/mechanics/src/c.ts': "export { a } from './a.js';",
    });
    expect(status).toBe(1);
    expect(said.match(/src\/[abc]\.ts/g)?.length).toBe(4);
  });

  it.each([
    ['language', "import { judge } from '@tailshaft/drivetrain';\nimport { readFileSync } from 'node:fs';"],
    ['cli', "import { draw } from '@tailshaft/sheet';"],
    ['drivetrain', "// import { x } from 'vscode';\n/* import 'langium'; */\nexport const a = 1;"],
    ['mechanics', 'export const spec = `\nimport "vscode"\n`;'],
    ['vscode', "import { startServer } from '@tailshaft/language/browser';"],
  ])('lets pass in %s: %s', (name, text) => {
    const language = JSON.stringify({ exports: { '.': './src/index.ts', './browser': './src/browser.ts' } });
    const files = { [`packages/${name}/src/a.ts`]: text, 'packages/language/package.json': language };
    expect(lookOver(files)).toEqual({ status: 0, said: '' });
  });
});

/** Runs the check on a made-up repository, or on this one. */
function lookOver(files?: Readonly<Record<string, string>>): { status: number | null; said: string } {
  const folder = files && mkdtempSync(join(tmpdir(), 'tailshaft-layers-'));
  for (const [path, text] of Object.entries(files ?? {})) {
    mkdirSync(dirname(join(folder!, path)), { recursive: true });
    writeFileSync(join(folder!, path), text);
  }
  const { status, stderr } = spawnSync(process.execPath, folder ? [script, folder] : [script], {
    encoding: 'utf8',
  });
  if (folder) rmSync(folder, { recursive: true, force: true });
  return { status, said: stderr };
}
