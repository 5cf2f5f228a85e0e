import { readdirSync, readFileSync, readlinkSync } from 'node:fs';

export interface RunningProcess {
  readonly pid: number;
  readonly parent: number;
  /** The file that runs. */
  readonly program: string;
  readonly words: readonly string[];
}

/** Every process that the given one started, and that those started, as Linux lists them in /proc. */
export function processesBelow(ancestor: number): readonly RunningProcess[] {
  const all = readdirSync('/proc')
    .filter(name => /^\d+$/.test(name))
    .flatMap(name => running(Number(name)) ?? []);
  const below = (pid: number): RunningProcess[] =>
    all.filter(one => one.parent === pid).flatMap(one => [one, ...below(one.pid)]);
  return below(ancestor);
}

/** Nothing when the process ends while we look. */
function running(pid: number): RunningProcess | undefined {
  try {
    // The name, in parentheses, may hold anything; state and parent follow it: proc(5), /proc/pid/stat.
    const afterName = readFileSync(`/proc/${pid}/stat`, 'utf8').replace(/^.*\)/s, '').trim().split(' ');
    return {
      pid,
      parent: Number(afterName[1]),
      program: readlinkSync(`/proc/${pid}/exe`),
      words: readFileSync(`/proc/${pid}/cmdline`, 'utf8').split('\0').filter(Boolean),
    };
  } catch {
    return undefined;
  }
}
