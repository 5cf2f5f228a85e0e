import { otherTurn, percent } from '@tailshaft/mechanics';
import { named } from '@tailshaft/vocabulary';
import { turnDeclared } from '../../analysis/rotation.js';
import type { LineContext } from '../../judge/context.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import { isWeak } from '../../model/fact.js';
import { statementOf } from '../../model/part.js';

/** How many engines are offered: those nearest in power. */
const MOST = 2;

/** Catalogue engines that turn the other way, with the rating that the line uses. */
export function otherEngineRoutes({
  line,
  catalogue,
  analysis,
}: Pick<LineContext, 'line' | 'catalogue' | 'analysis'>): Route[] {
  const { engine } = line;
  const turn = analysis.rotation.atFlywheel;
  if (!engine?.entry || !turn) return [];
  const duty = engine.ratedAt?.value;
  const now = engine.rating?.power?.value?.y.si;
  return catalogue.engines
    .flatMap(entry => {
      const { rotation, ratings } = entry.facts;
      if (isWeak(rotation) || turnDeclared(rotation) !== otherTurn(turn)) return [];
      const rating = ratings.find(one => duty === undefined || one.duty === duty);
      const power = rating?.power?.value?.y;
      return power && now ? [{ entry, power, change: power.si / now - 1 }] : [];
    })
    .sort((one, other) => Math.abs(one.change) - Math.abs(other.change))
    .slice(0, MOST)
    .map(({ entry, power, change }) => ({
      title:
        `Fit engine ${entry.name}, which turns the other way: ${analysis.tell(power)}` +
        (Math.abs(change) < 0.005
          ? ', the same power'
          : `, ${percent(Math.abs(change))} ${change > 0 ? 'more' : 'less'} power`),
      edits: fitted(engine, entry.name),
    }));
}

function fitted(engine: NonNullable<LineContext['line']['engine']>, name: string): ModelEdit[] {
  if (statementOf(engine) !== 'retained')
    return engine.nameOrigin ? [{ do: 'replace', at: engine.nameOrigin, value: named(name) }] : [];
  const kept = engine.keptFrom?.part;
  return kept?.nameOrigin
    ? [
        {
          do: 'fit anew',
          at: engine.origin,
          like: kept.origin,
          changes: [{ at: kept.nameOrigin, value: named(name) }],
        },
      ]
    : [];
}
