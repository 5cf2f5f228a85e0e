import { type Arrangement, countsOf, type Outcome, type Verdict } from '@tailshaft/drivetrain';
import { capital } from '@tailshaft/mechanics';
import { type Block, type Figure, section } from '../document/blocks.js';
import { element, joined, Markup } from '../document/markup.js';
import { VERDICT_SIGN } from '../document/text.js';
import { blocksHtml } from '../document/to-html.js';
import { linesFromAbove } from '../drawing/lines-from-above.js';
import { linesFromAft } from '../drawing/lines-from-aft.js';
import { shownLines } from '../drawing/view.js';
import type { SheetInput } from '../input.js';
import { CAUTION_LINE } from '../sections/cautions.js';
import { chartsSection } from '../sections/charts.js';
import { criticalsSection } from '../sections/criticals.js';
import { marginSection } from '../sections/margin-bars.js';
import { propulsionSection } from '../sections/propulsion-chart.js';
import { profileSection } from '../sections/running-profile.js';
import { Sheet } from '../sheet.js';
import { changesSection } from './changes.js';
import { openChecksHtml, quietChecksHtml } from './checks.js';
import { choicesOf, find, type PanelChoice, type PanelChoices, viewOf } from './choice.js';
import { notLookedAtHtml } from './not-looked-at.js';

/** What a panel beside the text shows, and what its controls offer. */
export interface Panel {
  readonly title: string;
  readonly html: string;
  readonly choices: PanelChoices;
}

/** The sheet of a vessel for looking at while writing: pictures, margins, charts, checks; workings stay in the print. */
export function sheetPanel(input: SheetInput, choice: PanelChoice): Panel {
  const choices = choicesOf(input, choice);
  const sheet = new Sheet(input);
  const { vessel } = input;
  const shown = [find(vessel, choices.chosen.beside), find(vessel, choices.chosen.arrangement)].filter(
    one => one !== undefined,
  );
  const [before, after] = shown;
  const options = { level: 3, placeKey: input.placeKey };
  const html = element(
    'main',
    { class: 'sheet panel' },
    element('h1', {}, vessel.title ?? vessel.name),
    counts(input.verdicts, shown, sheet),
    element(
      'div',
      { class: shown.length > 1 ? 'beside' : 'alone' },
      shown.map(one => arrangementHtml(sheet, one, choices)),
    ),
    before && after
      ? blocksHtml([changesSection(sheet, before, after)], { ...options, level: 2 })
      : undefined,
    vesselChecks(sheet),
    element('footer', {}, CAUTION_LINE),
  ).source;
  return { title: vessel.title ?? vessel.name, html, choices };
}

/** How the checks of what is shown stand, in one line: counted as everywhere else. */
function counts(verdicts: readonly Verdict[], shown: readonly Arrangement[], sheet: Sheet): Markup {
  const here = new Set(shown.flatMap(one => ofArrangement(sheet, one)));
  for (const one of sheet.ofVesselAlone()) here.add(one);
  const catalogue = countsOf(sheet.input.entryVerdicts);
  const { held, failed, unknown, accepted, asFound } = countsOf(verdicts.filter(one => here.has(one)));
  const told: readonly (readonly [Outcome, number, string])[] = [
    ['fails', failed, 'failing'],
    ['cannot tell', unknown, 'cannot tell'],
    ['accepted', accepted, 'accepted'],
    ['fails', asFound, 'failing as found'],
    ['holds', held, 'holding'],
    ['fails', catalogue.failed, 'failing in the catalogue'],
    ['cannot tell', catalogue.unknown, 'cannot tell in the catalogue'],
  ];
  return element(
    'p',
    { class: 'counts', role: 'status' },
    told
      .filter(([outcome, number]) => number > 0 || outcome === 'holds')
      .map(([outcome, number, words]) =>
        element(
          'span',
          { class: `verdict ${outcome.replaceAll(' ', '-')}` },
          element('span', { class: 'sign', 'aria-hidden': 'true' }, VERDICT_SIGN[outcome]),
          ` ${number} ${words} `,
        ),
      ),
  );
}

function arrangementHtml(sheet: Sheet, arrangement: Arrangement, choices: PanelChoices): Markup {
  const view = viewOf(arrangement, choices);
  const lines = shownLines(arrangement.lines, view);
  const part: Arrangement = { ...arrangement, lines };
  const options = { level: 3, placeKey: sheet.input.placeKey };
  const title = capital(arrangement.title ? `${arrangement.name}: ${arrangement.title}` : arrangement.name);
  const wanted = ofArrangement(sheet, arrangement).filter(
    one =>
      lines.length === arrangement.lines.length ||
      lines.some(line => one.subject === line.path || one.subject.startsWith(`${line.path}.`)),
  );
  const lever = view.direction === 'ahead' ? 'lever ahead' : 'lever astern';
  const pictures: (Block | undefined)[] = [
    lines.length > 0
      ? section(`picture-${arrangement.path}`, `Lines, ${lever}`, [
          {
            block: 'figure',
            svg: lively(linesFromAft(sheet, arrangement, view)),
            caption: 'Seen from aft, looking forward. Propellers to one scale; hull not.',
          },
          {
            block: 'figure',
            svg: lively(linesFromAbove(sheet, arrangement, view)),
            caption: `Seen from above. An arrow shows how the top of a part moves: down the page is to starboard.${view.point ? ` Speeds and torque at ${view.point}.` : ''}`,
          },
        ])
      : undefined,
    marginSection(sheet, part),
    chartsSection(sheet, part),
    propulsionSection(sheet, part),
    profileSection(sheet, part),
    criticalsSection(sheet, part),
  ];
  return element(
    'section',
    { class: 'arrangement', 'aria-labelledby': `panel-${arrangement.path}` },
    element('h2', { id: `panel-${arrangement.path}` }, title),
    openChecksHtml(sheet, wanted),
    notLookedAtHtml(sheet, [arrangement.path, ...lines.map(one => one.path)]),
    blocksHtml(
      pictures.filter(one => one !== undefined).map(one => of(arrangement, choices, one)),
      options,
    ),
    element('h3', {}, 'Checks that hold'),
    quietChecksHtml(sheet, wanted),
  );
}

/** Side by side, each heading and each drawing says which arrangement it belongs to. */
function of(arrangement: Arrangement, { chosen }: PanelChoices, block: Block): Block {
  if (block.block !== 'section' || !chosen.beside) return block;
  return {
    ...block,
    title: `${block.title}, ${arrangement.name}`,
    blocks: block.blocks.map(one => named(arrangement, one)),
  };
}

function named(arrangement: Arrangement, block: Block): Block {
  if (block.block === 'row') return { ...block, figures: block.figures.map(one => titled(arrangement, one)) };
  return block.block === 'figure' ? titled(arrangement, block) : block;
}

function titled(arrangement: Arrangement, figure: Figure): Figure {
  const own = joined(`${arrangement.name}: `).source;
  const svg = figure.svg.source.replace(/(<title [^>]*>)([^<]*)/, (whole, tag: string, words: string) =>
    words.startsWith(own) ? whole : `${tag}${own}${words}`,
  );
  return { ...figure, svg: new Markup(svg) };
}

function vesselChecks(sheet: Sheet): Markup {
  const verdicts = sheet.ofVessel();
  if (verdicts.length === 0) return joined();
  return element(
    'section',
    { class: 'vessel' },
    element('h2', {}, 'Vessel and catalogue'),
    openChecksHtml(sheet, verdicts),
    quietChecksHtml(sheet, verdicts),
  );
}

function ofArrangement(sheet: Sheet, arrangement: Arrangement): Verdict[] {
  return [...sheet.ofArrangement(arrangement), ...arrangement.lines.flatMap(line => sheet.ofLine(line))];
}

/** A picture with parts that take the focus is a group: a reader of the page must be let into it. */
function lively(svg: Markup): Markup {
  return new Markup(svg.source.replace('role="img"', 'role="group"'));
}
