// Runs in the extension host's Node process. A page of the server hands no commands to the test, so the
// test sends them here, through a socket whose path is in the environment.
const fs = require('node:fs');
const http = require('node:http');
const vscode = require('vscode');
const { registerCommands } = require('./extension.js');

exports.activate = context => {
  registerCommands(context);
  const server = http.createServer(async (request, response) => {
    const parts = [];
    for await (const part of request) parts.push(part);
    const { command, given } = JSON.parse(Buffer.concat(parts).toString());
    let answer;
    try {
      answer = { result: await vscode.commands.executeCommand(command, ...given) };
    } catch (problem) {
      answer = { problem: String(problem) };
    }
    response.end(JSON.stringify(answer));
  });
  // A window that is loaded anew gets another process; the one before it may have left its socket.
  fs.rmSync(process.env.TAILSHAFT_TEST_SOCKET, { force: true });
  server.listen(process.env.TAILSHAFT_TEST_SOCKET);
  context.subscriptions.push(new vscode.Disposable(() => server.close()));
};
