import { withArticle } from '@tailshaft/mechanics';
import { ENTRY_VOCABULARY, isEntryKind, PLACE_VOCABULARY, SIDES, UNKNOWN } from '@tailshaft/vocabulary';
import { TailshaftTerminals } from '../generated/ast.js';
import { WordIndex } from '../reading/word-index.js';
import { KEYWORDS } from '../services/keywords.js';
import type { Names } from './names.js';
import { entryKey, type Occurrence } from './occurrence.js';

const WHOLE_WORD = new RegExp(`^(?:${TailshaftTerminals.WORD.source})$`);

/** Why something cannot be renamed at all, in words for its author; nothing when it can. */
export function whyNotRename(names: Names, one: Occurrence): string | undefined {
  if (one.kind === 'ratio')
    return 'A ratio is named by its value: change the value in the catalogue and in the lines that use it.';
  if (one.kind === 'rating')
    return 'A duty class is a word that engines, gears and vessels share: renaming it here would only cut this one off.';
  if (names.declarations(one).length === 0)
    return `No ${one.kind} is declared as ${one.name}, so there is nothing to rename.`;
  if (one.kind === 'shaft line' && sideByName(names, one))
    return `The name ${one.name} also says on which side the line is. Write "side ${one.name.toLowerCase()}" in each line of that name first; then it can have any name.`;
  return undefined;
}

/** Why this cannot be the new name; nothing when it can. */
export function whyNotNamed(names: Names, one: Occurrence, name: string): string | undefined {
  if (!WHOLE_WORD.test(name))
    return `"${name}" is not one word: a name begins with a letter, and has letters, digits and single hyphens.`;
  if (KEYWORDS.has(name)) return `"${name}" is a word of the language, so it cannot be a name.`;
  if (name === UNKNOWN) return '"unknown" marks an open question, so it cannot be a name.';
  if (/[./]/.test(name) && ['shaft line', 'arrangement', 'vessel'].includes(one.kind))
    return `Acceptances name lines as arrangement.line, so the name of ${withArticle(one.kind)} has no "." or "/" in it.`;
  if ((one.kind === 'clutch' || one.kind === 'shaft material') && beginsProperty(name))
    return `A property begins with "${name}", so behind "${one.kind === 'clutch' ? 'clutch' : 'material'}" it would not be read as a name.`;
  if (one.kind === 'shaft line' && sidesInclude(name))
    return `A line called ${name} is taken for the ${name.toLowerCase()} one. Write the line's side, and give it another name.`;
  return taken(names, one, name);
}

function taken(names: Names, one: Occurrence, name: string): string | undefined {
  const already = `There is ${withArticle(one.kind)} ${name} already`;
  const own = names.declarations(one);
  const inside = one.key.slice(0, one.key.lastIndexOf(' '));
  for (const document of names.documents.all) {
    const uses = document.textDocument.getText().includes(one.name) ? names.in(document) : [];
    if (!uses.some(other => other.key === one.key)) continue;
    const entry = isEntryKind(one.kind) && names.project.entries(document).find(one.kind, name);
    if (entry && entryKey(one.kind, entry.namePlace) !== one.key)
      return `${already}, in ${fileName(entry.namePlace.uri)}: names must be unique.`;
  }
  for (const declared of own) {
    const document = names.documents.all.find(other => other.uri.toString() === declared.uri);
    const clash =
      document && names.in(document).some(other => other.declares && clashes(other, one, inside, name));
    if (clash) return `${already} here: names must be unique.`;
  }
  return undefined;
}

/** Another thing of the kind, with the name, in the same part or vessel or, for a vessel, file. */
function clashes(other: Occurrence, one: Occurrence, inside: string, name: string): boolean {
  if (other.kind !== one.kind || other.name !== name || other.key === one.key) return false;
  return (
    one.kind === 'vessel' || ENTRY_VOCABULARY[one.kind] !== undefined || other.key.startsWith(`${inside} `)
  );
}

function sidesInclude(name: string): boolean {
  return (SIDES as readonly string[]).includes(name.toLowerCase());
}

function sideByName(names: Names, one: Occurrence): boolean {
  if (!sidesInclude(one.name)) return false;
  return names.documents.all.some(document =>
    names.project
      .check(document)
      .vessels.some(({ reading }) =>
        reading.arrangements.some(arrangement =>
          arrangement.lines.some(
            line =>
              line.name === one.name &&
              one.key.includes(`${reading.namePlace.uri}#${reading.namePlace.start}`) &&
              line.facts.fields.side === undefined,
          ),
        ),
      ),
  );
}

function beginsProperty(name: string): boolean {
  const all = [...Object.values(ENTRY_VOCABULARY), ...Object.values(PLACE_VOCABULARY)];
  const inner = all.flatMap(vocabulary => vocabulary.blocks.map(row => row.block));
  return [...all, ...inner].some(vocabulary => [...WordIndex.of(vocabulary).firstWords].includes(name));
}

function fileName(uri: string): string {
  return decodeURIComponent(uri.split('/').at(-1)!);
}
