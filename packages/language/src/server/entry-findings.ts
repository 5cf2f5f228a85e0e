import { DocumentState, type LangiumDocument, URI } from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import { type Diagnostic, DiagnosticSeverity, type Range } from 'vscode-languageserver';
import type { Finding } from '../project/finding.js';
import type { Project } from '../project/project.js';
import { rangeIn } from './places.js';
import type { Settings } from './settings.js';
import { type DiagnosticData, toDiagnostic } from './to-diagnostic.js';
import { belongs } from './workspace/belongs.js';

/** What one spec says of a fact of a catalogue entry in another file. */
interface Said {
  readonly key: string;
  readonly vessel: string;
  /** At the entry. */
  readonly range: Range;
  readonly place: { readonly start: number; readonly end: number };
  /** As the spec itself would show it, at its use of the entry. */
  readonly shown: Diagnostic;
}

interface Spoken extends Said {
  readonly spec: string;
}

/**
 * A fact of a catalogue entry is told once, at the entry, with every vessel that uses it: not once in each spec. At its use a
 * spec keeps a hint, so that whoever sees that file alone is not told that all is well.
 */
export class EntryFindings {
  /** By spec, then by the file of the entry. */
  private readonly bySpec = new Map<string, ReadonlyMap<string, readonly Said[]>>();
  /** Specs that say something of entries of a file. */
  private readonly speakers = new Map<string, Set<string>>();
  private readonly listeners: ((uri: string) => void)[] = [];

  constructor(
    private readonly services: {
      readonly project: Project;
      readonly settings: Settings;
      readonly shared: Pick<LangiumSharedServices, 'workspace'>;
    },
  ) {
    services.shared.workspace.DocumentBuilder.onUpdate((_changed, deleted) => {
      for (const uri of deleted) this.note(uri.toString(), []);
    });
  }

  /** Says of which file other diagnostics are to be shown now, though it did not change. */
  onChange(listener: (uri: string) => void): void {
    this.listeners.push(listener);
  }

  /** Takes down what the findings of a spec say of entries elsewhere, and gives what the spec itself is to show. */
  take(document: LangiumDocument, findings: readonly Finding[]): Diagnostic[] {
    const { project, settings, shared } = this.services;
    const documents = shared.workspace.LangiumDocuments;
    const said: [string, Said][] = [];
    const own = findings.map(finding => {
      const shown = toDiagnostic(finding, document, documents, settings.pageOf(finding.code));
      const { entryPlace: place, entryKey: key, vessel } = finding;
      if (!place || !key || !vessel || finding.severity === 'hint') return shown;
      const uri = URI.parse(place.uri);
      const home = documents.getDocument(uri);
      if (place.uri === document.uri.toString() || !home || !belongs(uri, project.roots)) return shown;
      const range = rangeIn(home.textDocument, place);
      const { start, end } = place;
      said.push([place.uri, { key, vessel: vessel.vessel.name, range, place: { start, end }, shown }]);
      return { ...shown, severity: DiagnosticSeverity.Hint };
    });
    this.note(document.uri.toString(), said);
    return own;
  }

  /** Everything to show in a file: its own, and what specs say of its entries. */
  shownIn(document: LangiumDocument): Diagnostic[] {
    return [...(document.diagnostics ?? []), ...this.at(document.uri.toString())];
  }

  /** Specs that say something of an entry that is declared there, each with what tells it from others. */
  saidAt(uri: string, wanted: Range): { readonly spec: string; readonly key: string }[] {
    return this.saidOf(uri)
      .filter(({ range }) => range.start.line <= wanted.end.line && range.end.line >= wanted.start.line)
      .map(({ spec, key }) => ({ spec, key }));
  }

  private at(uri: string): Diagnostic[] {
    const groups = new Map<string, Spoken[]>();
    for (const one of this.saidOf(uri)) groups.set(one.key, [...(groups.get(one.key) ?? []), one]);
    return [...groups.values()].map(all => {
      const [gravest, ...others] = [...all].sort((a, b) => a.shown.severity! - b.shown.severity!);
      return told(gravest!, others);
    });
  }

  private saidOf(uri: string): Spoken[] {
    const speakers = [...(this.speakers.get(uri) ?? [])].sort();
    return speakers.flatMap(spec => (this.bySpec.get(spec)?.get(uri) ?? []).map(one => ({ ...one, spec })));
  }

  private note(spec: string, said: readonly (readonly [string, Said])[]): void {
    const before = this.bySpec.get(spec);
    if (!before && said.length === 0) return;
    const now = new Map<string, Said[]>();
    for (const [uri, one] of said) now.set(uri, [...(now.get(uri) ?? []), one]);
    if (now.size > 0) this.bySpec.set(spec, now);
    else this.bySpec.delete(spec);
    for (const uri of new Set([...(before?.keys() ?? []), ...now.keys()])) {
      if (JSON.stringify(before?.get(uri)) === JSON.stringify(now.get(uri))) continue;
      const speakers = this.speakers.get(uri) ?? new Set();
      if (now.has(uri)) this.speakers.set(uri, speakers.add(spec));
      else if (speakers.delete(spec) && speakers.size === 0) this.speakers.delete(uri);
      this.changed(uri);
    }
  }

  private changed(uri: string): void {
    const document = this.services.shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
    // A file that is still to be judged is shown then.
    if (!document || document.state < DocumentState.Validated) return;
    for (const listener of this.listeners) listener(uri);
  }
}

/** One finding for all who say it: as the gravest of them says it, and with the use of each. */
function told(gravest: Spoken, others: readonly Spoken[]): Diagnostic {
  const { range, vessel, shown } = gravest;
  const said = String(shown.message);
  const message = said.includes(vessel) ? said : `${vessel}, ${said}`;
  const uses = [gravest, ...others].map(one => ({
    location: { uri: one.spec, range: one.shown.range },
    message: `used in ${one.vessel}`,
  }));
  const related = shown.relatedInformation?.filter(one => !USES.test(one.message)) ?? [];
  return {
    ...shown,
    range,
    message: others.length === 0 ? message : `${message} ${asWell(others.map(one => one.vessel))}`,
    relatedInformation: [...uses, ...related],
    data: { ...(shown.data as DiagnosticData), ...gravest.place },
  };
}

/** What the list of uses says already. */
const USES = /^(Declared here|used in )/;

/** `The same in Gannet and 4 more.` */
function asWell(vessels: readonly string[]): string {
  const names = [...new Set(vessels)];
  const shown = names.slice(0, 3).join(', ');
  return `The same in ${shown}${names.length > 3 ? ` and ${names.length - 3} more` : ''}.`;
}
