/** Every colour of the sheet by what it is for. Verdicts always carry a sign and a word as well. */
export type Palette = Readonly<Record<Colour, string>>;
export type Colour =
  | 'paper'
  | 'panel'
  | 'ink'
  | 'soft'
  | 'rule'
  | 'faint'
  | 'accent'
  | 'fails'
  | 'unsure'
  | 'holds'
  | 'accepted'
  | 'loud';

export const LIGHT: Palette = {
  paper: '#fdfcf9',
  panel: '#f4f2ec',
  ink: '#1c2427',
  soft: '#56616a',
  rule: '#c9c8c0',
  faint: '#e4e2da',
  accent: '#1b5566',
  fails: '#9c1f28',
  unsure: '#7a4c00',
  holds: '#23653a',
  accepted: '#4b4390',
  loud: '#fbefd8',
};

export const DARK: Palette = {
  paper: '#14191b',
  panel: '#1c2326',
  ink: '#e4e6e3',
  soft: '#a3adb0',
  rule: '#47525a',
  faint: '#2a3337',
  accent: '#83c1d0',
  fails: '#f29a94',
  unsure: '#e8b565',
  holds: '#8cc99b',
  accepted: '#b9b2f0',
  loud: '#33290f',
};

/** On paper. */
export const PRINT: Palette = {
  paper: '#ffffff',
  panel: '#f3f2ee',
  ink: '#111111',
  soft: '#4a4a4a',
  rule: '#b5b5b0',
  faint: '#dcdcd6',
  accent: '#1b5566',
  fails: '#8c1820',
  unsure: '#6b4300',
  holds: '#1f5a33',
  accepted: '#433c84',
  loud: '#ffffff',
};

/** As custom properties of a style sheet. */
export function paletteCss(palette: Palette): string {
  return Object.entries(palette)
    .map(([name, colour]) => `--${name}: ${colour};`)
    .join(' ');
}
