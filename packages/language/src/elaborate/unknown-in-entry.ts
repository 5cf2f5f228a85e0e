import type { Fact } from '@tailshaft/drivetrain';
import type { PartReading } from '../reading/arrangement.js';
import type { EntryReading } from '../reading/document.js';
import { nearest } from '../reading/misspelt.js';
import { placeOf } from '../reading/place.js';
import type { Problem } from '../reading/problem.js';

type Fields = Readonly<Record<string, unknown>>;

/** A rating or a clutch that the line names and its catalogue entry, which has others, does not have. */
export function unknownInEntry(part: PartReading, entry: EntryReading): Problem[] {
  const fields = entry.facts.fields;
  const own = part.facts.fields;
  if (part.role === 'engine')
    return absent(own.ratedAt, wordsIn(fields.ratings, 'duty'), `engine ${entry.name}`, 'rating');
  if (part.role !== 'gear') return [];
  const ratios = listOf(fields.ratios).flatMap(one => wordsIn(one.clutches, 'name'));
  const clutches = [...wordsIn(fields.clutches, 'name'), ...ratios];
  return absent(own.aheadClutch, clutches, `gear ${entry.name}`, 'clutch');
}

function absent(fact: unknown, names: readonly string[], owner: string, what: string): Problem[] {
  const { value, origin } = (fact ?? {}) as Partial<Fact<string>>;
  if (value === undefined || !origin || names.length === 0 || names.includes(value)) return [];
  const { start, end } = placeOf(origin);
  const known = [...new Set(names)];
  // Of one letter every other is one letter off.
  const meant = value.length > 2 ? nearest(value, known) : undefined;
  const choices = (meant ? [meant] : known).map(one => ({ title: `Write ${one}`, text: one }));
  const which = meant ? `Did you mean ${meant}?` : `It has ${known.join(', ')}.`;
  return [
    {
      code: 'text/unknown-name',
      start,
      end,
      severity: 'error',
      message: `The entry of ${owner} has no ${what} ${value}. ${which}`,
      choices,
    },
  ];
}

function wordsIn(list: unknown, field: string): string[] {
  return listOf(list).flatMap(one => (typeof one[field] === 'string' ? [one[field]] : []));
}

function listOf(list: unknown): readonly Fields[] {
  return Array.isArray(list) ? list : [];
}
