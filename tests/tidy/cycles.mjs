/** The first circle of arrows, its first member repeated at the end, or undefined when there is none. */
export function firstCycle(arrows) {
  const finished = new Set();
  for (const start of arrows.keys()) {
    const found = walk(start);
    if (found) return found;
  }
  return undefined;

  // A walk with its own stack, so that a long chain of files cannot overflow the call stack.
  function walk(start) {
    if (finished.has(start)) return undefined;
    const path = [start];
    const onPath = new Set(path);
    const pending = [[...(arrows.get(start) ?? [])]];
    while (path.length > 0) {
      const next = pending.at(-1).pop();
      if (next === undefined) {
        pending.pop();
        const done = path.pop();
        onPath.delete(done);
        finished.add(done);
      } else if (onPath.has(next)) {
        return [...path.slice(path.indexOf(next)), next];
      } else if (!finished.has(next)) {
        path.push(next);
        onPath.add(next);
        pending.push([...(arrows.get(next) ?? [])]);
      }
    }
    return undefined;
  }
}
