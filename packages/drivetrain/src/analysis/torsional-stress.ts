import {
  FORCED_TORSION,
  forcedResponse,
  given,
  renamed,
  torsionalShearStress,
  type Value,
} from '@tailshaft/mechanics';
import { Needs } from '../judge/needs.js';
import type { Missing } from '../judge/verdict.js';
import { nameOf } from '../model/part.js';
import { KeptBy } from '../model/reads.js';
import type { Coupling, Shaft } from '../model/shafting.js';
import { type Derived, derive } from './derived.js';
import type { LineAnalysis } from './line.js';
import { ratedShaftLoad } from './shaft-strength.js';
import { type TorsionalSystem, torsionalSystem } from './torsional.js';
import { type Excited, excitationOf, hasExcitation } from './torsional-excitation.js';
import { limitsAt, type StressSection, stressSections } from './torsional-limits.js';
import { PROPELLER } from './torsional-model.js';

/** Vibratory stress of a section at one speed of its shaft, beside the class limits there. SI. */
export interface StressPoint {
  readonly section: StressSection;
  readonly speed: number;
  /** Share of rated speed, λ. */
  readonly share: number;
  readonly stress: number;
  readonly continuous: number;
  readonly transient: number;
  /** Declared by whoever calculated or measured it; absent where it is computed here. */
  readonly declared?: Value<'pressure'>;
}

/** Vibratory torque in one coupling at one speed of the engine. */
export interface CouplingTorque {
  readonly coupling: Coupling;
  readonly engineSpeed: number;
  readonly torque: number;
}

export interface TorsionalStress {
  /** From idle to what the class formula reaches, section by section, slowest first. */
  readonly points: readonly StressPoint[];
  readonly couplings: readonly CouplingTorque[];
  readonly rated: (shaft: Shaft) => Value<'rotational speed'>;
  readonly idle: (shaft: Shaft) => Value<'rotational speed'>;
  readonly excited: Excited | undefined;
  readonly system: TorsionalSystem | undefined;
  /** What is missing to know the stress at every critical of the running range. */
  readonly open: readonly Missing[];
}

/** Whether the spec says anything from which a vibratory stress follows. */
export function hasStressData(analysis: LineAnalysis): boolean {
  return (
    hasExcitation(analysis) || analysis.line.shafts.some(one => (one.vibratoryStresses ?? []).length > 0)
  );
}

const worked = new KeptBy<LineAnalysis>();

/** The vibratory stress of a line, worked out when first asked for. */
export function torsionalStressOf(analysis: LineAnalysis): Derived<TorsionalStress> {
  return worked.once(analysis, () => derive(needs => torsionalStress(analysis, needs)));
}

/**
 * Vibratory stress along the running range: as the torsional calculation declares it at its speeds, and as a damped
 * forced response of what is declared to shake the line. Each shaft needs one of the two.
 */
function torsionalStress(analysis: LineAnalysis, needs: Needs): TorsionalStress | undefined {
  const { line } = analysis;
  const sections = line.shafts.map(shaft => ({
    shaft,
    speeds: speedsOf(analysis, shaft, needs),
    sections: stressSections(shaft, shaft === line.shafts.at(-1), needs),
    declared: (shaft.vibratoryStresses ?? []).flatMap(fact => {
      const point = needs.fact(fact, {
        what: `vibratory stress of ${nameOf(shaft)}`,
        host: shaft.origin,
        property: 'vibratory stress',
      });
      return point ? [point] : [];
    }),
  }));
  // A line that nothing drives has no speeds, and nobody needs to be asked for them.
  const speeds = new Map(sections.flatMap(one => (one.speeds ? [[one.shaft, one.speeds] as const] : [])));
  if (needs.any || sections.some(one => !one.speeds)) return undefined;
  const open = new Needs();
  const system = torsionalSystem(analysis, open);
  const computing = hasExcitation(analysis) || sections.some(one => one.declared.length === 0);
  const excited = computing && system ? excitationOf(analysis, system, open) : undefined;
  if (!computing && system) askAtCriticals(analysis, system, open);
  if (!system && !open.any) {
    const said = line.shafts.flatMap(one => one.vibratoryStresses ?? [])[0];
    if (!said) return undefined;
    const what = 'where the criticals lie: a line built like this one is not computed here';
    open.miss({ what, host: line.origin, property: 'shaft' }, said.origin);
  }
  const points: StressPoint[] = [];
  for (const { shaft, sections: all, declared } of sections) {
    const { rated, idle } = speeds.get(shaft)!;
    for (const section of all) {
      for (const { y, x } of declared) {
        const share = x.si / rated.si;
        if (x.si < idle.si || share >= MOST) continue;
        points.push({
          section,
          speed: x.si,
          share,
          stress: y.si * section.stressShare,
          ...limitsAt(section, share),
          declared: y,
        });
      }
    }
  }
  const couplings: CouplingTorque[] = [];
  if (excited && system) {
    for (const { engineSpeed, torques } of swept(analysis, system, excited)) {
      for (const { shaft, sections: all } of sections) {
        const { rated, ratio } = speeds.get(shaft)!;
        const share = engineSpeed / ratio / rated.si;
        for (const section of all) {
          const along = system.train.springs.get(shaft)!.map(one => torques.get(one)!);
          const stress = Math.max(...along) / section.modulus;
          points.push({ section, speed: engineSpeed / ratio, share, stress, ...limitsAt(section, share) });
        }
      }
      for (const coupling of line.couplings) {
        const [spring] = system.train.springs.get(coupling) ?? [];
        if (spring) couplings.push({ coupling, engineSpeed, torque: torques.get(spring)! });
      }
    }
  }
  const order = sections.flatMap(one => one.sections);
  points.sort((a, b) => order.indexOf(a.section) - order.indexOf(b.section) || a.speed - b.speed);
  return {
    points,
    couplings,
    rated: shaft => speeds.get(shaft)!.rated,
    idle: shaft => speeds.get(shaft)!.idle,
    excited,
    system,
    open: open.missing,
  };
}

/** The class formula goes up to, not including, this share of rated speed. */
const MOST = 1.05;

/** A declared stress counts for a critical that lies this near to it. */
const NEAR = 0.05;

interface ShaftSpeeds {
  readonly rated: Value<'rotational speed'>;
  readonly idle: Value<'rotational speed'>;
  /** Engine speed over the speed of the shaft. */
  readonly ratio: number;
}

function speedsOf(analysis: LineAnalysis, shaft: Shaft, needs: Needs): ShaftSpeeds | undefined {
  const load = ratedShaftLoad(analysis, shaft, needs);
  const engine = needs.take(analysis.rated);
  const idle = needs.take(analysis.idleSpeed);
  if (!load || !engine || !idle) return undefined;
  const ratio = engine.speed.si / load.speed.si;
  return {
    rated: renamed(load.speed, 'rated shaft speed', 'n₀'),
    idle: given('shaft speed at idle', 'n', 'rotational speed', idle.si / ratio, {
      assumed: 'low idle of the engine through the same ratio as rated speed',
    }),
    ratio,
  };
}

/** A calculation that says nothing at a critical in the running range leaves it open. */
function askAtCriticals(analysis: LineAnalysis, system: TorsionalSystem, needs: Needs): void {
  const shaft = analysis.line.shafts.at(-1)!;
  const speeds = speedsOf(analysis, shaft, new Needs());
  if (!speeds) return;
  const declared = (shaft.vibratoryStresses ?? []).flatMap(one => one.value?.x.si ?? []);
  for (const { speed, place, order, mode } of system.criticals) {
    const here = speed.si / speeds.ratio;
    if (place?.position !== 'inside' || here / speeds.rated.si >= MOST) continue;
    if (declared.some(one => Math.abs(one / here - 1) <= NEAR)) continue;
    needs.miss(
      {
        what: `vibratory stress of ${nameOf(shaft)} near ${analysis.tell({ ...speed, si: here })}, where ${order.label} excites mode ${mode}`,
        host: shaft.origin,
        property: 'vibratory stress',
      },
      shaft.vibratoryStresses?.[0]?.origin,
    );
  }
}

const STEPS = 80;
/** Places round every critical, as shares of its speed: a light resonance is narrower than the steps between. */
const ROUND = [0.96, 0.98, 0.99, 0.995, 1, 1.005, 1.01, 1.02, 1.04];

/** Torque of every spring along the running range: the sizes of all orders added, which no phase can exceed. */
function swept(analysis: LineAnalysis, system: TorsionalSystem, excited: Excited) {
  const { solution, range, train } = system;
  const rated = analysis.rated.value!.speed.si;
  const top = Math.min(range.to.si, rated * MOST * 0.9999);
  const speedOf = (inertia: string) => Math.abs(solution.speeds.get(inertia)!);
  const criticals = excited.orders.flatMap(one =>
    solution.modes.map(mode => mode.angular / (one.order * speedOf(one.inertia))),
  );
  const even = Array.from(
    { length: STEPS + 1 },
    (_, at) => range.from.si + ((top - range.from.si) * at) / STEPS,
  );
  const all = [...even, ...criticals.flatMap(one => ROUND.map(share => one * share))]
    .filter(one => one >= range.from.si && one <= top)
    .sort((a, b) => a - b);
  return all.map(engineSpeed => {
    const torques = new Map(train.model.shafts.map(one => [one.name, 0]));
    for (const order of excited.orders) {
      const angular = order.order * speedOf(order.inertia) * engineSpeed;
      const torque = excited.torqueAt(order, engineSpeed / rated);
      const dampers = excited.dampersAt(angular, engineSpeed * speedOf(PROPELLER));
      const swing = [{ inertia: order.inertia, torque }];
      const response = forcedResponse(train.model, solution, angular, swing, dampers);
      for (const [name, sum] of torques)
        torques.set(name, sum + (response?.torques.get(name) ?? Number.POSITIVE_INFINITY));
    }
    return { engineSpeed, torques };
  });
}

/** What the damped response of a line is worked out from: what excites it, and what turns and gives. */
export function responseInputs({ train: { model } }: TorsionalSystem, excited: Excited): Value[] {
  return [
    ...excited.orders.map(one => one.torque),
    ...model.inertias.flatMap(one => one.inertia ?? []),
    ...model.shafts.flatMap(one => one.stiffness ?? []),
    ...(model.gears ?? []).flatMap(one => one.ratio ?? []),
  ];
}

/** The stress of a point with all that it was worked out from. */
export function stressValue(point: StressPoint, { system, excited }: TorsionalStress): Value<'pressure'> {
  const { section, declared, stress } = point;
  if (declared) {
    if (section.stressShare === 1) return renamed(declared, 'vibratory stress', 'τ');
    const torque = given('vibratory torque', 'T', 'torque', stress * section.modulus, {
      assumed: 'declared stress of the plain shaft times its section modulus',
    });
    return torsionalShearStress({ torque, ...section.size });
  }
  const torque: Value<'torque'> = {
    label: 'vibratory torque of the shaft',
    symbol: 'T',
    dimension: 'torque',
    si: stress * section.modulus,
    working: {
      name: 'vibratory torque by damped forced response',
      text: '(K − ω² J + iωC) θ = T for each order, T = |k + iωC| |Δθ|, orders added',
      inputs: responseInputs(system!, excited!),
      source: FORCED_TORSION,
      range: [],
      notes: [
        `Damped by ${excited!.dampedBy.join(', ')}; what is not declared to damp counts for nothing.`,
        'The sizes of all orders are added: no phase between them can give more.',
      ],
    },
  };
  return renamed(torsionalShearStress({ torque, ...section.size }), 'vibratory stress', 'τ');
}
