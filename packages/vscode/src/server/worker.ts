import { startBrowserServer } from '@tailshaft/language/browser';
import { answerExtension } from './answers.js';

answerExtension(startBrowserServer(globalThis, { asksForPages: true }));
