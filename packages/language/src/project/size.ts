import type { Problem } from '../reading/problem.js';

/** A spec is text of some kilobytes, a large catalogue of a megabyte or two. In characters, or bytes on disk. */
export const LARGEST_SPEC = 4 * 1024 * 1024;

export function isTooLarge(text: string): boolean {
  return text.length > LARGEST_SPEC;
}

export function tooLarge(text: string): Problem {
  return {
    code: 'text/too-large',
    start: 0,
    end: Math.max(1, text.slice(0, 200).search(/[\r\n]|$/)),
    severity: 'error',
    message: `This file is ${megabytes(text.length)} MB, and a spec of more than ${megabytes(LARGEST_SPEC)} MB is not read: nothing in it is checked. Split it, and import the parts.`,
  };
}

export function megabytes(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(1).replace(/\.0$/, '');
}
