import { SHEET_STYLE } from '@tailshaft/sheet';

/** The look of the sheet in the colours of the editor's theme. Colours of verdicts are ours, chosen for contrast. */
const THEME = `
body {
  padding: 0; background: var(--vscode-editor-background); color: var(--vscode-editor-foreground);
  --paper: var(--vscode-editor-background); --ink: var(--vscode-editor-foreground);
  --soft: color-mix(in srgb, var(--ink) 78%, var(--paper)); --rule: color-mix(in srgb, var(--ink) 34%, var(--paper));
  --faint: color-mix(in srgb, var(--ink) 16%, var(--paper)); --panel: color-mix(in srgb, var(--ink) 6%, var(--paper));
  --loud: var(--panel); --mark: color-mix(in srgb, var(--accent) 30%, var(--paper));
}
body.vscode-light { color-scheme: light; --accent: #1b5566; --fails: #9c1f28; --unsure: #7a4c00; --holds: #23653a; --accepted: #4b4390; }
body.vscode-dark { color-scheme: dark; --accent: #83c1d0; --fails: #f29a94; --unsure: #e8b565; --holds: #8cc99b; --accepted: #b9b2f0; }
body.vscode-high-contrast {
  color-scheme: dark; --accent: var(--vscode-textLink-foreground); --fails: var(--ink); --unsure: var(--ink); --holds: var(--ink); --accepted: var(--ink);
  --soft: var(--ink); --rule: var(--vscode-contrastBorder, var(--ink)); --faint: var(--vscode-contrastBorder, var(--ink)); --panel: var(--paper);
}
body.vscode-high-contrast-light { color-scheme: light; }
body.vscode-high-contrast .panel.sheet svg .grid { stroke-dasharray: 1 5; }
body.vscode-high-contrast .panel.sheet svg .blade, body.vscode-high-contrast .panel.sheet svg .band { fill: none; }
`;

const PAGE = `
html { scroll-padding-top: 7rem; }
body.vscode-body { font-size: var(--vscode-font-size, 13px); }
#controls {
  position: sticky; top: 0; z-index: 1; display: flex; flex-wrap: wrap; gap: 0.4rem 0.9rem; align-items: end;
  padding: 0.5rem 1rem 0.6rem; background: var(--paper); border-bottom: 1px solid var(--rule);
  font: var(--vscode-font-size, 13px)/1.4 var(--vscode-font-family, sans-serif);
}
#controls:empty { display: none; }
#controls label[data-control] { display: flex; flex-direction: column; gap: 0.1rem; }
#controls label[hidden] { display: none; }
#controls label > span, #controls legend { color: var(--soft); font-size: 0.85em; padding: 0; }
#controls fieldset { border: 0; margin: 0; padding: 0; }
#controls fieldset label { display: inline-flex; align-items: center; gap: 0.2rem; margin-right: 0.7rem; min-height: 1.7rem; }
#controls select, #controls button {
  min-height: 1.75rem; font: inherit; color: var(--vscode-dropdown-foreground, var(--ink)); border-radius: 2px;
  background: var(--vscode-dropdown-background, var(--paper)); border: 1px solid var(--vscode-dropdown-border, var(--rule)); padding: 0 0.4rem; max-width: 16rem;
}
#controls button {
  color: var(--vscode-button-secondaryForeground, var(--ink)); background: var(--vscode-button-secondaryBackground, var(--panel));
  border: 1px solid var(--vscode-button-border, var(--rule)); cursor: pointer; margin-left: auto; padding: 0 0.8rem;
}
#controls :focus-visible { outline: 2px solid var(--vscode-focusBorder, var(--accent)); outline-offset: 1px; }
.waiting { padding: 2rem 1.5rem; color: var(--soft); }
.panel.sheet { max-width: none; padding: 0.9rem 1rem 3rem; font-size: 1em; font-family: var(--vscode-font-family, sans-serif); }
.panel.sheet h1 { font-size: 1.45em; }
.panel.sheet h2 { font-size: 1.2em; margin-top: 1.6rem; } .panel.sheet h3 { font-size: 1.05em; margin-top: 1.3rem; }
.panel .counts { display: flex; flex-wrap: wrap; gap: 0 1rem; }
.panel .beside { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 26rem), 1fr)); gap: 0 1.6rem; }
.panel .beside > *, .panel .alone > * { min-width: 0; }
.panel.sheet svg { overflow: visible; }
.panel figcaption { font-size: 0.95em; }
.panel.sheet svg text { font-family: var(--vscode-font-family, sans-serif); }
.panel.sheet svg text.reading { fill: var(--ink); font-weight: 600; paint-order: stroke; stroke: var(--paper); stroke-width: 4px; }
.panel.sheet svg .turn, .panel.sheet svg .turn-tip, .panel.sheet svg text.reading { pointer-events: none; }
.panel .followed { cursor: pointer; }
.panel .followed:hover .part, .panel .followed:hover .disc, .panel .followed:hover .shaft { stroke: var(--accent); stroke-width: 2.4; }
.panel .followed:focus-visible { outline: 2px solid var(--vscode-focusBorder, var(--accent)); outline-offset: 2px; }
.panel .followed.at-cursor .part, .panel .followed.at-cursor .disc { fill: var(--mark); stroke: var(--accent); stroke-width: 3; }
.panel .followed.at-cursor .shaft { fill: var(--accent); stroke: var(--accent); stroke-width: 2; }
.panel .checks { list-style: none; margin: 0.4rem 0; padding: 0; }
.panel .check { margin: 0; padding: 0.45rem 0.6rem; border-top: 1px solid var(--faint); }
.panel .check p { margin: 0.15rem 0 0; max-width: 60rem; }
.panel .check button { font: inherit; color: inherit; background: none; border: 0; padding: 0.1rem 0; text-align: left; cursor: pointer; }
.panel .check .go:hover .title { text-decoration: underline; }
.panel .check .title { font-weight: 600; }
.panel .check .rule { color: var(--accent); text-decoration: underline; text-underline-offset: 0.15em; }
.panel .check:has(.at-cursor) { background: var(--mark); }
.panel .sheet .verdict, .panel .verdict { white-space: normal; }
.panel .act { min-width: 2.2em; font: inherit; color: var(--accent); background: none; border: 1px solid var(--rule); border-radius: 2px; cursor: pointer; }
.panel .act:hover { background: var(--mark); }
#studies[data-busy] { cursor: progress; }
.panel details { border-width: 1px 0 0; padding: 0 0.6rem; }
.panel :focus-visible { outline: 2px solid var(--vscode-focusBorder, var(--accent)); outline-offset: 2px; }
@media (max-height: 36rem), (max-width: 26rem) { #controls { position: static; } html { scroll-padding-top: 0; } }
@media (forced-colors: active) { .panel .followed.at-cursor .part { stroke: Highlight; } }
`;

export const panelStyle = (): string => `${SHEET_STYLE}${THEME}${PAGE}`;
