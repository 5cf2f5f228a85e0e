import { existsSync, mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { unzip } from './unzip.js';

const root = resolve(import.meta.dirname, '../..');

/**
 * The extension as a person installs it: the packed VSIX, unpacked. TAILSHAFT_EXTENSION names another
 * VSIX, or a folder that is unpacked already.
 */
export function extensionUnderTest(): string {
  const given = process.env.TAILSHAFT_EXTENSION ?? packedVsix();
  if (statSync(given).isDirectory()) return given;
  const folder = mkdtempSync(join(tmpdir(), 'tailshaft-extension-'));
  unzip(given, folder);
  return join(folder, 'extension');
}

/** The example repower, among the examples. */
export const exampleSpec = 'pilot-cutter/ternhaven.shaft';

/** The examples with their catalogue: text by path. TAILSHAFT_EXAMPLES names another folder. */
export function exampleFiles(): Record<string, string> {
  const folder = process.env.TAILSHAFT_EXAMPLES ?? join(root, 'examples');
  const files: Record<string, string> = {};
  for (const path of readdirSync(folder, { recursive: true, encoding: 'utf8' }))
    if (path.endsWith('.shaft')) files[path] = readFileSync(join(folder, path), 'utf8');
  return files;
}

export interface WrongHand {
  readonly text: string;
  /** Offset of the wrong word. */
  readonly place: number;
  readonly right: string;
  readonly wrong: string;
}

/** The hand of the propeller first named in the proposed arrangement, turned round. */
export function withWrongHand(spec: string): WrongHand {
  const found = /arrangement\s+proposed[\s\S]*?\bhand\s+(left|right)\b/.exec(spec);
  if (!found) throw new Error('The example proposes no propeller hand.');
  const right = found[1]!;
  const wrong = right === 'left' ? 'right' : 'left';
  const end = found.index + found[0].length;
  const place = end - right.length;
  return { text: spec.slice(0, place) + wrong + spec.slice(end), place, right, wrong };
}

export function packedVsix(): string {
  const packed = join(root, 'packages/vscode/dist/tailshaft.vsix');
  if (!existsSync(packed)) throw new Error(`There is no ${packed}. Run: npm run build && npm run package`);
  return packed;
}

/** Matches titles of the fix that changes the hand, not of those that change clutch, ratio or side. */
export function handRoute(hand: string): RegExp {
  return new RegExp(`\\b${hand}\\b.*hand|hand.*\\b${hand}\\b`, 'i');
}
