import { inject } from 'langium';
import { createDefaultModule, createDefaultSharedModule, startLanguageServer } from 'langium/lsp';
import { NodeFileSystem } from 'langium/node';
import { createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import {
  TailshaftGeneratedModule,
  TailshaftGeneratedSharedModule,
} from '../../packages/language/src/generated/module.js';

/* A server of the same grammar that only parses and links, by the services that come with Langium: what a key costs at least. */

const connection = createConnection(ProposedFeatures.all);
const shared = inject(
  createDefaultSharedModule({ connection, ...NodeFileSystem }),
  TailshaftGeneratedSharedModule,
);
const language = inject(createDefaultModule({ shared }), TailshaftGeneratedModule);
shared.ServiceRegistry.register(language);
startLanguageServer(shared);
