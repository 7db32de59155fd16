// Electron fetched from behind a proxy, which the environment names as it does for other programs.

import { mkdirSync } from 'node:fs';
import { createServer, type IncomingMessage } from 'node:http';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { afterAll, expect, it, vi } from 'vitest';
import { fetchElectron } from '../../build/fetchElectron.ts';
import { ElectronMirror, houseWithElectron } from '../kit/electronMirror.ts';
import { testFolder } from '../kit/folder.ts';

const folder = testFolder();
const mirror = new ElectronMirror('#!/bin/sh\n');
const throughProxy: string[] = [];
const proxy = createServer();
afterAll(async () => {
  vi.unstubAllEnvs();
  proxy.closeAllConnections();
  proxy.close();
  await mirror.close();
});

it('Electron is fetched through the proxy of this network', async () => {
  const { port } = new URL(await mirror.open());
  // A tunnel to the one server that there is, whatever its name.
  proxy.on('connect', ({ url = '' }: IncomingMessage, client: Socket) => {
    throughProxy.push(url);
    const server = connect(Number(port), '127.0.0.1', () => {
      client.write('HTTP/1.1 200 Connection established\r\n\r\n');
      client.pipe(server).pipe(client);
    });
    server.on('error', () => client.destroy());
    client.on('error', () => server.destroy());
  });
  await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve));
  const house = join(folder.path, 'house');
  houseWithElectron(house);
  mkdirSync(join(house, 'scratch'));
  for (const name of ['HTTPS_PROXY', 'https_proxy', 'http_proxy', 'NO_PROXY', 'no_proxy'])
    vi.stubEnv(name, undefined);
  vi.stubEnv('HTTP_PROXY', `http://127.0.0.1:${(proxy.address() as AddressInfo).port}`);
  vi.stubEnv('ELECTRON_MIRROR', 'http://electron.invalid/');
  vi.stubEnv('electron_config_cache', join(house, 'cache'));
  vi.stubEnv('electron_use_remote_checksums', '1');
  const fetched = await fetchElectron({ house, onProgress: () => undefined });
  expect(fetched).toEqual({ ok: true, binary: join(house, 'node_modules/electron/dist/electron') });
  expect(throughProxy[0]).toBe('electron.invalid:80');
});
