import { EmptyFileSystem, URI } from 'langium';
import { expect, it } from 'vitest';
import { createTailshaftCore, findingsOf } from '../../src/index.js';

it.each([
  ['closed', (depth: number) => `gear G {\n${'{ '.repeat(depth)}${'} '.repeat(depth)}\n}\n`],
  ['left open', (depth: number) => `gear G {\n${'clutch A {\n'.repeat(depth)}`],
])(
  '10,000 blocks within blocks, %s, end in a clear message, and the rest of the file is read',
  async (_, make) => {
    const { shared, language } = createTailshaftCore(EmptyFileSystem);
    const text = `engine E { low idle 600 rpm }\n${make(10_000)}`;
    const document = shared.workspace.LangiumDocumentFactory.fromString(
      text,
      URI.parse('memory:///deep.shaft'),
    );
    await language.project.load(document);
    const check = language.project.check(document);
    expect(findingsOf(check).filter(one => one.message.startsWith('Blocks are nested 24 deep'))).toHaveLength(
      1,
    );
    expect(check.entries[0]?.reading.facts.fields.lowIdle).toBeDefined();
  },
);
