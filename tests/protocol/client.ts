import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Position, Range } from 'vscode-languageserver-protocol';
import { StdioClient, type StdioClientOptions } from '../clients/stdio.js';
import { positionAt } from '../clients/text-edits.js';
import { Tap } from './tap.js';

/** A client of the built server in a folder of its own, with everything that the server says kept. */
export class ProtocolClient extends StdioClient {
  readonly folder: string;
  readonly tap: Tap;
  /** Requests of the server that the client was asked to do something again. */
  readonly refreshed: string[] = [];
  private readonly texts = new Map<string, string>();

  constructor(files: Readonly<Record<string, string>>, options: StdioClientOptions = {}) {
    super({ limit: 10_000, ...options });
    this.tap = new Tap(this.process);
    this.folder = realpathSync(mkdtempSync(join(tmpdir(), 'tailshaft-protocol-')));
    for (const [path, text] of Object.entries(files)) this.write(path, text);
    for (const method of ['codeLens', 'inlayHint', 'diagnostic', 'diagnostics', 'semanticTokens'])
      this.connection.onRequest(`workspace/${method}/refresh`, () => {
        this.refreshed.push(method);
        return null;
      });
  }

  write(path: string, text: string): void {
    mkdirSync(dirname(join(this.folder, path)), { recursive: true });
    writeFileSync(join(this.folder, path), text);
    this.texts.set(path, text);
  }

  start(capabilities: object = {}) {
    return this.initialize(this.folder, capabilities);
  }

  uri(path: string): string {
    return pathToFileURL(join(this.folder, path)).href;
  }

  text(path: string): string {
    return this.texts.get(path)!;
  }

  /** Opens a file as it is on disk. */
  show(path: string): Promise<void> {
    return this.open(this.uri(path), this.text(path));
  }

  /** Replaces the first occurrence of some words, as a change of just that range. */
  async replace(path: string, words: string, by: string): Promise<number> {
    const range = this.rangeOf(path, words);
    this.texts.set(
      path,
      this.text(path).replace(words, () => by),
    );
    return this.change(this.uri(path), by, range);
  }

  /** The place right behind the first occurrence of some words, or `offset` characters into them. */
  at(path: string, words: string, offset = words.length): Position {
    const start = this.text(path).indexOf(words);
    if (start < 0) throw new Error(`${path} has no ${JSON.stringify(words)}`);
    return positionAt(this.text(path), start + offset);
  }

  rangeOf(path: string, words: string): Range {
    return { start: this.at(path, words, 0), end: this.at(path, words) };
  }

  ask<T>(method: string, path: string, words: string, offset?: number, more: object = {}): Promise<T> {
    const position = this.at(path, words, offset);
    return this.request<T>(method, { textDocument: { uri: this.uri(path) }, position, ...more });
  }

  end(): void {
    this.kill();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
