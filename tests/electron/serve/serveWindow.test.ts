// What the window loads: its own files, art by handle with ranges, pictures, and nothing else on the disk.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { POLICY } from '../../../electron/serve/policy.ts';
import { readRange } from '../../../electron/serve/range.ts';
import { serveWindow } from '../../../electron/serve/serveWindow.ts';
import { testFolder } from '../../kit/folder.ts';

const folder = testFolder();
const window = join(folder.path, 'renderer');
mkdirSync(join(window, 'pdfjs'), { recursive: true });
writeFileSync(join(window, 'index.html'), '<!doctype html>');
writeFileSync(join(window, 'worker.mjs'), 'postMessage(1)');
writeFileSync(join(window, '.env'), 'secret');
writeFileSync(join(window, 'program.exe'), 'MZ');
writeFileSync(join(window, 'pdfjs', 'a.wasm'), 'wasm');
const secret = folder.save('secret.json', '{}');
const pdf = folder.save('card.pdf', '0123456789');
const empty = folder.save('empty.pdf', '');

const HANDLE = 'a'.repeat(32);
const EMPTY = 'b'.repeat(32);
const paths: Readonly<Record<string, string>> = {
  [HANDLE]: pdf,
  [EMPTY]: empty,
  ['c'.repeat(32)]: folder.path,
};
const serve = serveWindow(window, {
  artPath: (art) => paths[art],
  picture: (address) => (address === '/proof/x/1.png' ? Buffer.from('png') : undefined),
});
const get = (path: string, headers: Record<string, string> = {}, method = 'GET') =>
  serve(new Request(`http://127.0.0.1:1${path}`, { method, headers }));

describe('the window’s own files', () => {
  it('are served with their kind, modules and WebAssembly as browsers insist on them', async () => {
    const page = await get('/');
    expect([page.status, page.headers.get('content-type'), await page.text()]).toEqual([
      200,
      'text/html; charset=utf-8',
      '<!doctype html>',
    ]);
    expect((await get('/worker.mjs')).headers.get('content-type')).toBe('text/javascript; charset=utf-8');
    expect((await get('/pdfjs/a.wasm')).headers.get('content-type')).toBe('application/wasm');
  });

  it('carry the policy, whatever is answered', async () => {
    for (const path of ['/', '/worker.mjs', `/art/${HANDLE}`, '/proof/x/1.png', '/nothing', '/%ff']) {
      const { headers } = await get(path);
      expect(headers.get('content-security-policy')).toBe(POLICY);
      expect(headers.get('x-content-type-options')).toBe('nosniff');
    }
    expect(POLICY).toContain("default-src 'none'");
    expect(POLICY).not.toMatch(/unsafe-inline|'unsafe-eval'|\*/);
  });

  it.each([
    '/../secret.json',
    '/%2e%2e/secret.json',
    '/%2e%2e%2fsecret.json',
    '/..%5csecret.json',
    '/pdfjs/%2e%2e/%2e%2e/secret.json',
    '/pdfjs/..%2f..%2fsecret.json',
    `/${encodeURIComponent(secret)}`,
    '//etc/hosts.json',
    '/.env',
    '/program.exe',
    '/pdfjs',
    '/worker.mjs%00.html',
    '/%ff.html',
    '/C:%5csecret.json',
    '/art/../secret.json',
    '/art/secret.json',
    `/art/${HANDLE}0`,
    `/art/${'d'.repeat(32)}`,
    `/art/${'c'.repeat(32)}`,
    '/proof/../secret.json',
    '/proof/x/2.png',
  ])('do not include %s', async (path) => {
    const answer = await get(path);
    expect(answer.status).toBe(404);
    expect(await answer.text()).toBe('');
  });

  it('are only read', async () => {
    for (const method of ['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS']) {
      const answer = await get('/', {}, method);
      expect([answer.status, answer.headers.get('allow')]).toEqual([405, 'GET, HEAD']);
    }
  });
});

describe('art', () => {
  it('is served whole or in parts', async () => {
    const whole = await get(`/art/${HANDLE}`);
    expect([whole.status, await whole.text(), whole.headers.get('accept-ranges')]).toEqual([
      200,
      '0123456789',
      'bytes',
    ]);
    const part = await get(`/art/${HANDLE}`, { range: 'bytes=2-4' });
    expect([part.status, await part.text(), part.headers.get('content-range')]).toEqual([
      206,
      '234',
      'bytes 2-4/10',
    ]);
    const beyond = await get(`/art/${HANDLE}`, { range: 'bytes=10-' });
    expect([beyond.status, beyond.headers.get('content-range')]).toEqual([416, 'bytes */10']);
    expect((await get(`/art/${EMPTY}`)).status).toBe(200);
  });

  it('is never kept by the browser, since it may change on the disk', async () => {
    expect((await get(`/art/${HANDLE}`)).headers.get('cache-control')).toBe('no-store');
  });
});

describe('a Range header', () => {
  // RFC 9110, 14.1.2, with its examples for a representation of 10 000 bytes.
  it.each([
    ['bytes=0-499', { from: 0, to: 499 }],
    ['bytes=500-999', { from: 500, to: 999 }],
    ['bytes=-500', { from: 9500, to: 9999 }],
    ['bytes=9500-', { from: 9500, to: 9999 }],
    ['bytes=9500-20000', { from: 9500, to: 9999 }],
    ['bytes=-20000', { from: 0, to: 9999 }],
    ['bytes=9999-9999', { from: 9999, to: 9999 }],
    ['bytes=10000-', 'unsatisfiable'],
    ['bytes=-0', 'unsatisfiable'],
    ['bytes=5-4', undefined],
    ['bytes=0-0,-1', undefined],
    ['bytes=-', undefined],
    ['lines=0-4', undefined],
    ['', undefined],
    [null, undefined],
  ])('%j means %j', (header, range) => {
    expect(readRange(header, 10_000)).toEqual(range);
  });
});
