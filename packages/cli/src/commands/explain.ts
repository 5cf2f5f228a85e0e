import { findRule, RULES } from '@tailshaft/drivetrain';
import { type ShownExample, shownExamples, TEXT_FINDINGS } from '@tailshaft/language/manual';
import { citeSource, editDistance } from '@tailshaft/mechanics';
import { CannotRun } from '../cannot-run.js';
import type { Command, Given } from '../command.js';
import type { Io } from '../terminal/io.js';
import { table, wrapped } from '../terminal/layout.js';

export const explain: Command = {
  usage: ['tailshaft explain <rule>', 'tailshaft explain <rule> --spec', 'tailshaft explain'],
  about:
    'Prints the manual page of a rule: what it compares, by which source, why it matters and how to correct it. Without a rule: lists all rules.',
  options: [{ name: 'spec', means: 'Print a whole spec that fails the rule, to try with check.' }],
  notes: [],
  words: () => [...RULES.map(one => one.id), ...TEXT_FINDINGS.map(one => one.code)],
  run,
};

async function run(io: Io, given: Given, words: readonly string[]): Promise<number> {
  const [id, ...more] = words;
  if (more.length > 0) throw new CannotRun('one rule at a time: tailshaft explain rotation/propeller-hand');
  if (id === undefined) {
    io.out(table(RULES.map(one => [{ text: one.id }, { text: one.title, paint: io.paint.quiet }])));
    return 0;
  }
  const rule = findRule(id);
  if (given.spec) {
    const spec = rule ? rule.examples().failing : TEXT_FINDINGS.find(one => one.code === id)?.failing;
    if (spec === undefined) throw new CannotRun(rule ? `${id} has no spec` : unknownRule(id));
    io.out(spec.trim());
    return 0;
  }
  const { paint, width } = io;
  if (!rule) {
    const text = TEXT_FINDINGS.find(one => one.code === id);
    if (!text) throw new CannotRun(unknownRule(id));
    io.out(
      [
        `${paint.strong(text.code)}  ${text.severity}`,
        wrapped(text.title, width),
        '',
        wrapped(text.manual, width),
        ...whole(paint.strong('Fails'), text.failing),
        ...whole(paint.strong('Holds'), text.passing),
      ].join('\n'),
    );
    return 0;
  }
  io.out(
    [
      `${paint.strong(rule.id)}  ${rule.severity}`,
      wrapped(rule.title, width),
      '',
      wrapped(rule.manual, width),
      '',
      wrapped(rule.criterion, width, '  ', `${paint.strong('Compares')} `),
      wrapped(citeSource(rule.source), width, '  ', `${paint.strong('Source')} `),
      wrapped(rule.caution, width, '  ', `${paint.strong('Limits')} `),
      ...shownExamples(rule.examples()).flatMap(one => ['', ...exampleLines(io, one)]),
    ].join('\n'),
  );
  return 0;
}

function whole(title: string, spec: string | undefined): string[] {
  return spec === undefined ? [] : ['', title, spec.trim().replace(/^(?=.)/gm, '    ')];
}

/** An example by the lines that change. */
function exampleLines({ paint, width }: Io, { title, like, lines, sentence }: ShownExample): string[] {
  if (sentence !== undefined) return [wrapped(sentence, width, '  ', `${paint.strong(title)} `)];
  if (!like) return [paint.strong(title), ...lines.map(line => `    ${line.text}`)];
  if (lines.length === 0) return [`${paint.strong(title)} ${like.words}, as it stands`];
  return [
    `${paint.strong(title)} ${like.words}, changed:`,
    ...lines.map(line => `  ${line.sign} ${line.text}`),
  ];
}

/** A mistyped rule is answered with the nearest ones, anything else with the list. */
function unknownRule(id: string): string {
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
