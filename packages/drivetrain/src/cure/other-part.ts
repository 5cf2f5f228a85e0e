import { named } from '@tailshaft/vocabulary';
import { couplingsThatFit } from '../analysis/coupling-choice.js';
import { gearsThatTurn } from '../analysis/gear-choice.js';
import { LineAnalysis } from '../analysis/line.js';
import type { ModelEdit, Route } from '../judge/route.js';
import type { Verdict } from '../judge/verdict.js';
import type { Engine } from '../model/engine.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { gearEdits } from '../rules/gear-edits.js';
import { writtenRatio } from '../rules/ratio/written-ratio.js';
import { type Judgement, lineOf } from './judgement.js';
import { twinsOf } from './twins.js';

/** So many parts of a kind are tried, those first that are most like the one in the line. */
const TRIED = 10;

/**
 * Other parts and grades of the catalogue in the place of each part of the line that a failing verdict is about. Whether one
 * settles it is for the caller to try: nothing is said here of what follows.
 */
export function otherParts(verdict: Verdict, judgement: Judgement): Route[] {
  const line = lineOf(verdict, judgement.vessel);
  if (!line || verdict.outcome !== 'fails') return [];
  return [
    ...otherGears(line, judgement),
    ...otherRatings(line),
    ...otherCouplings(line, judgement),
    ...byName(line, judgement),
  ];
}

function otherGears(line: ShaftLine, { vessel, catalogue }: Judgement): Route[] {
  const { gear } = line;
  const turns = new LineAnalysis(line, vessel).rotation.ahead;
  if (!gear?.entry || !turns) return [];
  return gearsThatTurn(line, turns, catalogue.gears)
    .filter(one => one.entry.name !== gear.entry?.name || one.variant.nominal.si !== gear.variant?.nominal.si)
    .slice(0, TRIED)
    .map(({ entry, variant, clutch }) => ({
      title: `Fit gear ${entry.name} at ${variant.nominalFact.written} with clutch ${clutch.name} ahead`,
      edits: gearEdits(gear, {
        name: entry.name,
        ratio: writtenRatio(variant, clutch, vessel),
        clutch: clutch.name,
        ...(gear.change === 'retained' ? { fitted: 'in its place' } : {}),
      }),
    }));
}

/** The same engine at another of its ratings. */
function otherRatings(line: ShaftLine): Route[] {
  const { engine } = line;
  const at = engine?.ratedAt;
  if (!engine || !at || engine.change === 'retained') return [];
  return engine.ratings
    .filter(one => one.duty !== at.value)
    .map(one => ({
      title: `Use ${nameOf(engine)} at its ${one.duty} rating`,
      edits: [engine, ...twinsOf(engine, line)].map(each => ({
        do: 'replace',
        at: each.ratedAt!.origin,
        value: named(one.duty),
      })),
    }));
}

function otherCouplings(line: ShaftLine, { catalogue }: Judgement): Route[] {
  return line.couplings.flatMap(coupling =>
    couplingsThatFit(line, coupling, catalogue.couplings)
      .slice(0, TRIED)
      .map(entry => ({
        title: `Fit coupling ${entry.name} instead of ${nameOf(coupling)}`,
        edits: renamedTo(coupling, entry.name),
      })),
  );
}

/** Engines, transfers, propellers and shaft grades, by their names alone. */
function byName(line: ShaftLine, { catalogue }: Judgement): Route[] {
  const routes: Route[] = [];
  const offer = (part: Part | undefined, names: readonly string[]) => {
    if (!part?.entry) return;
    for (const name of names.filter(one => one !== part.entry!.name).slice(0, TRIED))
      routes.push({
        title: `Fit ${part.role} ${name} instead of ${nameOf(part)}`,
        edits: [part, ...twinsOf(part, line)].flatMap(one => renamedTo(one, name)),
      });
  };
  offer(line.engine, fitting(line.engine, catalogue.engines));
  for (const transfer of line.transfers)
    offer(
      transfer,
      catalogue.transfers.map(one => one.name),
    );
  offer(
    line.propeller,
    catalogue.propellers.map(one => one.name),
  );
  for (const shaft of line.shafts) {
    const at = shaft.material;
    if (!at?.value || home(shaft) !== shaft.origin || shaft.change === 'retained') continue;
    for (const { name } of catalogue.materials.filter(one => one.name !== at.value).slice(0, TRIED))
      routes.push({
        title: `Make the shaft of ${name}`,
        edits: [{ do: 'replace', at: at.origin, value: named(name) }],
      });
  }
  return routes;
}

/** Engines with the rating that the line uses, the nearest in power first. */
function fitting(engine: Engine | undefined, engines: Judgement['catalogue']['engines']): string[] {
  const power = engine?.rating?.power?.value?.y.si;
  const duty = engine?.ratedAt?.value;
  const away = (ratings: Engine['ratings']) => {
    const other = ratings.find(one => duty === undefined || one.duty === duty)?.power?.value?.y.si;
    return other && power ? Math.abs(Math.log(other / power)) : undefined;
  };
  return engines
    .flatMap(one => {
      const distance = away(one.facts.ratings);
      return distance === undefined ? [] : [{ name: one.name, distance }];
    })
    .sort((a, b) => a.distance - b.distance)
    .map(one => one.name);
}

function renamedTo(part: Part, name: string): ModelEdit[] {
  if (part.change === 'retained')
    return [
      { do: 'state', at: part.origin, statement: { action: 'replace', role: part.role, name, facts: [] } },
    ];
  return part.nameOrigin ? [{ do: 'replace', at: part.nameOrigin, value: named(name) }] : [];
}
