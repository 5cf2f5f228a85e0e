import { inkCss, TEXT_SIZE } from './drawing/ink.js';
import { DARK, LIGHT, PRINT, paletteCss } from './palette.js';

/**
 * The look of the sheet: ink on paper, one accent for structure, muted colours for verdicts, which always carry a sign
 * and a word as well. A host sets the colours of its theme on `.sheet`.
 */
const COLOURS = `
:root {
  color-scheme: light dark;
  ${paletteCss(LIGHT)}
}
@media (prefers-color-scheme: dark) {
  :root {
    ${paletteCss(DARK)}
  }
}
`;

const TEXT = `
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; }
body { margin: 0; background: var(--paper); }
.sheet {
  max-width: 68rem; margin: 0 auto; padding: 2rem 1.5rem 4rem; color: var(--ink);
  font: 400 0.9375rem/1.5 "Source Sans 3", "Noto Sans", "Segoe UI", "Helvetica Neue", Arial, sans-serif;
  font-variant-numeric: tabular-nums lining-nums; overflow-wrap: break-word;
}
.sheet h1, .sheet h2, .sheet h3, .sheet h4, .sheet h5 { line-height: 1.25; font-weight: 600; margin: 0; text-wrap: balance; }
.sheet h1 { font-size: 1.75rem; letter-spacing: -0.01em; }
.sheet h2 { font-size: 1.3rem; margin: 2.75rem 0 0.75rem; padding-bottom: 0.3rem; border-bottom: 2px solid var(--accent); }
.sheet h3 { font-size: 1.08rem; margin: 2rem 0 0.6rem; color: var(--accent); }
.sheet h4 { font-size: 0.98rem; margin: 1.5rem 0 0.5rem; }
.sheet p { margin: 0.5rem 0; max-width: 46rem; }
.sheet header { border: 1px solid var(--rule); border-top: 6px solid var(--accent); padding: 1.1rem 1.4rem 0.9rem; }
.sheet .kind { margin: 0 0 0.2rem; color: var(--accent); font-size: 0.8rem; letter-spacing: 0.12em; text-transform: uppercase; }
.sheet .stamp { color: var(--soft); }
.sheet .caution { font-weight: 600; }
.sheet section.standing { border-left: 8px solid var(--rule); padding: 0 0 0 1rem; margin: 0.9rem 0; }
.sheet section.standing.is-fails { border-color: var(--fails); } .sheet section.standing.is-cannot-tell { border-color: var(--unsure); } .sheet section.standing.is-holds { border-color: var(--holds); }
.sheet section.standing > h2 { margin: 0 0 0.4rem; padding: 0; border: 0; }
.sheet section.standing > ul { margin: 0.3rem 0; padding-left: 1.2rem; max-width: 54rem; } .sheet section.standing > p { max-width: 54rem; margin: 0.3rem 0; }
.sheet section.standing > p > .verdict { font-size: 1.05rem; }
.sheet nav ul { list-style: none; display: flex; flex-wrap: wrap; gap: 0.2rem 1.1rem; margin: 0.8rem 0 0; padding: 0.6rem 0 0; border-top: 1px solid var(--faint); }
.sheet a { color: var(--accent); text-underline-offset: 0.15em; text-decoration-thickness: 1px; }
.sheet a.reference { font-size: 0.8em; white-space: nowrap; text-decoration: none; border-bottom: 1px dotted; }
.sheet footer { margin-top: 3rem; padding-top: 0.7rem; border-top: 1px solid var(--rule); color: var(--soft); }
.sheet code { font: 0.92em/1.4 "DejaVu Sans Mono", ui-monospace, "Cascadia Mono", Consolas, monospace; }
.sheet .quiet, .sheet .place { color: var(--soft); }
.sheet .place { font-size: 0.86em; white-space: nowrap; }
.sheet .nowrap { white-space: nowrap; }
.sheet button.place { font-family: inherit; line-height: inherit; background: none; border: 0; padding: 0; text-align: left; cursor: pointer; text-decoration: underline dotted; }
.sheet .warning { color: var(--unsure); }
.sheet .anchor { font-weight: 600; color: var(--accent); scroll-margin-top: 1rem; }
.sheet .verdict { font-weight: 600; white-space: nowrap; }
.sheet .verdict .sign { display: inline-block; min-width: 1.1em; text-align: center; }
.sheet .fails { color: var(--fails); } .sheet .holds { color: var(--holds); } .sheet .cannot-tell { color: var(--unsure); }
.sheet .accepted { color: var(--accepted); } .sheet .does-not-apply { color: var(--soft); font-weight: 400; }
.sheet section.loud { border: 2px solid var(--unsure); border-left-width: 8px; background: var(--loud); padding: 0.2rem 1.2rem 0.9rem; margin-top: 1.5rem; }
.sheet section.loud > h2 { margin-top: 0.8rem; border-color: var(--unsure); }
.sheet section.loud .scroll { background: var(--paper); }
.sheet .loud > p.loud { font-size: 1.05rem; }
.sheet li { margin: 0.25rem 0; }
.sheet ul.boxes { list-style: none; padding-left: 0.2rem; }
.sheet ul.boxes > li { padding-left: 1.7rem; position: relative; max-width: 50rem; }
.sheet ul.boxes > li::before { content: ""; position: absolute; left: 0; top: 0.28em; width: 0.85em; height: 0.85em; border: 1.5px solid var(--soft); }
.sheet details { border: 1px solid var(--rule); margin: 0.6rem 0; padding: 0 1rem; }
.sheet details[open] { padding-bottom: 0.8rem; }
.sheet summary { cursor: pointer; padding: 0.5rem 0; font-weight: 600; color: var(--accent); }
.sheet details > p { margin: 1rem 0 0.15rem; max-width: none; }
.sheet details > p.quiet { margin: 0; }
.sheet details > ul { margin: 0 0 0 0.2rem; padding-left: 1.4rem; list-style: none; border-left: 2px solid var(--faint); }
.sheet details > ul > li { margin: 0.1rem 0; }
.sheet :focus-visible { outline: 2px solid var(--accent); outline-offset: 2px; }
.sheet dl.terms { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 17rem), 1fr)); gap: 0.15rem 1.6rem; margin: 0.7rem 0; font-size: 0.875rem; }
.sheet dl.terms > div { display: flex; gap: 0.6rem; border-bottom: 1px solid var(--faint); padding: 0.15rem 0; }
.sheet dt { color: var(--soft); flex: 0 0 7.5rem; } .sheet dd { margin: 0; min-width: 0; }
`;

const TABLES = `
.sheet .scroll { overflow-x: auto; margin: 0.75rem 0 1.25rem; }
.sheet table { border-collapse: collapse; width: 100%; font-size: 0.875rem; line-height: 1.4; }
.sheet caption { text-align: left; color: var(--soft); padding: 0 0 0.35rem; caption-side: top; }
.sheet caption > span { display: inline-block; position: sticky; left: 0; max-width: calc(100vw - 3rem); }
.sheet th, .sheet td { text-align: left; vertical-align: top; padding: 0.3rem 0.6rem; border-bottom: 1px solid var(--faint); font-weight: 400; }
.sheet thead th { font-weight: 600; border-bottom: 1.5px solid var(--ink); vertical-align: bottom; }
.sheet tbody { border-bottom: 1px solid var(--rule); }
.sheet tr.group th { background: var(--panel); font-weight: 600; border-top: 1px solid var(--rule); }
.sheet tr.group .quiet, .sheet tr.group .place, .sheet tr.group .warning { font-weight: 400; }
.sheet table.form td, .sheet table.form th[scope=row] { height: 2.8rem; }
.sheet th.number, .sheet td.number { text-align: right; white-space: nowrap; width: 1%; }
.sheet td.wide { min-width: 11rem; }
`;

const DRAWINGS = `
.sheet .row { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(100%, 26rem), 1fr)); gap: 0 2rem; }
.sheet figure { margin: 0.9rem 0 1.4rem; }
.sheet figcaption { color: var(--soft); font-size: 0.86rem; max-width: 46rem; }
.sheet svg { display: block; max-width: 100%; height: auto; margin: 0 0 0.4rem; }
.sheet svg text { font: 400 ${TEXT_SIZE}px "Source Sans 3", "Noto Sans", "Segoe UI", Arial, sans-serif; fill: var(--ink); stroke: none; }
${inkCss()}
`;

const ON_PAPER = `
@page {
  size: A4; margin: 17mm 14mm 18mm;
  @bottom-left { content: "Screening, not certification"; font: 8pt sans-serif; color: #555; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; color: #555; }
}
@media print {
  :root {
    color-scheme: light;
    ${paletteCss(PRINT)}
  }
  * { -webkit-print-color-adjust: exact; print-color-adjust: exact; }
  .sheet { max-width: none; padding: 0; font-size: 9pt; line-height: 1.4; }
  .sheet h1 { font-size: 17pt; } .sheet h2 { font-size: 13pt; margin-top: 16pt; } .sheet h3 { font-size: 11pt; margin-top: 12pt; } .sheet h4 { font-size: 9.5pt; margin-top: 9pt; }
  .sheet table { font-size: 8pt; line-height: 1.3; } .sheet th, .sheet td { padding: 0.8mm 1.6mm; }
  .sheet nav { display: none; } .sheet a { color: inherit; text-decoration: none; }
  .sheet section.new-page { break-before: page; } .sheet section.new-page > h2 { margin-top: 0; }
  .sheet h2, .sheet h3, .sheet h4, .sheet caption, .sheet summary { break-after: avoid; }
  .sheet tr, .sheet figure, .sheet li { break-inside: avoid; } .sheet thead { display: table-header-group; break-after: avoid; }
  .sheet tbody:first-of-type > tr:first-child, .sheet tr.group + tr { break-before: avoid; }
  .sheet details > p { break-after: avoid; }
  .sheet table:not(:has(tbody + tbody, tr:nth-child(15))) { break-inside: avoid; }
  .sheet .scroll { overflow: visible; } .sheet td.wide { min-width: 0; } .sheet caption > span { max-width: none; } .sheet svg { max-width: 150mm; } .sheet figcaption { font-size: 8pt; }
  .sheet details { border: 0; padding: 0; } .sheet summary { list-style: none; padding: 2mm 0 0; }
  .sheet details::details-content { display: block; content-visibility: visible; block-size: auto; }
  .sheet .row { grid-template-columns: 1fr 1fr; gap: 0 5mm; } .sheet .row svg { max-width: 100%; }
  .sheet #workings details { columns: 2; column-gap: 7mm; font-size: 7.5pt; line-height: 1.3; } .sheet summary { column-span: all; }
  .sheet details > p { margin-top: 2.5mm; }
  .sheet footer { display: none; }
}
`;

/** Everything in one style sheet. */
export const SHEET_STYLE = [COLOURS, TEXT, TABLES, DRAWINGS, ON_PAPER].join('');
