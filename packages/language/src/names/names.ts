import type { LangiumDocument, LangiumDocuments } from 'langium';
import type { FileCheck, Project } from '../project/project.js';
import { namesInParts } from './in-parts.js';
import { namesOfVessel } from './in-vessel.js';
import type { Occurrence } from './occurrence.js';
import { namesOfParts } from './of-parts.js';

/** Where things are called by their names, over all documents that are loaded. */
export class Names {
  private readonly found = new WeakMap<FileCheck, readonly Occurrence[]>();

  constructor(
    readonly project: Project,
    readonly documents: LangiumDocuments,
  ) {}

  /** Every name in one document. */
  in(document: LangiumDocument): readonly Occurrence[] {
    const check = this.project.check(document);
    const had = this.found.get(check);
    if (had) return had;
    const reading = this.project.reading(document);
    const vessels = check.vessels.map(one => one.vessel);
    const made = [
      ...namesOfParts(reading, this.project.entries(document)),
      ...namesInParts(reading, vessels),
      ...reading.vessels.flatMap(namesOfVessel),
    ].sort((a, b) => a.start - b.start);
    this.found.set(check, made);
    return made;
  }

  /** The name at an offset, or right before it. */
  at(document: LangiumDocument, offset: number): Occurrence | undefined {
    return this.in(document).find(one => offset >= one.start && offset <= one.end);
  }

  /** Every place that calls the same thing by its name. Documents that do not have the word are not looked into. */
  same(as: Occurrence): Occurrence[] {
    return this.documents.all
      .filter(document => as.kind === 'ratio' || document.textDocument.getText().includes(as.name))
      .flatMap(document => this.in(document).filter(one => one.key === as.key))
      .toArray();
  }

  /** Where it is declared; just the declaration that is meant, when several share the name. */
  declarations(of: Occurrence): Occurrence[] {
    const all = this.same(of).filter(one => one.declares !== undefined);
    const { means } = of;
    const meant = means && all.filter(one => one.uri === means.uri && one.declares!.start === means.start);
    return meant && meant.length > 0 ? meant : all;
  }
}
