import { isFinding, type Verdict } from '@tailshaft/drivetrain';
import { type Place, placeOf } from '../reading/place.js';
import type { Finding, Related } from './finding.js';
import { aboutOf, placeInFile } from './finding-place.js';
import { namedMessage } from './finding-words.js';
import { mostFindings } from './most-findings.js';
import { entryKey, entryPlace, oneCause } from './one-cause.js';
import type { FileCheck, JudgedVessel } from './project.js';
import { underProblems } from './under-problems.js';
import { echoesProblem, isUnsettled } from './unsettled.js';

/** Everything to show in a file, by place, each cause once. Verdicts that only repeat a problem of the text are left out. */
export function findingsOf(check: FileCheck): Finding[] {
  const sorted = once(
    underProblems(oneCause(unfolded(check)).map(one => withFolded(one, check.vessels.length > 1))),
  ).sort((a, b) => a.place.start - b.place.start || a.place.end - b.place.end || (a.code < b.code ? -1 : 1));
  return mostFindings(sorted, check.uri);
}

/** Whether a check cannot tell only because the text cannot be read, which is told of already. */
export function waitsForText(verdict: Verdict, check: FileCheck, judged?: JudgedVessel): boolean {
  return echoesProblem(verdict, check) || (judged !== undefined && isUnsettled(verdict, judged));
}

/** All checks of a file that wait for its text: what they miss is no datum that anybody could look up. */
export function behindText(check: FileCheck): ReadonlySet<Verdict> {
  const ofVessels = check.vessels.flatMap(judged =>
    judged.verdicts.filter(one => waitsForText(one, check, judged)),
  );
  const ofEntries = check.entries.flatMap(one => one.verdicts).filter(one => waitsForText(one, check));
  return new Set([...ofVessels, ...ofEntries]);
}

/** A finding and those that are told under it. */
export function everyFinding(findings: readonly Finding[]): Finding[] {
  return findings.flatMap(one => [one, ...(one.folded ?? [])]);
}

function unfolded(check: FileCheck): Finding[] {
  const findings: Finding[] = check.problems.map(problem => ({
    code: problem.code,
    severity: problem.severity === 'note' ? 'hint' : problem.severity,
    place: { uri: check.uri, start: problem.start, end: problem.end },
    message: problem.message,
    related: [],
    problem,
  }));
  const among = check.vessels.length > 1;
  for (const judged of check.vessels) {
    for (const verdict of judged.verdicts) {
      if (isToShow(verdict) && !echoesProblem(verdict, check) && !isUnsettled(verdict, judged))
        findings.push(toFinding(verdict, check.uri, among, judged));
    }
  }
  for (const entry of check.entries) {
    for (const verdict of entry.verdicts)
      if (isFinding(verdict) && !echoesProblem(verdict, check))
        findings.push(toFinding(verdict, check.uri, among));
  }
  return findings;
}

/** What is not known of the vessel as found is asked for by the proposals that rest on it, and by nothing else. */
function isToShow(verdict: Verdict): boolean {
  return isFinding(verdict) && !verdict.withheld && !(verdict.asFound && verdict.outcome === 'cannot tell');
}

const SEVERITY = { error: 'error', warning: 'warning', note: 'hint' } as const;

function toFinding(verdict: Verdict, uri: string, amongVessels: boolean, judged?: JudgedVessel): Finding {
  const place = placeOf(verdict.place);
  const here = judged ? placeInFile(verdict, uri, judged.vessel) : place.uri === uri ? place : undefined;
  const related: Related[] = verdict.related.map(one => ({ place: placeOf(one.at), message: one.message }));
  for (const missing of verdict.missing)
    related.push({
      place: placeOf(missing.at ?? missing.host),
      message: `Write it here: ${missing.property}`,
    });
  if (here && here !== place) related.unshift({ place, message: 'Declared here' });
  return {
    code: verdict.rule,
    severity: severityOf(verdict),
    place: here ?? { uri, start: 0, end: 0 },
    message: judged ? namedMessage(verdict, judged, amongVessels) : verdict.message,
    related,
    verdict,
    ...(judged ? { vessel: judged, ...aboutEntry(verdict, judged) } : {}),
  };
}

function aboutEntry(verdict: Verdict, judged: JudgedVessel): Pick<Finding, 'entryPlace' | 'entryKey'> {
  const place = entryPlace(verdict, judged.vessel.origin as Place);
  return place ? { entryPlace: place, entryKey: entryKey(verdict, judged.vessel, place) } : {};
}

function severityOf({ outcome, severity }: Verdict): Finding['severity'] {
  return outcome === 'cannot tell' ? 'information' : SEVERITY[severity];
}

/** A finding that names all lines that the same is said of, and leads to whatever else is told under it. */
function withFolded(finding: Finding, amongVessels: boolean): Finding {
  const { folded = [], verdict, vessel } = finding;
  if (folded.length === 0 || !verdict || !vessel) return finding;
  const lines = [
    verdict,
    ...folded.flatMap(one => (one.code === finding.code && one.verdict ? [one.verdict] : [])),
  ]
    .map(one => aboutOf(one, vessel.vessel).line?.name)
    .filter(one => one !== undefined);
  const alike = folded.every(one => one.code !== finding.code || saidOf(one) === saidOf(finding));
  const message = alike
    ? namedMessage(verdict, vessel, amongVessels, inOrder(lines, vessel))
    : finding.message;
  const more = folded.flatMap((one): Related[] => {
    const same = one.code === finding.code && saidOf(one) === saidOf(finding);
    if (same && samePlace(one.place, finding.place)) return [];
    const line = same && one.verdict && aboutOf(one.verdict, vessel.vessel).line?.name;
    if (line) return [{ place: one.place, message: `The same for ${line}` }];
    return [
      {
        place: one.place,
        message: `${one.code === finding.code ? 'Also' : `Fails for it too, ${one.code}`}: ${one.message}`,
      },
    ];
  });
  return { ...finding, message, related: [...finding.related, ...more] };
}

/** What a finding says, whichever line it says it of. */
function saidOf({ verdict, vessel }: Finding): string {
  const line = vessel && verdict && aboutOf(verdict, vessel.vessel).line;
  return line ? verdict.message.replaceAll(line.name, '~') : (verdict?.message ?? '');
}

function inOrder(lines: readonly string[], { vessel }: JudgedVessel): string[] {
  const all = vessel.arrangements.flatMap(one => one.lines.map(line => line.name));
  return [...new Set(lines)].sort((one, other) => all.indexOf(one) - all.indexOf(other));
}

function samePlace(one: Place, other: Place): boolean {
  return one.uri === other.uri && one.start === other.start && one.end === other.end;
}

function once(findings: Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings.filter(one => {
    const key = `${one.code} ${one.place.start} ${one.place.end} ${one.message}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
