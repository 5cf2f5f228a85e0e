import { startBrowserServer } from '@tailshaft/language/browser';

startBrowserServer(globalThis);
