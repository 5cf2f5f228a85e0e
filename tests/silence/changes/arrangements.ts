import type { ShaftLine } from '@tailshaft/drivetrain';
import type { Change } from '../change.js';
import type { Judged } from '../rejudge.js';
import { edited } from '../written.js';
import { rolesOf } from './names.js';

type Arrangement = Judged['check']['vessels'][number]['reading']['arrangements'][number];

/** (b) An arrangement that changes nothing: behind each one, and between each and those that revise it. */
export function* insertUnchanged({ text, check }: Judged): Generator<Change> {
  for (const { reading } of check.vessels) {
    for (const one of reading.arrangements) {
      const again = `\n  arrangement unchanged revises ${one.name} {\n${one.lines
        .map(line => keptLine(reading.arrangements, one, line.name))
        .join('')}${reasonsOf(text, one)}  }\n`;
      const behind = { start: one.whole.end, end: one.whole.end, text: again };
      yield {
        letter: 'b',
        what: `behind ${one.name} one that changes nothing`,
        about: 'behind',
        text: edited(text, behind),
        adds: 'unchanged',
        repeats: one.name,
      };
      const revising = reading.arrangements.filter(other => other.revises?.name === one.name);
      if (revising.length === 0) continue;
      yield {
        letter: 'b',
        what: `between ${one.name} and what revises it one that changes nothing`,
        about: 'between',
        text: edited(
          text,
          behind,
          ...revising.map(other => ({ ...other.revises!.place, text: 'unchanged' })),
        ),
        adds: 'unchanged',
        repeats: one.name,
      };
    }
  }
}

/** (c) One revision in two: some parts change in a first step, the others in a second. */
export function* splitRevision({ text, check }: Judged): Generator<Change> {
  for (const { reading } of check.vessels) {
    for (const one of reading.arrangements) {
      const before = reading.arrangements.find(other => other.name === one.revises?.name);
      if (!before) continue;
      const roles = [...new Set(one.lines.flatMap(line => line.parts.map(part => part.role)))];
      for (const first of roles) {
        const step = keepingInstead(text, before, one, role => role === first);
        const rest = keepingInstead(text, before, one, role => role !== first);
        if (!step || !rest) continue;
        const half = step.replace(/^arrangement \S+/, 'arrangement halfway');
        const second = rest.replace(/( revises )\S+/, '$1halfway');
        yield {
          letter: 'c',
          what: `${one.name} in two steps, ${first} first`,
          about: `${first} first`,
          text: edited(text, { ...one.whole, text: `${half}\n\n  ${second}` }),
          adds: 'halfway',
        };
      }
    }
  }
}

/** The text of an arrangement in which parts of other roles are kept; undefined where one has nothing to keep. */
function keepingInstead(
  text: string,
  before: Arrangement,
  one: Arrangement,
  changes: (role: string) => boolean,
): string | undefined {
  const edits: { start: number; end: number; text: string }[] = [];
  for (const line of one.lines) {
    const old = before.lines.find(other => other.name === line.name);
    if (line.mirrors || old?.mirrors || !old) return undefined;
    const kept = new Set<string>();
    for (const part of line.parts) {
      if (changes(part.role)) continue;
      const { start, end } = part.whole;
      if (!old.parts.some(other => other.role === part.role)) return undefined;
      if (part.action === 'modify' || part.action === 'remove') return undefined;
      edits.push({ start, end, text: kept.has(part.role) ? '' : `retain ${part.role}` });
      kept.add(part.role);
    }
  }
  const shifted = edits.map(edit => ({
    ...edit,
    start: edit.start - one.whole.start,
    end: edit.end - one.whole.start,
  }));
  return edited(text.slice(one.whole.start, one.whole.end), ...shifted);
}

function keptLine(all: readonly Arrangement[], one: Arrangement, name: string): string {
  const line = one.lines.find(other => other.name === name)!;
  const kept = rolesOf(all, one, line).map(role => `      retain ${role}\n`);
  const side = line.facts.fields.side
    ? `      side ${(line.facts.fields.side as { written: string }).written}\n`
    : '';
  return `    shaftline ${name} {\n${side}${kept.join('')}    }\n`;
}

/** Reasons belong to an arrangement and are not taken over. */
function reasonsOf(text: string, one: Arrangement): string {
  return one.reasons.map(({ place }) => `    ${text.slice(place.start, place.end)}\n`).join('');
}

const moversOf = ({ chain }: ShaftLine) => chain.filter(one => ['engine', 'motor'].includes(one.role));

/** (b) Each line with one mover, said to be driven by it in the one mode that it has. */
export function* inOneMode({ text, check }: Judged): Generator<Change> {
  for (const { reading, vessel } of check.vessels) {
    for (const arrangement of reading.arrangements) {
      for (const { name, modes, host } of arrangement.lines) {
        // One `retain engine` keeps as many as there were, and a revision takes the mode over.
        const lines = vessel.arrangements.flatMap(one => one.lines.filter(line => line.name === name));
        const own = lines.find(one => one.arrangement === arrangement.name);
        const [mover] = own ? moversOf(own) : [];
        if (modes.length > 0 || !mover || lines.some(one => moversOf(one).length !== 1) || !host.block)
          continue;
        const end = host.block.end - 1;
        yield {
          letter: 'b',
          what: `${arrangement.name}.${name} in one mode`,
          about: 'one mode',
          text: edited(text, { start: end, end, text: `\n mode passage { driven by ${mover.role} }\n` }),
        };
      }
    }
  }
}
