import type { PanelChoice } from '@tailshaft/sheet';
import type { SheetAnswer } from '../requests.js';

/** What the panel keeps when it is hidden or the editor starts anew. */
export interface PanelState {
  readonly uri: string;
  readonly vessel?: string | undefined;
  readonly choice: PanelChoice;
  readonly scroll?: number;
  /** Folds that stand open. */
  readonly open?: readonly string[];
}

/** A cursor in a text. */
export interface Spot {
  readonly uri: string;
  readonly line: number;
  readonly character: number;
}

export type ToPanel =
  | { readonly type: 'sheet'; readonly answer: SheetAnswer; readonly state: PanelState }
  /** The studies below the sheet; without html while they are searched. */
  | { readonly type: 'studies'; readonly html?: string; readonly words: string }
  | { readonly type: 'nothing'; readonly words: string }
  | { readonly type: 'cursor'; readonly spot: Spot }
  | {
      readonly type: 'paint';
      readonly id: number;
      readonly svg: string;
      readonly width: number;
      readonly height: number;
      /** Into the clipboard, rather than back as bytes. */
      readonly copy: boolean;
    };

export type FromPanel =
  | { readonly type: 'ready'; readonly state?: PanelState; readonly copiesPictures: boolean }
  | { readonly type: 'choose'; readonly state: PanelState }
  | { readonly type: 'go'; readonly place: string }
  | { readonly type: 'rule'; readonly id: string }
  | { readonly type: 'act'; readonly act: string }
  | { readonly type: 'keep' }
  | ({ readonly type: 'painted'; readonly id: number } & Painted);

/** A picture that was painted: its bytes, or that it lies in the clipboard; neither where the browser would not. */
export interface Painted {
  readonly base64?: string;
  readonly copied?: boolean;
}

/** Words of the panel's own controls, in the language of the editor. */
export interface PanelWords {
  readonly vessel: string;
  readonly arrangement: string;
  readonly beside: string;
  readonly nothingBeside: string;
  readonly line: string;
  readonly allLines: string;
  readonly point: string;
  readonly lever: string;
  readonly ahead: string;
  readonly astern: string;
  readonly keep: string;
  readonly controls: string;
}
