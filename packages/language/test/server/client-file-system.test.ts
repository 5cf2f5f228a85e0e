import { URI } from 'langium';
import { describe, expect, it } from 'vitest';
import {
  ClientFileSystem,
  FS_READ_DIRECTORY,
  FS_READ_FILE,
  FS_STAT,
  type FsParams,
} from '../../src/server/client-file-system.js';
import { MemoryFiles, uriOf } from './memory-files.js';

/** A client that answers the three requests from files in memory. */
function client(files: MemoryFiles) {
  const asked: string[] = [];
  const sendRequest = async (method: string, { uri }: FsParams) => {
    asked.push(method);
    const at = URI.parse(uri);
    if (!(await files.exists(at))) return null;
    if (method === FS_STAT) return files.stat(at);
    if (method === FS_READ_FILE) return { text: await files.readFile(at) };
    const entries = (await files.readDirectory(at)).map(one => ({
      ...one,
      name: one.uri.path.split('/').at(-1)!,
    }));
    return { entries };
  };
  return { asked, connection: { sendRequest } as never };
}

describe('files by way of the client', () => {
  const files = new MemoryFiles({ 'parts/gears.shaft': 'gear G { }' });
  const { asked, connection } = client(files);
  const system = new ClientFileSystem(connection);
  const at = (path: string) => URI.parse(uriOf(path));

  it('reads files and folders', async () => {
    expect(await system.readFile(at('parts/gears.shaft'))).toBe('gear G { }');
    expect(await system.exists(at('parts'))).toBe(true);
    expect(await system.stat(at('parts'))).toMatchObject({ isDirectory: true, isFile: false });
    expect((await system.readDirectory(at('parts'))).map(one => one.uri.toString())).toEqual([
      uriOf('parts/gears.shaft'),
    ]);
    expect(new Set(asked)).toEqual(new Set([FS_READ_FILE, FS_STAT, FS_READ_DIRECTORY]));
  });

  it('says of what is not there that it cannot be read', async () => {
    expect(await system.exists(at('gone'))).toBe(false);
    await expect(system.readFile(at('gone'))).rejects.toThrow('/yard/gone cannot be read');
  });
});
