/// <reference lib="dom" />
import type { SheetAnswer } from '../requests.js';
import type { PanelState, PanelWords } from '../sheet/messages.js';

type Choose = (changes: Partial<PanelState>) => void;

/** The switches above the sheet. They are made once and then only filled, so that the focus stays where it is. */
export function showControls(
  into: HTMLElement,
  words: PanelWords,
  answer: SheetAnswer,
  state: PanelState,
  choose: Choose,
  keep: () => void,
): void {
  if (into.childElementCount === 0) build(into, words, choose, keep);
  const { arrangements, lines, points, chosen } = answer.choices;
  fill(into, 'vessel', answer.vessels.map(same), answer.vessel, answer.vessels.length > 1);
  fill(into, 'arrangement', arrangements.map(same), chosen.arrangement, arrangements.length > 1);
  const others = arrangements.filter(one => one !== chosen.arrangement).map(same);
  fill(into, 'beside', [['', words.nothingBeside], ...others], chosen.beside, others.length > 0);
  fill(into, 'line', [['', words.allLines], ...lines.map(same)], chosen.line, lines.length > 1);
  fill(into, 'point', points.map(same), chosen.point, points.length > 0);
  for (const input of into.querySelectorAll<HTMLInputElement>('input[name=direction]'))
    input.checked = input.value === (state.choice.direction ?? chosen.direction);
}

const same = (name: string): readonly [string, string] => [name, name];

function build(into: HTMLElement, words: PanelWords, choose: Choose, keep: () => void): void {
  into.setAttribute('role', 'region');
  into.setAttribute('aria-label', words.controls);
  const pick = (name: 'arrangement' | 'beside' | 'line' | 'point', title: string) =>
    into.append(select(name, title, value => choose({ choice: { [name]: value } })));
  into.append(select('vessel', words.vessel, vessel => choose({ vessel, choice: {} })));
  pick('arrangement', words.arrangement);
  pick('beside', words.beside);
  pick('line', words.line);
  pick('point', words.point);
  const lever = document.createElement('fieldset');
  const legend = document.createElement('legend');
  legend.textContent = words.lever;
  lever.append(legend);
  for (const direction of ['ahead', 'astern'] as const) {
    const input = document.createElement('input');
    input.type = 'radio';
    input.name = 'direction';
    input.value = direction;
    input.addEventListener('change', () => choose({ choice: { direction } }));
    const label = document.createElement('label');
    label.append(input, words[direction]);
    lever.append(label);
  }
  const button = document.createElement('button');
  button.type = 'button';
  button.className = 'keep';
  button.textContent = words.keep;
  button.addEventListener('click', keep);
  into.append(lever, button);
}

function select(name: string, title: string, chosen: (value: string) => void): HTMLElement {
  const label = document.createElement('label');
  label.dataset.control = name;
  const text = document.createElement('span');
  text.textContent = title;
  const made = document.createElement('select');
  made.addEventListener('change', () => chosen(made.value));
  label.append(text, made);
  return label;
}

function fill(
  into: HTMLElement,
  name: string,
  options: readonly (readonly [string, string])[],
  value: string,
  useful: boolean,
): void {
  const label = into.querySelector<HTMLElement>(`[data-control=${name}]`)!;
  const made = label.querySelector('select')!;
  label.hidden = !useful;
  const key = JSON.stringify(options);
  if (made.dataset.options !== key) {
    made.dataset.options = key;
    made.replaceChildren(...options.map(([each, text]) => new Option(text, each)));
  }
  made.value = value;
}
