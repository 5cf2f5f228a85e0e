import {
  isArrowFunction,
  isBindingElement,
  isCallExpression,
  isFunctionDeclaration,
  isIdentifier,
  isMethodDeclaration,
  isParameterDeclaration,
  isPropertyAccessExpression,
  isPropertyAssignment,
  isTypeNode,
  isVariableDeclaration,
  type Node,
} from 'typescript/unstable/ast';
import { describe, expect, it } from 'vitest';
import { nodesOf, withSources } from './sources.js';

/**
 * What is kept by `Kept` or `KeptBy` serves every candidate of a study in which its making found the same in the places that
 * vary. Nothing else that varies may come in from outside of `make`: that would be a stale result, and nobody would see it. So
 * each name that a making takes from the functions around it is said in its key, or stands here with the reason why it cannot
 * vary under that key.
 */
const EXPLAINED: readonly (readonly [file: string, name: string, because: string])[] = [
  ['analysis/gear-data.ts', 'variant', 'the store is kept under it'],
  ['model/gear-in-mode.ts', 'by', 'each input shaft has a store of its own'],
  [
    'analysis/line.ts',
    'gear',
    'the gear of the line that the store belongs to: it stands for what a candidate has there',
  ],
  ['analysis/line.ts', 'point', 'its name, speed and power are in the key, and its torque follows from them'],
  ['rules/paper/place-against-entry.ts', 'vocabulary', 'it follows from the role of the part'],
  ['rules/paper/sister-vessel.ts', 'vocabulary', 'it follows from the block'],
  ['judge/judge.ts', 'line', 'the store is made for this line'],
  ['judge/judge.ts', 'found', 'the store is made for the line that it stands before'],
  ['judge/judge.ts', 'vessel', 'the vessel of that line'],
  ['study/judging.ts', 'vessel', 'the vessel that the bench belongs to'],
  ['study/judging.ts', 'catalogue', 'the same for all candidates'],
  ['study/judging.ts', 'today', 'the same for all candidates'],
];

interface Taken {
  readonly file: string;
  readonly name: string;
  readonly call: string;
}

/** `kept.once(key, () => ...)`, and the methods that pass it on. */
const KEEPS = new Set(['once', '#once', 'made']);

/** Names that the makings of a file take from the functions around them and that their keys do not say. */
function takenIn(file: string, source: Node): Taken[] {
  const found: Taken[] = [];
  const visit = (node: Node, around: ReadonlySet<string>): void => {
    if (isCallExpression(node) && isPropertyAccessExpression(node.expression)) {
      const [key, make] = node.arguments;
      if (key && make && isArrowFunction(make) && KEEPS.has(node.expression.name.text)) {
        const [inKey, own] = [new Set(namesIn(key)), declaredIn(make)];
        for (const name of new Set(namesIn(make)))
          if (around.has(name) && !own.has(name) && !inKey.has(name))
            found.push({ file, name, call: node.expression.name.text });
      }
    }
    const opens = isArrowFunction(node) || isFunctionDeclaration(node) || isMethodDeclaration(node);
    const inside = opens ? new Set([...around, ...declaredIn(node)]) : around;
    node.forEachChild(child => visit(child, inside));
  };
  visit(source, new Set());
  return found;
}

/** Whatever is declared inside a node: parameters, constants, functions. */
function declaredIn(node: Node): ReadonlySet<string> {
  const names = new Set<string>();
  for (const one of nodesOf(node))
    if (
      (isParameterDeclaration(one) ||
        isVariableDeclaration(one) ||
        isBindingElement(one) ||
        isFunctionDeclaration(one)) &&
      one !== node &&
      one.name &&
      isIdentifier(one.name)
    )
      names.add(one.name.text);
  return names;
}

/** Names that are read in a node, without those of properties and types. */
function namesIn(node: Node): string[] {
  if (isTypeNode(node)) return [];
  if (isIdentifier(node)) return [node.text];
  if (isPropertyAccessExpression(node)) return namesIn(node.expression);
  if (isPropertyAssignment(node)) return namesIn(node.initializer);
  const all: string[] = [];
  node.forEachChild(child => void all.push(...namesIn(child)));
  return all;
}

describe('what is kept for a study', () => {
  const all = withSources(({ files }) =>
    files(/^packages\/drivetrain\/src\//).flatMap(({ path, source }) => takenIn(path, source)),
  );

  it('takes nothing from outside but its key, and what cannot vary', () => {
    const open = all.filter(
      ({ file, name }) => !EXPLAINED.some(([where, what]) => file.endsWith(where) && name === what),
    );
    expect(open).toEqual([]);
  });

  it('is explained only where it is taken', () => {
    const idle = EXPLAINED.filter(
      ([where, what]) => !all.some(({ file, name }) => file.endsWith(where) && name === what),
    );
    expect(idle).toEqual([]);
  });
});
