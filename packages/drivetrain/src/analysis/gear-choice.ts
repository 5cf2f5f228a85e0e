import { type Sense, turnAtFlywheel } from '@tailshaft/mechanics';
import type { CatalogueEntry } from '../model/catalogue.js';
import { isWeak } from '../model/fact.js';
import type { Clutch, Gear, GearFacts, RatioVariant } from '../model/gear.js';
import type { ShaftLine } from '../model/vessel.js';
import { clutchesOf } from './gear-data.js';
import { type RotationAnalysis, rotationOf, statementOf } from './rotation.js';

/** A catalogue gear at one ratio in one clutch. */
export interface GearChoice {
  readonly entry: CatalogueEntry<GearFacts>;
  readonly variant: RatioVariant;
  readonly clutch: Clutch;
  /** Its nominal ratio over the one in the line, less one; undefined when the line states none. */
  readonly ratioChange: number | undefined;
}

/**
 * Catalogue gears that turn the shaft of this line the wanted way, take this engine's rotation and may run so ahead for
 * as long as the vessel runs, the nearest in ratio first. What a sheet does not state never qualifies a gear.
 */
export function gearsThatTurn(
  line: ShaftLine,
  wanted: Sense,
  gears: readonly CatalogueEntry<GearFacts>[],
): GearChoice[] {
  const now = line.gear?.variant?.nominal.si ?? line.gear?.ratioUsed?.value?.si;
  const choices: GearChoice[] = [];
  for (const entry of gears) {
    // What is only hearsay chooses no gear; it is judged all the same where the gear is fitted.
    if (isWeak(entry.facts.inputRotation)) continue;
    for (const variant of entry.facts.ratios) {
      const clutch = clutchesOf(entry.facts, variant).find(one => {
        if (one.ahead?.value !== 'continuous' || isWeak(one.ahead)) return false;
        const rotation = rotationOf(withGear(line, entry, variant, one.name));
        return rotation.ahead === wanted && acceptsRotation(entry.facts, rotation) === true;
      });
      if (clutch) {
        choices.push({
          entry,
          variant,
          clutch,
          ratioChange: now === undefined ? undefined : variant.nominal.si / now - 1,
        });
      }
    }
  }
  return choices.sort((a, b) => Math.abs(a.ratioChange ?? 0) - Math.abs(b.ratioChange ?? 0));
}

/** Whether a gear takes the rotation of the engine before it; undefined where one of the two is not stated. */
export function acceptsRotation(
  gear: Pick<GearFacts, 'inputRotation'>,
  rotation: RotationAnalysis,
): boolean | undefined {
  const fact = gear.inputRotation;
  if (!fact?.value) return undefined;
  if (fact.value.word === 'either' || fact.value.word === 'either by pump index') return true;
  const accepted = turnAtFlywheel(statementOf(fact.value));
  if (rotation.either) return accepted.known ? true : undefined;
  if (!accepted.known || !rotation.atGearInput) return undefined;
  return accepted.value === rotation.atGearInput;
}

const BEFORE_GEAR: ReadonlySet<string> = new Set(['engine', 'motor', 'coupling']);

/** The same line with another gear in the place of its own, or behind what drives where it has none yet. */
export function withGear(
  line: ShaftLine,
  entry: CatalogueEntry<GearFacts>,
  variant: RatioVariant,
  clutch: string,
): ShaftLine {
  const origin = line.gear?.origin ?? line.origin;
  const gear: Gear = {
    role: 'gear',
    path: line.gear?.path ?? `${line.path}.gear`,
    change: 'replaced',
    entry: { name: entry.name, origin: entry.origin },
    origin,
    ...entry.facts,
    ratioUsed: variant.nominalFact,
    variant,
    aheadClutch: { value: clutch, written: clutch, origin },
  };
  if (line.gear) return { ...line, gear, chain: line.chain.map(part => (part === line.gear ? gear : part)) };
  const behind = line.chain.findIndex(part => !BEFORE_GEAR.has(part.role));
  const at = behind < 0 ? line.chain.length : behind;
  return { ...line, gear, chain: [...line.chain.slice(0, at), gear, ...line.chain.slice(at)] };
}
