import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './items.js';
import type { Surroundings } from './surroundings.js';

/*
 * Whole statements. What nobody has said yet is `unknown` in them, or a stop that is empty: taken and left as it is,
 * a snippet adds questions and no fact.
 */

const block = (label: string, detail: string, body: string): Offer => ({
  label,
  kind: CompletionItemKind.Snippet,
  detail,
  insert: numbered(body),
  snippet: true,
});

/** `?` is a value to fill in, `<Name>` a name of the author's own, `<>` a stop that is empty. */
function numbered(body: string): string {
  let stop = 0;
  return body.replace(/\?|<([^<>]*)>/g, (mark, name: string | undefined) => {
    stop += 1;
    return name === '' ? `\${${stop}}` : `\${${stop}:${mark === '?' ? 'unknown' : name}}`;
  });
}

/** Of these names one, the first of them at first. */
const oneOf = (names: readonly string[]): string => `<${names[0] ?? 'Name'}>`;

export const FILE_SNIPPETS: readonly Offer[] = [
  block(
    'engine … { }',
    'a catalogue entry',
    'engine <Name> "<what it is>" {\n\tsource ?\n\trotation ?\n\tfuel ?\n\trating ? {\n\t\tpower ?\n\t\tmeasured at ?\n\t}\n\tlow idle ?\n\thigh idle ?\n}\n$0',
  ),
  block(
    'gear … { }',
    'a catalogue entry',
    'gear <Name> "<what it is>" {\n\tsource ?\n\tlayout ?\n\tinput rotation ?\n\tinput speed at most ?\n\tratio ? {\n\t\tclutch <A>  output ?  ahead ?\n\t\tclutch <B>  output ?  ahead ?\n\t\trated ?\n\t}\n}\n$0',
  ),
  block(
    'shaft material … { }',
    'a catalogue entry',
    'shaft material <Name> {\n\tsource ?\n\ttorsional yield ?\n}\n$0',
  ),
  block(
    'vessel … { }',
    'a vessel with one arrangement',
    'vessel <Name> "<what the vessel is>" {\n\tduty ? { hours ?  passengers ? }\n\n\tarrangement <proposed> {\n\t\t$0\n\t}\n}\n',
  ),
];

/** An arrangement that revises another needs one to revise. */
export function vesselSnippets({ arrangements, paths }: Surroundings): Offer[] {
  return [
    block('arrangement … { }', 'the lines as they are', 'arrangement <existing> {\n\t$0\n}'),
    ...(arrangements.length > 0
      ? [
          block(
            'arrangement … revises … { }',
            'the repower: an action for each part',
            `arrangement <proposed> revises ${oneOf(arrangements)} {\n\t$0\n}`,
          ),
          block(
            'accept … on … because …',
            'a waiver by an authorised person',
            `accept <rule> on ${oneOf(paths)} because "<reason>" by "<role>" dated <> until <>`,
          ),
        ]
      : []),
    block('criteria { }', 'which criterion judges what', 'criteria {\n\t$0\n}'),
    block('revision … dated …', 'what changed', 'revision <A> dated <> "<what changed>"'),
    block('project { }', 'number, client, open questions', 'project {\n\t$0\n}'),
  ];
}

/** A line that mirrors another needs one to mirror, and a side that is free. */
export function arrangementSnippets({ lines }: Surroundings): Offer[] {
  const free = ['Port', 'Starboard', 'Centre'].filter(side => !lines.includes(side));
  if (free.length === 0) return [];
  return [
    block(
      'shaftline … { }',
      'engine to propeller',
      `shaftline ${oneOf(free)} {\n\tengine ? at ? { flywheel ? }\n\tgear ? ratio ? ahead clutch ?\n\tshaft { material ?  diameter ? }\n\tpropeller { hand ?  blades ?  diameter ?  pitch ? }\n}$0`,
    ),
    ...(lines.length > 0
      ? [
          block(
            'shaftline … mirrors … { }',
            'the other side; handed facts must be written',
            `shaftline ${oneOf(free)} mirrors ${oneOf(lines)} { ahead clutch ?  propeller hand ? }$0`,
          ),
        ]
      : []),
  ];
}
