import { describe, expect, it } from 'vitest';
import type { CompletionItem } from 'vscode-languageserver';
import { CATALOGUE, VESSEL, withChange } from './specs.js';
import { positionOf, Testbed, withCursor } from './testbed.js';

const bed = new Testbed();

const MORE = `
engine Wigeon-4 "weaker diesel" {
  source "Wigeon 4 sheet" dated 2025-01-20
  rotation standard viewed from flywheel
  fuel diesel
  rating light { power 150 kW at 2600 rpm  measured at crankshaft  hours 300 per year }
  low idle 700 rpm
  high idle 2800 rpm
}
shaft material weak-stainless {
  source "Mill certificate 12" dated 2024-02-02
  torsional yield 20000 psi
}
propeller Tern-L { source "Order 1" dated 2025-01-02  hand left  blades 4  diameter 26 in  pitch 24 in }
propeller Tern-R { source "Order 2" dated 2025-01-02  hand right  blades 4  diameter 26 in  pitch 24 in }
coupling Flex-1 { source "Sheet 1" dated 2025-01-02  kind flexible  torque at most 9000 N.m }
coupling Flex-2 { source "Sheet 2" dated 2025-01-02  kind flexible  torque at most 900 N.m }
`;

async function offered(from: string, typed: string): Promise<CompletionItem[]> {
  const spec = `${CATALOGUE}${MORE}\n${withChange(from, `${typed}<|>`, VESSEL)}`;
  const { text, offset } = withCursor(spec);
  const document = await bed.open(text);
  const list = await bed.services.lsp.CompletionProvider!.getCompletion(document, {
    textDocument: { uri: document.uri.toString() },
    position: positionOf(document, offset),
  });
  return list!.items;
}

const told = (items: readonly CompletionItem[], name: string) =>
  items.find(one => one.label === name)?.detail;

describe('catalogue parts are offered by how they would fare in the line', () => {
  it('engines at the duty of the line', async () => {
    const items = await offered('Kittiwake-9', '');
    expect(items.slice(0, 2).map(one => one.label)).toEqual(['Kittiwake-9', 'Wigeon-4']);
    expect(told(items, 'Kittiwake-9')).toMatch(/^at medium: holds, margin \+[\d.]+ % · six-cylinder diesel$/);
    expect(told(items, 'Wigeon-4')).toMatch(/^at medium: .*cannot tell/);
  });

  it('grades of shaft by the diameter rule', async () => {
    const items = await offered('high-strength-stainless', '');
    expect(items.slice(0, 2).map(one => one.label)).toEqual(['high-strength-stainless', 'weak-stainless']);
    expect(told(items, 'high-strength-stainless')).toMatch(/^holds, margin \+[\d.]+ %/);
    expect(told(items, 'weak-stainless')).toMatch(/^fails shafting\/diameter, margin −[\d.]+ %/);
  });

  it('standard shaft diameters by the diameter rule', async () => {
    const sizes = await offered('diameter 65 mm [drawing]', 'diameter ');
    expect(told(sizes, '1 in')).toMatch(/^fails shafting\/diameter, margin −\d+ % · diameter 25\.4 mm/);
    expect(told(sizes, '2 1/2 in')).toMatch(/^holds, margin \+\d+ % · diameter 63\.5 mm/);
  });

  it('propellers by the hand that the line needs', async () => {
    const items = await offered('propeller { hand left [drawing]', 'propeller ');
    expect(told(items, 'Tern-R')).toContain('fails rotation/propeller-hand');
    expect(told(items, 'Tern-L')).not.toContain('fails');
    expect(items.findIndex(one => one.label === 'Tern-L')).toBeLessThan(
      items.findIndex(one => one.label === 'Tern-R'),
    );
  });

  it('couplings by the torque that goes through them', async () => {
    const items = await offered(
      '      gear Alder-63 ratio 2.04:1 ahead clutch A',
      '      gear Alder-63 ratio 2.04:1 ahead clutch A\n      coupling ',
    );
    expect(told(items, 'Flex-1')).toMatch(/^holds, margin \+/);
    expect(told(items, 'Flex-2')).toMatch(/^fails capacity\/coupling-torque, margin −/);
  });
});
