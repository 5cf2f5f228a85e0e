import { checkJson, questionJson, specJson } from '../report/check-json.js';
import type { Judged } from '../report/judged.js';
import { type Asked, OpenQuestions } from '../report/open-questions.js';
import { TRIES_ENDED, type Tries, TriesGranted, WaysTried } from '../report/tried-ways.js';
import type { Specs } from '../specs/specs.js';
import { jsonText } from '../terminal/visible.js';
import type { Form, Run } from './form.js';

interface Piece {
  readonly file: { readonly findings: readonly object[] };
  /** What was tried for each finding. */
  readonly tries: readonly (Tries | undefined)[];
  readonly asked: Asked;
}

/** As `check.schema.json` has it. */
export class JsonForm implements Form<Piece> {
  private readonly files: object[] = [];
  private readonly questions = new OpenQuestions();
  private readonly tried: WaysTried;
  private readonly granted = new TriesGranted();

  constructor(private readonly specs: Specs) {
    this.tried = new WaysTried(specs, 'always');
  }

  pieceOf({ spec, standings }: Judged): Piece {
    const tries: (Tries | undefined)[] = [];
    const file = specJson(this.specs, spec, standings, one => tries.push(this.tried.of(spec, one)));
    return { file, tries, asked: this.questions.askedIn(this.specs, spec) };
  }

  take({ file, tries, asked }: Piece): void {
    const findings = file.findings.map((one, at) => ({ ...one, ...this.triedJson(tries[at]) }));
    this.files.push({ ...file, findings });
    this.questions.take(asked);
  }

  text({ failures, tally, today }: Run): string {
    const asked = this.questions.list.map(one => questionJson(one));
    return jsonText(checkJson(this.files, failures, tally, today, asked));
  }

  private triedJson(tries: Tries | undefined): object {
    if (!tries) return {};
    return this.granted.grants(tries) ? { waysOutTried: tries.ways } : TRIES_ENDED;
  }
}
