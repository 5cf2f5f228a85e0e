import { capital, listed, percent } from '@tailshaft/mechanics';
import type { LineAnalysis } from '../../analysis/line.js';
import { isSaid } from '../../model/reads.js';
import type { Trial, TrialRun } from '../../model/trial.js';
import type { ShaftLine } from '../../model/vessel.js';
import { possibleModes } from './in-modes.js';
import { isOfLine, type PlacedRun, trialName } from './trial-specs.js';

/** A cause of a speed that is off, with what the readings say of it. */
interface Cause {
  readonly name: CauseName;
  /** Readings that point at it, or away from it; absent where nothing was read that could. */
  readonly says?: { readonly points: 'at' | 'away'; readonly why: string };
}

/** In the order in which they are looked at where no reading says otherwise: what is cheap and exact first, the propeller last. */
const ORDER = [
  'tachometer',
  'governor',
  'throttle travel',
  'ratio on the plate of the gear',
  'fuel and air',
  'hull and load',
  'propeller',
] as const;
type CauseName = (typeof ORDER)[number];

/** What a motor has in the place of what an engine has. */
const OF_MOTOR: Partial<Readonly<Record<CauseName, string>>> = {
  governor: 'limits set in the controller',
  'throttle travel': 'travel of the lever',
  'fuel and air': 'voltage of the supply under load',
};

/**
 * Causes of an engine speed that is off at full throttle, as the readings of the trial order them: those that a reading points
 * at first, then the open ones, and apart from them those that a reading points away from.
 */
export function causesOf(
  one: PlacedRun,
  runs: readonly PlacedRun[],
  analysis: LineAnalysis,
  direction: 'short' | 'over',
): { readonly order: string; readonly reasons: string } {
  const said = new Map<CauseName, NonNullable<Cause['says']>>();
  const say = (name: CauseName, points: 'at' | 'away', why: string) => {
    // What points at a cause stands against anything that points away from it.
    if (said.get(name)?.points !== 'at') said.set(name, { points, why });
  };
  for (const { names, points, why } of [
    ...fromNoLoad(one, runs, analysis),
    ...fromRatio(one.run, analysis),
    ...fromSetting(one.trial, one.run),
  ])
    for (const name of names) say(name, points, why);
  // Smoke is a hint: what was measured or seen at the engine stands before it.
  for (const { names, points, why } of direction === 'short' ? fromSmoke(one.run) : [])
    for (const name of names) if (!said.has(name)) said.set(name, { points, why });
  const causes: Cause[] = ORDER.map(name => ({ name, ...(said.has(name) ? { says: said.get(name)! } : {}) }));
  const at = causes.filter(cause => cause.says?.points === 'at');
  const open = causes.filter(cause => !cause.says);
  const away = causes.filter(cause => cause.says?.points === 'away');
  const reasons = [...new Set([...at, ...away].map(cause => cause.says!.why))];
  const driver = one.line?.engine === undefined && one.line?.motor !== undefined ? OF_MOTOR : {};
  const nameOf = ({ name }: Cause) => driver[name] ?? name;
  const names = [...at, ...open].map(nameOf);
  const less =
    away.length > 0 ? `; then, though the readings point away from it, ${listed(away.map(nameOf))}` : '';
  return {
    order: `Look, in this order, at ${listed(names)}${names.at(-1) === 'propeller' ? ' last' : ''}${less}`,
    reasons: reasons.length > 0 ? ` ${capital(reasons.join('; '))}.` : '',
  };
}

interface Evidence {
  readonly names: readonly CauseName[];
  readonly points: 'at' | 'away';
  readonly why: string;
}

/** Without load no propeller, hull or ratio has part in the speed. */
function isRunOf(one: PlacedRun, line: ShaftLine | undefined): boolean {
  const modes = isOfLine(one) ? possibleModes(one) : [];
  return modes.length === 1 && modes[0] === line;
}

function fromNoLoad(
  { trial, line }: PlacedRun,
  runs: readonly PlacedRun[],
  analysis: LineAnalysis,
): Evidence[] {
  const free = runs.find(one => one.trial === trial && isRunOf(one, line) && one.run.at?.value === 'no load');
  const read = free?.run.engineSpeed?.value;
  const high = analysis.governedSpeed.value;
  if (!read || !high) return [];
  const off = read.si / high.si - 1;
  const numbers = `${analysis.tell(read)} at no load, high idle is ${analysis.tell(high)}`;
  const names: readonly CauseName[] = ['tachometer', 'governor', 'throttle travel'];
  return Math.abs(off) > NO_LOAD
    ? [{ names, points: 'at', why: `${numbers}: these show apart from load` }]
    : [
        {
          names,
          points: 'away',
          why: `${numbers}: this confirms tachometer, governor and throttle travel`,
        },
      ];
}

/** Two speeds in the exact ratio bear the plate and both counters out. */
function fromRatio(run: TrialRun, analysis: LineAnalysis): Evidence[] {
  const engine = run.engineSpeed?.value;
  const shaft = isSaid(() => run.shaftSpeed) ? run.shaftSpeed?.value : undefined;
  const ratio = analysis.overallRatio('ahead').value;
  if (!engine || !shaft || !ratio) return [];
  const off = engine.si / shaft.si / ratio.si - 1;
  const names: readonly CauseName[] = ['ratio on the plate of the gear', 'tachometer'];
  return Math.abs(off) > SPEEDS
    ? [
        {
          names,
          points: 'at',
          why: `the two speeds stand at ${(engine.si / shaft.si).toFixed(3)}:1, ${percent(Math.abs(off))} off the exact ratio`,
        },
      ]
    : [{ names, points: 'away', why: 'engine and shaft speed stand in the exact ratio' }];
}

function fromSetting(trial: Trial, run: TrialRun): Evidence[] {
  const throttle = isSaid(() => run.throttle) ? run.throttle?.value : undefined;
  const fed = isSaid(() => trial.fuelAndAir) ? trial.fuelAndAir?.value : undefined;
  return [
    ...(throttle === 'short of its stop'
      ? [
          {
            names: ['throttle travel'] as const,
            points: 'at' as const,
            why: 'the throttle was short of its stop',
          },
        ]
      : throttle === 'at its stop'
        ? [
            {
              names: ['throttle travel'] as const,
              points: 'away' as const,
              why: 'the throttle was at its stop',
            },
          ]
        : []),
    ...(fed === 'checked'
      ? [
          {
            names: ['fuel and air'] as const,
            points: 'away' as const,
            why: `fuel and air were checked before ${trialName(trial)}`,
          },
        ]
      : []),
  ];
}

/** An engine that is pulled down by load burns all the fuel that it is given, and shows it. */
function fromSmoke(run: TrialRun): Evidence[] {
  const smoke = isSaid(() => run.smoke) ? run.smoke?.value : undefined;
  if (smoke === 'none')
    return [
      { names: ['hull and load', 'propeller'], points: 'away', why: 'no smoke points away from overload' },
    ];
  if (smoke === 'black')
    return [
      {
        names: ['hull and load', 'propeller', 'fuel and air'],
        points: 'at',
        why: 'black smoke is more fuel than air: overload, or air that is short',
      },
    ];
  return [];
}

/** How far no-load speed may lie from high idle, and two speeds from the exact ratio; common practice. */
const NO_LOAD = 0.02;
const SPEEDS = 0.01;
