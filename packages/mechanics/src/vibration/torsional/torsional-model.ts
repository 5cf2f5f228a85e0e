import type { Value } from '../../core/value.js';

/**
 * A torsional train as its parts are known: lumped inertias, the springs between them, and gears that tie two
 * inertias together rigidly. Branches arise where one inertia has several shafts or gears. Numbers are each part's
 * own, at its own speed; whatever nobody has told is simply absent.
 */
export interface TorsionalModel {
  readonly inertias: readonly TorsionalInertia[];
  readonly shafts: readonly TorsionalShaft[];
  readonly gears?: readonly TorsionalGear[];
  /** Inertia at whose speed the equivalent system is written, and whose amplitude is 1. The first when absent. */
  readonly reference?: string;
}

export interface TorsionalInertia {
  readonly name: string;
  /** Zero is allowed where the author declares it negligible; absent means nobody knows. */
  readonly inertia?: Value<'moment of inertia'>;
  /** Cannot turn: a shaft brake, or the wall of a textbook example. */
  readonly held?: boolean;
}

/** A shaft, coupling or damper spring between two inertias that turn at one speed. */
export interface TorsionalShaft {
  readonly name: string;
  readonly from: string;
  readonly to: string;
  readonly stiffness?: Value<'torsional stiffness'>;
}

/** Teeth, belt or chain taken as rigid. A mesh with a known give is two inertias, a gear and a shaft. */
export interface TorsionalGear {
  readonly name: string;
  readonly driver: string;
  readonly driven: string;
  /** Speed of the driver ÷ speed of the driven, positive. */
  readonly ratio?: Value<'ratio'>;
  /** Of the driven against the driver. It changes no frequency of a branched train, only signs of amplitudes. */
  readonly sense?: 'same' | 'opposite';
}

/** A number that the system cannot be solved without. */
export interface MissingDatum {
  readonly what: 'moment of inertia' | 'torsional stiffness' | 'ratio';
  /** Name of the inertia, shaft or gear that lacks it. */
  readonly part: string;
  readonly sentence: string;
}

/** Why there is no result: data that nobody gave, or data that cannot be right. */
export interface TorsionalGap {
  readonly solved: false;
  readonly missing: readonly MissingDatum[];
  readonly faults: readonly string[];
}

/** Everything that stands between this description and a solution; both lists empty when nothing does. */
export function torsionalGap(model: TorsionalModel): TorsionalGap {
  return {
    solved: false,
    missing: missingData(model),
    faults: [...nameFaults(model), ...numberFaults(model)],
  };
}

function missingData({ inertias, shafts, gears = [] }: TorsionalModel): MissingDatum[] {
  const lacking = (what: MissingDatum['what'], part: string, ask: string): MissingDatum => ({
    what,
    part,
    sentence: `${part} has no ${what}, so the torsional frequencies cannot be computed; ${ask}.`,
  });
  return [
    ...inertias
      .filter(one => !one.held && !known(one.inertia))
      .map(one => lacking('moment of inertia', one.name, 'its maker’s mass-elastic data give it')),
    ...shafts
      .filter(one => !known(one.stiffness))
      .map(one =>
        lacking('torsional stiffness', one.name, 'diameter, length and shear modulus, or its maker, give it'),
      ),
    ...gears
      .filter(one => !known(one.ratio))
      .map(one => lacking('ratio', one.name, 'the exact ratio from the tooth counts is best')),
  ];
}

/** A declared value whose own formula had no result is as unknown as one that was never declared. */
function known(value: Value | undefined): value is Value {
  return value !== undefined && !Number.isNaN(value.si);
}

function nameFaults({ inertias, shafts, gears = [], reference }: TorsionalModel): string[] {
  if (inertias.length === 0) return ['The torsional system has no inertias.'];
  const faults: string[] = [];
  const names = new Set<string>();
  for (const { name } of inertias) {
    if (names.has(name)) faults.push(`Two inertias are named ${name}; each needs its own name.`);
    names.add(name);
  }
  const elements = new Set<string>();
  for (const { name, ends } of [
    ...shafts.map(one => ({ name: one.name, ends: [one.from, one.to] })),
    ...gears.map(one => ({ name: one.name, ends: [one.driver, one.driven] })),
  ]) {
    if (elements.has(name)) faults.push(`Two shafts or gears are named ${name}; each needs its own name.`);
    elements.add(name);
    for (const end of ends)
      if (!names.has(end)) faults.push(`${name} leads to ${end}, which is not among the inertias.`);
    if (ends[0] === ends[1]) faults.push(`${name} leads from ${ends[0]} back to itself.`);
  }
  if (reference !== undefined && !names.has(reference))
    faults.push(`The reference ${reference} is not among the inertias.`);
  return faults;
}

function numberFaults({ inertias, shafts, gears = [] }: TorsionalModel): string[] {
  const faults: string[] = [];
  for (const { name, inertia } of inertias)
    if (known(inertia) && !(inertia.si >= 0 && Number.isFinite(inertia.si)))
      faults.push(`${name} has a moment of inertia of ${inertia.si} kg·m²; it must be zero or more.`);
  for (const { name, stiffness } of shafts)
    if (known(stiffness) && !(stiffness.si > 0 && Number.isFinite(stiffness.si)))
      faults.push(`${name} has a torsional stiffness of ${stiffness.si} N·m/rad; it must be more than zero.`);
  for (const { name, ratio } of gears)
    if (known(ratio) && !(ratio.si > 0 && Number.isFinite(ratio.si)))
      faults.push(
        `${name} has a ratio of ${ratio.si}; it must be positive, with the sense given apart from it.`,
      );
  return faults;
}
