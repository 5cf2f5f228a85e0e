import { percent } from '@tailshaft/mechanics';
import { named } from '@tailshaft/vocabulary';
import { couplingsThatFit, withCoupling } from '../analysis/coupling-choice.js';
import { LineAnalysis } from '../analysis/line.js';
import { torsionGetsWorse } from '../analysis/torsional-clearance.js';
import type { LineContext } from '../judge/context.js';
import { Needs } from '../judge/needs.js';
import type { ModelEdit, Route } from '../judge/route.js';
import type { CatalogueEntry } from '../model/catalogue.js';
import { nameOf, statementOf } from '../model/part.js';
import type { Coupling, CouplingFacts } from '../model/shafting.js';
import { greatestTorqueAt } from './capacity/greatest-torque.js';

/** What a way out leads to: its margin, and that margin in words. */
export interface Outlook {
  readonly margin: number;
  readonly words: string;
}

/** At most so many ways out are offered: the ones with the greatest margin. */
const OFFERED = 5;

/**
 * Catalogue couplings that fit the place of this one, carry its torque and do not bring a torsional critical into the
 * running range; the greatest margin of what is judged first. Without a judgement of its own, that of torque ranks them.
 */
export function couplingRoutes(
  context: LineContext,
  coupling: Coupling,
  judge: (after: LineAnalysis, coupling: Coupling) => Outlook | undefined = torqueOutlook,
): Route[] {
  const { line, vessel, analysis, catalogue } = context;
  const found: (Outlook & { entry: CatalogueEntry<CouplingFacts> })[] = [];
  for (const entry of couplingsThatFit(line, coupling, catalogue.couplings)) {
    const changed = withCoupling(line, coupling, entry, catalogue.couplings);
    const after = new LineAnalysis(changed.line, vessel);
    const torque = torqueOutlook(after, changed.coupling);
    if (coupling.torque && (!torque || torque.margin < 0)) continue;
    const outlook = judge(after, changed.coupling);
    if (!outlook || outlook.margin < 0 || torsionGetsWorse(analysis, after)) continue;
    found.push({ ...outlook, entry });
  }
  return found
    .sort((one, other) => other.margin - one.margin)
    .slice(0, OFFERED)
    .map(({ entry, words }) => ({
      title: `Replace ${nameOf(coupling)} by ${entry.name}: ${words}`,
      edits: editsFor(coupling, entry.name),
    }));
}

/** Margin of what the sheet allows over the greatest torque at the place. */
function torqueOutlook(after: LineAnalysis, coupling: Coupling): Outlook | undefined {
  const torque = greatestTorqueAt(after, coupling, new Needs());
  const allowed = coupling.torque?.value;
  if (!torque || !allowed) return undefined;
  const margin = allowed.si / torque.si - 1;
  return { margin, words: `${percent(margin)} torque margin` };
}

function editsFor(coupling: Coupling, name: string): ModelEdit[] {
  return statementOf(coupling) === 'retained'
    ? [
        {
          do: 'state',
          at: coupling.origin,
          statement: { action: 'replace', role: 'coupling', name, facts: [] },
        },
      ]
    : [{ do: 'replace', at: coupling.nameOrigin!, value: named(name) }];
}
