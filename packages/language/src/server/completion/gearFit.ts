import {
  type CatalogueEntry,
  clutchesOf,
  type GearFacts,
  LineAnalysis,
  type RatioVariant,
  RULES,
  type ShaftLine,
  type Verdict,
} from '@tailshaft/drivetrain';
import { type JudgedLine, marginWords } from '../lines.js';

/** How a catalogue gear would fare in a line, in words and for sorting. */
export interface GearFit {
  readonly words: string;
  readonly rank: number;
}

/** Above this many combinations the list is offered without figures: typing must not wait. */
const MOST_TRIALS = 150;

/**
 * Puts each gear in the place of the line's own, at the ratio nearest to the present one and in each clutch, and lets
 * the rules judge it. Offers only what they say: a gear of which nothing can be told is not recommended.
 */
export function judgeGears(
  line: JudgedLine,
  gears: readonly CatalogueEntry<GearFacts>[],
): ReadonlyMap<string, GearFit> {
  const fits = new Map<string, GearFit>();
  let trials = 0;
  for (const entry of gears) {
    const variant = nearestRatio(entry, line.line);
    if (!variant) continue;
    const clutches = clutchesOf(entry.facts, variant).map(one => one.name);
    trials += clutches.length;
    if (trials > MOST_TRIALS) return new Map();
    const tried = clutches.map(clutch => judge(line, entry, variant, clutch));
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
): GearFit {
  const line = withGear(judged.line, entry, variant, clutch);
  const { vessel, catalogue } = judged.judged;
  const context = {
    vessel,
    catalogue,
    today: '',
    arrangement: judged.arrangement,
    line,
    analysis: new LineAnalysis(line, vessel),
    analysisOf: (one: ShaftLine) => new LineAnalysis(one, vessel),
  };
  const verdicts: Verdict[] = [];
  for (const rule of RULES) {
    if (rule.scope !== 'line' || !/^(rotation|capacity)\//.test(rule.id)) continue;
    const said = rule.check(context);
    if (said) verdicts.push(...[said].flat());
  }
  return fitOf(verdicts, `${variant.nominalFact.written} clutch ${clutch}`);
}

function fitOf(verdicts: readonly Verdict[], how: string): GearFit {
  const fails = verdicts.filter(one => one.outcome === 'fails');
  const open = verdicts.filter(one => one.outcome === 'cannot tell').length;
  const margins = verdicts.flatMap(one => (one.margin === undefined ? [] : [one.margin]));
  const least = margins.length > 0 ? Math.min(...margins) : undefined;
  const margin = least === undefined ? '' : `, margin ${marginWords(least)}`;
  const state = fails[0] ? `fails ${fails[0].rule}` : open > 0 ? `${open} cannot tell` : 'holds';
  return {
    words: `${how}: ${state}${margin}`,
    rank: -100 * fails.length - 10 * open + (least === undefined ? 0 : Math.min(least, 5)),
  };
}

function nearestRatio(entry: CatalogueEntry<GearFacts>, line: ShaftLine): RatioVariant | undefined {
  const now =
    line.gear?.variant?.nominal.si ??
    line.gear?.ratioUsed?.value?.si ??
    line.before?.gear?.variant?.nominal.si;
  const away = (one: RatioVariant) => (now === undefined ? 0 : Math.abs(one.nominal.si / now - 1));
  return [...entry.facts.ratios].sort((a, b) => away(a) - away(b))[0];
}

function withGear(
  line: ShaftLine,
  entry: CatalogueEntry<GearFacts>,
  variant: RatioVariant,
  clutch: string,
): ShaftLine {
  const origin = line.gear?.origin ?? line.origin;
  const gear: NonNullable<ShaftLine['gear']> = {
    role: 'gear',
    path: `${line.path}.gear`,
    change: 'replaced',
    entry: { name: entry.name, origin: entry.origin },
    origin,
    ...entry.facts,
    ratioUsed: variant.nominalFact,
    variant,
    aheadClutch: { value: clutch, written: clutch, origin },
  };
  const mover = line.chain.filter(
    part => part.role === 'engine' || part.role === 'motor' || part.role === 'coupling',
  );
  const behind = line.chain.filter(part => !mover.includes(part) && part.role !== 'gear');
  return { ...line, gear, chain: [...mover, gear, ...behind] };
}
