// The loopback server: only this machine's own page, with the link that was handed out, and nothing else gets in.

import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { request as ask } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Loopback, openLoopback } from '../../../electron/loopback/openLoopback.ts';
import { POLICY } from '../../../electron/serve/policy.ts';
import { LOOPBACK, SESSION_HEADER } from '../../../shared/contract/loopback.ts';
import { testFolder } from '../../kit/folder.ts';
import { putSupper } from '../../kit/hostRig.ts';

const folder = testFolder();
let loopback: Loopback;
let port: number;
beforeAll(async () => {
  mkdirSync(join(folder.path, 'renderer'));
  writeFileSync(join(folder.path, 'renderer', 'index.html'), '<!doctype html>');
  loopback = await openLoopback({
    home: join(folder.path, 'home'),
    folder: join(folder.path, 'renderer'),
    version: '1.2.3',
    asked: [],
  });
  port = Number(new URL(loopback.origin).port);
});
afterAll(() => loopback.end());

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: whatever the server says
  readonly json: any;
}

/** A request exactly as it is written here: nothing is added as a browser would. */
function send(
  method: string,
  path: string,
  headers: Record<string, string> = {},
  body?: string | Buffer,
): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const sent = ask({ host: '127.0.0.1', port, method, path, headers, agent: false }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        const text = Buffer.concat(chunks).toString('utf8');
        const json =
          /json/.test(response.headers['content-type'] ?? '') && text !== '' ? JSON.parse(text) : undefined;
        resolve({ status: response.statusCode ?? 0, headers: response.headers, text, json });
      });
    });
    sent.on('error', reject);
    sent.end(body);
  });
}

const post = (path: string, body: unknown, headers: Record<string, string> = {}) =>
  send('POST', path, { origin: loopback.origin, ...headers }, JSON.stringify(body));

const tokenOf = (link: string) => link.split('#token=')[1] ?? '';

/** A session as the page has it. */
async function openSession(): Promise<{ readonly secret: string; readonly cookie: string }> {
  const answer = await post(LOOPBACK.session, { token: tokenOf(loopback.newLink()) });
  return { secret: answer.json.secret, cookie: String(answer.headers['set-cookie']).split(';')[0] ?? '' };
}

describe('the address', () => {
  it('is of this machine alone, on a port of chance', () => {
    expect(loopback.origin).toMatch(/^http:\/\/127\.0\.0\.1:\d{4,5}$/);
  });

  it('is not reached by way of the network', async () => {
    const outside = Object.values(networkInterfaces())
      .flat()
      .find((net) => net?.family === 'IPv4' && !net.internal)?.address;
    // A machine without a network has no such way at all.
    const reached = await new Promise((resolve) => {
      const socket = connect({ host: outside ?? '127.0.0.2', port }, () => resolve(true));
      socket.on('error', () => resolve(false));
    });
    expect(reached).toBe(false);
  });
});

describe('the link', () => {
  it('opens a session once', async () => {
    const token = tokenOf(loopback.newLink());
    const first = await post(LOOPBACK.session, { token });
    expect(first.status).toBe(200);
    expect(first.json.secret).toMatch(/^[\w-]{43}$/);
    const cookie = String(first.headers['set-cookie']);
    expect(cookie).toMatch(/^turnlay-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/);
    expect(cookie).not.toContain(first.json.secret);
    expect((await post(LOOPBACK.session, { token })).status).toBe(403);
  });

  it('is worth nothing once a newer one was handed out', async () => {
    const old = tokenOf(loopback.newLink());
    const current = tokenOf(loopback.newLink());
    expect((await post(LOOPBACK.session, { token: old })).status).toBe(403);
    expect((await post(LOOPBACK.session, { token: current })).status).toBe(200);
  });

  it.each([{ token: 'guess' }, { token: '' }, { token: 7 }, { token: null }, {}, null, 'token', []])(
    'cannot be guessed with %j',
    async (body) => {
      loopback.newLink();
      const answer = await post(LOOPBACK.session, body);
      expect(answer.status).toBe(403);
      expect(answer.headers['set-cookie']).toBeUndefined();
    },
  );

  it('of a new window takes the place of the one before', async () => {
    const first = await openSession();
    const second = await openSession();
    expect((await post('/call/settings/read', {}, { [SESSION_HEADER]: first.secret })).status).toBe(401);
    expect((await post('/call/settings/read', {}, { [SESSION_HEADER]: second.secret })).status).toBe(200);
  });
});

describe('a call', () => {
  it('is answered to the window that has the session', async () => {
    const { secret } = await openSession();
    const answer = await post('/call/app/begin', {}, { [SESSION_HEADER]: secret });
    expect(answer.json.answer).toMatchObject({ version: '1.2.3', shell: 'browser' });
    expect(answer.headers['content-security-policy']).toBe(POLICY);
    expect(answer.headers['cache-control']).toBe('no-store');
  });

  it('is not answered without the secret, nor with the cookie in its place', async () => {
    const { secret, cookie } = await openSession();
    const worth = [undefined, '', 'guess', secret.slice(1), `${secret}x`, cookie.split('=')[1] ?? ''];
    for (const given of worth) {
      const headers: Record<string, string> =
        given === undefined ? { cookie } : { cookie, [SESSION_HEADER]: given };
      expect((await post('/call/app/begin', {}, headers)).status).toBe(401);
      expect((await post(`${LOOPBACK.dropped}?name=a.pdf`, {}, headers)).status).toBe(401);
      expect((await send('GET', LOOPBACK.events, headers)).status).toBe(401);
    }
  });

  it.each([
    'http://evil.example',
    'http://127.0.0.1',
    'http://127.0.0.1:1',
    'http://localhost:PORT',
    'https://127.0.0.1:PORT',
    'null',
    '',
  ])('from the page of %s is turned away', async (origin) => {
    const { secret } = await openSession();
    const headers = { [SESSION_HEADER]: secret, origin: origin.replace('PORT', `${port}`) };
    expect((await send('POST', '/call/app/begin', headers, '{}')).status).toBe(403);
    const token = tokenOf(loopback.newLink());
    const exchange = await send(
      'POST',
      LOOPBACK.session,
      { origin: headers.origin },
      JSON.stringify({ token }),
    );
    expect(exchange.status).toBe(403);
  });

  it('that does not say where it comes from, or comes from another site, is turned away', async () => {
    const { secret } = await openSession();
    const own = { [SESSION_HEADER]: secret };
    expect((await send('POST', '/call/app/begin', own, '{}')).status).toBe(403);
    for (const site of ['cross-site', 'same-site']) {
      const headers = { ...own, origin: loopback.origin, 'sec-fetch-site': site };
      expect((await send('POST', '/call/app/begin', headers, '{}')).status).toBe(403);
      expect((await send('GET', '/', { 'sec-fetch-site': site })).status).toBe(403);
    }
    const headers = { ...own, origin: loopback.origin, 'sec-fetch-site': 'same-origin' };
    expect((await send('POST', '/call/app/begin', headers, '{}')).status).toBe(200);
  });

  it.each([
    'evil.example',
    'evil.example:PORT',
    'localhost:PORT',
    '127.0.0.1',
    '127.0.0.1:1',
    '127.0.0.1.evil.example:PORT',
  ])('under the name %s, bent to this machine, is turned away', async (name) => {
    const { secret } = await openSession();
    const host = name.replace('PORT', `${port}`);
    const headers = { host, origin: loopback.origin, [SESSION_HEADER]: secret };
    expect((await send('POST', '/call/app/begin', headers, '{}')).status).toBe(421);
    expect((await send('GET', '/', { host })).status).toBe(421);
    expect((await send('GET', '/', { host, origin: `http://${host}` })).status).toBe(421);
  });

  it('that the contract does not know, or that asks nonsense, is told so and nothing breaks', async () => {
    const { secret } = await openSession();
    const headers = { [SESSION_HEADER]: secret };
    expect((await post('/call/app/quit', {}, headers)).json.mistake).toContain('no call app.quit');
    expect((await post('/call/settings/change', { ask: { units: 'cubit' } }, headers)).status).toBe(400);
    expect((await post('/call/settings/change', 7, headers)).status).toBe(400);
    expect((await post('/call/app', {}, headers)).status).toBe(404);
    expect((await post('/call/../call/app/begin/..', {}, headers)).status).toBe(404);
    const torn = await send('POST', '/call/app/begin', { ...headers, origin: loopback.origin }, '{"ask":');
    expect(torn.status).toBe(400);
    expect((await post('/call/settings/read', {}, headers)).status).toBe(200);
  });
});

describe('what is sent', () => {
  it('may not be endless: a token, a request and a dropped file each have their limit', async () => {
    const { secret } = await openSession();
    const headers = { [SESSION_HEADER]: secret, origin: loopback.origin };
    const long = (bytes: number) => ({ ...headers, 'content-length': `${bytes}` });
    expect((await send('POST', LOOPBACK.session, headers, Buffer.alloc(1025, 32))).status).toBe(413);
    expect((await send('POST', '/call/app/begin', headers, Buffer.alloc(33 * 1024 * 1024, 32))).status).toBe(
      413,
    );
    // What only says that it will be long is not even waited for.
    for (const path of ['/call/app/begin', `${LOOPBACK.dropped}?name=a.pdf`]) {
      const status = await new Promise((resolve) => {
        const sent = ask({ host: '127.0.0.1', port, method: 'POST', path, headers: long(513 * 1024 * 1024) });
        sent.on('response', (response) => {
          resolve(response.statusCode);
          sent.destroy();
        });
        sent.on('error', () => undefined);
        sent.write('%PDF');
      });
      expect(status).toBe(413);
    }
    expect(
      readdirSync(join(folder.path, 'home', 'taken-in')).filter((name) => name.endsWith('.part')),
    ).toEqual([]);
  });
});

describe('what is loaded', () => {
  it('is the page for everyone on this machine, but art only with the cookie', async () => {
    const { secret, cookie } = await openSession();
    await putSupper(join(folder.path, 'supper.pdf'));
    const bytes = readFileSync(join(folder.path, 'supper.pdf'));
    const dropped = await send(
      'POST',
      `${LOOPBACK.dropped}?name=supper.pdf`,
      { origin: loopback.origin, [SESSION_HEADER]: secret },
      bytes,
    );
    const { art } = dropped.json.answer.value.art;
    expect((await send('GET', '/')).text).toBe('<!doctype html>');
    for (const wrong of [
      undefined,
      'turnlay=x',
      cookie.replace(/.$/, '~'),
      `other=${cookie.split('=')[1]}`,
    ]) {
      const headers: Record<string, string> = wrong === undefined ? {} : { cookie: wrong };
      expect((await send('GET', `/art/${art}`, headers)).status).toBe(401);
      expect((await send('GET', '/proof/x/1.png', headers)).status).toBe(401);
    }
    const whole = await send('GET', `/art/${art}`, { cookie });
    expect([whole.status, whole.headers['content-type']]).toEqual([200, 'application/pdf']);
    const part = await send('GET', `/art/${art}`, { cookie: `a=b; ${cookie}`, range: 'bytes=0-4' });
    expect([part.status, part.text]).toEqual([206, '%PDF-']);
    expect((await send('HEAD', `/art/${art}`, { cookie })).text).toBe('');
  });

  it.each([
    '/../home/settings.json',
    '/%2e%2e/home/settings.json',
    '/..%2f..%2fetc/passwd',
    'http://evil.example/x',
    '//evil.example/',
    '*',
    '/%',
  ])('never leads out of the window’s folder: %s', async (path) => {
    const { cookie } = await openSession();
    const answer = await send('GET', path, { cookie });
    expect([400, 404, 200]).toContain(answer.status);
    expect(answer.status === 200 ? answer.text : '').toMatch(/^(<!doctype html>)?$/);
  });
});
