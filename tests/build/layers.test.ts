// The layers of the house are kept: the tree holds no violation, and one planted for each rule is caught.
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import { afterAll, describe, expect, it } from 'vitest';
import { ENTRIES, LAYER_RULES } from '../../build/layers.ts';

const HOUSE = ['shared', 'electron', 'renderer'];

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

describe('the layers', () => {
  it('are kept by every file of the house', async () => {
    const result = await inspect(join(import.meta.dirname, '../..'), HOUSE);
    expect(result.summary.totalCruised).toBeGreaterThan(40);
    expect(result.summary.violations.map((v) => `${v.rule.name}: ${v.from} -> ${v.to}`)).toEqual([]);
  });

  it('know where programs start', () => {
    expect(ENTRIES.filter((path) => !existsSync(join(import.meta.dirname, '../..', path)))).toEqual([]);
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
    ['nothing-ships-tests', { 'electron/a.ts': use('../tests/b.ts'), 'tests/b.ts': other }],
    [
      'no-circles',
      { 'electron/a.ts': use('./b.ts'), 'electron/b.ts': `${use('./a.ts')}export { used as other };\n` },
    ],
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
