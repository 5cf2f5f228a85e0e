import type { Finding } from '@tailshaft/language';

/** Findings as a person reads them: names that stand in a file whose import failed are told under that import. */
export function underImports(findings: readonly Finding[]): readonly Finding[] {
  const broken = findings.find(one => one.code === 'text/import' && one.severity === 'error');
  if (!broken) return findings;
  const names = findings.filter(one => isMissedName(one) && one.place.uri === broken.place.uri);
  if (names.length === 0) return findings;
  const led: Finding = {
    ...broken,
    related: [...broken.related, ...names.map(({ place, message }) => ({ place, message: first(message) }))],
  };
  return findings.filter(one => !names.includes(one)).map(one => (one === broken ? led : one));
}

/** A name of nothing that is declared, and near to nothing that is: a slip of the pen keeps its own finding. */
function isMissedName({ code, problem }: Finding): boolean {
  return code === 'text/unknown-name' && !problem?.choices?.length;
}

function first(message: string): string {
  return message.slice(0, message.indexOf('. ') + 1) || message;
}
