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
}

const shared = globalThis as unknown as { __mutation?: State; __mutant?: (id: number) => boolean };

function stateOf(): State {
  if (shared.__mutation) return shared.__mutation;
  const state: State = { active: -1, calls: 0, met: new Set(), killed: new Map(), reached: new Set() };
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
// A test that runs a hundred times listens a hundred times for its own end.
setMaxListeners(0);

/**
 * Runs each test as it is, which shows the mutants that it meets; then once more under each of these that no test has
 * told apart yet. A test that fails now has.
 */
export default class MutationRunner extends TestRunner {
  async runTask(test: Parameters<NonNullable<TestRunner['onBeforeRunTask']>>[0]): Promise<void> {
    const run = TestRunner.getTestFn(test);
    state.met.clear();
    await run();
    const alive = [...state.met].filter(id => !state.killed.has(id));
    for (const id of state.met) state.reached.add(id);
    for (const id of alive) {
      state.active = id;
      state.calls = 0;
      try {
        await run();
      } catch {
        state.killed.set(id, test.name);
      } finally {
        state.active = -1;
      }
    }
  }

  override onAfterRunFiles(): void {
    super.onAfterRunFiles?.();
    writeFileSync(
      process.env.MUTATION_REPORT!,
      JSON.stringify({ killed: [...state.killed], reached: [...state.reached] }),
    );
  }
}
