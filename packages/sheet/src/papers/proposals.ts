import type { Arrangement, Vessel } from '@tailshaft/drivetrain';

/** What is to be built, or is there where nothing is proposed: every arrangement that no other one revises. */
export function lastArrangements({ arrangements }: Pick<Vessel, 'arrangements'>): Arrangement[] {
  const revised = new Set(arrangements.map(one => one.revises));
  return arrangements.filter(one => !revised.has(one.name));
}

export function arrangementWords({ name, title }: Arrangement): string {
  return title ? `${name} (${title})` : name;
}
