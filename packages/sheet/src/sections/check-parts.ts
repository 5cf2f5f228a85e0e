import type { Verdict } from '@tailshaft/drivetrain';

/** What the part names of one line are taken from. */
export interface PartNaming {
  /** Path of the line: what stands after it in a verdict's subject names the part. */
  readonly path: string;
  /** Names of parts that a verdict's words may mention: catalogue entries. */
  readonly entries: readonly string[];
  /** Name of the span whose whirling speed this is. */
  readonly spanOf: (whirling: number) => string | undefined;
  /** Where the verdict is declared, in words. */
  readonly placeOf: (verdict: Verdict) => string | undefined;
}

/**
 * What tells several verdicts of one rule on one line apart: `housing aft`, `forward coupling to tube`, `bolt diameter`.
 * One verdict alone needs no name. Where the first word for it does not part all of them, the next is added.
 */
export function partNames(verdicts: readonly Verdict[], naming: PartNaming): Map<Verdict, string> {
  const names = new Map<Verdict, string>();
  for (const rule of new Set(verdicts.map(one => one.rule))) {
    const alike = verdicts.filter(one => one.rule === rule);
    for (const [verdict, words] of split(alike, WAYS, naming)) names.set(verdict, words.join(', '));
  }
  return names;
}

type Way = (alike: readonly Verdict[], naming: PartNaming) => readonly string[];

function split(
  alike: readonly Verdict[],
  [way, ...others]: readonly Way[],
  naming: PartNaming,
): (readonly [Verdict, readonly string[]])[] {
  if (alike.length < 2 || !way) return alike.map(one => [one, []] as const);
  const said = way(alike, naming);
  if (new Set(said).size === 1) return split(alike, others, naming);
  return alike.flatMap((one, index) => {
    // In the order in which they came: each finds its fellows of the same word.
    const fellows = alike.filter((_, other) => said[other] === said[index]);
    const rest = split(fellows, others, naming).find(([two]) => two === one)?.[1] ?? [];
    return [[one, [said[index]!, ...rest].filter(Boolean)] as const];
  });
}

const WAYS: readonly Way[] = [
  (alike, { path }) => withoutCommonStart(alike.map(one => wordsOfPath(one.subject.slice(path.length)))),
  (alike, { spanOf }) => alike.map(one => (one.capacity && spanOf(one.capacity.si)) ?? ''),
  (alike, { entries }) => alike.map(one => entries.find(name => one.message.includes(name)) ?? ''),
  alike => briefly(alike.map(one => one.capacity?.label ?? '')),
  (alike, { placeOf }) => alike.map(one => placeOf(one) ?? ''),
];

/** `safety factor in fatigue of the fitted shaft` up to its `of`, where that parts them as well as the whole does. */
function briefly(labels: readonly string[]): string[] {
  const brief = labels.map(one => one.replace(/(,| of ).*$/, ''));
  return new Set(brief).size === new Set(labels).size
    ? brief
    : withoutCommonStart(labels.map(one => one.split(' ')));
}

/** `forward coupling to tube`: places without the word that every bearing has, short enough for a picture. */
export function spanWords(name: string): string {
  return name.replace('last bearing of the shaft before', 'shaft before').replace(/(^| to )bearing /g, '$1');
}

function wordsOfPath(tail: string): string[] {
  return tail.split(/[.-]/).filter(Boolean);
}

/** `shaft tube` and `shaft aft` part as `tube` and `aft`; one that says nothing more keeps its last word. */
function withoutCommonStart(phrases: readonly (readonly string[])[]): string[] {
  const shortest = Math.min(...phrases.map(one => one.length));
  let common = 0;
  while (common < shortest - 1 && phrases.every(one => one[common] === phrases[0]![common])) common++;
  return phrases.map(one => one.slice(common).join(' '));
}
