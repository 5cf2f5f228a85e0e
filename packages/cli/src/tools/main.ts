import { realpathSync } from 'node:fs';
import { StdioServerTransport } from '@modelcontextprotocol/sdk/server/stdio.js';
import { toolServer } from './server.js';

/**
 * The tools for agents, in a bundle of their own: the protocol's library would double what everybody else starts. The
 * folder that nothing is read outside of is the first argument.
 */
async function main(): Promise<void> {
  const root = realpathSync(process.argv[2] ?? process.cwd());
  const server = toolServer(root);
  await server.connect(new StdioServerTransport());
}

main().catch(error => {
  process.stderr.write(`tailshaft: the tools could not be started: ${String(error)}\n`);
  process.exitCode = 2;
});
