import { URI } from 'langium';
import type { ImportReading } from '../reading/document.js';
import { EXTENSION, importTarget, withoutExtension } from './imports.js';

/**
 * Which files import which, asked the other way round: whom does a change of these files concern? Kept by where imports
 * point, whether or not anything is there, so that a file that comes is met by those who waited for it. An answer costs
 * as much as there is to tell, however many other files there are.
 */
export class Importers {
  private readonly targets = new Map<string, readonly string[]>();
  private readonly byTarget = new Map<string, Set<string>>();

  /** Takes down what a file imports, in the place of what it imported before. */
  note(uri: string, imports: readonly ImportReading[]): void {
    const before = this.targets.get(uri);
    if (!before && imports.length === 0) return;
    const from = URI.parse(uri);
    const now = imports.map(wanted => importTarget(from, wanted).path);
    if (before?.length === now.length && before.every((one, at) => one === now[at])) return;
    this.forget(uri);
    if (now.length === 0) return;
    this.targets.set(uri, now);
    for (const target of now) {
      const known = this.byTarget.get(target);
      if (known) known.add(uri);
      else this.byTarget.set(target, new Set([uri]));
    }
  }

  forget(uri: string): void {
    for (const target of this.targets.get(uri) ?? []) {
      const known = this.byTarget.get(target);
      known?.delete(uri);
      if (known?.size === 0) this.byTarget.delete(target);
    }
    this.targets.delete(uri);
  }

  /** All files that import one of these, directly or by way of others. */
  of(changed: Iterable<string>): Set<string> {
    const found = new Set<string>();
    const waiting = [...changed];
    for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
      for (const target of namesOf(URI.parse(next).path)) {
        for (const uri of this.byTarget.get(target) ?? []) {
          if (found.has(uri)) continue;
          found.add(uri);
          waiting.push(uri);
        }
      }
    }
    return found;
  }
}

/** Every target that brings a file in: its path, with or without the ending, and each folder around it. */
function namesOf(path: string): string[] {
  const names = path.endsWith(EXTENSION) ? [path, withoutExtension(path)] : [path];
  for (let end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1))
    names.push(path.slice(0, end));
  return names;
}
