/** The command could not do what was asked: told in a sentence, and the process ends with status 2. */
export class CannotRun extends Error {}

/** The reason of a failed system call in words, without codes or paths of the machine. */
export function reasonOf(error: unknown): string {
  const code = (error as NodeJS.ErrnoException | undefined)?.code;
  if (code && code in REASONS) return REASONS[code as keyof typeof REASONS];
  const message = error instanceof Error ? error.message : String(error);
  return message.split('\n')[0]!;
}

const REASONS = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'this user may not read or write it',
  EPERM: 'this user may not read or write it',
  EISDIR: 'it is a folder',
  ENOTDIR: 'a part of its path is a file, not a folder',
  ELOOP: 'its links lead in a circle',
  ENAMETOOLONG: 'its name is too long',
  EMFILE: 'too many files are open',
  ENOSPC: 'the disk is full',
  EROFS: 'the disk is read-only',
};
