// Builds the threads once for a run of tests, which then start them as they ship and without compiling each anew.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildThreads } from '../../build/host.ts';

let folder: string | undefined;

export async function setup(): Promise<void> {
  folder = await mkdtemp(join(tmpdir(), 'turnlay-threads-'));
  await buildThreads(folder);
  process.env.TURNLAY_THREADS = folder;
}

export async function teardown(): Promise<void> {
  if (folder !== undefined) await rm(folder, { recursive: true, force: true });
}
