import {
  type Cancellation,
  delayNextTick,
  type URI,
  type WorkspaceLock,
  type WorkspaceManager,
} from 'langium';
import type { Builder, Later } from './builder.js';

/**
 * Builds what changed: at once, never two at a time, and never thrown away before its end. What comes in while a
 * build runs is built next, all of it together. When nothing changed, waiting background work is done piece by piece.
 */
export class BuildQueue implements Later {
  private readonly changed = new Map<string, URI>();
  private readonly deleted = new Map<string, URI>();
  private readonly background = new Map<string, URI>();
  private running: Promise<void> | undefined;

  constructor(
    private readonly builder: Builder,
    private readonly lock: WorkspaceLock,
    private readonly manager: () => WorkspaceManager,
    private readonly failed: (what: string, error: unknown) => void,
  ) {}

  submit(changed: Iterable<URI>, deleted: Iterable<URI> = []): void {
    for (const uri of deleted) {
      this.deleted.set(uri.toString(), uri);
      this.changed.delete(uri.toString());
    }
    for (const uri of changed) {
      this.changed.set(uri.toString(), uri);
      this.deleted.delete(uri.toString());
    }
    this.start();
  }

  later(uris: Iterable<URI>): void {
    for (const uri of uris) {
      // What changed again is done last again, or it would be done twice while it changes on.
      this.background.delete(uri.toString());
      this.background.set(uri.toString(), uri);
    }
    this.start();
  }

  /** Whether this text changed and its build has not begun, or any build is underway. */
  waitsFor(uri: URI): boolean {
    return this.changed.has(uri.toString());
  }

  /** Whether files that were found still wait to be read. */
  get readsOn(): boolean {
    return this.background.size > 0 || this.readingOne;
  }

  /** Resolves when changes up to now are built, whatever background work is left. */
  async settled(): Promise<void> {
    while (this.running && (this.changed.size > 0 || this.deleted.size > 0 || this.building))
      await this.round;
  }

  /** Resolves when nothing at all is left to do. */
  async idle(): Promise<void> {
    while (this.running) await this.running;
  }

  private building = false;
  private readingOne = false;
  private round: Promise<void> = Promise.resolve();

  private start(): void {
    this.running ??= this.run().finally(() => {
      this.running = undefined;
      if (this.changed.size + this.deleted.size + this.background.size > 0) this.start();
    });
  }

  private async run(): Promise<void> {
    // Whoever waits for a round must never wait for one that is over while the next one waits for the client.
    this.round = Promise.resolve(this.manager().ready);
    await this.round;
    for (;;) {
      if (this.changed.size + this.deleted.size > 0) {
        const changed = [...this.changed.values()];
        const deleted = [...this.deleted.values()];
        this.changed.clear();
        this.deleted.clear();
        this.building = true;
        this.round = this.perform('building a change', token => this.builder.update(changed, deleted, token));
        await this.round;
        this.building = false;
      } else {
        const next = this.background.entries().next();
        if (next.done) return;
        const [key, uri] = next.value;
        this.background.delete(key);
        this.readingOne = true;
        // Whoever types gets the word between two files.
        this.round = this.perform(`reading ${uri.path}`, token => this.builder.buildLater(uri, token)).then(
          delayNextTick,
        );
        await this.round;
        this.readingOne = false;
      }
    }
  }

  private async perform(
    what: string,
    action: (token: Cancellation.CancellationToken) => Promise<void>,
  ): Promise<void> {
    try {
      await this.lock.write(action);
    } catch (error) {
      this.failed(what, error);
    }
  }
}
