// The parts of a cost, in the order in which they are shown, and what they are called.
import type { CostParts } from './candidate.ts';

export type CostPart = Exclude<keyof CostParts, 'total'>;

export const COST_PARTS: readonly { readonly part: CostPart; readonly name: string }[] = [
  { part: 'paper', name: 'Paper' },
  { part: 'ink', name: 'Ink' },
  { part: 'labour', name: 'Labour at the printer' },
  { part: 'makeReady', name: 'Make-ready' },
  { part: 'trimming', name: 'Trimming' },
  { part: 'wear', name: 'Wear' },
];
