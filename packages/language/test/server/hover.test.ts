import { describe, expect, it } from 'vitest';
import { SPEC } from './specs.js';
import { positionOf, Testbed, withCursor } from './testbed.js';

/** The hover at `<|>` put into the spec before this text. */
async function hover(before: string, spec = SPEC, occurrence = 0): Promise<string> {
  let at = -1;
  for (let n = 0; n <= occurrence; n++) at = spec.indexOf(before, at + 1);
  if (at < 0) throw new Error(`the spec does not say "${before}"`);
  const offset = before.includes('<|>') ? withCursor(spec).offset : at;
  const bed = new Testbed();
  const document = await bed.open(spec);
  const found = await bed.services.lsp.HoverProvider!.getHoverContent(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return found ? (found.contents as { value: string }).value : '';
}

describe('hover', () => {
  for (const w of [
    'low idle',
    '650 rpm',
    'rpm\n  high idle',
    '300 kW',
    'kW at',
    'Kittiwake-9 at',
    'Kittiwake-9 "six',
    'left [draw',
    'Port {',
    'Ternhaven',
    'continuous',
    'clutch A output',
    'clutch A\n',
    'medium {',
    'medium { hours',
    'proposed',
    '26 in',
    'high-strength-stainless  diam',
    'vessel',
    'engine Kittiwake-9 at',
    'at medium',
    'standard viewed',
    '70000 psi',
  ]) {
    it(w, async () => {
      console.log(`### ${w}\n${await hover(w)}`);
    });
  }
});
