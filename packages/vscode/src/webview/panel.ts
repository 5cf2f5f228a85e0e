/// <reference lib="dom" />
/// <reference lib="dom.iterable" />
import type { FromPanel, PanelState, PanelWords, ToPanel } from '../sheet/messages.js';
import { showControls } from './controls.js';
import { markCursor } from './cursor.js';
import { canCopyPictures, paintPicture } from './paint.js';

declare function acquireVsCodeApi(): {
  postMessage(message: FromPanel): void;
  getState(): PanelState | undefined;
  setState(state: PanelState): void;
};

/* The page of the panel: shows what the server drew, tells the extension what a person does, and keeps the state. */
const host = acquireVsCodeApi();
const words = JSON.parse(document.body.dataset.words!) as PanelWords;
const controls = document.getElementById('controls')!;
const sheet = document.getElementById('sheet')!;
const studies = document.getElementById('studies')!;
let state: PanelState | undefined = host.getState();

const keep = (changes: Partial<PanelState>) => {
  if (!state) return;
  state = { ...state, ...changes };
  host.setState(state);
};

window.addEventListener('message', ({ data }: MessageEvent<ToPanel>) => {
  switch (data.type) {
    case 'sheet': {
      const first = sheet.hasAttribute('aria-busy');
      const { scroll, open } = state ?? {};
      state = { ...data.state, ...(scroll === undefined ? {} : { scroll }), ...(open ? { open } : {}) };
      host.setState(state);
      showControls(controls, words, data.answer, data.state, choose, () =>
        host.postMessage({ type: 'keep' }),
      );
      replaceSheet(data.answer.html);
      if (first && scroll) window.scrollTo(0, scroll);
      return;
    }
    case 'studies':
      showStudies(data.html, data.words);
      return;
    case 'nothing':
      studies.replaceChildren();
      controls.replaceChildren();
      sheet.removeAttribute('aria-busy');
      sheet.replaceChildren(paragraph(data.words));
      return;
    case 'cursor':
      markCursor(sheet, data.spot);
      return;
    case 'paint':
      void paintPicture(data).then(painted => host.postMessage({ type: 'painted', id: data.id, ...painted }));
  }
});

document.addEventListener('click', event => follow(event.target));
document.addEventListener('keydown', event => {
  const target = event.target as Element;
  const isOwnButton = target.getAttribute('role') === 'button';
  if (isOwnButton && (event.key === 'Enter' || event.key === ' ')) {
    event.preventDefault();
    follow(target);
  }
});
let resting: ReturnType<typeof setTimeout> | undefined;
window.addEventListener('scroll', () => {
  clearTimeout(resting);
  resting = setTimeout(() => keep({ scroll: window.scrollY }), 150);
});
host.postMessage({ type: 'ready', copiesPictures: canCopyPictures(), ...(state ? { state } : {}) });

function choose(changes: Partial<PanelState>): void {
  if (!state) return;
  keep({ ...changes, choice: { ...state.choice, ...changes.choice } });
  host.postMessage({ type: 'choose', state });
}

/** A click leads to the text, or to the page of a rule. */
function follow(target: EventTarget | null): void {
  const found = target instanceof Element ? target.closest('[data-place], [data-rule], [data-act]') : null;
  const { rule, place, act } = (found as HTMLElement | SVGElement | null)?.dataset ?? {};
  if (rule) host.postMessage({ type: 'rule', id: rule });
  else if (place) host.postMessage({ type: 'go', place });
  else if (act) host.postMessage({ type: 'act', act });
}

/** Puts the new sheet in the place of the old one; focus and opened folds stay where they were. */
function replaceSheet(html: string): void {
  const focus = trace(document.activeElement);
  const page = new DOMParser().parseFromString(html, 'text/html');
  sheet.replaceChildren(...page.body.childNodes);
  sheet.removeAttribute('aria-busy');
  const open = new Set(state?.open);
  for (const [index, fold] of [...sheet.querySelectorAll('details')].entries()) {
    const name = `${index} ${fold.dataset.keep ?? ''}`;
    fold.open = open.has(name);
    fold.addEventListener('toggle', () => {
      if (fold.open) open.add(name);
      else open.delete(name);
      keep({ open: [...open] });
    });
  }
  if (focus) sheet.querySelectorAll<HTMLElement>(focus.selector)[focus.index]?.focus({ preventScroll: true });
}

/** The studies below the sheet: those of the text before stay until the new ones are there. */
function showStudies(html: string | undefined, words: string): void {
  studies.toggleAttribute('data-busy', html === undefined);
  if (html === undefined) {
    if (!studies.firstChild) studies.replaceChildren(paragraph(words));
    return;
  }
  const page = new DOMParser().parseFromString(html, 'text/html');
  studies.replaceChildren(...page.body.childNodes);
}

/** What has the focus, so that it can be found again in the next sheet. */
function trace(active: Element | null): { selector: string; index: number } | undefined {
  if (!active || !sheet.contains(active)) return undefined;
  const part = active.getAttribute('data-part');
  const selector = part ? `[data-part="${CSS.escape(part)}"]` : active.tagName.toLowerCase();
  return { selector, index: [...sheet.querySelectorAll(selector)].indexOf(active) };
}

function paragraph(text: string): HTMLElement {
  const made = document.createElement('p');
  made.className = 'waiting';
  made.textContent = text;
  return made;
}
