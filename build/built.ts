// What was built before from the same sources is found again; what was not is built once, however many ask for it.
import { existsSync } from 'node:fs';
import { mkdir, readdir, readFile, rename, rm, stat, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';

/** So many builds of earlier sources are kept of each kind, for programs that still run from them. */
const KEPT = 4;

/** How often is looked whether another process has built what is wanted, in ms. */
const LOOK_AGAIN_MS = 200;

/** How old a lock without its owner's number may be, in ms: the number is written at once after it. */
const OWNERLESS_MS = 10_000;

/** The folder with what `build` makes, in `dist`. `stamp` says from what it is made. */
export async function built(
  dist: string,
  kind: string,
  stamp: string,
  build: (folder: string) => Promise<void>,
): Promise<string> {
  const folder = join(dist, `${kind}-${stamp}`);
  if (!existsSync(folder)) {
    await mkdir(dist, { recursive: true });
    await alone(join(dist, `building-${kind}-${stamp}`), async () => {
      if (!existsSync(folder))
        await buildWhole(folder, join(dist, `unfinished-${kind}-${process.pid}`), build);
    });
  }
  const now = new Date();
  await utimes(folder, now, now);
  await forgetOld(dist, kind);
  return folder;
}

/** Builds elsewhere first, so that a folder of this name is never half a build. */
async function buildWhole(
  folder: string,
  unfinished: string,
  build: (folder: string) => Promise<void>,
): Promise<void> {
  await mkdir(unfinished, { recursive: true });
  try {
    await build(unfinished);
    await rename(unfinished, folder);
  } finally {
    await rm(unfinished, { recursive: true, force: true });
  }
}

/** Does the work while no other process has the lock. One that ended without giving it back has it no more. */
async function alone(lock: string, work: () => Promise<void>): Promise<void> {
  while (!(await take(lock))) {
    if (await isLeft(lock)) await rm(lock, { force: true });
    else await wait(LOOK_AGAIN_MS);
  }
  try {
    await work();
  } finally {
    await rm(lock, { force: true });
  }
}

async function take(lock: string): Promise<boolean> {
  try {
    await writeFile(lock, String(process.pid), { flag: 'wx' });
    return true;
  } catch (error) {
    if (error instanceof Error && 'code' in error && error.code === 'EEXIST') return false;
    throw error;
  }
}

async function isLeft(lock: string): Promise<boolean> {
  try {
    const owner = Number(await readFile(lock, 'utf8'));
    if (owner === 0) return Date.now() - (await stat(lock)).mtimeMs > OWNERLESS_MS;
    return !isRunning(owner);
  } catch {
    // It was given back meanwhile.
    return false;
  }
}

function isRunning(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    return error instanceof Error && 'code' in error && error.code === 'EPERM';
  }
}

async function forgetOld(dist: string, kind: string): Promise<void> {
  const names = (await readdir(dist)).filter((name) => name.startsWith(`${kind}-`));
  const aged = await Promise.all(
    names.map(async (name) => ({
      name,
      at: await stat(join(dist, name)).then(
        (s) => s.mtimeMs,
        () => 0,
      ),
    })),
  );
  const old = aged.toSorted((a, b) => b.at - a.at).slice(KEPT);
  await Promise.all(old.map(({ name }) => rm(join(dist, name), { recursive: true, force: true })));
}
