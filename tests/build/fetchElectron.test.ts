// Electron fetched at the first start: whole and verified, or not at all and soon; nothing half fetched stays behind.
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { electronBinary, electronDist } from '../../build/electronBinary.ts';
import { fetchElectron, type Progress } from '../../build/fetchElectron.ts';
import { ElectronMirror, houseWithElectron, type Manner } from '../kit/electronMirror.ts';
import { testFolder } from '../kit/folder.ts';

const PROGRAM = '#!/bin/sh\necho electron\n';
/** Long enough for any load, where a test does not wait for it to pass. */
const LONG = 60_000;
/** Soon over, where it does. */
const SHORT = 100;

const folder = testFolder();
const mirror = new ElectronMirror(PROGRAM);
let address: string;
let house: string;
let electron: string;
let count = 0;

beforeAll(async () => {
  address = await mirror.open();
});
afterAll(() => mirror.close());
beforeEach(() => {
  count += 1;
  house = join(folder.path, `house-${count}`);
  electron = houseWithElectron(house);
  mkdirSync(join(house, 'scratch'));
  mirror.manner = 'whole';
  mirror.asked.length = 0;
  for (const name of ['TMPDIR', 'TEMP', 'TMP']) vi.stubEnv(name, join(house, 'scratch'));
  for (const name of ['HTTPS_PROXY', 'https_proxy', 'HTTP_PROXY', 'http_proxy']) vi.stubEnv(name, '');
  vi.stubEnv('ELECTRON_MIRROR', address);
  vi.stubEnv('electron_config_cache', join(house, 'cache'));
  vi.stubEnv('electron_use_remote_checksums', '1');
});
afterEach(() => {
  vi.unstubAllEnvs();
});

const fetchIt = (more: Partial<Parameters<typeof fetchElectron>[0]> = {}) =>
  fetchElectron({
    house,
    onProgress: () => undefined,
    patience: { answer: LONG, stall: LONG },
    ...more,
  });

/** Everything that a fetch may leave, but for what was installed: in the package, the cache and the scratch folder. */
const left = () => [
  ...readdirSync(electron).filter((n) => !['package.json', 'checksums.json', 'node_modules'].includes(n)),
  ...(existsSync(join(house, 'cache')) ? readdirSync(join(house, 'cache'), { recursive: true }) : []),
  ...readdirSync(join(house, 'scratch')),
];

describe('Electron', () => {
  it('is fetched with progress, verified, and put where its package looks for it', async () => {
    const steps: Progress[] = [];
    const fetched = await fetchIt({ onProgress: (step) => steps.push(step) });
    const binary = join(electron, 'dist/electron');
    expect(fetched).toEqual({ ok: true, binary });
    expect([electronBinary(house), electronDist(house)]).toEqual([binary, join(electron, 'dist')]);
    expect(readFileSync(binary, 'utf8')).toBe(PROGRAM);
    expect(statSync(binary).mode & 0o111).toBe(0o111);
    // The names of the published archives and of the note that the package itself reads.
    const name = `electron-v45.5.0-${process.platform}-${process.arch}.zip`;
    expect(mirror.asked).toEqual([`/v45.5.0/${name}`, '/v45.5.0/SHASUMS256.txt']);
    expect(readFileSync(join(electron, 'path.txt'), 'utf8')).toBe('electron');
    expect(steps.find(({ transferred, total }) => transferred === total)?.total).toBeGreaterThan(0);
    expect(readdirSync(join(house, 'scratch'))).toEqual([]);
    expect(readdirSync(electron).filter((entry) => entry.startsWith('unfinished'))).toEqual([]);
  });

  it('comes from the cache the next time, without any server', async () => {
    await fetchIt();
    mirror.asked.length = 0;
    const again = join(folder.path, 'again');
    houseWithElectron(again);
    expect((await fetchIt({ house: again })).ok).toBe(true);
    expect(mirror.asked).toEqual(['/v45.5.0/SHASUMS256.txt']);
  });

  it('is held against the checksums that came with its package, unless those of the server are asked for', async () => {
    vi.stubEnv('electron_use_remote_checksums', undefined);
    expect(await fetchIt()).toEqual({
      ok: false,
      because: 'what came does not have the checksum it should have',
    });
    expect(mirror.asked).toHaveLength(1);
    expect(left()).toEqual([]);
  });

  it.each<[string, Manner, number, number, string]>([
    ['has the wrong checksum', 'damaged', LONG, LONG, 'what came does not have the checksum it should have'],
    ['is not on the server', 'missing', LONG, LONG, 'the server answers 404 Not Found'],
    ['is never answered', 'silent', SHORT, LONG, 'nothing came for 0.1 s'],
    ['stops coming', 'stalling', LONG, SHORT, 'nothing came for 0.1 s'],
    ['breaks off', 'breaking-off', LONG, LONG, 'the connection broke off'],
  ])('that %s is not kept, and the reason is said', async (_what, manner, answer, stall, because) => {
    mirror.manner = manner;
    expect(await fetchIt({ patience: { answer, stall } })).toEqual({ ok: false, because });
    expect(left()).toEqual([]);
    expect(electronBinary(house)).toBeUndefined();
  });

  it('whose server is not there is not waited for', async () => {
    vi.stubEnv('ELECTRON_MIRROR', 'http://127.0.0.1:9/');
    expect(await fetchIt()).toMatchObject({ ok: false, because: expect.stringContaining('bad port') });
    vi.stubEnv('ELECTRON_MIRROR', 'http://electron.invalid/');
    expect(await fetchIt()).toEqual({ ok: false, because: 'there is no network' });
    expect(left()).toEqual([]);
  });

  it('is let be when the person stops it', async () => {
    mirror.manner = 'stalling';
    const stopping = new AbortController();
    const fetched = await fetchIt({ stop: stopping.signal, onProgress: () => stopping.abort() });
    expect(fetched).toEqual({ ok: false, because: 'it was stopped' });
    expect(left()).toEqual([]);
  });

  it('takes the place of what was left half unpacked', async () => {
    mkdirSync(join(electron, 'dist'));
    writeFileSync(join(electron, 'dist/electron'), 'half of it');
    expect(electronBinary(house)).toBeUndefined();
    expect((await fetchIt()).ok).toBe(true);
    expect(readFileSync(join(electron, 'dist/electron'), 'utf8')).toBe(PROGRAM);
  });

  it('cannot be fetched for a house without its package', async () => {
    const bare = join(folder.path, 'bare');
    mkdirSync(bare);
    expect(await fetchIt({ house: bare })).toEqual({ ok: false, because: 'its package is not installed' });
  });
});
