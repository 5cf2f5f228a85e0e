import type { Finding } from '@tailshaft/language';
import { count } from '@tailshaft/mechanics';
import { isKnown, type Judged } from '../report/judged.js';
import { gravestFirst, type Rank, rankOf, severityOf } from '../report/severity.js';
import type { Specs } from '../specs/specs.js';
import { visible } from '../terminal/visible.js';
import type { Form, Run } from './form.js';

const COMMAND = { error: 'error', warning: 'warning', note: 'notice', information: 'notice' } as const;

interface Ranked {
  readonly rank: Rank;
  readonly command: string;
}

/**
 * Findings as workflow commands of GitHub Actions, one a line: the site shows each beside its line of the change. It
 * shows the first ten of each kind in a step, so the gravest come first; checks that wait for data are left to the log.
 */
export class Annotations implements Form<readonly Ranked[]> {
  private readonly found: Ranked[] = [];

  constructor(private readonly specs: Specs) {}

  pieceOf(judged: Judged): readonly Ranked[] {
    return judged.spec.findings
      .filter(one => severityOf(one) !== 'information' && !one.verdict?.asFound && !isKnown(judged, one))
      .map(one => ({ rank: rankOf(one), command: this.command(one) }));
  }

  take(found: readonly Ranked[]): void {
    this.found.push(...found);
  }

  text({ failures, tally }: Run): string {
    const lines = [
      ...failures.map(one => `::error::${data(one)}`),
      ...this.found.sort((a, b) => gravestFirst(a.rank, b.rank)).map(one => one.command),
      `tailshaft: ${count(tally.files, 'file')}, ${count(tally.errors, 'error')}, ${count(tally.warnings, 'warning')}, ${count(tally.notChecked, 'check')} cannot tell`,
    ];
    return lines.join('\n');
  }

  private command(finding: Finding): string {
    const spot = this.specs.spot(finding.place);
    const at = spot
      ? `file=${property(spot.shown)},line=${spot.line},endLine=${spot.endLine},col=${spot.column},endColumn=${spot.endColumn},`
      : '';
    return `::${COMMAND[severityOf(finding)]} ${at}title=${property(finding.code)}::${data(finding.message)}`;
  }
}

/** What a line of commands takes as its own must not come out of a spec. */
function data(text: string): string {
  return visible(text).replace(/%/g, '%25').replace(/\r/g, '%0D').replace(/\n/g, '%0A');
}

function property(text: string): string {
  return data(text).replace(/:/g, '%3A').replace(/,/g, '%2C');
}
