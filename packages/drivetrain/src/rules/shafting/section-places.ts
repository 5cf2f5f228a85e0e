import { stackLength, type Value } from '@tailshaft/mechanics';
import { amount, inUnit, type NewQuantity, numberIn, spell, spellQuantity } from '@tailshaft/vocabulary';
import { sectionsOf } from '../../analysis/shaft-sections.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import type { Route } from '../../judge/route.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { nameOf } from '../../model/part.js';
import { type Apart, apart, aside, each } from '../../model/reads.js';
import type { Bearing, Shaft } from '../../model/shafting.js';
import type { ShaftSection } from '../../model/strength.js';
import { changed } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { waits } from '../waiting.js';
import { WITH_BEARINGS } from './bearing-specs.js';
import { DEFER, GEOMETRY } from './sources.js';

const MIDDLE = 'section middle { from 0.3 m  length 0.9 m  diameter 70 mm }';
const STEPPED = changed(WITH_BEARINGS, [
  '        bearing tube {',
  `        ${MIDDLE}\n        section aft { from 1.2 m  length 0.4 m  diameter 68 mm }\n        bearing tube {`,
]);

const INFO: RuleInfo = {
  id: 'shafting/section-places',
  title: 'The sections of a shaft follow one another within its length, and its bearings stand on it',
  mistakes: ['L19'],
  severity: 'error',
  criterion:
    'beginning and end of each section against its neighbours and the ends of the shaft, within 0.1 mm; bore ' +
    'below diameter',
  source: GEOMETRY,
  manual:
    'A section states where it begins, aft from the forward coupling face, and its length. Sections that ' +
    'overlap give the shaft two diameters at one place, one that runs past the end is longer than the bar, ' +
    'and a bore as wide as its section leaves no wall. Strength and whirling would be computed for a shaft ' +
    'that cannot be made. A bearing whose centre is past the end of the bar supports nothing, and a strut ' +
    'ahead of the stern tube would stand in the hull. Between ' +
    'sections the shaft has its own diameter; where it declares none, a gap has no diameter. Correct the ' +
    'figure that is wrong.',
  caution: `${DEFER} Fillets, tapers and reliefs between two diameters are not sections, and are not checked here.`,
  curesRecord: true,
  examples: examples(() => ({
    failing: changed(STEPPED, [
      'from 0.3 m  length 0.9 m  diameter 70 mm',
      'from 0.3 m  length 1.0 m  diameter 70 mm',
    ]),
    passing: STEPPED,
    cannotTell: changed(STEPPED, ['length 0.4 m  diameter 68 mm', 'length unknown  diameter 68 mm']),
  })),
};

export const sectionPlaces: Rule = { ...INFO, scope: 'line', check };

/** Drawings are dimensioned no finer. */
const SLACK = 1e-4;

interface Placed {
  readonly section: ShaftSection;
  readonly from: Value<'length'>;
  readonly length: Value<'length'>;
  readonly end: number;
}

function check(context: LineContext): Apart<Verdict> {
  return each(context.line.shafts, shaft => {
    const all = sectionsOf(shaft);
    const placed = all
      .flatMap(one => placeOf(one) ?? [])
      .sort((one, other) => one.from.si - other.from.si || one.end - other.end);
    return apart(
      () => boreOfShaft(context, shaft),
      () => each(all, one => judge(context, shaft, one, placed)),
      () => each(shaft.bearings ?? [], one => beyondTheEnd(context, shaft, one)),
      () => each(shaft.bearings ?? [], one => outOfTurn(context, shaft, one)),
    );
  });
}

function judge(
  { line }: LineContext,
  shaft: Shaft,
  section: ShaftSection,
  placed: readonly Placed[],
): Verdict {
  const say = sayFor(INFO, `${shaft.path}.section-${section.name}`);
  const index = placed.findIndex(one => one.section === section);
  const own = placed[index];
  const what = `${line.name}: section ${section.name} of the shaft`;
  const bore = section.boreDiameter ?? shaft.boreDiameter;
  if (bore?.value && section.diameter?.value && bore.value.si >= section.diameter.value.si) {
    return say.fails({
      place: section.diameter.origin,
      related: [{ at: bore.origin, message: 'the bore' }],
      message: `${what} is ${section.diameter.written} thick and bored ${bore.written}: no wall is left. One of the two figures is wrong.`,
    });
  }
  const needs = new Needs();
  for (const property of ['from', 'length'] as const)
    needs.fact(section[property], {
      what: `${property === 'from' ? 'beginning (from)' : property} of section ${section.name} of the shaft`,
      host: section.origin,
      property,
    });
  const length = needs.fact(shaft.length, {
    what: `length of ${nameOf(shaft)}`,
    host: shaft.origin,
    property: 'length',
  });
  if (!own || !length)
    return waits(
      say,
      needs,
      section.origin,
      `${line.name}: whether section ${section.name} lies on the shaft`,
    );
  const tell = (si: number) => spellQuantity(like(section.from!.value!, si));
  const stretch = `${what} lies from ${tell(own.from.si)} to ${tell(own.end)}`;
  const place = section.length!.origin;
  if (own.from.si < -SLACK) {
    return say.fails({
      place: section.from!.origin,
      message: `${stretch}: it begins ${tell(-own.from.si)} before the forward coupling face, where there is no shaft. Write where it begins aft of that face.`,
    });
  }
  if (own.end > length.si + SLACK) {
    return say.fails({
      place,
      balance: { more: length, less: stackLength([own.from, own.length]) },
      related: [{ at: shaft.length!.origin, message: 'length of the shaft' }],
      message: `${stretch}, but the shaft is ${shaft.length!.written} long: the section runs ${tell(own.end - length.si)} past its end.`,
      routes: () => endAt(own, length.si, 'at the end of the shaft'),
    });
  }
  const next = placed[index + 1];
  if (next && own.end > next.from.si + SLACK) {
    return say.fails({
      place,
      balance: { more: next.from, less: stackLength([own.from, own.length]) },
      related: [{ at: next.section.from!.origin, message: `section ${next.section.name} begins here` }],
      message: `${stretch}, and section ${next.section.name} begins at ${tell(next.from.si)}: they overlap by ${tell(Math.min(own.end, next.end) - next.from.si)}, where the shaft would have two diameters.`,
      routes: () => endAt(own, next.from.si, `where section ${next.section.name} begins`),
    });
  }
  const before = placed.slice(0, index).reduce((most, one) => Math.max(most, one.end), 0);
  const bare = shaft.diameter
    ? undefined
    : own.from.si > before + SLACK
      ? [before, own.from.si]
      : !next && length.si > own.end + SLACK
        ? [own.end, length.si]
        : undefined;
  if (bare) {
    return say.fails({
      place,
      message: `${stretch}; from ${tell(bare[0]!)} to ${tell(bare[1]!)} there is no section, and the shaft has no diameter of its own for there. Write the diameter of the shaft, or a section for that stretch.`,
    });
  }
  return say.holds({ place, message: `${stretch}, clear of the others.` });
}

function boreOfShaft({ line }: LineContext, shaft: Shaft): Verdict | undefined {
  const [bore, diameter] = [shaft.boreDiameter, shaft.diameter];
  if (!bore?.value || !diameter?.value || bore.value.si < diameter.value.si) return undefined;
  return sayFor(INFO, `${shaft.path}.bore`).fails({
    place: bore.origin,
    balance: { more: diameter.value, less: bore.value, wanted: 1e-6 },
    related: [{ at: diameter.origin, message: 'diameter of the shaft' }],
    message: `${line.name}: the shaft is ${diameter.written} thick and bored ${bore.written}: no wall is left. One of the two figures is wrong.`,
  });
}

/** A bearing that does not stand on the shaft that declares it; where it does nothing more is said. */
function beyondTheEnd({ line }: LineContext, shaft: Shaft, bearing: Bearing): Verdict | undefined {
  const [at, length] = aside(() => [bearing.position?.value, shaft.length?.value]);
  if (!at || !length || at.si <= length.si + SLACK) return undefined;
  return sayFor(INFO, `${shaft.path}.${bearing.name}`).fails({
    place: bearing.position!.origin,
    related: [{ at: shaft.length!.origin, message: 'length of the shaft' }],
    message: `${line.name}: bearing ${bearing.name} stands ${bearing.position!.written} aft of the forward coupling face, but the shaft is ${shaft.length!.written} long: it would hold nothing. One of the two figures is wrong.`,
    disputes: [bearing.position!, shaft.length!],
  });
}

/** Inside the hull, where the shaft leaves it, and outside. */
const FROM_FORWARD: Readonly<Record<string, number>> = {
  thrust: 0,
  intermediate: 0,
  'stern tube': 1,
  strut: 2,
};

/** A strut ahead of the stern tube would stand inside the hull, and a bearing block behind it outside: one of the places is wrong. */
function outOfTurn({ line }: LineContext, shaft: Shaft, bearing: Bearing): Verdict | undefined {
  const standing = (one: Bearing) =>
    aside(() => ({ one, at: one.position?.value?.si, rank: FROM_FORWARD[one.kind?.value ?? ''] }));
  const own = standing(bearing);
  const ahead = (shaft.bearings ?? [])
    .map(standing)
    .find(
      ({ at, rank }) =>
        at !== undefined && rank !== undefined && at < (own.at ?? at) - SLACK && rank > (own.rank ?? rank),
    )?.one;
  if (!ahead) return undefined;
  return sayFor(INFO, `${shaft.path}.${bearing.name}`).fails({
    place: bearing.position!.origin,
    related: [{ at: ahead.position!.origin, message: `place of the ${ahead.kind!.written}` }],
    message: `${line.name}: ${bearing.kind!.written} bearing ${bearing.name} stands at ${bearing.position!.written}, behind ${ahead.kind!.written} bearing ${ahead.name} at ${ahead.position!.written}: from forward there come those in the hull, the stern tube, then struts. One of the figures or kinds is wrong.`,
    disputes: [bearing.position!, ahead.position!],
  });
}

function placeOf(section: ShaftSection): Placed | undefined {
  const [from, length] = [section.from?.value, section.length?.value];
  return from && length && { section, from, length, end: from.si + length.si };
}

function endAt({ section, from, length }: Placed, end: number, words: string): Route[] {
  const left = end - from.si;
  if (left <= SLACK) return [];
  const value = amount(like(length, left));
  return [
    {
      title: `End section ${section.name} ${words}: ${spell(value)} long`,
      edits: [{ do: 'replace', at: section.length!.origin, value }],
    },
  ];
}

/** In the unit that the author wrote, to a hundredth of a millimetre or better. */
function like(model: Value<'length'>, si: number): NewQuantity {
  const unit = model.unit ?? 'm';
  return inUnit('length', Number(numberIn({ si }, unit).toFixed(5)), unit);
}
