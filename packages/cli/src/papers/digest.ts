import { createHash } from 'node:crypto';
import { basename } from 'node:path';
import { count } from '@tailshaft/mechanics';
import type { CheckedSpec, Specs } from '../specs/specs.js';

/**
 * What the text of a spec is known by: `ternhaven.shaft 3f2a… with 5 imported files 98fe…`. The digest is SHA-256 of the
 * text with line feeds, so that it is the same on every system; that of the imported files is of their digests in the
 * order of their paths. Both are cut to 16 hexadecimal digits.
 */
export function digestOf(specs: Specs, spec: CheckedSpec): string {
  const [own, ...imported] = specs.textsOf(spec);
  const first = `${basename(own!.path)} sha256 ${hash(own!.text).slice(0, LENGTH)}`;
  if (imported.length === 0) return first;
  const all = hash(imported.map(one => `${hash(one.text)}  ${one.path}\n`).join(''));
  const files = count(imported.length, 'imported file');
  return `${first}, with ${files} ${all.slice(0, LENGTH)}`;
}

const LENGTH = 16;

function hash(text: string): string {
  return createHash('sha256').update(text.replaceAll('\r\n', '\n')).digest('hex');
}
