import type { Facts, Part, Spec } from '../spec-model.js';

export const lines = (spec: Spec) => spec.arrangements[0]!.lines;
/** The part of the first line, or of the line of that name. */
export function part(spec: Spec, kind: string, line?: string): Part | undefined {
  const of = line ? lines(spec).find(one => one.name === line) : lines(spec)[0];
  return of?.parts.find(one => one.kind === kind);
}
export function entry(spec: Spec, kind: string, name?: string): Facts | undefined {
  return spec.catalogue.find(one => one.kind === kind && (!name || one.name === name))?.facts;
}
export const block = (facts: Facts | undefined, words: string): Facts | undefined =>
  facts?.[words] as Facts | undefined;

/** Sets facts; `false` where there is nothing to set them on. */
export function set(facts: Facts | undefined, changes: Facts): false | undefined {
  if (!facts) return false;
  Object.assign(facts, structuredClone(changes));
  return undefined;
}
export const onPart = (kind: string, changes: Facts) => (spec: Spec) => set(part(spec, kind)?.facts, changes);
export const onEntry = (kind: string, changes: Facts, name?: string) => (spec: Spec) =>
  set(entry(spec, kind, name), changes);
export const onRatio = (changes: Facts) => (spec: Spec) =>
  set(block(entry(spec, 'gear'), 'ratio 3.02:1'), changes);
export const onRating = (changes: Facts) => (spec: Spec) =>
  set(block(entry(spec, 'engine'), 'rating medium'), changes);
export const onBearing = (name: string, changes: Facts) => (spec: Spec) =>
  set(block(part(spec, 'shaft')?.facts, `bearing ${name}`), changes);
export const flip = (word: string) => (word === 'right' ? 'left' : 'right');
export const says = (text: string) => (spec: Spec) => {
  spec.says.push(text);
};
export const trial = (facts: Facts) => (spec: Spec) => {
  const names = lines(spec).map(one => one.name);
  const rows = Object.entries(facts)
    .filter(([, value]) => value !== null)
    .flatMap(([words, value]) => {
      const many = words.includes('LINE') ? names.map(name => words.replace('LINE', name)) : [words];
      return many.map(one =>
        typeof value === 'string'
          ? `${one} ${value}`
          : `${one} { ${Object.entries(value!)
              .map(([w, v]) => `${w} ${v as string}`)
              .join('  ')} }`,
      );
    });
  spec.says.push(`trial "sea trial" of proposed dated 2026-02-20 {\n  ${rows.join('\n  ')}\n}`);
};
export const SOUND_TRIAL: Facts = {
  displacement: '17 t',
  bottom: 'clean',
  tachometers: 'checked',
  'water depth': '30 m',
  weather: '"calm"',
  'fuel and air': 'checked',
  'direction at the dock': 'proven',
  'astern and stop': 'recorded',
  'dock LINE': {
    station: '"wheelhouse"',
    'with lever ahead': 'pulls ahead',
    'with lever astern': 'pulls astern',
    neutral: 'no drive',
  },
  'drill loss of control': { result: 'as required' },
  'drill full astern': { result: 'as required' },
  'drill stop from full speed': { result: 'as required' },
};

export const HAND = [
  'rotation/propeller-hand',
  'rotation/engine-changed',
  'rotation/engines-exchanged',
  'rotation/gears-exchanged',
  'rotation/ratio-flips-output',
];

export const WITH_ENGINE = ['single', 'twin', 'vDrive', 'hybrid', 'tug', 'triple'];
/** What is left out cannot be said by a modification. */
export const UNMODIFIED = ['new', 'repower', 'kept', 'stepped', 'overridden'];

export const TWINS = ['twin', 'tug', 'triple'];
export const GEARED = ['single', 'twin', 'vDrive', 'tug', 'triple'];
/** What a catalogue entry leaves out cannot be said over it in a line. */
export const OF_ENTRY = ['new', 'repower', 'kept', 'stepped'];
