import type { Colour, Palette } from '../palette.js';

/** How something is drawn, by its classes: style sheets and files of other kinds are made from it. */
export interface Ink {
  readonly fill?: Colour | 'none';
  readonly stroke?: Colour | 'none';
  readonly width?: number;
  readonly dash?: readonly number[];
  readonly join?: 'round';
  readonly bold?: true;
}

/** Of text, whatever its class; in the same units as the coordinates. */
export const TEXT_SIZE = 13;

/** Classes with what they look like. Rows with more classes stand behind those with fewer of the same, and override them. */
const ROWS: readonly (readonly [classes: string, ink: Ink])[] = [
  ['quiet', { fill: 'soft' }],
  ['strong', { bold: true }],
  ['warning', { fill: 'fails', bold: true }],
  ['hull', { fill: 'none', stroke: 'ink', width: 1.6, join: 'round' }],
  ['water', { stroke: 'soft', width: 1, dash: [9, 5] }],
  ['centre-line', { stroke: 'rule', dash: [12, 3, 2, 3] }],
  ['disc', { fill: 'panel', stroke: 'ink', width: 1.3 }],
  ['disc wrong', { stroke: 'fails', width: 2.4, dash: [5, 3] }],
  ['blade', { fill: 'faint', stroke: 'ink', width: 1 }],
  ['part', { fill: 'panel', stroke: 'ink', width: 1.3 }],
  ['part kept', { dash: [6, 3] }],
  ['edge', { stroke: 'rule' }],
  ['shaft', { fill: 'soft', stroke: 'none' }],
  ['turn', { fill: 'none', stroke: 'accent', width: 2.6 }],
  ['turn-tip', { fill: 'accent' }],
  ['axis', { stroke: 'ink', width: 1.1 }],
  ['axis-tip', { fill: 'ink' }],
  ['grid', { stroke: 'faint', width: 1 }],
  ['bar', { stroke: 'none', fill: 'accent' }],
  ['bar fails', { fill: 'fails' }],
  ['bar cannot-tell', { fill: 'unsure' }],
  ['bar accepted', { fill: 'accepted' }],
  ['bar holds', { fill: 'holds' }],
  ['series', { fill: 'none', stroke: 'ink', width: 2 }],
  ['series solid', { stroke: 'accent', width: 2.6 }],
  ['series dashed', { dash: [8, 5] }],
  ['series dotted', { dash: [10, 3, 2, 3] }],
  ['series level', { dash: [2, 4], stroke: 'fails', width: 2.4 }],
  ['band', { fill: 'panel', stroke: 'rule', width: 1 }],
  ['barred', { fill: 'loud', stroke: 'fails', width: 1.2, dash: [3, 3] }],
  ['bar possible', { fill: 'soft' }],
  ['point', { fill: 'paper', stroke: 'ink', width: 1.8 }],
];

/** Classes that only text has: their colour is that of letters. */
const OF_TEXT = new Set(['quiet', 'strong', 'warning']);

/** The rows as rules of a style sheet. */
export function inkCss(): string {
  return ROWS.map(([classes, ink]) => {
    const selector = `${OF_TEXT.has(classes) ? 'text' : ''}.${classes.replaceAll(' ', '.')}`;
    return `.sheet svg ${selector} { ${declarations(ink)} }`;
  }).join('\n');
}

function declarations({ fill, stroke, width, dash, join, bold }: Ink): string {
  const colour = (one: Colour | 'none') => (one === NO_INK ? one : `var(--${one})`);
  return [
    fill && `fill: ${colour(fill)};`,
    stroke && `stroke: ${colour(stroke)};`,
    width && `stroke-width: ${width};`,
    dash && `stroke-dasharray: ${dash.join(' ')};`,
    join && `stroke-linejoin: ${join};`,
    bold && 'font-weight: 600;',
  ]
    .filter(Boolean)
    .join(' ');
}

/** What an element looks like with these classes, its colours out of a palette: filled as is usual where nothing is said. */
export function inkOf(classes: string | undefined, palette: Palette, usual: string | undefined) {
  const own = new Set((classes ?? '').split(' '));
  const ink: Ink = Object.assign(
    {},
    ...ROWS.filter(([wanted]) => wanted.split(' ').every(one => own.has(one))).map(([, one]) => one),
  );
  const colour = (one: Ink['fill']) => (one === undefined || one === NO_INK ? undefined : palette[one]);
  return {
    fill: ink.fill === undefined ? usual : colour(ink.fill),
    stroke: colour(ink.stroke),
    width: ink.width ?? 1,
    dash: ink.dash,
    bold: ink.bold ?? false,
  };
}

const NO_INK = 'none' satisfies Ink['fill'];
