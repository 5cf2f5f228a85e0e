import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { exampleFiles, exampleSpec, withWrongHand } from '../workbench/subject.js';

export interface MistakenExample {
  readonly folder: string;
  readonly spec: string;
  /** The text with one propeller's hand turned round, as it stands on disk. */
  readonly text: string;
  readonly asWritten: string;
  /** Offset of the wrong word. */
  readonly place: number;
  readonly right: string;
  remove(): void;
}

/** A copy on disk of the example repower with one propeller of the wrong hand, for editors to open. */
export function mistakenExample(): MistakenExample {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'tailshaft-example-')));
  const files = exampleFiles();
  const asWritten = files[exampleSpec]!;
  const { text, right, place } = withWrongHand(asWritten);
  for (const [path, content] of Object.entries({ ...files, [exampleSpec]: text })) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return {
    folder,
    spec: join(folder, exampleSpec),
    text,
    asWritten,
    place,
    right,
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
