import { findRule, type Verdict } from '@tailshaft/drivetrain';
import type { Finding, Place } from '@tailshaft/language';
import { identitiesOf, identityOf } from '../report/identity.js';
import type { Judged, Standing } from '../report/judged.js';
import { severityOf } from '../report/severity.js';
import type { CheckedSpec, Specs } from '../specs/specs.js';
import { jsonText } from '../terminal/visible.js';
import { VERSION } from '../version.js';
import type { Form } from './form.js';

const LEVELS = { error: 'error', warning: 'warning', note: 'note', information: 'none' } as const;
const BASELINE = { new: 'new', worse: 'updated', known: 'unchanged' } as const;

interface Result {
  readonly ruleId: string;
}

/**
 * The findings as a SARIF 2.1.0 log (OASIS, 2020), with paths relative to the folder the command ran in. What is
 * accepted is in it, suppressed, with its justification: a reader sees it as such, and never as absent.
 */
export class SarifForm implements Form<readonly Result[]> {
  readonly keepsSpecs = true;
  private readonly results: Result[] = [];

  constructor(private readonly specs: Specs) {}

  pieceOf({ spec, standings }: Judged): readonly Result[] {
    const identities = identitiesOf(this.specs, spec);
    const accepted = spec.check.vessels.flatMap(({ vessel, verdicts }) =>
      verdicts
        .filter(one => one.outcome === 'accepted')
        .map(one => acceptedResult(this.specs, spec, vessel.name, one)),
    );
    return [
      ...spec.findings.map(one => resultOf(this.specs, one, identities.get(one)!, standings?.get(one))),
      ...accepted,
    ];
  }

  take(results: readonly Result[]): void {
    this.results.push(...results);
  }

  text(): string {
    const codes = [...new Set(this.results.map(one => one.ruleId))].sort();
    return jsonText({
      $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
      version: '2.1.0',
      runs: [
        {
          tool: { driver: { name: 'tailshaft', version: VERSION, rules: codes.map(ruleOf) } },
          columnKind: 'utf16CodeUnits',
          results: this.results.map(one => ({ ...one, ruleIndex: codes.indexOf(one.ruleId) })),
        },
      ],
    });
  }
}

function ruleOf(code: string) {
  const rule = findRule(code);
  if (!rule) return { id: code, shortDescription: { text: 'The text of the spec cannot be read as meant' } };
  return {
    id: code,
    shortDescription: { text: rule.title },
    fullDescription: { text: rule.manual },
    help: { text: `${rule.manual}\n\n${rule.caution}` },
    defaultConfiguration: { level: LEVELS[rule.severity] },
  };
}

function resultOf(specs: Specs, finding: Finding, identity: string, standing: Standing | undefined) {
  const related = finding.related.flatMap(one => {
    const physical = locationOf(specs, one.place);
    return physical ? [{ ...physical, message: { text: one.message } }] : [];
  });
  const severity = severityOf(finding);
  return {
    ruleId: finding.code,
    level: LEVELS[severity],
    // A check that waits for data is open, neither passed nor failed; the standard then asks for no level.
    kind: severity === 'information' ? 'open' : 'fail',
    message: { text: finding.message },
    ...locationsOf(specs, finding.place),
    ...(related.length > 0 ? { relatedLocations: related.map((one, id) => ({ id, ...one })) } : {}),
    partialFingerprints: { meaning: identity },
    ...(standing ? { baselineState: BASELINE[standing] } : {}),
  };
}

/** A failure that a statement of the spec accepts: suppressed in the source, by whoever is named there. */
function acceptedResult(specs: Specs, spec: CheckedSpec, vessel: string, verdict: Verdict) {
  const { rule, severity, message, place, subject, acceptance } = verdict;
  const { by, because, dated, until, origin } = acceptance ?? {};
  const justification = [
    because ?? 'no reason given',
    by ? `by ${by}` : '',
    dated ? `dated ${dated}` : '',
    until ? `until ${until}` : '',
  ];
  const at = origin === undefined ? undefined : locationOf(specs, origin as Place);
  return {
    ruleId: rule,
    level: LEVELS[severity],
    kind: 'fail',
    message: { text: `${vessel}, ${message}` },
    ...locationsOf(specs, place as Place),
    partialFingerprints: {
      meaning: identityOf([rule, specs.pathInRoot(spec.check.uri), `${vessel} ${subject}`].join('\n')),
    },
    suppressions: [
      {
        kind: 'inSource',
        status: 'accepted',
        justification: justification.filter(Boolean).join(', '),
        ...(at ? { location: at } : {}),
      },
    ],
  };
}

function locationsOf(specs: Specs, place: Place) {
  const location = locationOf(specs, place);
  return { locations: location ? [location] : [] };
}

function locationOf(specs: Specs, place: Place) {
  const spot = specs.spot(place);
  if (!spot) return undefined;
  return {
    physicalLocation: {
      artifactLocation: { uri: spot.shown.split('/').map(encodeURIComponent).join('/') },
      region: {
        startLine: spot.line,
        startColumn: spot.column,
        endLine: spot.endLine,
        endColumn: spot.endColumn,
      },
    },
  };
}
