/** A token of a fact block, as the reader of facts sees it. */
export interface Tok {
  readonly kind: 'word' | 'number' | 'ratio' | 'date' | 'string' | 'mark';
  readonly text: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

export interface EvidenceTok {
  readonly kind: 'evidence';
  readonly tokens: readonly Tok[];
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

export interface BlockTok {
  readonly kind: 'block';
  readonly atoms: readonly AtomTok[];
  readonly start: number;
  readonly end: number;
  readonly line: number;
}

export type AtomTok = Tok | EvidenceTok | BlockTok;

/** Sorts a token's text into the kinds that the forms of value tell apart. */
export function kindOfText(text: string): Tok['kind'] {
  if (text.startsWith('"')) return 'string';
  if (/^\d{4}-\d{2}-\d{2}$/.test(text)) return 'date';
  if (/^[\d.]+:[\d.]+$/.test(text)) return 'ratio';
  if (/^[+\-−]?\d|^[¼-¾⅐-⅞]/.test(text)) return 'number';
  return /^[\p{L}_%'°µ′″]/u.test(text) ? 'word' : 'mark';
}

export function isTok(atom: AtomTok | undefined): atom is Tok {
  return atom !== undefined && atom.kind !== 'block' && atom.kind !== 'evidence';
}
