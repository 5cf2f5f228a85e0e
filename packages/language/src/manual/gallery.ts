import { RULES } from '@tailshaft/drivetrain';
import { BASE_SPECS } from '@tailshaft/drivetrain/examples';
import { formatText } from '../format/format-text.js';
import { fileName } from './markdown.js';
import { TEXT_FINDINGS } from './text-findings.js';

/** A spec of the gallery that fails. */
export interface GallerySpec {
  readonly code: string;
  /** With its catalogue entries in it. */
  readonly whole: string;
  /** With the entries that the gallery shares imported; the same as `whole` where it has none of them. */
  readonly short: string;
}

/** One failing spec for each rule and each finding of the text. */
export function gallerySpecs(): readonly GallerySpec[] {
  const parts = sharedParts();
  return [
    ...RULES.map(({ id, title, mistakes, examples }) => {
      const numbers = mistakes.length > 0 ? `Mistake ${mistakes.join(', ')}. ` : '';
      return {
        code: id,
        head: `// Broken here: ${title}. ${numbers}See: tailshaft explain ${id}`,
        spec: examples().failing,
      };
    }),
    ...TEXT_FINDINGS.flatMap(({ code, title, failing }) =>
      failing === undefined
        ? []
        : [{ code, head: `// Broken here: ${title}. See: tailshaft explain ${code}`, spec: failing }],
    ),
  ].map(({ code, head, spec }) => {
    const body = formatText(spec);
    return {
      code,
      whole: formatText(`${head}\n\n${body}`),
      short: formatText(`${head}\n\n${withImports(body, parts)}`),
    };
  });
}

/** The base specs that pages refer to, by file name. */
export function galleryBases(): ReadonlyMap<string, string> {
  return new Map(
    Object.entries(BASE_SPECS).map(([name, spec]) => [`bases/${fileName(name)}.shaft`, formatText(spec)]),
  );
}

/** Catalogue entries that several base specs hold word for word, by file name. */
export function sharedParts(): ReadonlyMap<string, string> {
  const counts = new Map<string, number>();
  for (const spec of Object.values(BASE_SPECS)) {
    for (const block of topBlocks(formatText(spec))) counts.set(block, (counts.get(block) ?? 0) + 1);
  }
  const parts = new Map<string, string>();
  for (const [block, count] of counts) {
    const name = /^(?:engine|motor|gear|transfer|coupling|shaft material|propeller) (\S+)/.exec(block)?.[1];
    if (!name || count < 2) continue;
    const file = `parts/${fileName(name)}.shaft`;
    if (!parts.has(file)) parts.set(file, `${block}\n`);
  }
  return parts;
}

/** The spec with its shared entries imported. */
function withImports(spec: string, parts: ReadonlyMap<string, string>): string {
  const files = new Map([...parts].map(([file, text]) => [text.trim(), file]));
  const imports: string[] = [];
  const own: string[] = [];
  for (const block of topBlocks(spec)) {
    const file = files.get(block);
    if (file) imports.push(`import "${file.replace(/\.shaft$/, '')}"`);
    else own.push(block);
  }
  if (imports.length === 0) return spec;
  return `${imports.join('\n')}\n\n${own.join('\n\n')}\n`;
}

/** The statements that stand at the left edge, each with its block, as the formatter lays them out. */
function topBlocks(spec: string): string[] {
  return spec
    .trim()
    .split(/\n+(?=[^\s}])/)
    .map(block => block.trim());
}
