// The built app: made when the sources have changed, found again when they have not.
import { existsSync } from 'node:fs';
import { mkdir, readdir, rename, rm, stat, utimes } from 'node:fs/promises';
import { join } from 'node:path';
import { build as buildWithVite } from 'vite';
import { describeApp } from './describeApp.ts';
import { buildHost } from './host.ts';
import type { ShippedFiles } from './licences/shippedFiles.ts';
import { writeLicences } from './licences/writeLicences.ts';
import { stampOf } from './stamp.ts';
import { windowBuild } from './window.ts';

const house = join(import.meta.dirname, '..');
const dist = join(house, 'dist');

/** So many builds of earlier sources are kept of each kind, for programs that still run from them. */
const KEPT = 4;

/** Builds the app into a folder: the window into `renderer/`, its host into `host/`, and what it is called. */
export async function buildApp(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true });
  const shipped: ShippedFiles = new Set();
  await buildWithVite(windowBuild(join(folder, 'renderer'), shipped));
  await buildHost(join(folder, 'host'), shipped);
  await writeLicences(shipped, folder);
  await describeApp(folder);
}

/** The folder with the app built from the sources as they are now. `onBuild` is told when it has to be built first. */
export function builtApp(onBuild: () => void): Promise<string> {
  return built('app', async (folder) => {
    onBuild();
    await buildApp(folder);
  });
}

/** The same without the window: only `host/`. */
export function builtHost(): Promise<string> {
  return built('host', (folder) => buildHost(join(folder, 'host')));
}

/** The build of a kind from the sources as they are now. */
async function built(kind: 'app' | 'host', build: (folder: string) => Promise<void>): Promise<string> {
  const folder = join(dist, `${kind}-${stampOf(house)}`);
  if (!existsSync(folder)) {
    const unfinished = join(dist, `unfinished-${kind}-${process.pid}`);
    await mkdir(unfinished, { recursive: true });
    try {
      await build(unfinished);
      // Another may have built the same meanwhile; its build is as good.
      await rename(unfinished, folder).catch(() => undefined);
    } finally {
      await rm(unfinished, { recursive: true, force: true });
    }
  }
  const now = new Date();
  await utimes(folder, now, now);
  await forgetOld(kind);
  return folder;
}

async function forgetOld(kind: string): Promise<void> {
  const names = (await readdir(dist)).filter((name) => name.startsWith(`${kind}-`));
  const aged = await Promise.all(
    names.map(async (name) => ({ name, at: (await stat(join(dist, name))).mtimeMs })),
  );
  const old = aged.toSorted((a, b) => b.at - a.at).slice(KEPT);
  await Promise.all(old.map(({ name }) => rm(join(dist, name), { recursive: true, force: true })));
}
