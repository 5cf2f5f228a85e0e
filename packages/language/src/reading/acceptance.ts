import { RULES } from '@tailshaft/drivetrain';
import type * as ast from '../generated/ast.js';
import type { ArrangementReading } from './arrangement.js';
import { dateIn, wordsIn } from './clause.js';
import { placeOfNode, problem, propertyPlace, type ReadContext } from './context.js';
import { isOnCalendar } from './dates.js';
import { nearest } from './misspelt.js';
import type { Place } from './place.js';

export interface AcceptanceReading {
  readonly place: Place;
  readonly rule: string;
  readonly clauses: Readonly<Record<string, string>>;
  /** Dates that stand there and are none that is known: `until unknown`, a day that no calendar has. */
  readonly open: readonly ('dated' | 'until')[];
  /** Where the id of the rule stands. */
  readonly ruleAt?: Place;
  /** Where the path behind `on` stands. */
  readonly on?: Place;
}

export function readAcceptance(context: ReadContext, node: ast.Acceptance): AcceptanceReading {
  const clauses: Record<string, string> = {};
  const open: ('dated' | 'until')[] = [];
  for (const clause of node.clauses) {
    const { kind, value } = clause;
    const said =
      kind === 'on'
        ? value
        : kind === 'because' || kind === 'by'
          ? wordsIn(context, clause, 'value', value)
          : dateIn(context, clause, 'value', value);
    const isDate = kind === 'dated' || kind === 'until';
    if (isDate && value !== undefined && (said === undefined || !isOnCalendar(said))) open.push(kind);
    else if (said !== undefined) clauses[kind] = said;
  }
  if (!node.rule)
    problem(
      context,
      node.$cstNode,
      'text/value-missing',
      'State which rule is accepted: accept rotation/same-hand on proposed because "..." by "..." dated 2026-03-02.',
      'accept'.length,
    );
  const on = node.clauses.find(clause => clause.kind === 'on' && clause.value !== undefined);
  return {
    place: placeOfNode(context, node),
    rule: node.rule ?? '',
    clauses,
    open,
    ...(node.rule ? { ruleAt: propertyPlace(context, node, 'rule') } : {}),
    ...(on ? { on: propertyPlace(context, on, 'value') } : {}),
  };
}

const RULE_IDS = RULES.map(one => one.id);

/** An acceptance of a rule that there is none of, or on a line that nobody declares, covers nothing and must not look as if. */
export function checkAcceptance(
  context: ReadContext,
  { rule, clauses, ruleAt, on }: AcceptanceReading,
  vessel: string,
  arrangements: readonly ArrangementReading[],
): void {
  if (ruleAt && !RULE_IDS.includes(rule))
    unknownName(context, ruleAt, rule, RULE_IDS, `There is no rule "${rule}", so this accepts nothing.`);
  if (!on) return;
  const [first = '', second] = (clauses.on ?? '').split('.');
  const lines = arrangements.flatMap(one => one.lines.map(line => line.name));
  const arrangement = arrangements.find(one => one.name === first);
  const known = arrangement ? arrangement.lines.map(line => line.name) : lines;
  const start = arrangement ? on.start + first.length + 1 : on.start;
  const name = arrangement ? second : first;
  if (!name || known.includes(name) || (!arrangement && name === vessel)) return;
  const names = arrangement ? known : [...lines, ...arrangements.map(one => one.name), vessel];
  const what = arrangement
    ? `Arrangement ${first} has no shaft line "${name}"`
    : `Nothing here is called "${name}"`;
  unknownName(
    context,
    { uri: on.uri, start, end: start + name.length },
    name,
    names,
    `${what}, so this accepts nothing.`,
  );
}

/** A name that nothing has, with the one that was probably meant. */
export function unknownName(
  context: ReadContext,
  at: Place,
  name: string,
  names: readonly string[],
  message: string,
): void {
  const meant = nearest(name, new Set(names.filter(Boolean)));
  context.problems.push({
    code: 'text/unknown-name',
    start: at.start,
    end: at.end,
    severity: 'error',
    message: meant ? `${message} Did you mean ${meant}?` : message,
    ...(meant ? { choices: [{ title: `Write ${meant}`, text: meant }] } : {}),
  });
}
