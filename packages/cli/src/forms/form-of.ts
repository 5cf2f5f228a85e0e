import { dayOf, type Given, policyOf, textOf } from '../command.js';
import type { Baseline } from '../report/baseline.js';
import { CheckReport } from '../report/check-report.js';
import { Specs } from '../specs/specs.js';
import type { Io } from '../terminal/io.js';
import { Annotations } from './annotations.js';
import { CodeQuality } from './code-quality.js';
import { CsvForm } from './csv.js';
import type { Form } from './form.js';
import { JsonForm } from './json.js';
import { JunitForm } from './junit.js';
import { SarifForm } from './sarif.js';

/** Specs as the options of a command have them judged. */
export function specsFor(cwd: string, given: Given): Specs {
  const root = textOf(given, 'root');
  return new Specs({
    cwd,
    today: dayOf(given),
    policy: policyOf(given),
    ...(root === undefined ? {} : { root }),
  });
}

/** The form that the options ask for. */
export function formOf(io: Io, given: Given, specs: Specs, baseline: Baseline | undefined): Form {
  if (given.json) return new JsonForm(specs);
  if (given.csv) return new CsvForm();
  if (given.sarif) return new SarifForm(specs);
  if (given.junit) return new JunitForm();
  if (given.annotations) return new Annotations(specs);
  if (given['code-quality']) return new CodeQuality(specs);
  const wanted = {
    all: given.all === true,
    quiet: given.quiet === true,
    summary: given.summary === true,
    verdicts: given.verdicts === true,
  };
  return new CheckReport(io, specs, wanted, baseline);
}
