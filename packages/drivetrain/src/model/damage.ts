import type { Dimension } from '@tailshaft/mechanics';
import type { Damage, Damageable } from '@tailshaft/vocabulary';
import { homeOfFact } from './declared-fact.js';
import type { Fact } from './fact.js';
import type { Part } from './part.js';
import { aside } from './reads.js';

export type { Damage, DamageKind } from '@tailshaft/vocabulary';

/** What happened to a part. A crack made good years ago and one found at the same place since are two. */
export function damagesOf(part: Part): readonly Damage[] {
  return (part as Damageable).damages ?? [];
}

/** `cracked at the keyway on 2025-11-03` */
export function damageWords({ what, at, dated }: Damage): string {
  const place = at && at.written !== 'unknown' && at.written !== 'elsewhere' ? placeWords(at.written) : '';
  return `${what}${place}${dated && dated.written !== 'unknown' ? ` on ${dated.written}` : ''}`;
}

const placeWords = (place: string) => (/^between /.test(place) ? ` ${place}` : ` at the ${place}`);

/** What was declared of a part while it was sound: sizes, strengths and ratings, but no ratio, count or turning sense. */
export function sizesAndRatings(part: Part): readonly Fact<unknown>[] {
  return [...factsIn(part as unknown as Record<string, unknown>)];
}

function* factsIn(block: Record<string, unknown>): Generator<Fact<unknown>> {
  for (const [field, one] of Object.entries(block)) {
    if (typeof one !== 'object' || one === null || ELSEWHERE.has(field)) continue;
    for (const inner of Array.isArray(one) ? one : [one]) {
      if (typeof inner !== 'object' || inner === null || 'si' in inner) continue;
      if (homeOfFact(inner as Fact<unknown>)) {
        const fact = inner as Fact<unknown>;
        if (field === 'material' || aside(() => isSize(fact.value))) yield fact;
      } else if (!('written' in inner)) yield* factsIn(inner as Record<string, unknown>);
    }
  }
}

/** What is not the part's own as it stands, or stands there a second time. */
const ELSEWHERE = new Set([
  'damages',
  'keptFrom',
  'entry',
  'origin',
  'nameOrigin',
  'restated',
  'grade',
  'variant',
  'rating',
]);

/** Figures that no damage changes. */
const STAYS: ReadonlySet<Dimension> = new Set<Dimension>(['ratio', 'number', 'rotational speed']);

function isSize(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if ('si' in value) return !STAYS.has((value as unknown as { dimension: Dimension }).dimension);
  return Object.values(value).some(isSize);
}
