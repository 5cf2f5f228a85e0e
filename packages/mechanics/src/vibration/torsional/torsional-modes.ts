import type { Value } from '../../core/value.js';
import { LUMPED_TORSION } from '../sources.js';
import { type ElementTorque, elementTorques } from './element-torques.js';
import { generalisedEigen } from './generalised-eigen.js';
import { type ReferredSystem, referredSystem } from './referred-system.js';
import { type TorsionalGap, type TorsionalModel, torsionalGap } from './torsional-model.js';
import { torsionalSpeeds } from './torsional-speeds.js';

export interface TorsionalSolution {
  readonly solved: true;
  readonly reference: string;
  /** Signed speed of each inertia per unit speed of the reference: the rigid-body turning of a free train. */
  readonly speeds: ReadonlyMap<string, number>;
  /** The train turns freely, so a rigid-body mode of zero frequency exists; `modes` leaves it out. */
  readonly turnsFreely: boolean;
  readonly referred: ReferredSystem;
  /** Vibrating modes, lowest first. */
  readonly modes: readonly TorsionalMode[];
  readonly notes: readonly string[];
}

export interface TorsionalMode {
  /** 1 for the lowest vibrating mode. */
  readonly number: number;
  readonly frequency: Value<'frequency'>;
  /** ω = 2π f, rad/s. */
  readonly angular: number;
  /** Amplitude of each inertia at its own speed, signed, with the unit inertia at 1. */
  readonly amplitudes: ReadonlyMap<string, number>;
  /** The inertia whose amplitude is 1: the reference, or the one that moves most when the reference stands still. */
  readonly unit: string;
  /** N·m per rad of the unit inertia, in every shaft and gear. */
  readonly torques: readonly ElementTorque[];
  readonly nodes: readonly ModeNode[];
}

/** A place that does not move. */
export interface ModeNode {
  readonly shaft: string;
  /** Share of the shaft's twist that lies between its `from` end and the node; of its length when it is uniform. */
  readonly fraction: number;
}

const TOO_FAR_APART = 'The inertias and stiffnesses are too far apart in size to be solved.';

/** Below this share of the largest amplitude an inertia counts as standing still. */
const STANDS_STILL = 1e-6;

/**
 * Natural frequencies and mode shapes of a geared, branched train: K θ = ω² J θ in the referred system, amplitudes
 * and torques given back at each part's own speed. With anything missing it returns what is missing, and no numbers.
 */
export function solveTorsional(model: TorsionalModel): TorsionalSolution | TorsionalGap {
  const gap = torsionalGap(model);
  if (gap.missing.length > 0 || gap.faults.length > 0) return gap;
  const speeds = torsionalSpeeds(model);
  if (speeds.faults.length > 0) return { ...gap, faults: speeds.faults };
  const referred = referredSystem(model, speeds);
  const free = referred.groups.map((_, i) => i).filter(i => !referred.held.has(i));
  const mass = free.map(i => referred.inertia[i]!);
  if (!mass.some(m => m > 0)) return { ...gap, faults: ['No inertia that can turn is more than zero.'] };
  const stiffness = free.map(i => free.map(j => referred.stiffness[i]![j]!));
  const turnsFreely = referred.held.size === 0;
  const pairs = generalisedEigen(stiffness, mass);
  if (!pairs) return { ...gap, faults: [TOO_FAR_APART] };
  const modes = pairs.slice(turnsFreely ? 1 : 0).map(({ shape }, at) => {
    const referredShape = referred.groups.map(() => 0);
    free.forEach((group, i) => {
      referredShape[group] = shape[i]!;
    });
    if (turnsFreely) removeTurning(referredShape, referred.inertia);
    return describeMode(model, referred, speeds, referredShape, at + 1);
  });
  if (!modes.every(hasFiniteShape)) return { ...gap, faults: [TOO_FAR_APART] };
  return { solved: true, ...speeds, turnsFreely, referred, modes, notes: notes(model) };
}

function describeMode(
  model: TorsionalModel,
  referred: ReferredSystem,
  { speeds, reference }: { speeds: ReadonlyMap<string, number>; reference: string },
  shape: readonly number[],
  number: number,
): TorsionalMode {
  const angular = Math.sqrt(rayleighQuotient(model, referred, speeds, shape));
  const raw = new Map(
    model.inertias.map(({ name }) => [name, shape[referred.groupOf.get(name)!]! * speeds.get(name)!]),
  );
  const unit = unitInertia(raw, reference);
  const scale = raw.get(unit)!;
  // Adding zero turns −0 into 0, which would otherwise print.
  const amplitudes = new Map([...raw].map(([name, value]) => [name, value / scale + 0]));
  const nodes = model.shafts.flatMap(({ name, from, to }) => {
    const [a, b] = [amplitudes.get(from)!, amplitudes.get(to)!];
    return a * b < 0 ? [{ shaft: name, fraction: a / (a - b) }] : [];
  });
  return {
    number,
    frequency: frequencyValue(model, angular / (2 * Math.PI), number),
    angular,
    amplitudes,
    unit,
    torques: elementTorques(model, speeds, amplitudes, angular),
    nodes,
  };
}

/** A vibrating shape has no share of the rigid-body turning: Σ J θ = 0. What rounding left of it is taken out. */
function removeTurning(shape: number[], inertia: readonly number[]): void {
  const total = inertia.reduce((sum, J) => sum + J, 0);
  const turning = inertia.reduce((sum, J, i) => sum + J * shape[i]!, 0) / total;
  for (let i = 0; i < shape.length; i++) shape[i]! -= turning;
}

function hasFiniteShape({ angular, amplitudes }: TorsionalMode): boolean {
  return [angular, ...amplitudes.values()].every(Number.isFinite);
}

/** ω² = Σ k (Δθ)² / Σ J θ²: takes the differences across each shaft, so a stiff part does not spoil a slow mode. */
function rayleighQuotient(
  model: TorsionalModel,
  referred: ReferredSystem,
  speeds: ReadonlyMap<string, number>,
  shape: readonly number[],
): number {
  let strain = 0;
  for (const { from, to, stiffness } of model.shafts) {
    const twist = shape[referred.groupOf.get(from)!]! - shape[referred.groupOf.get(to)!]!;
    strain += stiffness!.si * speeds.get(from)! ** 2 * twist ** 2;
  }
  const kinetic = referred.inertia.reduce((sum, J, i) => sum + J * shape[i]! ** 2, 0);
  return strain / kinetic;
}

function unitInertia(raw: ReadonlyMap<string, number>, reference: string): string {
  const [largest, most] = [...raw].reduce((a, b) => (Math.abs(b[1]) > Math.abs(a[1]) ? b : a));
  return Math.abs(raw.get(reference)!) > STANDS_STILL * Math.abs(most) ? reference : largest;
}

function frequencyValue(model: TorsionalModel, si: number, mode: number): Value<'frequency'> {
  const inputs = [
    ...model.inertias.flatMap(one => one.inertia ?? []),
    ...model.shafts.flatMap(one => one.stiffness ?? []),
    ...(model.gears ?? []).flatMap(one => one.ratio ?? []),
  ];
  return {
    label: `torsional natural frequency, mode ${mode}`,
    symbol: `f${mode}`,
    dimension: 'frequency',
    si,
    working: {
      name: 'torsional natural frequencies of a train',
      text: 'K θ = ω² J θ, with J = Σ J s² and k s² referred to one speed; f = ω / 2π',
      inputs,
      source: LUMPED_TORSION,
      range: [],
      notes: notes(model),
    },
  };
}

function notes({ gears = [] }: TorsionalModel): string[] {
  return [
    'Gear teeth, belts and chains are taken as rigid; damping is left out.',
    ...gears
      .filter(one => one.sense === undefined)
      .map(
        one => `${one.name} does not say its sense: signs of amplitudes beyond it are as for the same sense.`,
      ),
  ];
}
