import { citeSource, type FormulaSpec, SI_UNIT } from '@tailshaft/mechanics';
import type { MethodSubject } from '@tailshaft/mechanics/methods';
import { anchorOf } from './markdown.js';
import { equation } from './rule-page.js';

type Spec = FormulaSpec<Record<string, keyof typeof SI_UNIT>, keyof typeof SI_UNIT>;

/** Every formula with its symbols, range, source and confidence, by subject. `usedBy`: rules by the name of a formula. */
export function methodsPage(
  subjects: readonly MethodSubject[],
  usedBy: ReadonlyMap<string, readonly string[]>,
): string {
  return `${[
    '# Methods',
    'Every formula that the checks, hovers and sheets compute with. Made by `npm run docs` from the declarations in `src`. All quantities inside are in the coherent SI unit that is given in brackets.',
    'The confidence follows each source: *published* is in the named publication or follows from the definition of a unit; *derived* follows by algebra; *from memory* was written without the text at hand; *common practice* has no publication.',
    ...subjects
      .map(({ title, formulas }) => `- [${title}](#${anchorOf(title)}): ${formulas.length} formulas`)
      .join('\n')
      .split('\n\n'),
    ...subjects.flatMap(({ title, formulas }) => [
      `## ${title}`,
      ...formulas.map(({ spec }) => method(spec as unknown as Spec, usedBy.get(spec.name) ?? [])),
    ]),
  ].join('\n\n')}\n`;
}

function method(spec: Spec, rules: readonly string[]): string {
  const inputs = Object.entries(spec.inputs).map(
    ([key, dimension]) => `${letterOf(spec, key)} ${measured(dimension)}`,
  );
  return [
    `### ${spec.name}`,
    '',
    `\`${equation(spec)}\``,
    '',
    `- **Gives:** ${spec.symbol}, ${measured(spec.dimension)}`,
    ...(inputs.length > 0 ? [`- **From:** ${inputs.join('; ')}`] : []),
    ...(spec.terms ? [`- **Terms:** ${spec.terms}`] : []),
    `- **Range:** ${typeof spec.range === 'string' ? spec.range : spec.range.map(one => one.condition).join('; ')}`,
    `- **Source:** ${citeSource(spec.source)}${spec.source.confidence === 'published' ? ' (published)' : ''}`,
    ...(rules.length > 0
      ? [`- **Used by:** ${rules.map(id => `[${id}](../drivetrain/manual/${id}.md)`).join(', ')}`]
      : []),
  ].join('\n');
}

/** The letter of an input, with its name in words where they differ. */
function letterOf(spec: Spec, key: string): string {
  const letter = spec.symbols?.[key];
  const words = key.replace(/([a-z0-9])([A-Z])/g, '$1 $2').toLowerCase();
  return letter && letter !== key ? `${letter} = ${words},` : `${key.length > 2 ? words : key},`;
}

function measured(dimension: keyof typeof SI_UNIT): string {
  const unit = SI_UNIT[dimension];
  return unit === '1' ? dimension : `${dimension} (${unit})`;
}
