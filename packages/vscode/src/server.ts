import { startNodeServer } from '@tailshaft/language/node';

startNodeServer();
