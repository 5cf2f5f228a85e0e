import {
  type DefaultIndexManager,
  DefaultLinker,
  type IndexManager,
  MultiMap,
  type ScopeComputation,
  stream,
} from 'langium';

/*
 * The grammar has no cross-references: names are resolved by the project, from readings. The library's phases for
 * references would walk the whole tree for nothing, so each of them is a step that costs nothing.
 */

export class NoIndex implements IndexManager {
  remove(): void {}
  removeContent(): void {}
  removeReferences(): void {}
  async updateContent(): Promise<void> {}
  async updateReferences(): Promise<void> {}
  isAffected(): boolean {
    return false;
  }
  allElements(): ReturnType<DefaultIndexManager['allElements']> {
    return stream([]);
  }
  findAllReferences(): ReturnType<DefaultIndexManager['findAllReferences']> {
    return stream([]);
  }
}

export const noScopes: ScopeComputation = {
  collectExportedSymbols: async () => [],
  collectLocalSymbols: async () => new MultiMap(),
};

export class NoLinks extends DefaultLinker {
  override async link(): Promise<void> {}
  override unlink(): void {}
}
