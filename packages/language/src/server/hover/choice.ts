import {
  type Clutch,
  clutchesOf,
  type Gear,
  type RatioVariant,
  ratingOf,
  ratingsOf,
} from '@tailshaft/drivetrain';
import { signedPercent } from '@tailshaft/mechanics';
import type { Spelling } from '@tailshaft/vocabulary';
import { type JudgedLine, tightest } from '../lines.js';
import { bullets, paragraphs, plain } from './markdown.js';

const MEASURED: Spelling = 'measured at';

/** What a ratio, clutch or duty class chosen in the header of a part means in the data of that part. */
export function choiceHover(field: string, line: JudgedLine | undefined): string | undefined {
  const { gear, engine } = line?.line ?? {};
  if (field === 'ratioUsed' && gear?.variant) return ratioChosen(gear, gear.variant);
  if (field === 'aheadClutch' && gear) return clutchChosen(gear);
  const rating = field === 'ratedAt' && engine ? ratingOf(engine) : undefined;
  if (!rating || !line) return undefined;
  const verdict = tightest(line.verdicts.filter(one => one.rule === 'capacity/engine-duty'));
  return paragraphs(
    `The rating of ${name(engine?.entry?.name, 'engine')} for it:`,
    bullets([
      `power ${plain(rating.power?.written ?? 'not stated')}`,
      `${MEASURED} ${plain(rating.measuredAt?.written ?? 'a place that is not stated')}`,
      `standard ${plain(rating.standard?.written ?? 'not stated')}`,
      `hours ${plain(rating.hours?.written ?? 'not stated')}`,
      ...(verdict ? [`${verdict.rule}: ${verdict.outcome}, margin ${signedPercent(verdict.margin!)}`] : []),
    ]),
  );
}

function ratioChosen(gear: Gear, variant: RatioVariant): string {
  const ratings = ratingsOf(gear, variant).map(one => {
    const figure = one.powerPerSpeed ?? one.torque ?? one.power;
    return `rated ${plain(one.duty)}: ${plain(figure?.written ?? 'not stated')}`;
  });
  const others = (gear.ratios ?? [])
    .filter(one => one !== variant)
    .map(one => plain(one.nominalFact.written));
  return paragraphs(
    `${name(gear.entry?.name, 'The gear')} at ${plain(variant.nominalFact.written)}:`,
    bullets([
      `exact ${plain(variant.exact?.written ?? 'ratio not stated')}`,
      ...clutchesOf(gear, variant).map(clutchWords),
      ...ratings,
    ]),
    others.length > 0 && `Its other ratios: ${others.join(', ')}.`,
  );
}

function clutchChosen(gear: Gear): string | undefined {
  const clutches = gear.variant ? clutchesOf(gear, gear.variant) : (gear.clutches ?? []);
  if (clutches.length === 0) return undefined;
  return paragraphs(`Clutches of ${name(gear.entry?.name, 'the gear')}:`, bullets(clutches.map(clutchWords)));
}

function clutchWords(clutch: Clutch): string {
  const sense = clutch.output?.value ? clutch.output.written : 'output sense not stated';
  const ahead = clutch.ahead?.value;
  const may = ahead === undefined ? 'not stated whether it may run ahead' : `ahead ${ahead}`;
  return `clutch ${plain(clutch.name)}: output ${plain(sense)}, ${may}${clutch.exact ? `, exact ${plain(clutch.exact.written)}` : ''}`;
}

function name(entry: string | undefined, otherwise: string): string {
  return entry ? plain(entry) : otherwise;
}
