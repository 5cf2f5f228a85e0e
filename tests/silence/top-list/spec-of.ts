import { changed, REPOWER } from '../../../packages/drivetrain/src/rules/example-specs.js';
import { type Checked, checkText } from '../../support/check.js';

export { changed, REPOWER };

/** What stays of a line of parts, in braces. */
export const ALL_RETAINED = 'retain engine  retain gear  retain shaft  retain propeller';

/** The spec with further statements at the end of its vessel. */
export function withStatements(spec: string, text: string): string {
  return `${spec.trimEnd().slice(0, -1)}${text}\n}\n`;
}

/** The same under another name, with nothing changed but what is told. */
export function repeated(spec: string, parts = ALL_RETAINED): string {
  return withStatements(
    spec,
    `  arrangement painted revises proposed {\n    shaftline Centre { ${parts} }\n  }`,
  );
}

/** `rule: outcome` of every verdict on one arrangement, with its message where asked. */
export function outcomes({ check }: Checked, arrangement: string): string[] {
  return (
    check.vessels
      .flatMap(one => one.verdicts)
      .filter(({ subject }) => subject === arrangement || subject.startsWith(`${arrangement}.`))
      // What a catalogue entry says is judged once, for the first arrangement that uses it.
      .filter(one => one.rule !== 'rotation/viewpoint')
      .map(one => `${one.rule}: ${one.outcome}`)
      .sort()
  );
}

export async function outcomesOf(spec: string, arrangement = 'proposed'): Promise<string[]> {
  return outcomes(await checkText(spec), arrangement);
}

/** The verdicts of one rule on one arrangement. */
export async function verdictsBy(spec: string, rule: string, arrangement = 'proposed') {
  const { check } = await checkText(spec);
  return check.vessels
    .flatMap(one => one.verdicts)
    .filter(one => one.rule === rule && one.subject.startsWith(arrangement));
}
