/** A folder behind a port of this machine, for the time of a test. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

export async function served(folder: string): Promise<{ readonly url: string; readonly close: () => void }> {
  const server = createServer((request, response) => {
    const file = join(folder, normalize(new URL(request.url ?? '/', 'http://localhost').pathname));
    if (request.url === '/favicon.ico') {
      response.writeHead(204).end(); // asked for by the browser of its own accord
      return;
    }
    if (!file.startsWith(folder) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${String(port)}`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}
