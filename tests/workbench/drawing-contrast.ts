import type { Locator } from 'playwright-core';

/**
 * What in the drawings of a sheet is too faint against the paper: words below 4.5 to 1 and shapes below 3 to 1, as
 * WCAG 2.2 asks in success criteria 1.4.3 and 1.4.11. The audit library leaves drawings out. Grid, bands and the
 * fillings of parts are left out here too: the shapes around them tell what they are.
 */
export function faintInDrawings(sheet: Locator): Promise<string[]> {
  return sheet.evaluate(body => {
    type Colour = readonly [red: number, green: number, blue: number, opacity: number];
    const context = document.createElement('canvas').getContext('2d', { willReadFrequently: true })!;
    const colour = (text: string): Colour => {
      context.clearRect(0, 0, 1, 1);
      context.fillStyle = text;
      context.fillRect(0, 0, 1, 1);
      const [red, green, blue, opacity] = context.getImageData(0, 0, 1, 1).data;
      return [red!, green!, blue!, opacity! / 255];
    };
    // Relative luminance and contrast ratio: WCAG 2.2, definitions.
    const luminance = ([red, green, blue]: Colour) => {
      const [r, g, b] = [red, green, blue].map(part => {
        const share = part / 255;
        return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
      });
      return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
    };
    const paper = luminance(colour(getComputedStyle(body).backgroundColor));
    const contrast = (text: string) => {
      const one = luminance(colour(text));
      return (Math.max(one, paper) + 0.05) / (Math.min(one, paper) + 0.05);
    };
    const drawn = [
      { which: 'text', property: 'fill', least: 4.5 },
      { which: '.series, .turn, .hull, .part, .disc, .blade, .axis, .point', property: 'stroke', least: 3 },
      { which: '.bar, .turn-tip, .axis-tip, .shaft', property: 'fill', least: 3 },
    ] as const;
    const found = drawn.flatMap(({ which, property, least }) =>
      [...body.querySelectorAll(`svg :is(${which})`)].flatMap(one => {
        const painted = getComputedStyle(one)[property];
        const ratio = contrast(painted);
        return ratio >= least ? [] : [`${one.getAttribute('class')} ${painted}: ${ratio.toFixed(2)} to 1`];
      }),
    );
    return [...new Set(found)];
  });
}
