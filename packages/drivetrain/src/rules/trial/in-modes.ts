import { listed } from '@tailshaft/mechanics';
import { named } from '@tailshaft/vocabulary';
import { severalMovers } from '../../analysis/uncovered.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import type { sayFor } from '../../judge/say.js';
import { gapOf } from '../../judge/uncovered.js';
import type { Verdict } from '../../judge/verdict.js';
import { isSaid } from '../../model/reads.js';
import { runningLines } from '../../model/running.js';
import type { ShaftLine } from '../../model/vessel.js';
import { stubRoutes } from '../rotation/edits.js';
import { waits } from '../waiting.js';
import { type PlacedRun, trialName } from './trial-specs.js';

/** A run with the line that it was read on. */
export type RunOfLine = PlacedRun & { readonly line: ShaftLine };

/** The line in each mode in which the run may have been made; none where the run names a mode that the line has not. */
export function possibleModes({ run, line }: RunOfLine): readonly ShaftLine[] {
  const said = isSaid(() => run.mode) ? run.mode?.value : undefined;
  const found = runningLines(line);
  if (!found) return said === undefined ? [line] : [];
  if ('unclear' in found) return [line];
  return said === undefined ? found.lines : found.lines.filter(one => one.mode?.name === said);
}

/**
 * What a check says of a run in the mode in which it was made: where the run does not say which, what it comes to in each of
 * them, if that is the same, or what fails in the plainest of them. `counts` says how far the check knows what several movers come to together: wholly where it does
 * not rest on that, and where one of them falls short by itself, so far as it fails.
 */
export function inItsModes(
  one: RunOfLine,
  say: ReturnType<typeof sayFor>,
  what: string,
  judge: (one: RunOfLine) => Verdict | undefined,
  counts: 'wholly' | 'if it fails' | 'not' = 'not',
): Verdict | undefined {
  const lines = possibleModes(one);
  const said = lines.map(line => {
    const several = counts === 'wholly' || !line.joined ? undefined : severalMovers(line);
    const alone = several && counts === 'not' ? undefined : judge({ ...one, line });
    if (!several || alone?.outcome === 'fails') return alone;
    const needs = new Needs();
    const { at, ...gap } = gapOf(several);
    needs.miss(gap, at);
    return waits(say, needs, one.run.origin, `${line.name}: ${what}`);
  });
  const [first, ...others] = said;
  if (others.every(other => isSame(first, other))) {
    const messages = new Set(said.map((each, at) => each && plain(each.message, lines[at]!, one.line)));
    return first && messages.size === 1 ? { ...first, message: [...messages][0]! } : first;
  }
  // What speaks of no mode goes by the plainest one, as everywhere: what fails there is not softened by saying less.
  const at = lines.findIndex(line => line.mode?.name === one.line.mode?.name);
  const shown = said[at];
  if (shown?.outcome === 'fails') {
    const taken = `Taken as run in mode ${lines[at]!.mode!.name}: ${trialName(one.trial)} does not say in which one it was made.`;
    return { ...shown, message: `${shown.message} ${taken}` };
  }
  const needs = new Needs();
  wantMode(one, lines, needs);
  return waits(say, needs, one.run.origin, `${one.line.name}: ${what}`, {
    routes: () => [...modeRoutes(one, lines), ...stubRoutes(needs.missing)],
  });
}

/** Notes that a run does not say which of these modes it was made in. */
export function wantMode({ trial, run, line }: RunOfLine, modes: readonly ShaftLine[], needs: Needs): void {
  const names = modes.map(one => one.mode!.name);
  needs.miss(
    {
      what: `in which mode (${listed(names, 'or')}) ${line.name} was run in ${trialName(trial)}: the run does not say it`,
      host: run.origin,
      property: 'mode',
      example: names[0]!,
    },
    run.mode?.origin,
  );
}

export function modeRoutes({ run }: RunOfLine, modes: readonly ShaftLine[]): Route[] {
  return modes.map(({ mode }) => ({
    title: `Write that it was run in mode ${mode!.name}`,
    kind: 'corrects the record',
    edits: [{ do: 'set', host: run.origin, property: 'mode', value: named(mode!.name) }],
  }));
}

/** The same outcome, as grave, and waiting for the same. */
function isSame(one: Verdict | undefined, other: Verdict | undefined): boolean {
  if (!one || !other) return one === other;
  return (
    one.outcome === other.outcome &&
    one.severity === other.severity &&
    one.missing.length === other.missing.length &&
    one.missing.every((gap, at) => {
      const { host, property } = other.missing[at]!;
      return gap.host === host && gap.property === property;
    })
  );
}

function plain(message: string, running: ShaftLine, line: ShaftLine): string {
  return message.replaceAll(running.name, line.name);
}
