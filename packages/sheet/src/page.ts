import type { Arrangement } from '@tailshaft/drivetrain';
import { type Block, section } from './document/blocks.js';
import { element, joined, Markup } from './document/markup.js';
import { quiet, separated, type Text } from './document/text.js';
import { blocksHtml, textHtml } from './document/to-html.js';
import { blocksMarkdown, escapeMarkdown } from './document/to-markdown.js';
import { linesPicture } from './drawing/lines-picture.js';
import type { SheetInput } from './input.js';
import { foldMirrored } from './papers/mirrored.js';
import { assumptionsSection } from './sections/assumptions.js';
import { CAUTION_LINE, cautionsSection } from './sections/cautions.js';
import { chartsSection } from './sections/charts.js';
import { checklistSection } from './sections/checklist.js';
import { criticalsSection } from './sections/criticals.js';
import { particularsSection } from './sections/heading.js';
import { marginSection } from './sections/margin-bars.js';
import { notCheckedSection } from './sections/not-checked.js';
import { operatingSection } from './sections/operating-points.js';
import { partsSection } from './sections/parts.js';
import { propulsionSection } from './sections/propulsion-chart.js';
import { requirementsSection } from './sections/requirements.js';
import { revisionsSection } from './sections/revisions.js';
import { rotationSection } from './sections/rotation-table.js';
import { profileSection } from './sections/running-profile.js';
import { standingSection } from './sections/standing.js';
import { studiesSection } from './sections/study.js';
import { summarySection } from './sections/summary.js';
import { trialsSection } from './sections/trials.js';
import { verdictSection } from './sections/verdict-table.js';
import { workingsSection } from './sections/workings.js';
import { Sheet } from './sheet.js';
import { SHEET_STYLE } from './style.js';

export interface PageOptions {
  /** Workings stand open from the start, for printers and readers that cannot open them. */
  readonly open?: boolean;
}

/** The sheet of a vessel as one HTML page that needs nothing else: no script, no picture, no font. */
export function vesselSheetHtml(input: SheetInput, options: PageOptions = {}): string {
  const page = element(
    'html',
    { lang: 'en' },
    element(
      'head',
      {},
      element('meta', { charset: 'utf-8' }),
      element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
      element('meta', { name: 'color-scheme', content: 'light dark' }),
      element('title', {}, `${titleOf(input)}: drivetrain sheet`),
      element('style', {}, new Markup(SHEET_STYLE)),
    ),
    element('body', {}, new Markup(sheetBodyHtml(input, options))),
  );
  return `<!doctype html>\n${page.source}\n`;
}

/** What stands in the body of the page, for a host that has its own head. */
function sheetBodyHtml(input: SheetInput, options: PageOptions = {}): string {
  const sheet = new Sheet(input);
  const sections = sectionsOf(sheet);
  const placeKey = input.placeKey;
  return element(
    'main',
    { class: 'sheet' },
    element(
      'header',
      {},
      element('p', { class: 'kind' }, 'Drivetrain sheet'),
      element('h1', {}, titleOf(input)),
      element('p', { class: 'stamp' }, textHtml(stamp(input), { placeKey })),
      blocksHtml([standingSection(sheet)], { level: 2, placeKey }),
      input.vessel.doc ? element('p', { class: 'doc' }, input.vessel.doc) : undefined,
      element('p', { class: 'caution' }, CAUTION_LINE),
      element(
        'nav',
        { 'aria-label': 'Sections' },
        element(
          'ul',
          {},
          sections.map(one =>
            one.block === 'section'
              ? element('li', {}, element('a', { href: `#${one.id}` }, one.title))
              : undefined,
          ),
        ),
      ),
    ),
    blocksHtml(sections, { level: 2, placeKey, open: options.open ?? false }),
    element('footer', {}, joined(CAUTION_LINE)),
  ).source;
}

/** The same sheet as Markdown, for review pages and mail; drawings give way to their tables. */
export function vesselSheetMarkdown(input: SheetInput): string {
  const sheet = new Sheet(input);
  const head = [
    `# ${escapeMarkdown(titleOf(input))}`,
    blocksMarkdown([{ block: 'paragraph', text: stamp(input) }], 1),
    blocksMarkdown([standingSection(sheet)], 2),
    input.vessel.doc && escapeMarkdown(input.vessel.doc),
    `> ${escapeMarkdown(CAUTION_LINE)}`,
  ];
  return `${[...head.filter(Boolean), blocksMarkdown(sectionsOf(sheet), 2)].join('\n\n')}\n`;
}

/** All sections. The workings come last, when every number has been referred to. */
export function sectionsOf(sheet: Sheet): Block[] {
  const arrangements = sheet.arrangements.map(one => arrangementSection(sheet, one));
  const vessel = sheet.ofVessel();
  const found: (Block | undefined)[] = [
    notCheckedSection(sheet),
    summarySection(sheet),
    requirementsSection(sheet),
    particularsSection(sheet),
    ...arrangements,
    studiesSection(sheet.input.studies ?? []),
    trialsSection(sheet),
    vessel.length > 0
      ? section('vessel-checks', 'Vessel and catalogue', [
          verdictSection(sheet, 'checks-vessel', sheet.vessel.name, vessel),
        ])
      : undefined,
    assumptionsSection(sheet),
    checklistSection(),
    cautionsSection(),
    revisionsSection(sheet),
    workingsSection(sheet),
  ];
  return found.filter(one => one !== undefined);
}

function arrangementSection(sheet: Sheet, arrangement: Arrangement): Block {
  const own = sheet.ofArrangement(arrangement);
  const lines = arrangement.lines.map(line => ({
    name: line.name,
    section: section(`line-${line.path}`, `Line ${line.name}`, [
      verdictSection(sheet, `checks-${line.path}`, line.path, sheet.ofLine(line)),
      operatingSection(sheet, line),
      partsSection(sheet, line),
    ]),
  }));
  return section(
    `arrangement-${arrangement.path}`,
    `Arrangement ${arrangement.name}${arrangement.title ? `: ${arrangement.title}` : ''}`,
    [
      linesPicture(sheet, arrangement),
      rotationSection(sheet, arrangement),
      own.length > 0
        ? verdictSection(sheet, `checks-${arrangement.path}`, `${arrangement.name} as a whole`, own)
        : undefined,
      marginSection(sheet, arrangement),
      chartsSection(sheet, arrangement),
      propulsionSection(sheet, arrangement),
      profileSection(sheet, arrangement),
      criticalsSection(sheet, arrangement),
      ...(sheet.forPaper ? foldMirrored(lines) : lines.map(one => one.section)),
    ],
    { newPage: true },
  );
}

function titleOf({ vessel }: SheetInput): string {
  return vessel.title ?? vessel.name;
}

function stamp(input: SheetInput): Text {
  const revision = input.vessel.revisions.at(-1);
  const where = input.placeText?.(input.vessel.nameOrigin);
  const { practice } = input.vessel;
  return separated(
    ' · ',
    practice && (practice.facts.titleBlock?.value ?? practice.title ?? practice.name),
    revision
      ? `Revision ${revision.name}${revision.dated ? ` of ${revision.dated}` : ''}`
      : 'No revision recorded',
    `judged on ${input.today}`,
    where && quiet(where),
  );
}
