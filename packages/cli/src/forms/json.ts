import { checkJson, questionJson, specJson } from '../report/check-json.js';
import type { Judged } from '../report/judged.js';
import { OpenQuestions } from '../report/open-questions.js';
import { WaysTried } from '../report/tried-ways.js';
import type { Specs } from '../specs/specs.js';
import { jsonText } from '../terminal/visible.js';
import type { Form, Run } from './form.js';

/** As `check.schema.json` has it. */
export class JsonForm implements Form {
  private readonly files: object[] = [];
  private readonly questions = new OpenQuestions();

  private readonly tried: WaysTried;

  constructor(private readonly specs: Specs) {
    this.tried = new WaysTried(specs, 'always');
  }

  add({ spec, standings }: Judged): void {
    this.files.push(specJson(this.specs, spec, standings, one => this.tried.of(spec, one)));
    this.questions.add(this.specs, spec);
  }

  text({ failures, tally, today }: Run): string {
    const asked = this.questions.list.map(one => questionJson(one));
    return jsonText(checkJson(this.files, failures, tally, today, asked));
  }
}
