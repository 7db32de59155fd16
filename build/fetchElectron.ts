// Fetches Electron's binary by Electron's own library, which verifies its checksum: never waits long, leaves nothing half.
import { existsSync } from 'node:fs';
import { mkdtemp, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { electronBinary, electronPackage, executableOf } from './electronBinary.ts';
import { Watchdog } from './watchdog.ts';

/** How far a fetch is, in bytes; `total` is `null` where the server does not tell. */
export interface Progress {
  readonly transferred: number;
  readonly total: number | null;
}

/** The path of the binary, or why it could not be had: half a sentence that goes on after "because". */
export type Fetched =
  | { readonly ok: true; readonly binary: string }
  | { readonly ok: false; readonly because: string };

export interface Fetching {
  /** The house whose package `electron` gets its binary. */
  readonly house: string;
  readonly onProgress: (progress: Progress) => void;
  /** Ends the fetch at once. */
  readonly stop?: AbortSignal;
  /** How long the first byte may take, and every later one, in ms. */
  readonly patience?: { readonly answer: number; readonly stall: number };
}

/** The first byte comes by way of two servers. Without a network most machines know it sooner. */
const PATIENCE = { answer: 6_000, stall: 20_000 };

/** What we use of `@electron/get` and of the unpacker that comes with `electron`. */
interface Getter {
  downloadArtifact(asked: Readonly<Record<string, unknown>>): Promise<string>;
  initializeProxy(): void;
}
interface Unpacker {
  extract(zip: string, to: { readonly dir: string }): Promise<void>;
}

/**
 * Fetches the binary that belongs to the installed package and puts it where the package looks for it. What the package
 * says of mirrors, proxies, caches and remote checksums in the environment holds here too.
 *
 * @source https://www.electronjs.org/docs/latest/tutorial/installation
 */
export async function fetchElectron({
  house,
  onProgress,
  stop,
  patience = PATIENCE,
}: Fetching): Promise<Fetched> {
  const folder = electronPackage(house);
  if (folder === undefined) return { ok: false, because: 'its package is not installed' };
  const scratch = await mkdtemp(join(tmpdir(), 'turnlay-electron-'));
  const watchdog = new Watchdog(stop);
  try {
    watchdog.wait(patience.answer);
    const zip = await download(folder, scratch, watchdog.signal, (progress) => {
      watchdog.wait(patience.stall);
      onProgress(progress);
    });
    watchdog.rest();
    return { ok: true, binary: await unpack(zip, folder, house) };
  } catch (error) {
    return { ok: false, because: watchdog.isOver ? watchdog.why : reasonOf(error) };
  } finally {
    watchdog.rest();
    await rm(scratch, { recursive: true, force: true });
  }
}

/** The path of the archive, which lies in Electron's own cache and whose checksum is right. */
async function download(
  folder: string,
  scratch: string,
  signal: AbortSignal,
  onProgress: (progress: Progress) => void,
): Promise<string> {
  const { env } = process;
  const getter = (await libraryOf(folder, '@electron/get')) as Getter;
  if (['HTTPS_PROXY', 'https_proxy', 'HTTP_PROXY', 'http_proxy'].some((name) => env[name])) {
    getter.initializeProxy();
  }
  const hasRemoteChecksums =
    env.electron_use_remote_checksums ?? env.npm_config_electron_use_remote_checksums;
  const { version } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
  return getter.downloadArtifact({
    version,
    artifactName: 'electron',
    platform: env.npm_config_platform ?? process.platform,
    arch: env.npm_config_arch ?? process.arch,
    cacheRoot: env.electron_config_cache,
    checksums: hasRemoteChecksums
      ? undefined
      : JSON.parse(await readFile(join(folder, 'checksums.json'), 'utf8')),
    tempDirectory: scratch,
    downloadOptions: { signal, quiet: true, getProgressCallback: onProgress },
  });
}

/** Unpacks beside the place where the binary belongs, and moves it there whole. */
async function unpack(zip: string, folder: string, house: string): Promise<string> {
  const unfinished = await mkdtemp(join(folder, 'unfinished-'));
  try {
    const { extract } = (await libraryOf(folder, '@electron-internal/extract-zip')) as Unpacker;
    await extract(zip, { dir: unfinished });
    if (!existsSync(join(unfinished, executableOf()))) throw new Error('the archive holds no Electron');
    // Another may have fetched the same meanwhile; its binary is as good.
    if (electronBinary(house) === undefined) {
      await rm(join(folder, 'dist'), { recursive: true, force: true });
      await rename(unfinished, join(folder, 'dist'));
      await writeFile(join(folder, 'path.txt'), executableOf());
    }
  } finally {
    await rm(unfinished, { recursive: true, force: true });
  }
  const binary = electronBinary(house);
  if (binary === undefined) throw new Error('it is not where its package says');
  return binary;
}

/** A library as the package `electron` has it, which may be another version than somebody else's. */
function libraryOf(folder: string, name: string): Promise<unknown> {
  return import(pathToFileURL(createRequire(join(folder, 'package.json')).resolve(name)).href);
}

/** Why it failed, in half a sentence. A failed connection tells its reason one level deeper. */
function reasonOf(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const { response } = error as { readonly response?: Response };
  if (response !== undefined) return `the server answers ${response.status} ${response.statusText}`;
  if (/checksum/i.test(error.message)) return 'what came does not have the checksum it should have';
  if (error.message === 'terminated') return 'the connection broke off';
  const { cause } = error;
  const deeper = cause instanceof Error ? cause : error;
  const { code } = deeper as NodeJS.ErrnoException;
  if (code === 'ENOTFOUND' || code === 'EAI_AGAIN') return 'there is no network';
  return code === undefined || deeper.message.includes(code) ? deeper.message : `${deeper.message} (${code})`;
}
