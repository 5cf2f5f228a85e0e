import { percent } from '@tailshaft/mechanics';
import { acceptsRotation, type GearChoice, gearsThatTurn, withGear } from '../../analysis/gear-choice.js';
import { clutchesOf } from '../../analysis/gear-data.js';
import { inputTorques } from '../../analysis/input-torque.js';
import { LineAnalysis } from '../../analysis/line.js';
import { type Direction, speedEntering } from '../../analysis/speeds.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { ModelEdit, Route } from '../../judge/route.js';
import type { CatalogueEntry } from '../../model/catalogue.js';
import { isWeak } from '../../model/fact.js';
import type { GearFacts } from '../../model/gear.js';
import { statementOf } from '../../model/part.js';
import { gearEdits } from '../gear-edits.js';
import { writtenRatio } from '../ratio/written-ratio.js';
import { pumpFor } from '../rotation/edits.js';

/** At most so many ways out are offered: the ones with the greatest margin. */
const OFFERED = 5;

/**
 * Catalogue gears, and other ratios of the same gear, that turn the shaft the same way, take this engine and carry its
 * torque with the wanted margin; the greatest margin first, and for each gear the ratio nearest to the one in the line.
 */
export function gearsThatCarry(
  context: LineContext,
  duty: string,
  direction: Direction,
  wanted: number,
): Route[] {
  return gearRoutes(context, after => {
    const margin = carries(after, duty, direction, wanted);
    return margin === undefined ? undefined : { margin, words: `${percent(margin)} torque margin` };
  });
}

/** The same gears and ratios, ranked by what a judgement of the line as it then is makes of them. */
export function gearRoutes(
  context: LineContext,
  judge: (after: LineAnalysis) => { readonly margin: number; readonly words: string } | undefined,
): Route[] {
  const { line, analysis, catalogue, vessel } = context;
  const turning = analysis.rotation.ahead;
  if (!turning || !line.gear?.entry) return [];
  const best = new Map<string, { choice: GearChoice; margin: number; words: string; after: LineAnalysis }>();
  for (const choice of gearsThatTurn(line, turning, catalogue.gears)) {
    if (best.has(choice.entry.name) || !fits(context, choice.entry)) continue;
    const after = new LineAnalysis(withGear(line, choice.entry, choice.variant, choice.clutch.name), vessel);
    const outlook = judge(after);
    if (outlook) best.set(choice.entry.name, { choice, after, ...outlook });
  }
  return [...best.values()]
    .sort((one, other) => other.margin - one.margin)
    .slice(0, OFFERED)
    .map(({ choice, words, after }) => ({
      title: `${named(context, choice)}: ${words}${speedChange(analysis, after)}`,
      edits: editsFor(context, choice),
    }));
}

/** Least margin of the rating over the torque that enters the gear; undefined where it is too small or cannot be told. */
export function carries(
  after: LineAnalysis,
  duty: string,
  direction: Direction,
  wanted: number,
): number | undefined {
  const { compared, needs } = inputTorques(after, duty, direction);
  const worst = compared[0];
  return needs.any || !worst || worst.margin < wanted ? undefined : worst.margin;
}

/** What the sheets say of speed and housing must not stand against the exchange. */
function fits({ line, analysis }: LineContext, entry: CatalogueEntry<GearFacts>): boolean {
  const { inputSpeedMax, inputHousing } = entry.facts;
  const governed = analysis.governedSpeed.value ?? analysis.rated.value?.speed;
  const fastest = speedEntering(line, line.gear!, governed, new Needs());
  if (inputSpeedMax?.value && fastest && fastest.si > inputSpeedMax.value.si) return false;
  const housing = line.engine?.housing?.value;
  if (housing && inputHousing?.value && housing !== inputHousing.value) return false;
  return !isWeak(entry.facts.inputRotation) && acceptsRotation(entry.facts, analysis.rotation) === true;
}

function named({ line }: LineContext, { entry, variant, clutch }: GearChoice): string {
  const same = entry.name === line.gear?.entry?.name;
  const ratio = variant.nominalFact.written;
  const ahead = clutchesOf(entry.facts, variant).length > 1 ? `, clutch ${clutch.name} ahead` : '';
  return same
    ? `Use ${ratio} of ${entry.name}${ahead}`
    : `Replace the gear by ${entry.name} ${ratio}${ahead}`;
}

function speedChange(before: LineAnalysis, after: LineAnalysis): string {
  const [now, then] = [before.overallRatio('ahead').value, after.overallRatio('ahead').value];
  if (!now || !then) return '';
  const change = now.si / then.si - 1;
  if (Math.abs(change) < 0.0005) return ', shaft speed unchanged';
  return `, the shaft turns ${percent(Math.abs(change))} ${change > 0 ? 'faster' : 'slower'}`;
}

function editsFor(
  { line, analysis, vessel }: LineContext,
  { entry, variant, clutch }: GearChoice,
): ModelEdit[] {
  const gear = line.gear!;
  const edits = gearEdits(gear, {
    name: entry.name,
    ratio: writtenRatio(variant, clutch, vessel),
    clutch: clutch.name,
  });
  const turn = analysis.rotation.atGearInput;
  const needsPump = entry.facts.inputRotation?.value?.word === 'either by pump index' && turn;
  if (!needsPump || gear.pumpIndex || statementOf(gear) === 'retained') return edits;
  return [...edits, { do: 'set', host: gear.origin, property: 'pump set for', value: pumpFor(turn) }];
}
