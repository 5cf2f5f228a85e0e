/** Colours by what they mean; plain text where nobody sees them. */
export interface Paint {
  readonly strong: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly error: (text: string) => string;
  readonly warning: (text: string) => string;
  readonly open: (text: string) => string;
  readonly good: (text: string) => string;
}

export function painter(colour: boolean): Paint {
  const code = (start: string, end: string) => (text: string) =>
    colour && text !== '' ? `\x1b[${start}m${text}\x1b[${end}m` : text;
  return {
    strong: code('1', '22'),
    quiet: code('2', '22'),
    error: code('1;31', '22;39'),
    warning: code('1;33', '22;39'),
    open: code('1;36', '22;39'),
    good: code('32', '39'),
  };
}
