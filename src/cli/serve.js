/** Serves a built folder on this machine only, with the real security headers. Used by `npm start`, tests and bench. */
import { createServer } from 'node:http';
import sirv from 'sirv';
import { securityHeaders } from './security-headers.js';

const listen = (server, port) =>
  new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(server.address().port));
  });

/**
 * @param {{ folder: string, port?: number, under?: string }} options port 0 = any free one; `under` serves from a sub-path such as `/some/place`
 * @returns {Promise<{ url: string, close: () => Promise<void> }>}
 */
export const serve = async ({ folder, port = 0, under = '' }) => {
  const files = sirv(folder, { etag: true, dev: true });
  const server = createServer((request, response) => {
    const path = request.url ?? '/';
    for (const [name, value] of Object.entries(securityHeaders(path.split('?')[0]))) response.setHeader(name, value);
    const missing = () => {
      response.statusCode = 404;
      response.end('Not found');
    };
    if (!path.startsWith(`${under}/`)) return missing();
    request.url = path.slice(under.length);
    files(request, response, missing);
  });
  const taken = await listen(server, port).catch((error) => {
    if (error.code === 'EADDRINUSE' && port !== 0) return listen(server, 0);
    throw error;
  });
  return {
    url: `http://127.0.0.1:${taken}${under}/`,
    close: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(() => resolve());
      }),
  };
};
