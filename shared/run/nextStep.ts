// What the person at the printer does next, as far as the counts tell.
import { prospectOf } from './prospect.ts';
import type { PrintRun } from './run.ts';

/** The steps of a run in the order of work. */
const RUN_STEPS = ['load', 'proof', 'pass-1', 'turn', 'pass-2', 'trim', 'deliver'] as const;
export type RunStep = (typeof RUN_STEPS)[number];

/** The steps that this run has: without a second pass nothing is turned. */
export function stepsOfRun({ plan }: Pick<PrintRun, 'plan'>): readonly RunStep[] {
  return RUN_STEPS.filter((step) => plan.passes === 2 || (step !== 'turn' && step !== 'pass-2'));
}

/** The step to be at now; `done` once everything that was ordered is delivered. */
export function nextStep(run: PrintRun): RunStep | 'done' {
  const { sheets, pieces, plan } = run;
  const wanted = (piece: string) => plan.designs.find((d) => d.piece === piece)?.wanted ?? 0;
  if (pieces.every((p) => p.delivered >= wanted(p.piece))) return 'done';
  const { toFinish } = prospectOf(run);
  if (toFinish > 0) {
    // What has begun is finished first; only then is more laid in.
    if (sheets.proof === 'go' && sheets.turned > 0) return 'pass-2';
    if (sheets.blank > 0) return sheets.proof === 'go' ? 'pass-1' : 'proof';
    return sheets.side1 > 0 ? 'turn' : 'load';
  }
  return pieces.every((p) => p.good >= wanted(p.piece)) ? 'deliver' : 'trim';
}
