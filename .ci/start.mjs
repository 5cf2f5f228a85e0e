// Shows the product at work: the example repower is checked, compared with what is aboard, and its sheet written.
import { existsSync, mkdirSync } from 'node:fs';
import { installIfNeeded, root, run, statusOf } from './install.mjs';

const cli = 'packages/cli/dist/tailshaft.cjs';
const example = 'examples/pilot-cutter/ternhaven.shaft';
const out = 'out';
const sheet = `${out}/ternhaven.html`;

// Nothing but the command line is needed here, and not what it makes PDF and answers agents with.
installIfNeeded({ toRun: true });
run(process.execPath, ['packages/cli/build.mjs', '--program']);
if (!existsSync(new URL(cli, root))) {
  console.error(`The build left no ${cli}, so there is nothing to start.`);
  process.exit(2);
}

console.log(
  `\nChecking ${example}: will the new engines, gears and propellers work with what stays aboard?\n`,
);
const verdict = tailshaft('check', example, '--verdicts');
console.log(
  verdict === 0
    ? '\nEverything that could be judged holds.\n'
    : '\nThe findings above want a decision before parts are ordered.\n',
);
mkdirSync(new URL(out, root), { recursive: true });
tailshaft('sheet', example, '--out', sheet);
console.log(`
The sheet for owner and yard: ${sheet} - open it in any browser, or print it.
What the repower changes:    node ${cli} compare ${example} --arrangements existing proposed
To look at your own spec:    node ${cli} check path/to/your.shaft
To see what else it can do:  node ${cli} --help
To open the spec in VS Code: npm ci, npm run package, then code --install-extension packages/vscode/dist/tailshaft.vsix
                             and code examples`);

/** Findings are an answer; only a command that could not run ends the demonstration. */
function tailshaft(...words) {
  const status = statusOf(process.execPath, [cli, ...words]);
  if (status > 1) process.exit(status);
  return status;
}
