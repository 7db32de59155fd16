// A stand-in of the server that Electron is fetched from, on this machine, with a house to fetch it into.
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { zipOf } from './zipOf.ts';

const here = join(import.meta.dirname, '../../node_modules');

/** What the server does with the archive. */
export type Manner = 'whole' | 'damaged' | 'missing' | 'silent' | 'stalling' | 'breaking-off';

export class ElectronMirror {
  manner: Manner = 'whole';
  /** What was asked for, in order. */
  readonly asked: string[] = [];
  readonly #server: Server;

  /** `electron` is the program that the archive holds. */
  constructor(readonly electron: string) {
    this.#server = createServer((request, response) => this.#answer(request, response));
  }

  /** Gives the address. */
  async open(): Promise<string> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}/`;
  }

  async close(): Promise<void> {
    this.#server.closeAllConnections();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  #answer({ url = '' }: IncomingMessage, response: ServerResponse): void {
    this.asked.push(url);
    const zip = zipOf({ electron: this.electron, version: '45.5.0' });
    if (url.endsWith('/SHASUMS256.txt')) {
      const name = `electron-v45.5.0-${process.platform}-${process.arch}.zip`;
      response.end(`${createHash('sha256').update(zip).digest('hex')} *${name}\n`);
      return;
    }
    if (this.manner === 'silent') return;
    if (this.manner === 'missing') {
      response.writeHead(404).end('not here');
      return;
    }
    response.writeHead(200, { 'content-length': zip.length });
    if (this.manner === 'whole') response.end(zip);
    else if (this.manner === 'damaged') response.end(Buffer.from(zip).fill(0, 40, 48));
    else {
      response.write(zip.subarray(0, zip.length / 2), () => {
        if (this.manner === 'breaking-off') response.destroy();
      });
    }
  }
}

/** A house in a folder in which the package of Electron is installed as npm installs it: without its binary. */
export function houseWithElectron(house: string): string {
  const electron = join(house, 'node_modules/electron');
  mkdirSync(join(electron, 'node_modules'), { recursive: true });
  writeFileSync(join(house, 'package.json'), '{}');
  for (const name of ['package.json', 'checksums.json']) {
    copyFileSync(join(here, 'electron', name), join(electron, name));
  }
  for (const scope of ['@electron', '@electron-internal']) {
    symlinkSync(join(here, scope), join(electron, 'node_modules', scope), 'junction');
  }
  return electron;
}
