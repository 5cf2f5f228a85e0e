import type { CandidateChoice, Outline } from '@tailshaft/language/server';
import type { PanelChoice, PanelChoices } from '@tailshaft/sheet';
import type { WorkspaceEdit } from 'vscode-languageserver-types';

/*
 * What client and server of this extension ask each other beside the protocol. Each request is a name with the types
 * of its question and its answer; both sides import them from here.
 */

export interface AboutFile {
  readonly textDocument: { readonly uri: string };
}

export interface AboutVessel extends AboutFile {
  /** Name of a vessel in the file; the first one when absent. */
  readonly vessel?: string;
  readonly choice: PanelChoice;
}

export interface SheetAnswer {
  readonly title: string;
  readonly html: string;
  readonly vessels: readonly string[];
  readonly vessel: string;
  readonly choices: PanelChoices;
  /** How many studies the vessel holds. */
  readonly studies: number;
}

export interface SheetFileAnswer {
  readonly text: string;
  readonly width?: number;
  readonly height?: number;
}

export interface CompareQuestion extends AboutFile {
  /** Texts of another time by address, or another file as it is now. */
  readonly before: OtherTexts | AboutFile;
  /** Instead of the file as it is now. */
  readonly after?: OtherTexts;
}

export interface OtherTexts {
  readonly texts: Readonly<Record<string, string>>;
  readonly uri: string;
}

/** A line whose consequence moved. */
export interface MarkNote {
  /** Counted from nil. */
  readonly line: number;
  readonly gravity: 'worse' | 'better' | 'moved';
  readonly words: readonly string[];
}

export interface ReportQuestion {
  readonly about: 'findings' | 'questions';
}

export interface RuleNote {
  readonly id: string;
  readonly title: string;
  readonly severity: string;
}

/** Something with entries to import: a file, or a folder of such files. */
export interface CatalogueNote {
  readonly uri: string;
  readonly entries: number;
}

export interface Requests {
  'tailshaft/outline': [AboutFile, Outline | null];
  'tailshaft/vessels': [{ readonly all?: boolean } | undefined, Outline[]];
  'tailshaft/sheet': [AboutVessel, SheetAnswer | null];
  /** The studies of a vessel as far as they are soon searched; nothing where the text changed meanwhile. */
  'tailshaft/studies': [AboutFile & { readonly vessel?: string }, { readonly html: string } | null];
  /** What writes a candidate into its arrangement; nothing where the study no longer offers these options. */
  'tailshaft/candidate': [
    AboutFile & { readonly vessel?: string; readonly candidate: CandidateChoice },
    { readonly edit: WorkspaceEdit } | null,
  ];
  'tailshaft/sheetFile': [AboutVessel & { readonly form: 'html' | 'svg' | 'charts' }, SheetFileAnswer | null];
  'tailshaft/compare': [CompareQuestion, { readonly markdown: string; readonly caution: string } | null];
  /** Lines whose consequence moved since the texts of another time, with what moved. */
  'tailshaft/marks': [AboutFile & { readonly before: OtherTexts }, readonly MarkNote[] | null];
  /** Files and folders that reading the texts asked for and did not find among them, or not whole. */
  'tailshaft/wanted': [OtherTexts, readonly string[]];
  'tailshaft/catalogues': [undefined, readonly CatalogueNote[]];
  'tailshaft/coloured': [{ readonly texts: readonly string[] }, readonly string[]];
  'tailshaft/report': [AboutFile & ReportQuestion, { readonly text: string } | null];
  'tailshaft/reportOfText': [
    ReportQuestion & { readonly uri: string; readonly text: string },
    { readonly text: string } | null,
  ];
  'tailshaft/rules': [undefined, readonly RuleNote[]];
}

/** Told by the server when a file has been checked anew. */
export const CHECKED = 'tailshaft/checked';
