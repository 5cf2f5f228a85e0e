// Puts all mutants of a source beside each other in it: `(mutant(7) ? (a <= b) : (a < b))`, so that one load of the
// sources serves every mutant.
import { parseAst } from 'rolldown/parseAst';

const SWAPPED = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '**': ['*'],
};
const METHODS = { some: 'every', every: 'some', min: 'max', max: 'min' };
const MORE = 1.02;
const ROUNDING = 1e-5;

/** The text with its mutants in it, and for each of them its line and what it says instead. */
export function instrument(text, first) {
  const mutants = [];
  const lines = lineStarts(text);
  const raw = node => text.slice(node.start, node.end);

  /** Text of a node with the mutants of all that is in it. */
  function render(node, depth, key, parent) {
    const within = isFunction(node) ? depth + 1 : depth;
    let said = '';
    let at = node.start;
    for (const [name, child] of childrenOf(node)) {
      if (child.start < at) continue;
      said += text.slice(at, child.start) + render(child, within, name, node);
      at = child.end;
    }
    said += text.slice(at, node.end);
    // What is worked out once, while the sources load, cannot be switched afterwards.
    if (depth === 0 || !isPlain(key, parent)) return said;
    return variantsOf(node, raw).reduce(
      (rest, variant) => {
        const id = first + mutants.length;
        mutants.push({ id, line: lineOf(lines, node.start), from: short(raw(node)), to: short(variant) });
        return `(__mutant(${id}) ? (${variant}) : ${rest})`;
      },
      wrapped(node, said),
    );
  }
  const wrapped = (node, said) => (variantsOf(node, raw).length > 0 ? `(${said})` : said);
  const program = parseAst(text, { lang: 'ts' });
  return { text: text.slice(0, program.start) + render(program, 0) + text.slice(program.end), mutants };
}

function variantsOf(node, raw) {
  switch (node.type) {
    case 'BinaryExpression': {
      if (node.operator === '+' && [node.left, node.right].some(isText)) return [];
      return (SWAPPED[node.operator] ?? []).map(other => `${raw(node.left)} ${other} ${raw(node.right)}`);
    }
    case 'LogicalExpression':
      return [raw(node.left), raw(node.right)];
    case 'ConditionalExpression':
      return [raw(node.consequent), raw(node.alternate)];
    case 'UnaryExpression':
      return node.operator === '!' || node.operator === '-' ? [raw(node.argument)] : [];
    case 'Literal':
      if (typeof node.value !== 'number') return [];
      return [moreThan(node.value)];
    case 'CallExpression': {
      const { callee } = node;
      const method =
        callee.type === 'MemberExpression' && !callee.computed ? callee.property.name : undefined;
      const variants = [];
      if (METHODS[method])
        variants.push(
          `${raw(callee.object)}${callee.optional ? '?.' : '.'}${METHODS[method]}(${node.arguments.map(raw).join(', ')})`,
        );
      if (method === 'filter' && !callee.optional) variants.push(raw(callee.object));
      for (const [index, given] of node.arguments.entries()) {
        if (index === 0 || given.type !== 'Identifier') continue;
        const rest = node.arguments.map((one, other) => (other === index ? 'undefined as never' : raw(one)));
        variants.push(`${raw(callee)}(${rest.join(', ')})`);
      }
      return variants;
    }
    default:
      return [];
  }
}

/**
 * A figure is worth little when 2 % more of it goes unseen. What tells a rounding from a number is no such figure: a
 * thousand times as much of that should be seen.
 */
function moreThan(value) {
  if (value === 0) return '1';
  if (Number.isInteger(value) && value < 10) return `${value + 1}`;
  return `${value * (Math.abs(value) <= ROUNDING ? 1000 : MORE)}`;
}

/** Conditions of statements, too, though they are no expressions with a value of their own. */
const isPlain = (key, parent) => {
  if (!parent) return false;
  if (key === 'key' && !parent.computed) return false;
  if (key === 'callee' || parent.type === 'ChainExpression') return false;
  if (parent.type === 'UpdateExpression' || (parent.type === 'AssignmentExpression' && key === 'left'))
    return false;
  if (parent.type === 'MemberExpression') return key === 'property' ? false : parent.optional !== true;
  return !parent.type.startsWith('TSLiteral') && !parent.type.startsWith('TSEnum');
};

const isText = node =>
  node.type === 'TemplateLiteral' || (node.type === 'Literal' && typeof node.value === 'string');
const isFunction = node => /Function|MethodDefinition/.test(node.type);

/** Children in the order of the text; types are left as they stand. */
function childrenOf(node) {
  const found = [];
  for (const [key, value] of Object.entries(node)) {
    if (
      key === 'typeAnnotation' ||
      key === 'returnType' ||
      key === 'typeParameters' ||
      key === 'typeArguments'
    )
      continue;
    for (const one of Array.isArray(value) ? value : [value])
      if (one && typeof one.type === 'string' && typeof one.start === 'number' && !isType(one))
        found.push([key, one]);
  }
  return found.sort(([, a], [, b]) => a.start - b.start);
}

const VALUES = ['TSAsExpression', 'TSNonNullExpression', 'TSSatisfiesExpression'];
const isType = node =>
  (node.type.startsWith('TS') && !VALUES.includes(node.type)) || node.type === 'ImportDeclaration';

const short = text => text.replace(/\s+/g, ' ').slice(0, 90);

function lineStarts(text) {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}

function lineOf(starts, at) {
  let line = 0;
  while (line + 1 < starts.length && starts[line + 1] <= at) line++;
  return line + 1;
}
