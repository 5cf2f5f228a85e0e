import { describe, expect, it } from 'vitest';
import { SHEET_STYLE } from '../src/style.js';

/** Contrast of two colours: Web Content Accessibility Guidelines 2.2, relative luminance and contrast ratio. */
function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

function luminance(colour: string): number {
  const hex = colour.length === 4 ? colour.replace(/[0-9a-f]/gi, '$&$&') : colour;
  const [r, g, b] = [1, 3, 5]
    .map(at => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map(part => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}

/** Colours of the three schemes, in the order in which the style sheet gives them. */
const SCHEMES = [...SHEET_STYLE.matchAll(/:root \{([^}]*)\}/g)].map(
  ([, body]) => new Map([...body!.matchAll(/--(\w+): (#[0-9a-f]+)/gi)].map(found => [found[1]!, found[2]!])),
);

describe.each(['light', 'dark', 'print'])('%s', scheme => {
  const colours = SCHEMES[['light', 'dark', 'print'].indexOf(scheme)]!;

  // 4.5 to 1 is the bar of success criterion 1.4.3 for text.
  it.each(['ink', 'soft', 'accent', 'fails', 'unsure', 'holds', 'accepted'])('%s can be read', name => {
    for (const ground of ['paper', 'panel', 'loud']) {
      expect(
        contrast(colours.get(name)!, colours.get(ground)!),
        `${name} on ${ground}`,
      ).toBeGreaterThanOrEqual(4.5);
    }
  });
});

it('computes contrast as the guidelines do', () => {
  expect(contrast('#000', '#ffffff')).toBeCloseTo(21, 6);
  expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 2);
});

it('has three schemes and asks for nothing from elsewhere', () => {
  expect(SCHEMES).toHaveLength(3);
  expect(SHEET_STYLE).not.toMatch(/url\(|@import|<\//);
});
