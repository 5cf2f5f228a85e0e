import { startBrowserServer } from '@tailshaft/language/browser';
import { answerExtension } from './answers.js';

const services = startBrowserServer(globalThis, { asksForPages: true });
// A worker that an editor wraps does not know where its script came from, and parts of it are read later.
services.shared.lsp.LanguageServer.onInitialize(({ initializationOptions }) => {
  (globalThis as { tailshaftScripts?: string | undefined }).tailshaftScripts = (
    initializationOptions as { scripts?: string } | undefined
  )?.scripts;
});
answerExtension(services);
