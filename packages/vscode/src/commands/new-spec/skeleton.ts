import type { Spelling } from '@tailshaft/vocabulary';

/** What the author of a new spec has said so far. */
export interface Wanted {
  readonly lines: 'single' | 'twin';
  readonly job: 'repower' | 'new';
  /** In the same text, or imported from beside it. */
  readonly catalogue: 'here' | { readonly path: string; readonly isNew: boolean };
}

/** A snippet under way: numbers its places to fill in, and knows the names that were given once. */
class Places {
  private count = 0;
  private readonly named = new Map<string, number>();

  /** A value that nobody has said yet. */
  readonly open = (): string => this.free('unknown');

  free(text: string): string {
    this.count += 1;
    return `\${${this.count}:${text}}`;
  }

  /** A name of the author's own: typed once, it stands wherever it is used. */
  name(text: string): string {
    const had = this.named.get(text);
    if (had !== undefined) return `$${had}`;
    const made = this.free(text);
    this.named.set(text, this.count);
    return made;
  }
}

/**
 * A spec as a snippet in which every value is `unknown`, with a stop at each: what the checks say of it is the list of
 * what to find out. It decides nothing. A repower says what becomes of the engine only; of every other part the checks
 * ask whether it is kept.
 */
export function specSkeleton(wanted: Wanted): string {
  const places = new Places();
  const imported = wanted.catalogue === 'here' ? [] : [`import "${wanted.catalogue.path}"`, ''];
  const vessel = vesselLines(wanted, places);
  const entries = wanted.catalogue === 'here' ? catalogueLines(wanted, places) : [];
  return `${[...imported, ...vessel, ...entries].join('\n')}\n`;
}

/** The entries that a new spec names, for a file of their own. */
export function catalogueSkeleton(wanted: Wanted): string {
  return `${catalogueLines(wanted, new Places()).slice(1).join('\n')}\n`;
}

/** Words of the language, which no longer compile here when they are renamed. */
const said = (words: Spelling): string => words;

const SIDES = { single: ['Centre'], twin: ['Port', 'Starboard'] } as const;

function vesselLines({ lines, job, catalogue }: Wanted, places: Places): string[] {
  const { open } = places;
  const sides = SIDES[lines];
  // Entries of a catalogue that is there already have their own names: which of them it is, is open.
  const isNew = catalogue === 'here' || catalogue.isNew;
  const named = (name: string) => (isNew ? places.name(name) : open());
  const head = [
    `vessel ${places.name('Name')} "${places.free('what the vessel is')}" {`,
    `  duty ${open()} { hours ${open()}  passengers ${open()} }`,
    `  hull ${open()} { waterline length ${open()}  displacement ${open()} }`,
    '',
  ];
  if (job === 'new')
    return [
      ...head,
      '  arrangement proposed "new vessel" {',
      ...sides.flatMap(side => wholeLine(side, 'proposed', places, named)),
      '  }',
      '}',
    ];
  return [
    ...head,
    '  arrangement existing "as found" {',
    ...sides.flatMap(side => wholeLine(side, 'found', places, named)),
    '  }',
    '',
    '  // Say of gear, shaft and propeller too: replace, modify, retain or remove.',
    '  arrangement proposed "repower" revises existing {',
    ...sides.flatMap(side => [
      `    shaftline ${side} {`,
      `      replace engine ${named('Engine-proposed')} at ${open()} { flywheel ${open()}  ${said('torsional statement')} ${open()} }`,
      '    }',
    ]),
    '  }',
    '}',
  ];
}

function wholeLine(side: string, when: string, places: Places, named: (name: string) => string): string[] {
  const { open } = places;
  return [
    `    shaftline ${side} {`,
    `      engine ${named(`Engine-${when}`)} at ${open()} { flywheel ${open()} }`,
    `      gear ${named(`Gear-${when}`)} ratio ${open()} ${said('ahead clutch')} ${open()}`,
    `      shaft { material ${open()}  diameter ${open()} }`,
    '      propeller {',
    ...(['hand', 'blades', 'diameter', 'pitch', 'area ratio', 'material'] satisfies Spelling[]).map(
      words => `        ${words} ${open()}`,
    ),
    '      }',
    '    }',
  ];
}

function catalogueLines({ job }: Wanted, places: Places): string[] {
  const engines = job === 'new' ? ['Engine-proposed'] : ['Engine-found', 'Engine-proposed'];
  const gear = job === 'new' ? 'Gear-proposed' : 'Gear-found';
  return [...engines.flatMap(name => engineLines(name, places)), ...gearLines(gear, places)];
}

function engineLines(name: string, places: Places): string[] {
  const { open } = places;
  const facts = (indent: string, ...words: readonly Spelling[]) =>
    words.map(one => `${indent}${one} ${open()}`);
  return [
    '',
    `engine ${places.name(name)} "${places.free('what it is')}" {`,
    ...facts('  ', 'source', 'rotation', 'fuel', 'cylinders'),
    `  rating ${open()} {`,
    ...facts('    ', 'power', 'measured at', 'standard'),
    '  }',
    ...facts('  ', 'low idle', 'high idle', 'peak torque', 'housing'),
    '}',
  ];
}

function gearLines(name: string, places: Places): string[] {
  const { open } = places;
  const facts = (...words: readonly Spelling[]) => words.map(one => `  ${one} ${open()}`);
  return [
    '',
    `gear ${places.name(name)} "${places.free('what it is')}" {`,
    ...facts('source', 'layout', 'input rotation', 'input speed at most', 'input speed at least'),
    ...facts('input housing', 'thrust at most'),
    `  ratio ${open()} {`,
    ...['A', 'B'].map(clutch => `    clutch ${places.free(clutch)}  output ${open()}  ahead ${open()}`),
    `    rated ${open()}`,
    '  }',
    '}',
  ];
}
