import {
  type CatalogueEntry,
  clutchesOf,
  type GearFacts,
  type RatioVariant,
  type ShaftLine,
  withGear,
} from '@tailshaft/drivetrain';
import type { JudgedLine } from '../lines.js';
import { type Fit, fitOf, MOST_TRIALS, tryLine } from './line-trial.js';

/**
 * Puts each gear in the place of the line's own, at the ratio nearest to the present one and in each clutch, and lets
 * the rules judge it. Offers only what they say: a gear of which nothing can be told is not recommended.
 */
export function judgeGears(
  line: JudgedLine,
  gears: readonly CatalogueEntry<GearFacts>[],
): ReadonlyMap<string, Fit> {
  const fits = new Map<string, Fit>();
  let trials = 0;
  for (const entry of gears) {
    const variant = nearestRatio(entry, line.line);
    if (!variant) continue;
    const clutches = clutchesOf(entry.facts, variant).map(one => one.name);
    trials += clutches.length;
    if (trials > MOST_TRIALS) return new Map();
    const tried = clutches.flatMap(clutch => judge(line, entry, variant, clutch) ?? []);
    const best = tried.sort((a, b) => b.rank - a.rank)[0];
    if (best) fits.set(entry.name, best);
  }
  return fits;
}

function judge(
  judged: JudgedLine,
  entry: CatalogueEntry<GearFacts>,
  variant: RatioVariant,
  clutch: string,
): Fit | undefined {
  const line = withGear(judged.line, entry, variant, clutch);
  return fitOf(tryLine(judged, line, ASKED), `${variant.nominalFact.written} clutch ${clutch}`);
}

const ASKED = /^(rotation|capacity)\//;

function nearestRatio(entry: CatalogueEntry<GearFacts>, line: ShaftLine): RatioVariant | undefined {
  const now =
    line.gear?.variant?.nominal.si ??
    line.gear?.ratioUsed?.value?.si ??
    line.before?.gear?.variant?.nominal.si;
  const away = (one: RatioVariant) => (now === undefined ? 0 : Math.abs(one.nominal.si / now - 1));
  return [...entry.facts.ratios].sort((a, b) => away(a) - away(b))[0];
}
