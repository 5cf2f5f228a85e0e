import { pairOf } from '../analysis/twin.js';
import type { OneSidedChange, PartChange } from './change.js';
import { factChangeWords } from './facts.js';
import type { Side } from './side.js';

/** What was done on one line of a pair and not on the other, or differently. A question, never a finding. */
export function oneSidedChanges(before: Side, after: Side, parts: readonly PartChange[]): OneSidedChange[] {
  const found: OneSidedChange[] = [];
  for (const arrangement of after.arrangements.values()) {
    const pair = pairOf(arrangement);
    if (!pair) continue;
    const [port, starboard] = [pair.port, pair.starboard].map(line =>
      [...after.lines.values()].find(one => one.line === line),
    );
    if (!port || !starboard || !before.lines.has(port.key) || !before.lines.has(starboard.key)) continue;
    const [onPort, onStarboard] = [port, starboard].map(line =>
      deeds(parts.filter(one => one.subject === line.key)),
    );
    for (const [what, done] of onPort!) compare(done, onStarboard!.get(what), port.key, starboard.key);
    for (const [what, done] of onStarboard!) {
      if (!onPort!.has(what)) compare(done, undefined, starboard.key, port.key);
    }
  }
  return found;

  function compare(done: Deed, other: Deed | undefined, here: string, there: string) {
    if (other && (other.now === done.now || done.handed)) return;
    const words = other
      ? `done differently on the two sides: ${done.words}, but on ${there} ${other.words}. Confirm that this is intended`
      : `changed here and not on ${there}: ${done.words}. Confirm whether ${there} is to follow`;
    found.push({
      kind: 'one-sided',
      subject: here,
      changed: here,
      unchanged: there,
      weight: done.handed ? 25 : 33,
      words,
      ...(done.change.placeAfter ? { placeAfter: done.change.placeAfter } : {}),
    });
  }
}

interface Deed {
  readonly now: string;
  readonly words: string;
  readonly handed: boolean;
  readonly change: PartChange;
}

/** Each thing that was done to the parts of one line. */
function deeds(changes: readonly PartChange[]): Map<string, Deed> {
  const all = new Map<string, Deed>();
  for (const change of changes) {
    const { fate, role } = change;
    if (fate === 'kept' || fate === 'moved between sides') continue;
    if (fate !== 'modified') {
      const name = change.after ?? '';
      all.set(`${role} as a whole`, {
        now: `${fate} ${nameIn(name)}`,
        words: change.words,
        handed: false,
        change,
      });
    } else {
      for (const fact of change.facts) {
        const words = `${role} ${factChangeWords(fact)}`;
        all.set(`${role} ${fact.what}`, {
          now: fact.after ?? '',
          words,
          handed: fact.handed === true,
          change,
        });
      }
    }
  }
  return all;
}

/** The part without what rightly differs between the sides. */
function nameIn(title: string): string {
  return title.replace(/ clutch \S+/, '').replace(/hand (left|right)/, 'hand');
}
