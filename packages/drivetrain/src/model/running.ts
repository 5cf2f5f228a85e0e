import type { DrivenBy, Mode } from '@tailshaft/vocabulary';
import type { Engine, Motor } from './engine.js';
import type { Gear, Transfer } from './gear.js';
import { chainInMode } from './gear-in-mode.js';
import type { Role } from './part.js';
import { KeptBy } from './reads.js';
import type { Coupling, Shaft } from './shafting.js';
import type { Unclear } from './unclear.js';
import type { ShaftLine } from './vessel.js';

/** A line once for each of its modes, with what drives in it; nothing of a line that says no modes. */
export type Running = { readonly lines: readonly ShaftLine[] } | { readonly unclear: Unclear };

/** Worked out once for each line, so that what follows of one mode is worked out once too. */
const running = new KeptBy<ShaftLine>();

export function runningLines(line: ShaftLine): Running | undefined {
  const { modes } = line;
  return modes && modes.length > 0 ? running.once(line, () => inEachMode(line, line.modes!)) : undefined;
}

function inEachMode(line: ShaftLine, modes: readonly Mode[]): Running {
  const lines: ShaftLine[] = [];
  for (const mode of modes) {
    const said = mode.drivenBy?.value;
    const movers = said && moversOf(line, said);
    if (!movers || movers.length === 0) {
      const at = mode.drivenBy?.origin;
      const what = said
        ? `which of the movers of ${line.name} is meant by "driven by ${said}"`
        : `what drives ${line.name} in mode ${mode.name}`;
      return { unclear: { what, host: mode.origin, property: 'driven by', ...(at ? { at } : {}) } };
    }
    const run = inMode(line, mode, movers);
    if ('what' in run) return { unclear: run };
    lines.push(run);
  }
  // What is shown of a line is one of its modes, and one that begins half way through would show half of it. Of those that
  // show it whole, the plainest, so that the order of the text makes no difference.
  const drives = line.chain.some(one => one.role === 'engine') ? 'engine' : 'motor';
  const whole = lines.filter(one => one[drives] !== undefined && line.chain.indexOf(one[drives]) === 0);
  const shown = [0, 1, 2, 3].flatMap(rank => whole.filter(one => besides(one) === rank))[0];
  if (!shown)
    return {
      unclear: {
        what: `how ${line.name} runs with its ${drives} driving, as one of its modes`,
        host: line.origin,
        property: 'mode',
      },
    };
  return { lines: [shown, ...lines.filter(one => one !== shown)] };
}

/** What goes on in a mode besides its first mover driving the propeller. */
const besides = ({ mode, joined }: ShaftLine) => (joined ? 1 : 0) + (mode?.generatorLoad ? 2 : 0);

/** The whole line with what drives in its first mode, for whatever shows a line or compares lines. */
export function inFirstMode(line: ShaftLine): ShaftLine {
  const found = runningLines(line);
  if (!found || 'unclear' in found) return line;
  const { mode, joined, gear } = found.lines[0]!;
  return {
    ...line,
    ...(gear && gear !== line.gear
      ? { gear, chain: line.chain.map(one => (one === line.gear ? gear : one)) }
      : {}),
    ...(mode ? { mode } : {}),
    ...(joined ? { joined } : {}),
  };
}

function moversOf(line: ShaftLine, said: DrivenBy): readonly (Engine | Motor)[] | undefined {
  const engines = line.chain.filter(one => one.role === 'engine') as Engine[];
  const motors = line.chain.filter(one => one.role === 'motor') as Motor[];
  const [engine, second, third] = engines;
  const motor = motors.length === 1 ? motors[0] : undefined;
  if (third) return undefined;
  switch (said) {
    case 'engine':
      return engine && !second ? [engine] : undefined;
    case 'motor':
      return motor && [motor];
    case 'engine and motor':
      return engine && !second && motor ? [engine, motor] : undefined;
    case 'first engine':
      return engine && second ? [engine] : undefined;
    case 'second engine':
      return second && [second];
    case 'both engines':
      return engine && second ? [engine, second] : undefined;
  }
}

/** The line as this one of its movers alone would drive it, in the same mode. */
export function drivenByAlone(line: ShaftLine, mover: Engine | Motor): ShaftLine {
  const { joined: _joined, mode, ...rest } = line;
  const run = mode && inMode(rest, mode, [mover]);
  return run && !('what' in run) ? { ...run, name: line.name } : line;
}

/** The line from the first mover that drives: what lies ahead of it stands still. Movers behind it turn along. */
function inMode(line: ShaftLine, mode: Mode, movers: readonly (Engine | Motor)[]): ShaftLine | Unclear {
  const [first, ...joined] = [...movers].sort((a, b) => line.chain.indexOf(a) - line.chain.indexOf(b));
  const primary = first!;
  const chain = chainInMode(line, mode, [primary, ...joined]);
  if ('what' in chain) return chain;
  const all = (role: Role) => chain.filter(part => part.role === role);
  const [gear] = all('gear');
  if (joined.some(one => one.role === 'engine' && !isTwinOf(one as Engine, primary as Engine)))
    return {
      what: `how the torque of two unlike engines of ${line.name} adds up`,
      host: mode.origin,
      property: 'driven by',
    };
  const { engine: _engine, motor: _motor, gear: _gear, modes: _modes, ...rest } = line;
  return {
    ...rest,
    name: `${line.name}, ${mode.name}`,
    mode,
    chain,
    ...(primary.role === 'engine' ? { engine: primary as Engine } : { motor: primary as Motor }),
    ...(gear ? { gear: gear as Gear } : {}),
    ...(joined.length > 0 ? { joined } : {}),
    couplings: all('coupling') as Coupling[],
    transfers: all('transfer') as unknown as readonly Transfer[],
    shafts: all('shaft') as Shaft[],
  };
}

/** Two of one catalogue entry at one rating: they give the same at the same speed. */
function isTwinOf(one: Engine, other: Engine): boolean {
  return (
    one.entry !== undefined &&
    one.entry.name === other.entry?.name &&
    one.ratedAt?.value === other.ratedAt?.value
  );
}
