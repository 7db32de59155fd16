// The packed desktop app: what electron-builder really makes of the configuration, with a stand-in for Electron's binary.
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtApp } from '../../build/builtApp.ts';
import { packApp } from '../../build/packApp.ts';
import type { SendNews } from '../../shared/contract/sending.ts';
import { startDesktop, until } from '../kit/desktopRig.ts';
import { granted } from '../kit/granted.ts';
import { putSupper, supperOf } from '../kit/hostRig.ts';
import { layOutTree, namesIn } from '../kit/packedTree.ts';
import { CARD, signpost, writePages } from '../kit/pdfs.ts';
import { type SystemEntries, systemEntries } from '../kit/systemEntries.ts';

const house = join(import.meta.dirname, '../..');
const TIME_TO_PACK = 300_000;

/** The mark in Electron's binary before its fuses, as the published tool for fuses looks for it. */
const SENTINEL = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';
/** Version 1 of the fuse wire, and eight fuses, each unset. */
const FUSES = Buffer.from([1, 8, ...'00000000'].map((v) => (typeof v === 'string' ? v.charCodeAt(0) : v)));

let folder: string;
let app: string;
let entries: SystemEntries;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'turnlay-pack-'));
  app = await builtApp(() => undefined);
  const electron = join(folder, 'electron');
  for (const name of ['resources', 'locales']) mkdirSync(join(electron, name), { recursive: true });
  writeFileSync(join(electron, 'electron'), Buffer.concat([Buffer.from(SENTINEL), FUSES]), { mode: 0o755 });
  writeFileSync(join(electron, 'version'), '45.5.0');
  for (const name of ['LICENSE', 'LICENSES.chromium.html']) writeFileSync(join(electron, name), 'licence');
  await packApp({
    app,
    electron,
    into: join(folder, 'out'),
    as: 'folder',
    afterPack: async ({ packager }) => {
      entries = await systemEntries(packager, join(folder, 'mac'));
    },
  });
}, TIME_TO_PACK);
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const packed = (...names: string[]) => join(folder, 'out/linux-unpacked', ...names);

describe('the packed app', () => {
  it('holds what was built and nothing else: no sources, no node_modules, no program for a browser', () => {
    const names = [...namesIn(packed('resources/app.asar')).keys()].sort();
    const ofWindow = (name: string) => /^renderer\/(assets|pdfjs)\//.test(name);
    expect(names.filter((name) => !name.endsWith('.LEGAL.txt') && !ofWindow(name))).toEqual([
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
      'renderer/licences.json',
    ]);
    expect(names.filter((name) => /\.(ts|tsx|map)$|node_modules/.test(name))).toEqual([]);
    // What the window fetches for the pictures of PDFs.
    for (const name of ['wasm/openjpeg.wasm', 'wasm/qcms_bg.wasm', 'wasm/jbig2.wasm', 'iccs', 'cmaps']) {
      expect(
        names.some((held) => held.startsWith(`renderer/pdfjs/${name}`)),
        name,
      ).toBe(true);
    }
  });

  it('keeps threads and what they read outside the archive, and nothing else', () => {
    const outside = [...namesIn(packed('resources/app.asar'))].filter(([, entry]) => entry.unpacked === true);
    expect(outside.map(([name]) => name).sort()).toEqual([
      'host/DejaVuSans-Bold.ttf',
      'host/DejaVuSans.ttf',
      'host/highs.wasm',
      'host/pdfium.wasm',
      'host/qpdf.wasm',
      'host/startArtWorker.mjs',
      'host/startCoverageWorker.mjs',
      'host/startGangWorker.mjs',
      'host/startSendWorker.mjs',
      'host/startTicketWorker.mjs',
    ]);
    for (const [name] of outside) {
      expect(existsSync(packed('resources/app.asar.unpacked', name))).toBe(true);
    }
  });

  it('cannot be made to run as plain Node, or to load anything but its archive', () => {
    const binary = readFileSync(packed('turnlay'));
    const wire = binary.subarray(binary.indexOf(SENTINEL) + SENTINEL.length + 2);
    // In the order of Electron's fuses: run as Node, cookie encryption, NODE_OPTIONS, inspect arguments, integrity of
    // the archive, only from the archive, snapshot, privileges of file:.
    expect(wire.subarray(0, 8).toString('latin1')).toMatch(/^0.00.1.0$/);
  });

  it('has the licences of others beside the program, and its own', () => {
    for (const name of ['LICENSE.electron.txt', 'LICENSES.chromium.html']) {
      expect(existsSync(packed(name)), name).toBe(true);
    }
    expect(readFileSync(packed('LICENSE.turnlay.txt'))).toEqual(readFileSync(join(house, 'LICENSE')));
    const others = readFileSync(packed('THIRD-PARTY-LICENCES.txt'), 'utf8');
    expect(others).toContain('react 19.3.1 (MIT)');
    expect(others).toContain('LICENSE.electron.txt');
  });

  it('says what it is, and names no homepage or person that package.json does not', () => {
    const ours = JSON.parse(readFileSync(join(house, 'package.json'), 'utf8'));
    const said = JSON.parse(readFileSync(join(app, 'package.json'), 'utf8'));
    expect(said).toEqual({
      name: 'turnlay',
      productName: 'Turnlay',
      version: ours.version,
      description: ours.description,
      license: 'MIT',
      author: ours.author,
      homepage: ours.homepage,
      main: 'host/main.cjs',
      desktopName: 'turnlay.desktop',
    });
    expect(readFileSync(join(house, 'LICENSE'), 'utf8')).toContain(`Copyright (c) 2026 ${ours.author}`);
    expect(readFileSync(join(house, 'build/electron-builder.yml'), 'utf8')).not.toMatch(
      /localhost|https?:|@/,
    );
  });
});

describe('the system', () => {
  it('opens job files and links to jobs with the app on Linux', () => {
    // @source freedesktop.org, Desktop Entry Specification 1.5 and Shared MIME-info 0.21
    const lines = entries.linux.desktopEntry.split('\n');
    expect(lines).toContain('MimeType=application/vnd.turnlay+json;x-scheme-handler/turnlay;');
    expect(lines).toContain('Exec=/opt/Turnlay/turnlay %U');
    expect(lines).toContain('StartupWMClass=turnlay');
    expect(entries.linux.mimeTypes).toMatch(
      /<mime-type type="application\/vnd\.turnlay\+json">\s*<glob pattern="\*\.turnlay"\/>/,
    );
  });

  it('opens job files and links to jobs with the app on a Mac', () => {
    // @source Apple, Information Property List: CFBundleDocumentTypes, CFBundleURLTypes
    expect(entries.mac).toMatchObject({
      CFBundleIdentifier: 'app.turnlay.desktop',
      CFBundleName: 'Turnlay',
      CFBundleDocumentTypes: [{ CFBundleTypeExtensions: ['turnlay'], CFBundleTypeRole: 'Editor' }],
      CFBundleURLTypes: [{ CFBundleURLSchemes: ['turnlay'] }],
    });
  });
});

describe('the packed tree', () => {
  it(
    'opens, mends, measures, gangs, sends and writes with the threads it was packed with',
    async () => {
      const tree = layOutTree(packed('resources'), join(folder, 'tree'));
      // Nothing of the built app is within reach of its bundles but what was packed.
      const rig = await startDesktop(tree, folder, (electron) => {
        electron.packed = true;
      });
      const { electron, host } = rig;
      const page = await electron.fetch('app://turnlay/');
      expect(await page.text()).toContain('<div id="window">');
      const take = async (name: string) => {
        const file = new File([], name);
        electron.paths.set(file, join(folder, name));
        const dropped = granted(await host.dropped(file));
        if (dropped.is !== 'art') throw new Error(`${name} is no art`);
        return granted(await host.art.look({ art: dropped.art.art }));
      };
      // A card whose font only a more patient reader makes sense of.
      const sloppy = writePages(
        [{ media: CARD, drawing: signpost(CARD), resources: '/Font << /F1 3 0 R >>' }],
        { objects: { 3: '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Widths [--3] >>' } },
      );
      writeFileSync(join(folder, 'sloppy.pdf'), sloppy);
      expect((await take('sloppy.pdf')).notices.join()).toContain('a copy was mended in memory');

      await putSupper(join(folder, 'supper.pdf'));
      const { art } = await take('supper.pdf');
      const { job } = granted(await host.job.lay({ brief: supperOf(art) }));
      const inks = granted(await host.ink.coverage({ job }));
      expect(inks.every(({ coverage }) => coverage.grey > 0 && coverage.grey < 1)).toBe(true);
      const [piece] = job.brief.pieces;
      const brief = { ...job.brief, pieces: [piece!, { ...piece!, name: 'Other', quantity: 40 }] };
      const ganged = await host.gang.solve({ brief, sheetCost: 1, formCost: 5, seconds: 5 });
      expect(granted(ganged).pieces.map(({ leftOver }) => leftOver >= 0)).toEqual([true, true]);

      mkdirSync(join(folder, 'rip'));
      electron.open = { canceled: false, filePaths: [join(folder, 'rip')] };
      const rip = await host.choose.folder({ title: 'The folder of the RIP' });
      if (rip.kind !== 'chosen') throw new Error('No folder was chosen');
      const news: SendNews[] = [];
      host.on('send', (told) => news.push(told));
      const sending = granted(await host.send.start({ job, folder: rip.chosen.folder }));
      await until(() => news.some(({ state }) => state.at !== 'under-way'));
      const done = granted(await host.send.state(sending));
      if (done.at !== 'done') throw new Error(JSON.stringify(done));
      expect(done.sent).toMatchObject({ is: 'sent', proof: { findings: [] } });
      const papers = granted(await host.ticket.write({ job, folder: rip.chosen.folder }));
      expect(papers.names).toContain('harvest-supper_run-sheet.pdf');
      await rig.quit();
    },
    TIME_TO_PACK,
  );
});
