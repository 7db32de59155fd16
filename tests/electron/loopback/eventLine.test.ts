// The line on which the window is told what happens: nothing is lost while it is not open, and there is only one.
import { once } from 'node:events';
import { createServer, get, type IncomingMessage, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { EventLine } from '../../../electron/loopback/eventLine.ts';

let line: EventLine;
let server: Server;
beforeEach(async () => {
  line = new EventLine();
  server = createServer((_request, response) => line.open(response));
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
const settled = () => new Promise((resolve) => setTimeout(resolve, 50));

describe('the line', () => {
  it('tells each event as one line of JSON, first those that have waited', async () => {
    line.tell('action', { action: 'undo' });
    const window = await listen();
    line.tell('action', { action: 'redo' });
    await settled();
    expect(window.heard()).toBe(told('undo') + told('redo'));
  });

  it('tells a window that was loaded anew what happened in between, and no event twice', async () => {
    const first = await listen();
    line.tell('action', { action: 'undo' });
    await settled();
    first.leave();
    await settled();
    line.tell('action', { action: 'redo' });
    const second = await listen();
    await settled();
    expect(first.heard()).toBe(told('undo'));
    expect(second.heard()).toBe(told('redo'));
  });

  it('goes to the latest window alone, and the one before is told that it is over', async () => {
    const first = await listen();
    const second = await listen();
    await first.gone;
    line.tell('action', { action: 'undo' });
    await settled();
    expect([first.heard(), second.heard()]).toEqual(['', told('undo')]);
    line.end();
    await second.gone;
  });
});
