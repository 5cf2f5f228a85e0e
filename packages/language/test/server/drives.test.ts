import { URI } from 'langium';
import { describe, expect, it } from 'vitest';
import { TextDocument } from 'vscode-languageserver-textdocument';
import { isWithin, relativePath } from '../../src/project/imports.js';
import { CATALOGUE, VESSEL } from './specs.js';
import { Testbed } from './testbed.js';

/*
 * Windows, simulated: a drive letter in either case, line ends of two characters, and backslashes in imports, one or two.
 */

const ROOTS = ['file:///c%3A/yard', 'file:///C:/yard', 'file:///c:/yard', 'file:///C%3A/yard'];

describe('a drive letter is the same large and small', () => {
  const pairs = ROOTS.flatMap(one => ROOTS.map(other => [one, other] as const));
  it.each(pairs)('root %s, file in %s', (root, folder) => {
    const [from, file] = [URI.parse(root), URI.parse(`${folder}/parts/a.shaft`)];
    expect(isWithin(from, file)).toBe(true);
    expect(isWithin(from, URI.parse(folder))).toBe(true);
    expect(relativePath(from.path, file.path)).toBe('parts/a.shaft');
    expect(isWithin(from, URI.parse(folder.replace(/[cC](?=:|%3A)/, 'd')))).toBe(false);
  });

  it('but other letters of a path are as they are written', () => {
    expect(isWithin(URI.parse('file:///c%3A/yard'), URI.parse('file:///c%3A/Yard/a.shaft'))).toBe(false);
    expect(isWithin(URI.parse('file:///Users/a'), URI.parse('file:///users/a/b.shaft'))).toBe(false);
  });

  it.each(pairs)('root %s, an open spec of %s finds its catalogue', async (root, folder) => {
    const ways = ['parts/catalogue', 'parts\\catalogue', 'parts\\\\catalogue', 'parts'];
    for (const written of root === ROOTS[0] ? ways : ways.slice(1, 2)) {
      const bed = new Testbed();
      const { project, queue, shared } = bed.services;
      project.roots = [URI.parse(root)];
      bed.files.texts.set('file:///c%3A/yard/parts/catalogue.shaft', CATALOGUE.replaceAll('\n', '\r\n'));
      const text = `import "${written}"\n${VESSEL}`.replaceAll('\n', '\r\n');
      const uri = `${folder}/spec.shaft`;
      shared.workspace.TextDocuments.set(TextDocument.create(uri, 'tailshaft', 1, text));
      await queue.settled();
      const document = shared.workspace.LangiumDocuments.getDocument(URI.parse(uri))!;
      const check = project.check(document);
      expect(
        check.problems.map(one => one.message),
        written,
      ).toEqual([]);
      expect(
        check.vessels[0]!.verdicts.some(one => one.outcome === 'holds'),
        written,
      ).toBe(true);
      expect(bed.failures).toEqual([]);
    }
  });
});
