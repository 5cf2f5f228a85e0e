import type { Role } from '@tailshaft/drivetrain';
import type { Judged } from '../rejudge.js';
import type { Owner, WrittenBlock } from '../written.js';

type Arrangement = Judged['check']['vessels'][number]['reading']['arrangements'][number];
type Line = Arrangement['lines'][number];

/** Whose it is, in words that stay when the text around it changes. */
export function ownerWords(owner: Owner): string {
  switch (owner.kind) {
    case 'entry':
      return `${owner.entry.kind} ${owner.entry.name}`;
    case 'part':
      return `${owner.arrangement.name}.${owner.line.name}.${owner.part.name ?? owner.part.role}`;
    case 'line':
      return `${owner.arrangement.name}.${owner.line.name}`;
    case 'setting':
      return owner.name;
  }
}

/** A block with the heads of the blocks that it stands in is one place: `gear Alder-63, ratio 2.04:1`. */
export function blockWords(one: WrittenBlock): string {
  const inner = one.owner.kind === 'part' ? one.path.slice(1) : one.path;
  return [ownerWords(one.owner), ...inner].join(' ');
}

/** What the line consists of when it is built: its own parts, with those that it mirrors or keeps without a word. */
export function rolesOf(arrangements: readonly Arrangement[], arrangement: Arrangement, line: Line): Role[] {
  const removed = line.parts.filter(one => one.action === 'remove').map(one => one.role);
  const own = line.parts.filter(one => one.action !== 'remove').map(one => one.role);
  const mirrored = arrangement.lines.find(one => one.name === line.mirrors?.name);
  const beneath = mirrored ? rolesOf(arrangements, arrangement, mirrored) : [];
  return [...new Set([...own, ...beneath])].filter(role => !removed.includes(role));
}
