import { startNodeServer } from '@tailshaft/language/node';
import { answerExtension } from './answers.js';

answerExtension(startNodeServer({ asksForPages: true }));
