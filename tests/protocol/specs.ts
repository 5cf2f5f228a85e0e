import { CATALOGUE, VESSEL, withChange } from '../../packages/language/test/server/specs.js';

export const PARTS = 'catalogue/parts.shaft';
export const SPEC = 'ternhaven.shaft';
export const WRONG_HAND = 'rotation/propeller-hand';

/** The cutter and her catalogue, in two files. */
export const FILES: Readonly<Record<string, string>> = {
  [PARTS]: CATALOGUE,
  [SPEC]: `import "catalogue"\n\n${VESSEL}`,
};

/** The same with a left-hand propeller where a right-hand one is needed. */
export const MISTAKEN: Readonly<Record<string, string>> = {
  ...FILES,
  [SPEC]: withChange('hand right', 'hand left', FILES[SPEC]),
};

/** What an editor that can do everything says of itself. */
export const ABLE = {
  workspace: {
    workspaceEdit: { documentChanges: true },
    workspaceFolders: true,
    configuration: true,
    didChangeWatchedFiles: { dynamicRegistration: true },
    codeLens: { refreshSupport: true },
    inlayHint: { refreshSupport: true },
    semanticTokens: { refreshSupport: true },
    diagnostics: { refreshSupport: true },
    fileOperations: { willRename: true },
  },
  textDocument: {
    publishDiagnostics: { relatedInformation: true, versionSupport: true, dataSupport: true },
    codeAction: {
      dataSupport: true,
      resolveSupport: { properties: ['edit'] },
      codeActionLiteralSupport: { codeActionKind: { valueSet: ['quickfix', 'refactor', 'source'] } },
    },
    callHierarchy: {},
    linkedEditingRange: {},
    rangeFormatting: { rangesSupport: true },
  },
};
