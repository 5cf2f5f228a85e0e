import { type Palette, type Text, VERDICT_SIGN } from '@tailshaft/sheet';

/** Letters of one look. */
export interface Run {
  readonly words: string;
  readonly bold: boolean;
  readonly colour: string;
  /** Leads to this entry of the paper. */
  readonly to?: string;
  /** Is what such a reference leads to. */
  readonly id?: string;
}

export interface Look {
  readonly bold?: boolean;
  readonly colour?: string;
}

/** Running text as runs; a line break is a run of its own that holds nothing else. */
export function runsOf(text: Text, palette: Palette, look: Look = {}): Run[] {
  const { bold = false, colour = palette.ink } = look;
  if (typeof text === 'string') return [{ words: text, bold, colour }];
  if (!('as' in text)) return text.flatMap(one => runsOf(one, palette, look));
  switch (text.as) {
    case 'strong':
      return runsOf(text.text, palette, { ...look, bold: true });
    case 'warning':
      return runsOf(text.text, palette, { bold: true, colour: palette.unsure });
    case 'quiet':
      return runsOf(text.text, palette, { bold: false, colour: palette.soft });
    case 'code':
      return runsOf(text.text, palette, look);
    case 'together':
      return runsOf(text.text, palette, look).map(one => ({
        ...one,
        words: one.words.replaceAll(' ', '\u00a0'),
      }));
    case 'verdict':
      return [
        {
          words: `${VERDICT_SIGN[text.outcome]}\u00a0${text.outcome.replaceAll(' ', '\u00a0')}`,
          bold: true,
          colour: colourOf(text.outcome, palette),
        },
      ];
    case 'place':
      return [{ words: text.text.replaceAll(' ', '\u00a0'), bold: false, colour: palette.soft }];
    case 'reference':
      return [{ words: text.text, bold: false, colour: palette.accent, to: text.to }];
    case 'act':
      return [{ words: text.text, bold, colour }];
    case 'anchor':
      return [{ words: text.text, bold: true, colour: palette.accent, id: text.id }];
    case 'break':
      return [{ words: '\n', bold, colour }];
  }
}

export function colourOf(outcome: keyof typeof VERDICT_SIGN, palette: Palette): string {
  switch (outcome) {
    case 'fails':
      return palette.fails;
    case 'holds':
      return palette.holds;
    case 'accepted':
      return palette.accepted;
    case 'cannot tell':
      return palette.unsure;
    case 'does not apply':
      return palette.soft;
  }
}
