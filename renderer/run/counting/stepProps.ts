// What every step of a run is shown with.
import type { SidePage } from '../../../shared/job/nameJobFiles.ts';
import type { RunStep } from '../../../shared/run/nextStep.ts';
import type { PrintRun } from '../../../shared/run/run.ts';

export interface StepProps {
  readonly run: PrintRun;
  /** Which page of which file prints each side; empty where it is not known. */
  readonly sides: readonly SidePage[];
  /** To another step, or to the one that comes next. */
  readonly onGoTo: (step: RunStep | undefined) => void;
}
