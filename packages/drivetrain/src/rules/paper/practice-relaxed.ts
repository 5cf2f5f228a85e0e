import { asStated, CRITERIA, type Row } from '@tailshaft/vocabulary';
import type { Context } from '../../judge/context.js';
import { Needs } from '../../judge/needs.js';
import { sayFor } from '../../judge/say.js';
import type { Verdict } from '../../judge/verdict.js';
import type { Fact } from '../../model/fact.js';
import { meaningOf } from '../../model/meaning.js';
import { type Apart, each } from '../../model/reads.js';
import { changed, SINGLE_LINE } from '../example-specs.js';
import { examples } from '../examples.js';
import type { Rule, RuleInfo } from '../rule.js';

const PRACTISED = `practice Harbour-Office "design office" {
  title block "Design office, harbour road 4"
  gear torque margin at least 5 %
  tip speed at most 45 m/s
  acceptances last at most 2 year
  acceptances of "rotation/" by "class surveyor, flag surveyor"
  gravity of "speed/tip-speed" is error
}

${SINGLE_LINE}`;
const CHOOSING = (criteria: string) =>
  changed(PRACTISED, ['  arrangement proposed {', `  criteria { ${criteria} }\n  arrangement proposed {`]);

const INFO: RuleInfo = {
  id: 'paper/practice-relaxed',
  title: 'Vessel criteria are at least as strict as those of the practice',
  mistakes: [],
  severity: 'error',
  criterion: 'each criterion that a vessel chooses against the same criterion of its practice',
  source: {
    title: 'standards of a practice and departures from them as design offices keep them',
    confidence: 'common practice',
  },
  manual:
    'A practice sets the criteria that all its vessels are judged by. A vessel may be stricter without comment. A weaker criterion is a decision that must be visible, so that the next vessel does not inherit it unnoticed. Remove the criterion, so that the practice applies, or accept the departure with a reason, a role and a last day.',
  caution:
    'Only criteria that both state are compared. The designer decides whether those of the practice suit the vessel.',
  noFigure: 'a record or its dates',
  standsWithout: 'anything',
  curesRecord: true,
  examples: examples(() => ({
    failing: CHOOSING('gear torque margin at least 3 %'),
    passing: CHOOSING('gear torque margin at least 6 %'),
    cannotTell: CHOOSING('gear torque margin at least unknown'),
  })),
};

export const practiceRelaxed: Rule = { ...INFO, scope: 'vessel', check };

function check({ vessel }: Context): Apart<Verdict> | undefined {
  const { practice, criteria, leftOpen } = vessel;
  if (!practice || !criteria) return undefined;
  const say = sayFor(INFO, vessel.name);
  const own = (CRITERIA.rows as readonly Row[]).flatMap(row => {
    const [theirs, ours] = [practice.facts, { ...criteria, ...leftOpen }].map(one => factsIn(one, row.field));
    return ours!.length > 0 && theirs!.length > 0 && ours![0] !== theirs![0]
      ? [{ row, theirs: theirs!, ours: ours! }]
      : [];
  });
  return each(own, ({ row, theirs, ours }) => {
    const place = ours[0]!.origin;
    const words = (facts: readonly Fact<unknown>[]) =>
      facts.map(one => `${row.words} ${one.written}`).join(', ');
    const related = [{ at: theirs[0]!.origin, message: `${practice.name}: ${words(theirs)}` }];
    const needs = new Needs();
    for (const one of ours) needs.fact(one, { what: row.words, host: criteria.origin, property: row.words });
    if (needs.any)
      return say.cannotTell(needs, {
        place,
        related,
        message: `${words(ours)} leaves open what ${practice.name} sets, ${words(theirs)}: ${practice.name} judges until it is written, or taken out.`,
      });
    if (asksNoLess(row, theirs, ours))
      return say.holds({
        place,
        related,
        message: `${words(ours)} is at least as strict as ${practice.name}.`,
      });
    return say.fails({
      place,
      related,
      message: `${words(ours)} is weaker than ${practice.name}, ${words(theirs)}, or of another kind. Remove it, so that the practice applies, or accept the departure with a reason.`,
      routes: () =>
        ours.length + theirs.length > 2
          ? []
          : [
              {
                title: `Use the criterion of ${practice.name}: ${words(theirs)}`,
                edits: [{ do: 'replace', at: place, value: asStated(theirs[0]!) }],
              },
            ],
    });
  });
}

function factsIn(criteria: object, field: string): readonly Fact<unknown>[] {
  const value = (criteria as Readonly<Record<string, Fact<unknown> | readonly Fact<unknown>[] | undefined>>)[
    field
  ];
  return value === undefined ? [] : 'written' in value ? [value] : value;
}

/** A bound by its number, a formula by its factor; anything else asks for something else. */
function asksNoLess(row: Row, theirs: readonly Fact<unknown>[], ours: readonly Fact<unknown>[]): boolean {
  return theirs.every(their =>
    ours.some(our => {
      const [least, own] = [their.value, our.value] as [Compared, Compared];
      if (row.bound && least?.si !== undefined && own?.si !== undefined)
        return row.bound === 'at least' ? own.si >= least.si : own.si <= least.si;
      if (least?.formula !== undefined)
        return own?.formula === least.formula && (own.factor?.si ?? 0) >= (least.factor?.si ?? 0);
      return meaningOf(their.value) === meaningOf(our.value);
    }),
  );
}

/** What a value may have that can be compared. */
type Compared =
  | { readonly si?: number; readonly formula?: string; readonly factor?: { readonly si: number } }
  | undefined;
