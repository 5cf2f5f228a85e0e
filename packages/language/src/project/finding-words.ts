import type { Verdict } from '@tailshaft/drivetrain';
import { listed } from '@tailshaft/mechanics';
import { aboutOf } from './finding-place.js';
import type { JudgedVessel } from './project.js';

/**
 * What a verdict says, with the vessel, arrangement and line that it is said of, wherever there is more than one:
 * `proposed, Port: ...`. `lines` are all those that the same is said of.
 */
export function namedMessage(
  verdict: Verdict,
  judged: JudgedVessel,
  amongVessels: boolean,
  lines: readonly string[] = [],
): string {
  const { vessel, arrangement, line } = aboutOf(verdict, judged.vessel);
  const { message } = verdict;
  const head = [line?.name, arrangement?.name, vessel.name].find(
    one => one !== undefined && message.startsWith(`${one}: `),
  );
  const rest = head === undefined ? message : message.slice(head.length + 2);
  const names: string[] = [];
  if (amongVessels) names.push(vessel.name);
  if (arrangement && (isOneOfMany(judged) || head === arrangement.name))
    names.push(verdict.asFound ? `${arrangement.name} (as found)` : arrangement.name);
  const spoken = lines.length > 1 ? listed(lines) : line?.name;
  if (spoken && (arrangement!.lines.length > 1 || head === line!.name)) names.push(spoken);
  if (head === vessel.name && !amongVessels) names.unshift(vessel.name);
  const told = head === undefined && lines.length < 2 ? names.filter(one => !says(rest, one)) : names;
  return told.length > 0 ? `${told.join(', ')}: ${rest}` : message;
}

/** The arrangements in which something is fitted. */
function isOneOfMany({ vessel }: JudgedVessel): boolean {
  return vessel.arrangements.filter(one => one.lines.length > 0).length > 1;
}

function says(message: string, name: string): boolean {
  if (!message.includes(name)) return false;
  return new RegExp(`(^|[^\\p{L}\\d-])${escaped(name)}([^\\p{L}\\d-]|$)`, 'u').test(message);
}

function escaped(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** A message with the names of lines and every figure taken out: what two sides say alike. */
export function wordsOnly(message: string, names: readonly string[]): string {
  return withoutNames(message, names).replace(/[−-]?\d[\d.,/ ]*/g, '#');
}

/** A message with the names of lines taken out, the figures kept. */
export function withoutNames(message: string, names: readonly string[]): string {
  const known = names.filter(one => one && message.includes(one));
  if (known.length === 0) return message;
  const longest = known.sort((one, other) => other.length - one.length).map(escaped);
  return message.replace(new RegExp(`(?<![\\p{L}\\d-])(${longest.join('|')})(?![\\p{L}\\d-])`, 'gu'), '~');
}
