import type { Value } from '../core/value.js';
import { formatValue } from '../units/natural.js';
import { filledResult } from './filled.js';
import { type WorkingStep, workingSteps } from './steps.js';

/** A value's working as indented plain text, one fact a line. */
export function workingText(value: Value): string {
  const lines: string[] = [];
  for (const step of workingSteps(value)) {
    const indent = '  '.repeat(step.depth);
    lines.push(indent + headline(step, same, same));
    for (const detail of details(step, same, same)) lines.push(`${indent}    ${detail}`);
  }
  return lines.join('\n');
}

/** A value's working as a nested Markdown list. */
export function workingMarkdown(value: Value): string {
  const lines: string[] = [];
  for (const step of workingSteps(value)) {
    const indent = '  '.repeat(step.depth);
    // Two spaces at the end of a line break it, without HTML.
    const all = [headline(step, code, plain), ...details(step, code, plain)];
    lines.push(`${indent}- ${all.join(`  \n${indent}  `)}`);
  }
  return lines.join('\n');
}

/** One line for a hover or a table cell: `T = P / ω = 300 kW / 2300 rpm = 1246 N·m`. */
export function workingLine(value: Value): string {
  const [step] = workingSteps(value);
  if (!step?.formula) return `${value.symbol} = ${formatValue(value)}`;
  const result = step.filled ? resultOf(value) : formatValue(value);
  return [step.formula, step.filled, result].filter(Boolean).join(' = ');
}

/** In the unit of the formula, and in the one of the trade where that is another. */
export function resultOf(value: Value): string {
  return [...new Set([filledResult(value), formatValue(value)])].join(' = ');
}

type Mark = (text: string) => string;

function headline(step: WorkingStep, mark: Mark, words: Mark): string {
  const { value } = step;
  const label = value.label === value.symbol ? '' : `${words(value.label)}: `;
  const head = `${label}${mark(step.result)}`;
  if (step.shownAbove && step.kind === 'computed') return `${head} (worked out above)`;
  if (step.kind === 'assumed') return `${head} (assumed: ${words(value.assumed ?? '')})`;
  if (step.kind === 'declared' && value.written) return `${head} (written ${words(value.written)})`;
  return head;
}

function* details(step: WorkingStep, mark: Mark, words: Mark): Generator<string> {
  if (!step.formula) return;
  yield mark(step.formula);
  if (step.filled) yield mark(`${step.value.symbol} = ${step.filled} = ${resultOf(step.value)}`);
  yield `source: ${words(step.source ?? '')}`;
  for (const range of step.range) yield `${range.met ? 'holds' : 'NOT MET'}: ${words(range.condition)}`;
  for (const note of step.notes) yield `note: ${words(note)}`;
}

const same: Mark = text => text;

/** Words in Markdown: nothing in them is mark-up. */
function plain(text: string): string {
  return text.replace(/[\\`*_[\]<>#|~]/g, sign => `\\${sign}`).replace(/\s+/g, ' ');
}

/** Code in Markdown; a backtick inside would end it, so the fence grows. */
function code(text: string): string {
  return text.includes('`') ? `\`\` ${text} \`\`` : `\`${text}\``;
}
