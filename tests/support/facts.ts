import type { FileCheck } from '@tailshaft/language';

type Block = FileCheck['vessels'][number]['reading']['arrangements'][number]['lines'][number]['facts'];

export interface WrittenFact {
  readonly property: string;
  /** It is written as an open question, though leaving it out would say something: what its row says of absence. */
  readonly moreThanAbsent: boolean;
  readonly start: number;
  readonly end: number;
}

/** Every fact that a checked file states, with the stretch of text that states it. */
export function writtenFacts(check: FileCheck): WrittenFact[] {
  const blocks: Block[] = [
    ...check.entries.map(one => one.reading.facts),
    ...check.vessels.flatMap(({ reading }) => [
      ...Object.values(reading.settings),
      ...reading.arrangements.flatMap(arrangement =>
        arrangement.lines.flatMap(line => [line.facts, ...line.parts.map(part => part.facts)]),
      ),
    ]),
  ];
  return blocks.flatMap(factsOf).sort((a, b) => a.start - b.start);
}

function factsOf(block: Block): WrittenFact[] {
  const own = block.facts.flatMap(found =>
    found.value
      ? [
          {
            property: found.row.words,
            moreThanAbsent:
              found.fact !== undefined &&
              found.fact.value === undefined &&
              found.row.absent !== undefined &&
              !found.row.estimated,
            start: Math.min(found.words.start, found.value.start),
            end: found.evidence?.end ?? found.value.end,
          },
        ]
      : [],
  );
  return [
    ...own,
    ...block.nested.flatMap(nested => (nested.host.reading ? factsOf(nested.host.reading) : [])),
  ];
}

/** The text without one fact. */
export function without(text: string, fact: WrittenFact): string {
  return text.slice(0, fact.start) + text.slice(fact.end);
}
