// Shows the product at work: the example repower is checked, then its sheet is printed.
import { existsSync } from 'node:fs';
import { installIfNeeded, root, run, statusOf } from './install.mjs';

const cli = 'packages/cli/dist/tailshaft.cjs';
const example = 'examples/pilot-cutter/ternhaven.shaft';

installIfNeeded();
run(process.execPath, ['.ci/build.mjs']);
if (!existsSync(new URL(cli, root))) {
  console.error(`The build left no ${cli}, so there is nothing to start.`);
  process.exit(2);
}

console.log(
  `\nChecking ${example}: will the new engines, gears and propellers work with what stays aboard?\n`,
);
const verdict = tailshaft('check', example);
console.log(
  verdict === 0
    ? '\nEverything that could be judged holds. The sheet for the owner and the yard:\n'
    : '\nThe findings above want a decision before parts are ordered. The sheet as it stands:\n',
);
tailshaft('sheet', example);
console.log(`
To look at your own spec:    node ${cli} check path/to/your.shaft
To see what else it can do:  node ${cli} --help
To write specs in VS Code:   npm run package, then install the VSIX from packages/vscode`);

/** Findings are an answer; only a command that could not run ends the demonstration. */
function tailshaft(...words) {
  const status = statusOf(process.execPath, [cli, ...words]);
  if (status > 1) process.exit(status);
  return status;
}
