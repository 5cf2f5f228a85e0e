import { given, ratioInSeries, renamed, shaftSpeedThroughGear, type Value } from '@tailshaft/mechanics';
import type { Needs } from '../judge/needs.js';
import type { Clutch, Gear, Transfer } from '../model/gear.js';
import { home, nameOf, type Part } from '../model/part.js';
import type { ShaftLine } from '../model/vessel.js';
import { type Derived, derive } from './derived.js';
import { aheadClutchOf, asternClutchOf, clutchesOf } from './gear-data.js';
import { trainOf, waitsForClutch } from './train-of-clutch.js';
import { unsignedTrainRatio } from './train-ratio.js';

export type Direction = 'ahead' | 'astern';

/** A speed ratio in ÷ out, always positive, and where it comes from. */
export interface StageRatio {
  readonly value: Value<'ratio'>;
  readonly basis: 'exact of the clutch' | 'exact' | 'tooth counts' | 'nominal';
}

/** The gear's ratio in the clutch used in this direction: exact where it is declared or follows from tooth counts. */
export function gearRatio(gear: Gear, direction: Direction): Derived<StageRatio> {
  return derive(needs => {
    const clutch = direction === 'ahead' ? aheadClutchOf(gear) : asternClutchOf(gear);
    const clutches = clutchesOf(gear, gear.variant);
    const unequal =
      clutches.some(one => one.exact !== undefined || one.train !== undefined) || waitsForClutch(gear);
    if (!clutch && unequal) {
      return needs.miss(
        {
          what: `the clutch that ${nameOf(gear)} runs ahead in: its clutches have their own ratios`,
          host: gear.origin,
          property: 'ahead clutch',
        },
        gear.aheadClutch?.origin,
      );
    }
    return ratioThrough(gear, clutch, direction, needs);
  });
}

/** The ratio through one clutch of the gear. */
function ratioThrough(
  gear: Gear,
  clutch: Clutch | undefined,
  direction: Direction,
  needs: Needs,
): StageRatio | undefined {
  const label = `exact ratio ${direction}`;
  if (clutch?.exact?.value)
    return { value: renamed(clutch.exact.value, label, 'i'), basis: 'exact of the clutch' };
  const variant = gear.variant;
  if (variant?.exact?.value) return { value: renamed(variant.exact.value, label, 'i'), basis: 'exact' };
  const train = clutch ? (trainOf(gear, clutch) ?? variant?.train) : variant?.train;
  const derived = train && unsignedTrainRatio(train);
  if (derived) return { value: renamed(derived, label, 'i'), basis: 'tooth counts' };
  const nominal = variant?.nominal ?? gear.ratioUsed?.value;
  if (!nominal) return missingRatio(gear, needs);
  return {
    value: {
      ...renamed(nominal, 'nominal ratio', 'i'),
      assumed: 'the nominal ratio is used for the exact one, which is not declared',
    },
    basis: 'nominal',
  };
}

function missingRatio(gear: Gear, needs: Needs): undefined {
  return needs.miss(
    { what: `ratio of ${nameOf(gear)}`, host: gear.origin, property: 'ratio' },
    gear.ratioUsed?.origin,
  );
}

/** The ratio of a V-drive box, belt or chain stage, the same in both directions. */
export function transferRatio(transfer: Transfer): Derived<StageRatio> {
  return derive(needs => {
    if (transfer.exact?.value)
      return { value: renamed(transfer.exact.value, 'exact ratio', 'i'), basis: 'exact' };
    const derived = transfer.train && unsignedTrainRatio(transfer.train);
    if (derived) return { value: derived, basis: 'tooth counts' };
    const nominal = transfer.ratioUsed?.value;
    if (nominal) {
      return {
        value: {
          ...renamed(nominal, 'nominal ratio', 'i'),
          assumed: 'the nominal ratio is used for the exact one, which is not declared',
        },
        basis: 'nominal',
      };
    }
    return needs.miss(
      { what: `ratio of ${nameOf(transfer)}`, host: home(transfer), property: 'exact' },
      transfer.exact?.origin,
    );
  });
}

/** A speed of the engine, as it enters this part through the stages ahead of it. */
export function speedEntering(
  line: ShaftLine,
  part: Part,
  engineSpeed: Value<'rotational speed'> | undefined,
  needs: Needs,
): Value<'rotational speed'> | undefined {
  let speed = engineSpeed;
  for (const before of line.chain.slice(0, line.chain.indexOf(part))) {
    const box = line.transfers.find(one => one === before);
    const stage =
      before === line.gear
        ? needs.take(gearRatio(line.gear, 'ahead'))
        : box
          ? needs.take(transferRatio(box))
          : undefined;
    if (before === line.gear || box)
      speed = speed && stage && shaftSpeedThroughGear({ engineSpeed: speed, ratio: stage.value });
  }
  return speed;
}

/** Engine speed over propeller shaft speed, through gear and transfers. */
export function overallRatio(line: ShaftLine, direction: Direction): Derived<Value<'ratio'>> {
  return derive(needs => {
    const stages = [
      ...(line.gear ? [needs.take(gearRatio(line.gear, direction))] : []),
      ...line.transfers.map(transfer => needs.take(transferRatio(transfer))),
    ];
    if (stages.some(stage => stage === undefined)) return undefined;
    const ratios = stages.map(stage => stage!.value);
    if (ratios.length === 0) {
      return given('ratio of the line', 'i', 'ratio', 1, {
        assumed: 'no gear: the shaft turns as the engine does',
      });
    }
    return ratios.reduce((first, second) => ratioInSeries({ first, second }));
  });
}
