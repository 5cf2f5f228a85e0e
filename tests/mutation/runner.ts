import { setMaxListeners } from 'node:events';
import { writeFileSync } from 'node:fs';
import { TestRunner } from 'vitest';

/** Which mutant is at work, those met since the last look, and those that a test has told apart. */
interface State {
  active: number;
  calls: number;
  met: Set<number>;
  killed: Map<number, string>;
  reached: Set<number>;
  /** What trying each has cost, ms: in all, and in the suite that runs. */
  spent: Map<number, number>;
  spentHere: Map<number, number>;
  suite: string;
}

const shared = globalThis as unknown as { __mutation?: State; __mutant?: (id: number) => boolean };

function stateOf(): State {
  if (shared.__mutation) return shared.__mutation;
  const state: State = {
    active: -1,
    calls: 0,
    met: new Set(),
    killed: new Map(),
    reached: new Set(),
    spent: new Map(),
    spentHere: new Map(),
    suite: '',
  };
  shared.__mutation = state;
  shared.__mutant = id => {
    if (state.active < 0) state.met.add(id);
    else if (state.active === id) {
      // A loop whose end was mutated away.
      if (++state.calls > 2_000_000) throw new Error('without end');
      return true;
    }
    return false;
  };
  return state;
}
const state = stateOf();
/** Those that no test could tell, each with its reason in `equivalent.mjs`. */
const leftOut = new Set<number>(JSON.parse(process.env.MUTATION_LEFT_OUT ?? '[]'));
// A test that runs a hundred times listens a hundred times for its own end.
setMaxListeners(0);

/** Processor time that a mutant may cost in all and in one suite, ms: what outlives it counts as unseen. */
const IN_ALL = Number(process.env.MUTATION_TIME ?? 3000);
const IN_ONE_SUITE = IN_ALL / 4;
const cpuTime = () => process.cpuUsage().user / 1000;

/**
 * Runs each test as it is, which shows the mutants that it meets; then once more under each of these that no test has
 * told apart yet. A test that fails now has. A test that many meet and that takes long would cost hours: a mutant has its
 * time, and its score is the lower for it.
 */
export default class MutationRunner extends TestRunner {
  async runTask(test: Parameters<NonNullable<TestRunner['onBeforeRunTask']>>[0]): Promise<void> {
    const run = TestRunner.getTestFn(test);
    state.met.clear();
    await run();
    const suite = test.file.filepath;
    if (suite !== state.suite) {
      state.suite = suite;
      state.spentHere.clear();
    }
    const alive = [...state.met].filter(id => !state.killed.has(id) && !leftOut.has(id));
    for (const id of state.met) state.reached.add(id);
    for (const id of alive) {
      const [spent, here] = [state.spent.get(id) ?? 0, state.spentHere.get(id) ?? 0];
      if (spent > IN_ALL || here > IN_ONE_SUITE) continue;
      const began = cpuTime();
      state.active = id;
      state.calls = 0;
      try {
        await run();
      } catch {
        state.killed.set(id, test.name);
      } finally {
        state.active = -1;
      }
      const took = cpuTime() - began;
      state.spent.set(id, spent + took);
      state.spentHere.set(id, here + took);
    }
  }

  override onAfterRunFiles(): void {
    super.onAfterRunFiles?.();
    const spent = [...state.spent].filter(([id, ms]) => ms > IN_ALL && !state.killed.has(id));
    writeFileSync(
      process.env.MUTATION_REPORT!,
      JSON.stringify({
        killed: [...state.killed],
        reached: [...state.reached],
        given: spent.map(([id]) => id),
      }),
    );
  }
}
