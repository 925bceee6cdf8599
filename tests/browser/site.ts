/** The built site behind a port of this machine, for the time of a test. */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const site = fileURLToPath(new URL('../../docs/site', import.meta.url));
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

export async function served(): Promise<{ readonly url: string; readonly close: () => void }> {
  if (!existsSync(join(site, 'live/index.html'))) throw new Error('no docs/site: npm run docs first');
  const server = createServer((request, response) => {
    const file = join(site, normalize(new URL(request.url ?? '/', 'http://localhost').pathname));
    if (request.url === '/favicon.ico') {
      response.writeHead(204).end(); // asked for by the browser of its own accord
      return;
    }
    if (!file.startsWith(site) || !existsSync(file) || !statSync(file).isFile()) {
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
