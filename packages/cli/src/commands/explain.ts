import { findRule, RULES } from '@tailshaft/drivetrain';
import { citeSource, editDistance } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import type { Command, Given } from '../command.js';
import type { Io } from '../terminal/io.js';
import { table, wrapped } from '../terminal/layout.js';

export const explain: Command = {
  usage: ['tailshaft explain <rule>', 'tailshaft explain'],
  about:
    'Prints what a rule compares, by which source, why it matters and what puts it right. Without a rule: lists all.',
  options: [],
  notes: [],
  run,
};

async function run(io: Io, _given: Given, words: readonly string[]): Promise<number> {
  const [id, ...more] = words;
  if (more.length > 0) throw new CannotRun('one rule at a time: tailshaft explain rotation/propeller-hand');
  if (id === undefined) {
    io.out(table(RULES.map(one => [{ text: one.id }, { text: one.title, paint: io.paint.quiet }])));
    return 0;
  }
  const rule = findRule(id);
  if (!rule) throw new CannotRun(unknownRule(id));
  const { paint, width } = io;
  const example = (title: string, text: string) =>
    /\{/.test(text)
      ? `${paint.strong(title)}\n${text.trim().replace(/^(?=.)/gm, '    ')}`
      : wrapped(text, width, '  ', `${paint.strong(title)} `);
  io.out(
    [
      `${paint.strong(rule.id)}  ${rule.severity}`,
      wrapped(rule.title, width),
      '',
      wrapped(rule.manual, width),
      '',
      wrapped(rule.criterion, width, '  ', `${paint.strong('Compares')} `),
      wrapped(citeSource(rule.source), width, '  ', `${paint.strong('Source')} `),
      wrapped(rule.caution, width, '  ', `${paint.strong('Caution')} `),
      '',
      example('Fails', rule.examples().failing),
      '',
      example('Holds', rule.examples().passing),
      '',
      example('Cannot tell', rule.examples().cannotTell),
    ].join('\n'),
  );
  return 0;
}

/** A mistyped rule is answered with the nearest ones, anything else with the list. */
function unknownRule(id: string): string {
  if (id.startsWith('text/')) {
    return `${id} is about the text itself, not the drivetrain: its message says all there is. Rules are listed by: tailshaft explain`;
  }
  const tail = id.split('/').at(-1)!;
  const near = RULES.map(rule => ({
    id: rule.id,
    far: Math.min(editDistance(id, rule.id), editDistance(tail, rule.id.split('/').at(-1)!)),
  }))
    .filter(one => one.far <= Math.max(2, tail.length / 4) || one.id.includes(tail))
    .sort((one, other) => one.far - other.far)
    .slice(0, 3);
  const meant = near.length > 0 ? ` Did you mean ${near.map(one => one.id).join(', or ')}?` : '';
  return `there is no rule "${id}".${meant} There are:\n${RULES.map(rule => `  ${rule.id}`).join('\n')}`;
}
