#!/usr/bin/env node
/**
 * Serves the built page from dist/ to this machine alone.
 * Usage: node scripts/serve.mjs [--port 4173] [--strict] [--base /sub/path] [--dir dist]
 * Takes the next free port when the asked one is in use, unless --strict. --base serves it below a path, as a shared server would.
 */
import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { parseArgs } from 'node:util';

const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.gz': 'application/gzip',
};
const PORTS_TRIED_MAX = 50;

/** File below `dir` for a request's path, or null when there is none (or it would leave `dir`). */
function fileFor(dir, base, requestPath) {
  if (!requestPath.startsWith(base)) return null;
  let wanted;
  try {
    wanted = decodeURIComponent(requestPath.slice(base.length));
  } catch {
    return null;
  }
  if (wanted.includes('\0')) return null;
  let file = path.resolve(dir, `./${wanted}`);
  if (file !== dir && !file.startsWith(dir + path.sep)) return null;
  if (existsSync(file) && statSync(file).isDirectory()) file = path.join(file, 'index.html');
  return existsSync(file) ? file : null;
}

function answer(dir, base, request, response) {
  const url = new URL(request.url, 'http://localhost');
  if (`${url.pathname}/` === base) {
    response.writeHead(308, { location: base + url.search }).end();
    return;
  }
  const file = request.method === 'GET' || request.method === 'HEAD' ? fileFor(dir, base, url.pathname) : null;
  if (!file) {
    response.writeHead(404, { 'content-type': 'text/plain; charset=utf-8' }).end('Not found\n');
    return;
  }
  const type = TYPES[path.extname(file)] ?? 'application/octet-stream';
  response.writeHead(200, { 'content-type': type, 'content-length': statSync(file).size, 'cache-control': 'no-cache', 'x-content-type-options': 'nosniff' });
  if (request.method === 'HEAD') response.end();
  else createReadStream(file).pipe(response);
}

function listen(server, port, triesLeft, strict, report) {
  server.once('error', (error) => {
    if (error.code === 'EADDRINUSE' && !strict && triesLeft > 0) return listen(server, port + 1, triesLeft - 1, strict, report);
    console.error(error.code === 'EADDRINUSE' ? `Port ${port} is in use.` : error.message);
    process.exitCode = 1;
  });
  server.listen(port, '127.0.0.1', () => report(server.address().port));
}

const { values } = parseArgs({
  options: { port: { type: 'string', default: '4173' }, strict: { type: 'boolean', default: false }, base: { type: 'string', default: '/' }, dir: { type: 'string', default: 'dist' } },
});
const dir = path.resolve(values.dir);
const base = `/${values.base.split('/').filter(Boolean).map(encodeURIComponent).join('/')}/`.replace('//', '/');
if (!existsSync(path.join(dir, 'index.html'))) {
  console.error(`There is no page in ${values.dir}/. Build it first: npm run build`);
  process.exit(1);
}
const server = createServer((request, response) => answer(dir, base, request, response));
listen(server, Number(values.port), PORTS_TRIED_MAX, values.strict, (port) => console.log(`The trainer runs at http://127.0.0.1:${port}${base}  (stop with Ctrl+C)`));
