import { silentTopics } from '@tailshaft/drivetrain';
import type { CheckedSpec } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { wrapped } from '../terminal/layout.js';
import { visible } from '../terminal/visible.js';

/** What rules say nothing of in one vessel. */
export interface SilentVessel {
  readonly name: string;
  readonly topics: readonly string[];
}

export function silentIn({ check }: CheckedSpec): SilentVessel[] {
  return check.vessels.map(({ vessel, verdicts }) => ({
    name: vessel.name,
    topics: silentTopics(vessel, verdicts).map(one => one.of),
  }));
}

/** What rules say nothing of, because the specs declare nothing of it. Silence is no consent. */
export class NotAssessed {
  private readonly vessels: string[] = [];
  private readonly topics = new Map<string, Set<number>>();

  take(vessels: readonly SilentVessel[]): void {
    for (const { name, topics } of vessels) {
      const at = this.vessels.push(name) - 1;
      for (const of of topics) this.topics.set(of, (this.topics.get(of) ?? new Set()).add(at));
    }
  }

  text(io: Io): string {
    if (this.topics.size === 0) return '';
    const all = this.vessels.length;
    const words = [...this.topics]
      .sort(([, one], [, other]) => other.size - one.size)
      .map(([of, vessels]) => (vessels.size === all ? of : `${of} (${this.named(vessels)})`));
    const head = io.paint.open('Not assessed (nothing declared):');
    return wrapped(`${words.join('; ')}.`, io.width, '  ', `${head} `);
  }

  private named(vessels: ReadonlySet<number>): string {
    const names = [...vessels].map(one => visible(this.vessels[one]!));
    return names.length > 2 ? `${names.length} of ${this.vessels.length} vessels` : names.join(', ');
  }
}
