import type { LangiumDocuments } from 'langium';
import type { Project } from '../../project/project.js';
import type { BuildQueue } from './build-queue.js';

const EVERY = 60_000;

/** Ages and expiries are judged on a day: when another begins, everything is judged again. */
export class Days {
  private day: string;

  constructor(
    private readonly project: Project,
    private readonly documents: LangiumDocuments,
    private readonly queue: BuildQueue,
  ) {
    this.day = project.today();
  }

  /** Looks at the calendar now and then, for as long as the process lives; keeps none alive. */
  watch(): void {
    const timer: unknown = setInterval(() => this.look(), EVERY);
    (timer as { unref?: () => void }).unref?.();
  }

  /** Judges everything again, as when what the workspace allows has changed. */
  again(): void {
    this.queue.submit(this.documents.all.map(one => one.uri));
  }

  look(): void {
    const today = this.project.today();
    if (today === this.day) return;
    this.day = today;
    this.again();
  }
}
