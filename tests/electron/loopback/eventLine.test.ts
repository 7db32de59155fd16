// The line on which the window is told what happens: nothing is lost while it is not open, and there is only one.
import { once } from 'node:events';
import { createServer, get, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { EventLine } from '../../../electron/loopback/eventLine.ts';

let line: EventLine;
let server: Server;
/** What the server answers on, one for each window that came. */
let opened: ServerResponse[];
beforeEach(async () => {
  line = new EventLine();
  opened = [];
  server = createServer((_request, response) => {
    opened.push(response);
    line.open(response);
  });
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
});
afterEach(() => {
  server.close();
  server.closeAllConnections();
});

/** A window that listens, and all it has heard. */
async function listen(): Promise<{
  readonly heard: () => string;
  readonly gone: Promise<unknown>;
  leave(): void;
}> {
  const asked = get({ host: '127.0.0.1', port: (server.address() as AddressInfo).port, agent: false });
  const [response] = (await once(asked, 'response')) as [IncomingMessage];
  let heard = '';
  response.on('data', (chunk: Buffer) => {
    heard += chunk.toString('utf8');
  });
  response.on('error', () => undefined);
  return {
    heard: () => heard,
    gone: new Promise((resolve) => response.on('close', resolve)),
    leave: () => asked.destroy(),
  };
}

const told = (action: 'undo' | 'redo') => `${JSON.stringify({ event: 'action', told: { action } })}\n`;

/** Waits until a window has heard so much, and nothing else. */
const hears = (window: { heard: () => string }, all: string) =>
  vi.waitFor(() => expect(window.heard()).toBe(all), { timeout: 100_000 });

describe('the line', () => {
  it('tells each event as one line of JSON, first those that have waited', async () => {
    line.tell('action', { action: 'undo' });
    const window = await listen();
    line.tell('action', { action: 'redo' });
    await hears(window, told('undo') + told('redo'));
  });

  it('tells a window that was loaded anew what happened in between, and no event twice', async () => {
    const first = await listen();
    line.tell('action', { action: 'undo' });
    await hears(first, told('undo'));
    const left = once(opened[0] as ServerResponse, 'close');
    first.leave();
    await left;
    line.tell('action', { action: 'redo' });
    const second = await listen();
    await hears(second, told('redo'));
    expect(first.heard()).toBe(told('undo'));
  });

  it('goes to the latest window alone, and the one before is told that it is over', async () => {
    const first = await listen();
    const second = await listen();
    await first.gone;
    line.tell('action', { action: 'undo' });
    await hears(second, told('undo'));
    expect(first.heard()).toBe('');
    line.end();
    await second.gone;
  });
});
