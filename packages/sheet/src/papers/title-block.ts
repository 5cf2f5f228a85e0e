import type { Signature } from '@tailshaft/drivetrain';
import { capital } from '@tailshaft/mechanics';
import type { Terms } from '../document/blocks.js';
import { separated, type Text, warning } from '../document/text.js';
import type { SheetInput } from '../input.js';
import { labelOf } from '../words.js';
import { revisionWords } from './paper.js';

/** What every paper is filed by. A field that nobody filled in is told, not left out. */
export function titleBlock(input: SheetInput, paper: string): Terms {
  const { vessel, today, digest } = input;
  const { project, practice } = vessel;
  const revision = vessel.revisions.at(-1);
  const office =
    project?.practice?.value ??
    (practice && (practice.facts.titleBlock?.value ?? practice.title ?? practice.name));
  const items: (readonly [string, Text | undefined])[] = [
    ['Paper', paper],
    ['Vessel', vessel.title ? `${vessel.name}, ${vessel.title}` : vessel.name],
    ['Project', project?.number?.value ?? notStated],
    ['Drawing', project?.drawing?.value ?? notStated],
    ['Client', project?.client?.value],
    ['Practice', office],
    ['Revision', capital(revisionWords(input))],
    ['What changed', revision?.text],
    ['Judged on', today],
    ['Text', digest ?? notStated],
    [labelOf('prepared by'), signed(revision?.prepared)],
    [labelOf('checked by'), signed(revision?.checked)],
    [labelOf('approved by'), signed(revision?.approved)],
  ];
  return {
    block: 'terms',
    items: items.flatMap(([label, value]) => (value === undefined ? [] : [[label, value] as const])),
  };
}

const notStated = warning('not stated');

function signed(signatures: readonly Signature[] = []): Text {
  if (signatures.length === 0) return warning('nobody named');
  return separated(
    '; ',
    ...signatures.map(({ name, role, dated }) =>
      [name, role?.value ?? 'no role', dated?.value].filter(Boolean).join(', '),
    ),
  );
}
