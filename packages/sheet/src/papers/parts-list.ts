import { plainText } from '../document/text.js';
import type { SheetInput } from '../input.js';
import { CHANGE_WORDS, partRows } from '../sections/parts.js';

/** Every declared fact of every part as plain cells; a part without facts has a row of its own. */
export function partsList({ vessel, placeText }: SheetInput): string[][] {
  return vessel.arrangements.flatMap(arrangement =>
    arrangement.lines.flatMap(line =>
      line.chain.flatMap(part => {
        const { source } = part;
        const head = [
          arrangement.name,
          line.name,
          part.role,
          part.entry?.name ?? '',
          part.entry?.title ?? '',
          plainText(CHANGE_WORDS[part.change]),
        ];
        const from = source?.value ? [source.value.title, source.value.dated].filter(Boolean).join(', ') : '';
        const rows = partRows(part).map(row => [
          ...head,
          row.label,
          row.open ? 'unknown' : row.written,
          row.other ?? '',
          row.evidence
            ? [row.evidence.kind, row.evidence.dated, row.evidence.note].filter(Boolean).join(' ')
            : '',
          from,
          placeText?.(row.origin) ?? '',
        ]);
        return rows.length > 0 ? rows : [[...head, '', '', '', '', from, placeText?.(part.origin) ?? '']];
      }),
    ),
  );
}
