import type { Locator, Page } from 'playwright-core';

export interface WorkbenchOptions {
  /** An unpacked extension: the folder with its package.json. */
  readonly extensionFolder: string;
  /** Text by path, relative to the workspace folder. */
  readonly files: Readonly<Record<string, string>>;
  /** A file to open at once. */
  readonly open?: string;
  /** User settings over the harness's own. */
  readonly settings?: Readonly<Record<string, unknown>>;
}

export interface Diagnostic {
  readonly severity: 'error' | 'warning' | 'information' | 'hint';
  readonly message: string;
  readonly code: string;
  readonly source: string;
  readonly line: number;
  readonly from: number;
  readonly to: number;
}

/** VS Code in a browser with one extension, and a person's hands on it. */
export interface Workbench {
  readonly page: Page;
  /** Lines that the browser's console printed as errors since the start. */
  readonly consoleErrors: readonly string[];
  openFile(path: string): Promise<void>;
  /** Puts the cursor at the first place of `text` in the file (or selects it) and brings it into view. */
  placeCursor(path: string, text: string, options?: { select?: boolean; at?: number }): Promise<void>;
  typeText(text: string): Promise<void>;
  /** The editor's text of a file, saved or not. */
  text(path: string): Promise<string>;
  diagnostics(path: string): Promise<readonly Diagnostic[]>;
  /** Severities of the wavy lines in view, in reading order. */
  squiggles(): Promise<readonly string[]>;
  waitForSquiggles(wanted: (severities: readonly string[]) => boolean): Promise<readonly string[]>;
  /** Messages listed in the Problems view. */
  problems(): Promise<readonly string[]>;
  waitForProblems(wanted: (messages: readonly string[]) => boolean): Promise<readonly string[]>;
  /** Rests the mouse on the first place of `text`, `at` characters in, and reads the hover. */
  hoverAt(path: string, text: string, options?: { at?: number }): Promise<string>;
  /** Titles that the light bulb's menu offers at the cursor; the menu is closed again. */
  quickFixes(): Promise<readonly string[]>;
  /** Opens the light bulb's menu at the cursor and clicks the entry. */
  quickFix(title: string | RegExp): Promise<void>;
  /** Clicks down to a file in the Explorer, folder by folder, and waits until it is open. */
  clickInExplorer(path: string): Promise<void>;
  /** Runs a command of the workbench or of an extension. */
  run(command: string, ...given: unknown[]): Promise<unknown>;
  /** Body of the web view in view, as a locator. */
  webview(): Locator;
  /** Saves a picture and returns its path. */
  screenshot(name: string): Promise<string>;
  close(): Promise<void>;
}
