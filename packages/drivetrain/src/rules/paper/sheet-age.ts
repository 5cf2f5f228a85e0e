import { cannotTellWords } from '../../judge/cannot-tell-words.js';
import type { LineContext } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import { homeOfFact } from '../../model/declared-fact.js';
import { nameOf } from '../../model/part.js';
import { type Apart, each } from '../../model/reads.js';
import type { ShaftLine, Vessel } from '../../model/vessel.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';
import { SECONDS_A_YEAR, USUAL_YEARS, yearsBetween } from './years.js';

const CHOOSING = (age: string) =>
  changed(SINGLE_LINE, [
    '  arrangement proposed {',
    `  criteria { source age at most ${age} }\n  arrangement proposed {`,
  ]);

const INFO: RuleInfo = {
  id: 'paper/sheet-age',
  title: 'Data sheets of the parts are no older than the vessel or its practice allows',
  mistakes: ['U09'],
  severity: 'warning',
  criterion:
    'source of each rated part of the line against `source age at most` of the criteria, or 10 years where the line names it, on the day of the check',
  source: { title: 'the age that the author or the practice chose', confidence: 'common practice' },
  manual:
    'Ratings are revised under the same name. A practice that requires sheets of the last five years needs to know which parts of a vessel rest on older ones. Ask the maker for the current issue, or choose another age with a reason.',
  caution: 'A recent sheet may still be superseded: ask for the current issue before the part is ordered.',
  limitOf: 'the author’s criterion',
  noFigure: 'a record or its dates',
  standsWithout: 'anything',
  curesRecord: true,
  noCure: 'Only a newer sheet settles it.',
  severalMovers: 'together',
  examples: examples(() => ({
    failing: changed(CHOOSING('5 year'), ['issue 4" dated 2025-02-10', 'issue 1" dated 2018-02-10']),
    passing: CHOOSING('20 year'),
    cannotTell: CHOOSING('unknown'),
  })),
};

export const sheetAge: Rule = { ...INFO, scope: 'line', check };

type Rated =
  | NonNullable<ShaftLine['engine' | 'motor' | 'gear']>
  | ShaftLine['couplings' | 'transfers'][number];

function check({ line, vessel, today }: LineContext): Apart<Verdict> | undefined {
  const rated: (Rated | undefined)[] = [
    line.engine,
    line.motor,
    line.gear,
    ...line.transfers,
    ...line.couplings,
  ];
  const chosen = vessel.criteria?.sourceAge !== undefined;
  return each(rated, part =>
    part && (chosen ? part.entry : isOfPlace(part)) ? judge(part, vessel, today) : undefined,
  );
}

/** Whether its source is named in the line: that of an entry is judged with the entry, by the usual age. */
function isOfPlace({ source, origin }: Rated): boolean {
  return source !== undefined && homeOfFact(source)?.host === origin;
}

function judge(part: Rated, vessel: Vessel, today: string): Verdict {
  const say = sayFor(INFO, part.path);
  const name = nameOf(part);
  const needs = new Needs();
  const chosen = vessel.criteria?.sourceAge;
  const most = chosen
    ? needs.fact(chosen, {
        what: 'age that a data sheet may have',
        host: vessel.criteria!.origin,
        property: 'source age at most',
      })?.si
    : USUAL_YEARS * SECONDS_A_YEAR;
  const asked = {
    what: `dated source of ${part.role} ${name}`,
    host: part.entry?.origin ?? part.origin,
    property: 'source',
  };
  const source = needs.fact(part.source, asked);
  if (source && !source.dated) needs.miss(asked, part.source?.origin);
  if (!most || !source?.dated)
    return say.cannotTell(needs, {
      place: part.nameOrigin ?? part.origin,
      message: cannotTellWords(`whether the sheet of ${name} is recent enough`, needs.missing),
    });
  const age = yearsBetween(source.dated, today);
  const allowed = chosen?.written ?? `${USUAL_YEARS} year`;
  const how = {
    place: chosen ? (part.nameOrigin ?? part.origin) : part.source!.origin,
    criterion: {
      said: `source age at most ${allowed}`,
      chosenBy: chosen ? ('author' as const) : ('default' as const),
    },
  };
  if (age * SECONDS_A_YEAR <= most)
    return say.holds({ ...how, message: `${name}: "${source.title}" is ${age.toFixed(1)} years old.` });
  return say.fails({
    ...how,
    message: `"${source.title}", from which the figures of ${name} come, is ${age.toFixed(1)} years old; ${chosen ? 'the criteria allow' : 'the usual limit is'} ${allowed}. Ask for the current sheet.`,
    related: [{ at: part.source!.origin, message: 'the source' }],
  });
}
