import type { Verdict } from '@tailshaft/drivetrain';
import {
  applyEdits,
  consequenceOf,
  createTailshaftCore,
  cures,
  findingsOf,
  type TextEdit,
} from '@tailshaft/language';
import { EmptyFileSystem, URI } from 'langium';
import { expect, it } from 'vitest';
import { randomSpecs, writtenSpecs } from '../silence/base-specs.js';
import { TODAY } from '../support/check.js';
import { share, times } from '../support/share.js';

const core = createTailshaftCore(EmptyFileSystem);
const { project } = core.language;
project.today = () => TODAY;
const { LangiumDocumentFactory, LangiumDocuments } = core.shared.workspace;

/** What counts of verdicts when a way out is tried, whatever the places and words. */
const told = (verdicts: readonly Verdict[]) =>
  verdicts
    .map(
      one =>
        `${one.rule} ${one.subject} ${one.outcome} ${one.severity} ${one.asFound ?? ''} ${one.margin?.toFixed(6) ?? ''}`,
    )
    .sort();

it('an arrangement that an edit leaves alone is said to be what it would be judged as', async () => {
  // What an edit of the later arrangement leaves alone is the earlier one.
  const specs = [...writtenSpecs(), ...randomSpecs(7000, times(6, 60))].filter(one =>
    / revises /.test(one.text),
  );
  let tried = 0;
  for (const { name, text } of share(specs, 12, 40)) {
    const uri = URI.parse('memory:///beside.shaft');
    const document = LangiumDocumentFactory.fromString(text, uri);
    LangiumDocuments.addDocument(document);
    await project.load(document);
    const textOf = () => text;
    const edits: (readonly TextEdit[])[] = [];
    for (const finding of findingsOf(project.check(document)))
      cures(finding, textOf, some => {
        edits.push(some);
        return consequenceOf(project, document, some, textOf);
      });
    for (const some of edits.slice(0, 12)) {
      const texts = new Map([[uri.toString(), applyEdits(text, some)]]);
      const [quick, whole] = [
        project.supposing(document, texts, some),
        project.supposing(document, texts),
      ].map(one => one.check().vessels.flatMap(each => told(each.verdicts)));
      tried += 1;
      expect({ name, edits: some, verdicts: quick }).toEqual({ name, edits: some, verdicts: whole });
    }
    LangiumDocuments.deleteDocument(uri);
  }
  expect(tried).toBeGreaterThan(10);
}, 300_000);
