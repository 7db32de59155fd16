// The program that builds, started by buildApart.ts: `buildHere.ts app FOLDER`, or `cli` in place of `app`.
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { build as buildWithVite } from 'vite';
import type { Product } from './buildApart.ts';
import { describeApp } from './describeApp.ts';
import { buildCli, buildHost } from './host.ts';
import type { ShippedFiles } from './licences/shippedFiles.ts';
import { writeLicences, writeLicencesText } from './licences/writeLicences.ts';
import { windowBuild } from './window.ts';

const PRODUCTS: Readonly<Record<Product, (folder: string) => Promise<void>>> = {
  app: async (folder) => {
    const shipped: ShippedFiles = new Set();
    await buildWithVite(windowBuild(join(folder, 'renderer'), shipped));
    await buildHost(join(folder, 'host'), shipped);
    await writeLicences(shipped, folder);
    await describeApp(folder);
  },
  cli: async (folder) => {
    const shipped: ShippedFiles = new Set();
    await buildCli(folder, shipped);
    await writeLicencesText(shipped, folder);
  },
};

const [what, folder] = process.argv.slice(2);
if (process.env.NODE_ENV !== 'production') throw new Error('Only what is built for production ships');
if (folder === undefined) throw new Error('Nobody has said where to build');
await rm(folder, { recursive: true, force: true });
await PRODUCTS[what as Product](folder);
