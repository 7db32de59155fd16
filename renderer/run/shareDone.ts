// How much of a sending or a proving is done, for the bar that shows it.
import type { SendProgress, SendStep } from '../../shared/contract/sendProgress.ts';

/** How much of a sending is done when each step begins: proving takes most of it. A proving has but one step that lasts. */
const DONE_BEFORE: Readonly<Record<'send' | 'prove', Readonly<Partial<Record<SendStep, number>>>>> = {
  send: { 'write-sheets': 0.2, 'write-files': 0.3, prove: 0.4 },
  prove: {},
};

/** 0 to 1. */
export function shareDone(what: 'send' | 'prove', { step, done, of }: SendProgress): number {
  const before = DONE_BEFORE[what][step] ?? 0;
  return step === 'prove' ? before + (1 - before) * (done / of) : before;
}
