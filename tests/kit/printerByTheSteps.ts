// A printer who knows nothing but the steps: every sentence is done with paper in space, and what it claims of the paper is
// looked at there. A sentence that is not understood, or not true, is an error.
import type { Job } from '../../shared/job/job.ts';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { StepGroup } from '../../shared/runSheet/steps.ts';
import { emptyHands, type Hands, type Shop } from './printerHands.ts';
import { SENTENCES } from './stepSentences.ts';

/** Does all steps in their order. Throws for words that mean nothing, and for claims that the paper does not bear out. */
export function followSteps(job: Job, sides: readonly SidePage[], groups: readonly StepGroup[]): Hands {
  const hands = emptyHands();
  for (const { steps, cautions } of groups) {
    hands.handled.push({ did: new Set(), warned: cautions });
    for (const step of steps) readStep(hands, { job, sides }, step);
  }
  return hands;
}

function readStep(hands: Hands, shop: Shop, step: string): void {
  let rest = step;
  while (rest !== '') {
    const known = SENTENCES.find(([, sentence]) => sentence.test(rest));
    if (known === undefined) throw new Error(`What does this mean: "${rest}"?`);
    const [name, sentence, act] = known;
    const [said, ...parts] = sentence.exec(rest)!;
    act(hands, shop, ...parts);
    hands.done.push(name);
    rest = rest.slice(said.length).trimStart();
  }
}
