import { CompletionItemKind } from 'vscode-languageserver';
import type { Offer } from './items.js';

const block = (label: string, detail: string, body: string): Offer => ({
  label,
  kind: CompletionItemKind.Snippet,
  detail,
  insert: body,
  snippet: true,
});

/** Whole statements of a file. */
export const FILE_SNIPPETS: readonly Offer[] = [
  block(
    'engine … { }',
    'a catalogue entry',
    'engine ${1:Name} "${2:what it is}" {\n\tsource "${3:data sheet}" dated ${4:2025-01-20}\n\trotation ${5|standard,opposite|} viewed from flywheel\n\tfuel ${6|diesel,petrol,gas|}\n\trating ${7:medium} {\n\t\tpower ${8:300 kW} at ${9:2300 rpm}\n\t\tmeasured at ${10|crankshaft,propeller shaft|}\n\t}\n\tlow idle ${11:650 rpm}\n\thigh idle ${12:2530 rpm}\n}\n$0',
  ),
  block(
    'gear … { }',
    'a catalogue entry',
    'gear ${1:Name} "${2:what it is}" {\n\tsource "${3:data sheet}" dated ${4:2025-02-10}\n\tinput rotation ${5|standard viewed from flywheel,opposite viewed from flywheel,either,either by pump index|}\n\tinput speed at most ${6:3000 rpm}\n\tratio ${7:2.04:1} exact ${8:2.043:1} {\n\t\tclutch A output ${9|same,opposite|} ahead ${10|continuous,never|}\n\t\tclutch B output ${11|opposite,same|} ahead ${12|continuous,never|}\n\t\trated ${13:medium} ${14:0.112 kW/rpm}\n\t}\n}\n$0',
  ),
  block(
    'shaft material … { }',
    'a catalogue entry',
    'shaft material ${1:Name} {\n\tsource "${2:mill certificate}" dated ${3:2024-02-02}\n\ttorsional yield ${4:70000 psi}\n}\n$0',
  ),
  block(
    'vessel … { }',
    'a vessel with one arrangement',
    'vessel ${1:Name} "${2:what she is}" {\n\tduty ${3:medium} { hours ${4:1500} per year  passengers ${5|none,carried|} }\n\tarrangement ${6:proposed} {\n\t\tshaftline ${7|Centre,Port,Starboard|} {\n\t\t\t$0\n\t\t}\n\t}\n}\n',
  ),
];

export const VESSEL_SNIPPETS: readonly Offer[] = [
  block('arrangement … { }', 'the lines as they are', 'arrangement ${1:existing} {\n\t$0\n}'),
  block(
    'arrangement … revises … { }',
    'the repower: what becomes of each part',
    'arrangement ${1:proposed} revises ${2:existing} {\n\tshaftline ${3:Port} {\n\t\treplace engine ${4:Name} at ${5:medium} { flywheel ${6|aft,forward|} }\n\t\treplace gear ${7:Name} ratio ${8:2.04:1} ahead clutch ${9:A}\n\t\tretain shaft\n\t\tretain propeller\n\t}\n}$0',
  ),
  block('criteria { }', 'which criterion judges what', 'criteria {\n\t$0\n}'),
  block(
    'accept … on … because …',
    'a waiver by somebody who may',
    'accept ${1:rule} on ${2:Port} because "${3:reason}" by "${4:role}" dated ${5:2026-03-02} until ${6:2027-03-01}',
  ),
  block(
    'assume … because …',
    'instead of a default',
    'assume ${1:gear efficiency} ${2:97 %} because "${3:reason}"',
  ),
  block('revision … dated …', 'what changed', 'revision ${1:A} dated ${2:2026-03-02} "${3:what changed}"'),
];

export const ARRANGEMENT_SNIPPETS: readonly Offer[] = [
  block(
    'shaftline … { }',
    'engine to propeller',
    'shaftline ${1|Port,Starboard,Centre|} {\n\tengine ${2:Name} at ${3:medium} { flywheel ${4|aft,forward|} }\n\tgear ${5:Name} ratio ${6:2.04:1} ahead clutch ${7:A}\n\tshaft { material ${8:name}  diameter ${9:65 mm} }\n\tpropeller { hand ${10|left,right|}  blades ${11:4}  diameter ${12:26 in}  pitch ${13:24 in} }\n}$0',
  ),
  block(
    'shaftline … mirrors … { }',
    'the other side; what has a hand must be written',
    'shaftline ${1|Starboard,Port|} mirrors ${2|Port,Starboard|} { ahead clutch ${3:B}  propeller hand ${4|right,left|} }$0',
  ),
];
