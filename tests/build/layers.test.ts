// The layers of the house are kept: the tree holds no violation, and one planted for each rule is caught.
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative, sep } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { afterAll, describe, expect, it } from 'vitest';
import { ENTRIES, LAYER_PARTS, LAYER_RULES } from '../../build/layers.ts';

const HOUSE = ['shared', 'electron', 'renderer'];
const ROOT = join(import.meta.dirname, '../..');
const MAX_FILES_IN_FOLDER = 40;

async function inspect(baseDir: string, folders: readonly string[]): Promise<ICruiseResult> {
  const { output } = await cruise([...folders], {
    baseDir,
    validate: true,
    ruleSet: { forbidden: LAYER_RULES },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '\\.(md|css|html)$' },
    enhancedResolveOptions: { extensions: ['.ts', '.tsx', '.mjs', '.js', '.json'] },
  });
  if (typeof output === 'string') throw new Error(output);
  return output;
}

const broken = (result: ICruiseResult) =>
  [...new Set(result.summary.violations.map((v) => v.rule.name))].sort();

/** The parts that no order of building would reach, since each waits for another of them; none where there is an order. */
function circleOf(parts: Readonly<Record<string, readonly string[]>>): readonly string[] {
  let left = Object.keys(parts);
  for (;;) {
    const waiting = left.filter((part) => parts[part]?.some((needed) => left.includes(needed)));
    if (waiting.length === left.length) return left.sort();
    left = waiting;
  }
}

/** A folder and every folder in it, at any depth. */
function foldersIn(folder: string): readonly string[] {
  const within = readdirSync(folder, { withFileTypes: true, recursive: true });
  return [folder, ...within.filter((e) => e.isDirectory()).map((e) => join(e.parentPath, e.name))];
}

const filesIn = (folder: string) =>
  readdirSync(folder, { withFileTypes: true }).filter((e) => e.isFile()).length;

describe('the layers', () => {
  it('are kept by every file of the house', async () => {
    const result = await inspect(ROOT, HOUSE);
    expect(result.summary.totalCruised).toBeGreaterThan(40);
    expect(result.summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`)).toEqual([]);
  });

  it('know where programs start', () => {
    expect(ENTRIES.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it.each(Object.entries(LAYER_PARTS))(
    'stand on each other in %s, in no circle of folders',
    (_layer, parts) => {
      expect(circleOf(parts)).toEqual([]);
    },
  );

  it.each(Object.entries(LAYER_PARTS))('name the folders of %s, and no other', (layer, parts) => {
    const inUse = foldersIn(join(ROOT, layer)).filter((folder) => filesIn(folder) > 0);
    const names = inUse.flatMap((folder) => relative(join(ROOT, layer), folder).split(sep)[0] || []);
    expect([...new Set(names)].sort()).toEqual(Object.keys(parts).sort());
  });

  it('would notice a circle of folders', () => {
    const parts = { disk: [], job: ['disk', 'ticket'], host: ['job'], ticket: ['host'] };
    expect(circleOf(parts)).toEqual(['host', 'job', 'ticket']);
  });

  it('have no folder that is hard to look over', () => {
    const crowded = HOUSE.flatMap((layer) => foldersIn(join(ROOT, layer)))
      .map((folder) => ({ folder: relative(ROOT, folder), files: filesIn(folder) }))
      .filter(({ files }) => files > MAX_FILES_IN_FOLDER);
    expect(crowded).toEqual([]);
  });

  const planted: string[] = [];
  afterAll(() => {
    for (const folder of planted) rmSync(folder, { recursive: true });
  });

  /** A small house of these files, thrown away after the tests. */
  function plant(files: Readonly<Record<string, string>>): string {
    const folder = mkdtempSync(join(tmpdir(), 'turnlay-layers-'));
    planted.push(folder);
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), text);
    }
    return folder;
  }

  const other = 'export const other = 1;\n';
  const otherType = 'export interface Other { readonly n: number }\n';
  const use = (from: string) => `import { other } from '${from}';\nexport const used = other;\n`;

  it.each([
    [
      'shared-geometry-imports',
      { 'shared/geometry/a.ts': use('../layout/b.ts'), 'shared/layout/b.ts': other },
    ],
    ['shared-units-imports', { 'shared/units/a.ts': use('../geometry/b.ts'), 'shared/geometry/b.ts': other }],
    ['shared-fault-imports', { 'shared/fault/a.ts': use('../units/b.ts'), 'shared/units/b.ts': other }],
    ['shared-layout-imports', { 'shared/layout/a.ts': use('../job/b.ts'), 'shared/job/b.ts': other }],
    ['shared-bench-imports', { 'shared/bench/a.ts': use('../job/b.ts'), 'shared/job/b.ts': other }],
    ['shared-ink-imports', { 'shared/ink/a.ts': use('../job/b.ts'), 'shared/job/b.ts': other }],
    ['shared-library-imports', { 'shared/library/a.ts': use('../plan/b.ts'), 'shared/plan/b.ts': other }],
    ['shared-plan-imports', { 'shared/plan/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    ['shared-plan-libraries', { 'shared/plan/a.ts': "import { z } from 'zod';\nexport const r = z;\n" }],
    ['shared-marks-imports', { 'shared/marks/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    ['shared-cutting-imports', { 'shared/cutting/a.ts': use('../proof/b.ts'), 'shared/proof/b.ts': other }],
    [
      'shared-runSheet-imports',
      { 'shared/runSheet/a.ts': use('../contract/b.ts'), 'shared/contract/b.ts': other },
    ],
    [
      'shared-ticket-imports',
      { 'shared/ticket/a.ts': use('../contract/b.ts'), 'shared/contract/b.ts': other },
    ],
    [
      'shared-ticket-libraries',
      { 'shared/ticket/a.ts': "import { encode } from 'uqr';\nexport const e = encode;\n" },
    ],
    ['shared-proof-imports', { 'shared/proof/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    ['shared-job-imports', { 'shared/job/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    ['shared-run-imports', { 'shared/run/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    ['shared-gang-imports', { 'shared/gang/a.ts': use('../pdf/b.ts'), 'shared/pdf/b.ts': other }],
    [
      'shared-packingSlip-imports',
      { 'shared/packingSlip/a.ts': use('../cutting/b.ts'), 'shared/cutting/b.ts': other },
    ],
    ['shared-intake-imports', { 'shared/intake/a.ts': use('../job/b.ts'), 'shared/job/b.ts': other }],
    ['shared-contract-imports', { 'shared/contract/a.ts': use('../bench/b.ts'), 'shared/bench/b.ts': other }],
    [
      'shared-contract-libraries',
      { 'shared/contract/a.ts': "import { app } from 'electron';\nexport const a = app;\n" },
    ],
    ['shared-pdf-imports', { 'shared/pdf/a.ts': use('../job/b.ts'), 'shared/job/b.ts': other }],
    [
      'shared-job-imports',
      {
        'shared/job/a.ts': "import type { Other } from '../pdf/b.ts';\nexport const n = (o: Other) => o.n;\n",
        'shared/pdf/b.ts': otherType,
      },
    ],
    [
      'shared-geometry-libraries',
      { 'shared/geometry/a.ts': "import { readFile } from 'node:fs';\nexport const r = readFile;\n" },
    ],
    ['shared-job-libraries', { 'shared/job/a.ts': "import React from 'react';\nexport const r = React;\n" }],
    ['shared-layout-libraries', { 'shared/layout/a.ts': "import { z } from 'zod';\nexport const r = z;\n" }],
    ['shared-pdf-libraries', { 'shared/pdf/a.ts': use('../../electron/b.ts'), 'electron/b.ts': other }],
    ['shared-parts-known', { 'shared/attic/a.ts': use('../geometry/b.ts'), 'shared/geometry/b.ts': other }],
    ['window-and-host-apart', { 'renderer/a.ts': use('../electron/b.ts'), 'electron/b.ts': other }],
    ['host-and-window-apart', { 'electron/a.ts': use('../renderer/b.ts'), 'renderer/b.ts': other }],
    [
      'threads-one-way',
      { 'electron/art/a.ts': "import { Worker } from 'node:worker_threads';\nexport const w = Worker;\n" },
    ],
    ['nothing-ships-tests', { 'electron/a.ts': use('../tests/b.ts'), 'tests/b.ts': other }],
    [
      'no-circles',
      { 'electron/a.ts': use('./b.ts'), 'electron/b.ts': `${use('./a.ts')}export { used as other };\n` },
    ],
    ['electron-disk-imports', { 'electron/disk/a.ts': use('../send/b.ts'), 'electron/send/b.ts': other }],
    ['electron-thread-imports', { 'electron/thread/a.ts': use('../art/b.ts'), 'electron/art/b.ts': other }],
    ['electron-about-imports', { 'electron/about/a.ts': use('../host/b.ts'), 'electron/host/b.ts': other }],
    ['electron-demo-imports', { 'electron/demo/a.ts': use('../job/b.ts'), 'electron/job/b.ts': other }],
    ['electron-art-imports', { 'electron/art/a.ts': use('../job/b.ts'), 'electron/job/b.ts': other }],
    ['electron-gang-imports', { 'electron/gang/a.ts': use('../job/b.ts'), 'electron/job/b.ts': other }],
    ['electron-proof-imports', { 'electron/proof/a.ts': use('../host/b.ts'), 'electron/host/b.ts': other }],
    ['electron-send-imports', { 'electron/send/a.ts': use('../proof/b.ts'), 'electron/proof/b.ts': other }],
    ['electron-job-imports', { 'electron/job/a.ts': use('../ticket/b.ts'), 'electron/ticket/b.ts': other }],
    [
      'electron-coverage-imports',
      { 'electron/coverage/a.ts': use('../host/b.ts'), 'electron/host/b.ts': other },
    ],
    ['electron-ticket-imports', { 'electron/ticket/a.ts': use('../host/b.ts'), 'electron/host/b.ts': other }],
    [
      'electron-host-imports',
      {
        'electron/host/a.ts':
          "import type { Other } from '../desktop/b.ts';\nexport const n = (o: Other) => o.n;\n",
        'electron/desktop/b.ts': otherType,
      },
    ],
    ['electron-serve-imports', { 'electron/serve/a.ts': use('../disk/b.ts'), 'electron/disk/b.ts': other }],
    ['electron-cli-imports', { 'electron/cli/a.ts': use('../host/b.ts'), 'electron/host/b.ts': other }],
    [
      'electron-desktop-imports',
      { 'electron/desktop/a.ts': use('../loopback/b.ts'), 'electron/loopback/b.ts': other },
    ],
    [
      'electron-loopback-imports',
      { 'electron/loopback/a.ts': use('../job/b.ts'), 'electron/job/b.ts': other },
    ],
    ['electron-parts-known', { 'electron/attic/a.ts': use('../disk/b.ts'), 'electron/disk/b.ts': other }],
    ['renderer-sheet-imports', { 'renderer/sheet/a.ts': use('../bench/b.ts'), 'renderer/bench/b.ts': other }],
    ['renderer-desk-imports', { 'renderer/desk/a.ts': use('../plan/b.ts'), 'renderer/plan/b.ts': other }],
    ['renderer-run-imports', { 'renderer/run/a.ts': use('../plan/b.ts'), 'renderer/plan/b.ts': other }],
    ['renderer-parts-known', { 'renderer/attic/a.ts': use('../state/b.ts'), 'renderer/state/b.ts': other }],
    ['no-dead-files', { 'electron/a.ts': other, 'renderer/main.tsx': other }],
    [
      'no-dead-files',
      {
        'renderer/main.tsx': use('./a.ts'),
        'renderer/a.ts': other,
        'shared/layout/b.ts': use('./c.ts'),
        'shared/layout/c.ts': other,
      },
    ],
  ])('catch a violation of %s', async (rule, files) => {
    const folder = plant(files);
    const folders = [...new Set(Object.keys(files).map((name) => name.split('/')[0] ?? ''))];
    expect(broken(await inspect(folder, folders))).toContain(rule);
  });
});
