// The ink of a job, asked for by the window: measured in a thread, then known.
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { OpenJob } from '../../../shared/contract/openJob.ts';
import { inkCoverage } from '../../../shared/ink/coverage.ts';
import { granted } from '../../kit/granted.ts';
import { dropFolder, type HostRig, laySupper, openRig, putSupper } from '../../kit/hostRig.ts';

let rig: HostRig;
let open: OpenJob;
beforeAll(async () => {
  rig = await openRig();
  open = await laySupper(rig);
});
afterAll(async () => {
  await rig.end();
  dropFolder(rig.folder);
});

describe('The ink of a job', () => {
  it('is measured for every face, in the order of the brief', async () => {
    const faces = granted(await rig.host.handlers.ink.coverage({ job: open.job }));
    expect(faces.map(({ piece, face }) => `${piece} ${face}`)).toEqual(['Supper front', 'Supper back']);
    for (const { coverage } of faces) {
      expect(coverage.how).toContain('Inks as the art has them');
      expect(inkCoverage(coverage)).toBeGreaterThan(0.1);
      expect(inkCoverage(coverage)).toBeLessThan(4);
      expect(coverage.grey).toBeGreaterThan(0);
    }
    // One face of the invitation is flooded with a dark green, the other with cream.
    const [front, back] = faces.map(({ coverage }) => inkCoverage(coverage));
    expect(Math.abs((front ?? 0) - (back ?? 0))).toBeGreaterThan(0.5);
  });

  it('is known the second time, even once the file has changed: it is that of the art laid out with', async () => {
    const first = granted(await rig.host.handlers.ink.coverage({ job: open.job }));
    await putSupper(rig.at('art', 'supper.pdf'), new Date('2026-10-01T12:00:00Z'));
    expect(granted(await rig.host.handlers.ink.coverage({ job: open.job }))).toEqual(first);
  });

  it('is refused where the art has changed before it was measured', async () => {
    const [piece] = open.job.brief.pieces;
    const wider = { ...piece!, bleed: { ...piece!.bleed, amount: 0 } };
    const job = { ...open.job, brief: { ...open.job.brief, pieces: [wider] } };
    const refused = await rig.host.handlers.ink.coverage({ job });
    expect(refused.ok || refused.fault.code).toBe('art-changed');
  });
});
