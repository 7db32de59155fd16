// Leading a folder back to what it was, step by step.
import { systemCode } from '../disk/systemCode.ts';

/** One step back. */
export interface StepBack {
  readonly take: () => Promise<void>;
  /** What to say when the step fails. */
  readonly failed: string;
  /** What to say when what it would take back is no longer there; without it, that is as good as done. */
  readonly gone?: string;
}

/** Takes the steps, the last first, every one of them; gives sentences about what could not be put right. */
export async function takeBack(steps: readonly StepBack[]): Promise<readonly string[]> {
  const left: string[] = [];
  for (const step of steps.toReversed()) {
    try {
      await step.take();
    } catch (error) {
      if (systemCode(error) !== 'ENOENT') left.push(step.failed);
      else if (step.gone !== undefined) left.push(step.gone);
    }
  }
  return left;
}
