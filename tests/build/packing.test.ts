// The packed desktop app: what electron-builder really makes of the configuration, with a stand-in for Electron's binary.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build, Platform } from 'electron-builder';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { describeApp } from '../../build/describeApp.ts';
import { JOB_ENDING } from '../../electron/host/entries.ts';
import { buildDesktop } from '../kit/desktopRig.ts';

const house = join(import.meta.dirname, '../..');

/** The mark in Electron's binary before its fuses, as the published tool for fuses looks for it. */
const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
/** Version 1 of the fuse wire, and eight fuses, each unset. */
const FUSES = Buffer.from([1, 8, ...'00000000'].map((v) => (typeof v === 'string' ? v.charCodeAt(0) : v)));

let folder: string;
let built: Awaited<ReturnType<typeof buildDesktop>>;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'turnlay-pack-'));
  built = await buildDesktop();
  await describeApp(built.app);
  const electron = join(folder, 'electron');
  for (const name of ['resources', 'locales']) mkdirSync(join(electron, name), { recursive: true });
  writeFileSync(join(electron, 'electron'), Buffer.concat([Buffer.from(SENTINEL), FUSES]), { mode: 0o755 });
  writeFileSync(join(electron, 'version'), '45.5.0');
  for (const name of ['LICENSE', 'LICENSES.chromium.html']) writeFileSync(join(electron, name), 'licence');
  await build({
    targets: Platform.LINUX.createTarget('dir'),
    publish: 'never',
    projectDir: house,
    config: {
      extends: join(house, 'build/electron-builder.yml'),
      electronDist: electron,
      directories: { app: built.app, output: join(folder, 'out') },
    },
  });
}, 120_000);
afterAll(() => {
  built.drop();
  rmSync(folder, { recursive: true });
});

const unpacked = (...names: string[]) => join(folder, 'out/linux-unpacked', ...names);

interface Entry {
  readonly files?: Readonly<Record<string, Entry>>;
  readonly unpacked?: boolean;
}

/** The names in an archive, from the header that it begins with. */
function namesIn(path: string): ReadonlyMap<string, Entry> {
  const bytes = readFileSync(path);
  const header = JSON.parse(bytes.subarray(16, 16 + bytes.readUInt32LE(12)).toString('utf8')) as Entry;
  const found = new Map<string, Entry>();
  const walk = (entry: Entry, at: string) => {
    for (const [name, inner] of Object.entries(entry.files ?? {})) {
      if (inner.files === undefined) found.set(`${at}${name}`, inner);
      else walk(inner, `${at}${name}/`);
    }
  };
  walk(header, '');
  return found;
}

describe('the packed app', () => {
  it('holds what was built and nothing else: no sources, no node_modules, no program for a browser', () => {
    const names = [...namesIn(unpacked('resources/app.asar')).keys()].sort();
    expect(names.filter((name) => !name.endsWith('.LEGAL.txt'))).toEqual([
      'host/DejaVuSans-Bold.ttf',
      'host/DejaVuSans.ttf',
      'host/highs.wasm',
      'host/main.cjs',
      'host/pdfium.wasm',
      'host/preload.cjs',
      'host/qpdf.wasm',
      'host/startArtWorker.mjs',
      'host/startCoverageWorker.mjs',
      'host/startGangWorker.mjs',
      'host/startSendWorker.mjs',
      'host/startTicketWorker.mjs',
      'package.json',
      'renderer/index.html',
    ]);
  });

  it('keeps threads and what they read outside the archive, where the main program looks for them', () => {
    const entries = namesIn(unpacked('resources/app.asar'));
    for (const name of [
      'startArtWorker.mjs',
      'startSendWorker.mjs',
      'pdfium.wasm',
      'qpdf.wasm',
      'DejaVuSans.ttf',
    ]) {
      expect(entries.get(`host/${name}`)?.unpacked).toBe(true);
      expect(existsSync(unpacked('resources/app.asar.unpacked/host', name))).toBe(true);
    }
    const main = readFileSync(join(built.app, 'host/main.cjs'), 'utf8');
    expect(main).toContain("__filename.replace(/app\\.asar(?=[\\\\/])/, 'app.asar.unpacked')");
  });

  it('cannot be made to run as plain Node, or to load anything but its archive', () => {
    const binary = readFileSync(unpacked('turnlay'));
    const wire = binary.subarray(binary.indexOf(SENTINEL) + SENTINEL.length + 2);
    // In the order of Electron's fuses: run as Node, cookie encryption, NODE_OPTIONS, inspect arguments, integrity of
    // the archive, only from the archive, snapshot, privileges of file:.
    expect(wire.subarray(0, 8).toString('latin1')).toMatch(/^0.00.1.0$/);
  });

  it('is what the system opens job files with', () => {
    const config = readFileSync(join(house, 'build/electron-builder.yml'), 'utf8');
    expect(config).toContain(`fileAssociations:\n  - ext: ${JOB_ENDING.slice(1)}\n`);
  });
});
