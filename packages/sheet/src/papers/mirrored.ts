import { type Block, paragraph, type RowGroup, type Section } from '../document/blocks.js';
import { plainText, quiet, type Text } from '../document/text.js';
import { withoutNames, wordsAlone } from './sides.js';

export interface LineSection {
  readonly name: string;
  readonly section: Section;
}

/**
 * Sections of lines, in which a line says only what differs from the first of its fellows that it resembles: "as Port,
 * except". What fails, is accepted or cannot be told is always said again.
 */
export function foldMirrored(lines: readonly LineSection[]): Section[] {
  const names = lines.map(one => one.name);
  const [first, ...others] = lines;
  if (!first) return [];
  const whole = blocksWords([first.section], names);
  return [
    first.section,
    ...others.map(({ section }) => {
      const rest = new Rest(whole, names);
      const kept = rest.of(section.blocks);
      // Two lines that have little in common are two lines.
      if (rest.left < rest.kept) return section;
      const told: Block[] =
        kept.length > 0 ? kept : [paragraph(`As ${first.name} in everything that is printed there.`)];
      return {
        ...section,
        title: `${section.title}: as ${first.name}${kept.length > 0 ? ', except' : ''}`,
        blocks: [...missing(whole, section, names, first.name), ...told],
      };
    }),
  ];
}

/** What the first line has and the other has not: leaving it out would say that they agree. */
function missing(
  whole: ReadonlySet<string>,
  section: Section,
  names: readonly string[],
  first: string,
): Block[] {
  const own = blocksWords([section], names);
  const heads = new Set([...own].map(headOf));
  const lost = [...whole].filter(one => one.includes('\t') && !heads.has(headOf(one)));
  if (lost.length === 0) return [];
  const told = [...new Set(lost.map(one => headOf(one).split('\n').pop()!.trim()))].filter(Boolean);
  return told.length > 0
    ? [paragraph([quiet(`Not here, though ${first} has it: `), told.join('; '), '.'])]
    : [];
}

const headOf = (words: string) => words.split('\t')[0]!;

/** What is left of blocks when everything that was said before is taken out. */
class Rest {
  left = 0;
  kept = 0;

  constructor(
    private readonly said: ReadonlySet<string>,
    private readonly names: readonly string[],
  ) {}

  of(blocks: readonly Block[]): Block[] {
    return blocks.flatMap(block => this.block(block));
  }

  private block(block: Block): Block[] {
    switch (block.block) {
      case 'section':
      case 'details': {
        const blocks = this.of(block.blocks);
        return blocks.length > 0 ? [{ ...block, blocks }] : [];
      }
      case 'table': {
        const groups = block.groups.flatMap(group => this.group(block.caption, group));
        return groups.length > 0 ? [{ ...block, groups }] : [];
      }
      default:
        return this.keeps(blockWords(block, this.names)) ? [block] : [];
    }
  }

  private group(caption: string, group: RowGroup): RowGroup[] {
    const rows = group.rows.filter(row => this.keeps(rowWords(caption, group, row, this.names), row));
    return rows.length > 0 ? [{ ...group, rows }] : [];
  }

  private keeps(words: string, row: readonly Text[] = []): boolean {
    const keep = !this.said.has(words) || row.some(alarms);
    if (keep) this.kept++;
    else this.left++;
    return keep;
  }
}

/** Whether a cell says of a check that it fails, is accepted or cannot tell. */
function alarms(text: Text): boolean {
  if (typeof text === 'string') return false;
  if (!('as' in text)) return text.some(alarms);
  if (text.as === 'verdict') return text.outcome !== 'holds' && text.outcome !== 'does not apply';
  return 'text' in text && alarms(text.text);
}

function blocksWords(blocks: readonly Block[], names: readonly string[]): Set<string> {
  const words = new Set<string>();
  const walk = (block: Block): void => {
    if (block.block === 'section' || block.block === 'details') block.blocks.forEach(walk);
    else if (block.block === 'table')
      for (const group of block.groups)
        for (const row of group.rows) words.add(rowWords(block.caption, group, row, names));
    else words.add(blockWords(block, names));
  };
  blocks.forEach(walk);
  return words;
}

function rowWords(caption: string, group: RowGroup, row: readonly Text[], names: readonly string[]): string {
  const head = `${caption}\n${group.title === undefined ? '' : wordsAlone(group.title).split('\n')[0]}`;
  return withoutNames(`${head}\n${row.map(wordsAlone).join('\t')}`, names);
}

function blockWords(block: Block, names: readonly string[]): string {
  const words = (text: Text) => withoutNames(wordsAlone(text), names);
  switch (block.block) {
    case 'paragraph':
      return words(block.text);
    case 'list':
      return block.items.map(words).join('\n');
    case 'terms':
      return block.items.map(([label, value]) => `${label} ${words(value)}`).join('\n');
    case 'figure':
      return withoutNames(block.svg.source, names);
    case 'row':
      return block.figures.map(one => withoutNames(one.svg.source, names)).join('\n');
    default:
      return plainText('');
  }
}
