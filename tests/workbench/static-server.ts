import { createReadStream, statSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize, sep } from 'node:path';

/** What a path of the server answers with: a folder of files, or a text made for the test. */
export type Mount = { folder: string } | { text: string; type: string };

export interface StaticServer {
  readonly port: number;
  close(): Promise<void>;
}

/** Serves the mounts on a free port of this machine only. The longest matching prefix answers. */
export async function serveFolders(mounts: Readonly<Record<string, Mount>>): Promise<StaticServer> {
  const prefixes = Object.keys(mounts).sort((a, b) => b.length - a.length);
  const server = createServer((request, response) => {
    const path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const prefix = prefixes.find(each => (each.endsWith('/') ? path.startsWith(each) : path === each));
    const mount = prefix === undefined ? undefined : mounts[prefix];
    response.setHeader('Access-Control-Allow-Origin', '*');
    response.setHeader('Cache-Control', 'no-store');
    if (mount && 'text' in mount) {
      response.setHeader('Content-Type', mount.type);
      response.end(mount.text);
      return;
    }
    const file = mount && fileIn(mount.folder, path.slice(prefix!.length));
    if (!file) {
      response.statusCode = 404;
      response.end();
      return;
    }
    response.setHeader('Content-Type', typeOf(file));
    createReadStream(file).pipe(response);
  });
  const port = await listen(server);
  return {
    port,
    close: () =>
      new Promise(resolve => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

function listen(server: Server): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => resolve((server.address() as AddressInfo).port));
  });
}

function fileIn(folder: string, path: string): string | undefined {
  const file = normalize(join(folder, path));
  if (!file.startsWith(folder + sep)) return undefined;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : undefined;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.mjs': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
};

function typeOf(file: string): string {
  return types[extname(file)] ?? 'application/octet-stream';
}
