import { join } from 'node:path';
import { runCompiled } from './compiled-program.js';

// The program stands beside this file.
runCompiled(join(__dirname, 'program.cjs'), process.argv[2]);
