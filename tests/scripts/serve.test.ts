import { spawn, type ChildProcess } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';

let folder = '';
const running: ChildProcess[] = [];

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'page-'));
  mkdirSync(path.join(folder, 'dist/assets'), { recursive: true });
  writeFileSync(path.join(folder, 'secret.txt'), 'secret');
  writeFileSync(path.join(folder, 'dist/index.html'), '<html>page</html>');
  writeFileSync(path.join(folder, 'dist/assets/a.js'), 'a()');
  writeFileSync(path.join(folder, 'dist/assets/a.woff2'), 'font');
});
afterAll(() => {
  for (const server of running) server.kill();
  rmSync(folder, { recursive: true });
});

/** Starts the server and gives the address that it prints, or its exit code. */
function serve(...words: string[]): Promise<string> {
  const server = spawn(process.execPath, ['scripts/serve.mjs', '--dir', path.join(folder, 'dist'), ...words]);
  running.push(server);
  return new Promise((resolve) => {
    server.stdout.on('data', (text: Buffer) => resolve(/http:\S+/.exec(text.toString())![0]));
    server.on('exit', (code) => resolve(`exit ${code}`));
  });
}

/** Status, type and body for a path sent as it is written, dots included. */
function get(address: string, rawPath: string): Promise<{ status: number; type: string; body: string; location: string }> {
  const { port } = new URL(address);
  return new Promise((resolve, reject) => {
    request({ host: '127.0.0.1', port, path: rawPath }, (response) => {
      let body = '';
      response.on('data', (text: Buffer) => (body += text.toString()));
      response.on('end', () => resolve({ status: response.statusCode!, type: response.headers['content-type'] ?? '', body, location: response.headers.location ?? '' }));
    })
      .on('error', reject)
      .end();
  });
}

it('serves the page and its files with their types', async () => {
  const address = await serve('--port', '0');
  expect(await get(address, '/?run=1')).toMatchObject({ status: 200, type: 'text/html; charset=utf-8', body: '<html>page</html>' });
  expect(await get(address, '/assets/a.js')).toMatchObject({ status: 200, type: 'text/javascript; charset=utf-8' });
  expect(await get(address, '/assets/a.woff2')).toMatchObject({ status: 200, type: 'font/woff2' });
  expect(await get(address, '/assets/b.js')).toMatchObject({ status: 404 });
});

it('gives out nothing beside its folder', async () => {
  const address = await serve('--port', '0');
  for (const way of ['/../secret.txt', '/assets/../../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/%00', '/%']) {
    expect((await get(address, way)).status, way).toBe(404);
  }
});

it('serves below a path as a shared server would', async () => {
  const address = await serve('--port', '0', '--base', '/ward/trainer');
  expect(address).toMatch(/\/ward\/trainer\/$/);
  expect(await get(address, '/ward/trainer/assets/a.js')).toMatchObject({ status: 200 });
  expect(await get(address, '/ward/trainer?x=1')).toMatchObject({ status: 308, location: '/ward/trainer/?x=1' });
  expect(await get(address, '/assets/a.js')).toMatchObject({ status: 404 });
});

it('takes the next port when one is in use, unless told not to', async () => {
  const other = createServer();
  await new Promise<void>((resolve) => void other.listen(0, '127.0.0.1', resolve));
  const { port } = other.address() as { port: number };
  expect(Number(new URL(await serve('--port', String(port))).port)).toBeGreaterThan(port);
  expect(await serve('--port', String(port), '--strict')).toBe('exit 1');
  other.close();
});

it('says what to do when nothing is built', async () => {
  const server = spawn(process.execPath, ['scripts/serve.mjs', '--dir', path.join(folder, 'none')]);
  const said = await new Promise<string>((resolve) => void server.stderr.on('data', (text: Buffer) => resolve(text.toString())));
  expect(said).toContain('npm run build');
});
