/** A name for a new spec that nothing in the folder has: `vessel.shaft`, `vessel-2.shaft`. */
export function freeName(stem: string, taken: ReadonlySet<string>): string {
  for (let number = 1; ; number++) {
    const name = `${stem}${number === 1 ? '' : `-${number}`}.shaft`;
    if (!taken.has(name)) return name;
  }
}

/** A file or folder as a spec in another folder imports it. */
export function relativeImport(folder: string, target: string): string {
  const from = folder.split('/').filter(Boolean);
  const to = target
    .replace(/\.shaft$/, '')
    .split('/')
    .filter(Boolean);
  let same = 0;
  while (same < from.length && same < to.length - 1 && from[same] === to[same]) same += 1;
  return [...from.slice(same).map(() => '..'), ...to.slice(same)].join('/');
}
