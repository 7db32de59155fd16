// The program that builds, started by buildApart.ts: `buildHere.ts FOLDER`.
import { rm } from 'node:fs/promises';
import { join } from 'node:path';
import { build as buildWithVite } from 'vite';
import { describeApp } from './describeApp.ts';
import { buildHost } from './host.ts';
import type { ShippedFiles } from './licences/shippedFiles.ts';
import { writeLicences } from './licences/writeLicences.ts';
import { windowBuild } from './window.ts';

const folder = process.argv[2];
if (process.env.NODE_ENV !== 'production') throw new Error('Only what is built for production ships');
if (folder === undefined) throw new Error('Nobody has said where to build');
await rm(folder, { recursive: true, force: true });
const shipped: ShippedFiles = new Set();
await buildWithVite(windowBuild(join(folder, 'renderer'), shipped));
await buildHost(join(folder, 'host'), shipped);
await writeLicences(shipped, folder);
await describeApp(folder);
