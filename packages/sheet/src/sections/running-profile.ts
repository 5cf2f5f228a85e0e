import {
  type Arrangement,
  fuelWords,
  type ProfileRun,
  type RunningProfile,
  ratingOf,
  runningProfile,
} from '@tailshaft/drivetrain';
import {
  citeSource,
  cycleLoad,
  FUEL_TOLERANCE_SOURCE,
  formatValue,
  MARINE_CYCLES,
  MARINE_CYCLES_SOURCE,
  percent,
  signedPercent,
  type Value,
} from '@tailshaft/mechanics';
import { type Block, paragraph, section, table } from '../document/blocks.js';
import { quiet, separated, type Text, warning } from '../document/text.js';
import type { Sheet } from '../sheet.js';

/** Load, fuel and range at each speed of the running profile, and what a year of it comes to. */
export function profileSection(sheet: Sheet, arrangement: Arrangement): Block | undefined {
  const profile = profileOf(sheet, arrangement);
  if (!profile) return undefined;
  return section(`profile-${arrangement.path}`, 'Running profile', [
    table(
      `${arrangement.name}: running profile, predicted for calm, deep water`,
      [
        { title: 'Speed' },
        { title: 'Hours a year', numeric: true },
        { title: 'Engine', numeric: true },
        { title: 'Load', numeric: true },
        { title: 'Fuel of all engines', numeric: true },
        { title: 'A mile', numeric: true },
        { title: 'Passage', numeric: true },
        { title: 'Range', numeric: true },
      ],
      profile.runs.map(rowOf),
    ),
    ...profile.runs.flatMap(({ vesselSpeed, why }) =>
      why ? [paragraph(separated(' ', warning(`? ${formatValue(vesselSpeed)}:`), `${why}.`))] : [],
    ),
    paragraph(yearWords(profile)),
    paragraph(cycleWords(profile)),
    ratingWords(arrangement, profile),
    paragraph(quiet(`${basisWords(profile)} Range is to the last drop of the usable fuel: keep a reserve.`)),
  ]);
}

/** The same before and after, for the papers that compare. */
export function profileTable(
  sheet: Sheet,
  before: Arrangement | undefined,
  after: Arrangement,
): Block | undefined {
  const now = profileOf(sheet, after);
  if (!now) return undefined;
  const was = before && profileOf(sheet, before);
  const rows: (readonly [what: string, was: Value | undefined, is: Value | undefined])[] = now.runs.flatMap(
    (run, at): (readonly [string, Value | undefined, Value | undefined])[] => {
      const old = was?.runs[at];
      const speed = formatValue(run.vesselSpeed);
      return [
        [`Fuel an hour at ${speed}`, old?.flow, run.flow],
        [`Fuel a mile at ${speed}`, old?.perMile, run.perMile],
        ...(run.perPassage
          ? [[`Fuel for a passage at ${speed}`, old?.perPassage, run.perPassage] as const]
          : []),
        ...(run.range ? [[`Range at ${speed}`, old?.range, run.range] as const] : []),
      ];
    },
  );
  rows.push(
    ['Fuel a year', was?.perYear, now.perYear],
    ['Fuel a mile, over the year', was?.perMile, now.perMile],
  );
  const columns = [
    { title: 'Running profile', wide: true },
    { title: before ? `Before: ${before.name}` : 'Before', numeric: true },
    { title: before ? `After: ${after.name}` : after.name, numeric: true },
    { title: 'Change', numeric: true },
  ];
  return table(
    `Fuel and range at the speeds of the running profile; ${withinWords(now)}`,
    before ? columns : columns.filter((_, index) => index === 0 || index === 2),
    rows.map(([what, a, b]) => (before ? [what, said(a), said(b), change(a, b)] : [what, said(b)])),
  );
}

function profileOf(sheet: Sheet, { lines }: Arrangement): RunningProfile | undefined {
  return runningProfile(lines, sheet.vessel, line => sheet.analysis(line));
}

function rowOf({ vesselSpeed, hours, lines, flow, perMile, perPassage, range }: ProfileRun): readonly Text[] {
  const one = lines?.[0];
  return [
    formatValue(vesselSpeed),
    (hours.si / 3600).toLocaleString('en', { maximumFractionDigits: 1 }),
    one ? formatValue(one.engineSpeed, 3) : UNKNOWN,
    one ? percent(one.load) : UNKNOWN,
    said(flow),
    said(perMile),
    perPassage || flow ? (perPassage ? said(perPassage) : '') : UNKNOWN,
    range || flow ? (range ? said(range) : '') : UNKNOWN,
  ];
}

const UNKNOWN = quiet('not known');

function said(value: Value | undefined): Text {
  return value ? fuelWords(value) : UNKNOWN;
}

function change(was: Value | undefined, is: Value | undefined): Text {
  if (!was || !is) return quiet('—');
  const share = is.si / was.si - 1;
  return Math.abs(share) < 5e-4 ? 'none' : signedPercent(share);
}

function yearWords({ perYear, perMile, hours, runs, uncertainty }: RunningProfile): Text {
  const open = runs.filter(one => one.flow === undefined).length;
  if (!perYear || !perMile)
    return warning(
      `? Fuel a year is not known: ${open} of ${runs.length} speeds of the profile cannot be worked out.`,
    );
  return `In ${(hours.si / 3600).toLocaleString('en')} hours a year: ${fuelWords(perYear)}, ${fuelWords(perMile)} a nautical mile, within about ${percent(uncertainty!)} for the declared consumption alone.`;
}

function cycleWords({ meanLoad }: RunningProfile): Text {
  const cycles = MARINE_CYCLES.map(one => `${one.name} ${percent(cycleLoad(one.modes))} (${one.means})`);
  const own = meanLoad === undefined ? '' : `Mean load ${percent(meanLoad)} of rated power. `;
  return `${own}Weighted load of the test cycles beside it: ${cycles.join(', ')}; ${citeSource(MARINE_CYCLES_SOURCE)}.`;
}

/** What the rating allows, beside what the profile asks. */
function ratingWords({ lines }: Arrangement, { hours, allowed, runs }: RunningProfile): Block | undefined {
  const rating = lines[0]?.engine && ratingOf(lines[0].engine);
  if (!rating) return undefined;
  const asked = hours.si / 3600;
  const over = allowed && asked > allowed.si;
  const full = sumOf(
    runs.flatMap(one => (one.lines?.some(line => line.load > 0.95) ? [one.hours.si / 3600] : [])),
  );
  const most = rating.fullPower?.value;
  const year = allowed
    ? `The rating allows ${allowed.si} hours a year, the profile asks ${asked.toLocaleString('en')}.`
    : 'The rating states no hours a year.';
  const open = runs.some(one => !one.lines);
  const heavy = open
    ? 'Hours over 95 % load are not known, as not every speed can be worked out'
    : `Over 95 % load: ${full.toLocaleString('en')} hours a year`;
  const power = `${heavy}${most ? `; the rating allows full power ${most}` : ''}.`;
  return paragraph(separated(' ', over ? warning(`! ${year}`) : year, power));
}

function sumOf(values: readonly number[]): number {
  return values.reduce((total, one) => total + one, 0);
}

function basisWords({ runs }: RunningProfile): string {
  const bases = [...new Set(runs.flatMap(one => one.lines?.map(line => line.fuel.basis) ?? []))];
  return bases.length === 0
    ? 'Fuel cannot be worked out at any of these speeds.'
    : `Fuel by ${bases.join('; ')}. Declared figures hold within 5 % (${citeSource(FUEL_TOLERANCE_SOURCE)}); in proportion at part load, 10 % more is allowed for.`;
}

function withinWords({ uncertainty }: RunningProfile): string {
  return uncertainty === undefined
    ? 'not all of them can be worked out'
    : `within about ${percent(uncertainty)} for the declared consumption alone`;
}
