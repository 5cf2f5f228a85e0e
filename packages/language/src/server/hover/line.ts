import { type ByAnswer, countsOf, countWords, type Verdict } from '@tailshaft/drivetrain';
import { formatValue, signedPercent } from '@tailshaft/mechanics';
import { derivedValues, type JudgedLine, tightest } from '../lines.js';
import { bullets, paragraphs, plain } from './markdown.js';

/** A shaft line: how its checks stand, and the figures that matter most. */
export function lineHover(line: JudgedLine): string {
  const { rotation } = line.analysis;
  const hand =
    rotation.neededHand &&
    `turns ${turnOf(line)} ahead seen from aft: needs a ${rotation.neededHand}-hand propeller`;
  return paragraphs(
    `**shaft line ${plain(line.line.path)}** · ${countWords(countsOf(line.verdicts))}`,
    bullets([
      ...(hand ? [hand] : []),
      ...derivedValues(line)
        .slice(0, 8)
        .map(value => `${plain(value.label)}: **${formatValue(value)}**`),
    ]),
    openChecks(line.verdicts),
  );
}

/** Failing checks and open questions first, then the tightest margin. */
export function openChecks(verdicts: readonly Verdict[]): string | undefined {
  const failing = verdicts.filter(one => one.outcome === 'fails');
  const open = verdicts.filter(one => one.outcome === 'cannot tell');
  const least = tightest(verdicts);
  const items = [
    ...failing.map(one => `**fails** ${one.rule}: ${plain(one.message)}`),
    ...open.map(one => `cannot tell ${one.rule}: ${plain(one.message)}`),
    ...(least ? [`least margin ${signedPercent(least.margin!)}: ${least.rule}`] : []),
  ];
  return items.length > 0 ? bullets(items, 6) : undefined;
}

/** How the shaft of a line comes to turn as it does, station by station. */
export function rotationHover(line: JudgedLine): string | undefined {
  const { rotation, hand } = line.analysis;
  if (rotation.steps.length === 0) return undefined;
  const verdict =
    hand?.state === 'wrong'
      ? `It needs a **${hand.needed}-hand** propeller, and has a ${hand.hand}-hand one.`
      : rotation.neededHand
        ? `It needs a **${rotation.neededHand}-hand** propeller.`
        : `Cannot tell. Needed: ${rotation.missing.map(one => one.what).join('; ')}.`;
  const open = line.verdicts.find(one => one.byAnswer);
  return paragraphs(
    `**Rotation of ${plain(line.line.path)}**, lever ahead`,
    rotation.steps.map((step, index) => `${index + 1}. ${plain(step.text)}`).join('\n'),
    verdict,
    open?.byAnswer && answersTable(open.byAnswer),
  );
}

/** Which answer to what is missing gives what. */
function answersTable(rows: readonly ByAnswer[]): string {
  const cells = rows.map(row => `| ${plain(row.given.join(', '))} | ${plain(row.result)} |`);
  return ['| with | result |', '| --- | --- |', ...cells].join('\n');
}

function turnOf(line: JudgedLine): string {
  return line.analysis.rotation.ahead === 1 ? 'clockwise' : 'counter-clockwise';
}
