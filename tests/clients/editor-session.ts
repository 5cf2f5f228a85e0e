import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { MistakenExample } from './mistaken-example.js';
import { serverCommand } from './server-command.js';
import { positionAt } from './text-edits.js';

/** What a scripted editor reports of its session. */
export interface SessionReport {
  readonly message: string;
  readonly line: number;
  readonly hover: string;
  readonly titles: readonly string[];
  readonly text: string;
  readonly left: number;
  readonly failure?: string;
}

export const rule = 'rotation/propeller-hand';

/** Runs an editor on the mistaken example; its script finds its orders in TAILSHAFT_SESSION. */
export async function playSession(
  program: string,
  given: readonly string[],
  example: MistakenExample,
  route: string,
): Promise<SessionReport> {
  const scratch = mkdtempSync(join(tmpdir(), 'tailshaft-session-'));
  const out = join(scratch, 'seen.json');
  const { line, character } = positionAt(example.text, example.place + 1);
  const { folder, spec } = example;
  const orders = { command: serverCommand(), folder, spec, line, column: character, rule, route, out };
  try {
    const printed = await run(program, given, {
      ...process.env,
      HOME: scratch,
      XDG_STATE_HOME: scratch,
      TAILSHAFT_SESSION: JSON.stringify(orders),
    });
    let report: SessionReport;
    try {
      report = JSON.parse(readFileSync(out, 'utf8'));
    } catch {
      throw new Error(`${program} left no report. It printed:\n${printed}`);
    }
    if (report.failure) throw new Error(`${program} ${report.failure}. It printed:\n${printed}`);
    return report;
  } finally {
    rmSync(scratch, { recursive: true, force: true });
  }
}

function run(program: string, given: readonly string[], env: NodeJS.ProcessEnv): Promise<string> {
  return new Promise((resolve, reject) => {
    let printed = '';
    const child = spawn(program, given, { env, stdio: ['ignore', 'pipe', 'pipe'], timeout: 120_000 });
    for (const stream of [child.stdout, child.stderr])
      stream.setEncoding('utf8').on('data', (text: string) => {
        printed += text;
      });
    child.once('error', problem => reject(new Error(`${program} could not be started: ${problem.message}`)));
    child.once('close', () => resolve(printed));
  });
}
