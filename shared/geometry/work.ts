// The work styles: how many forms a job needs and how the sheet passes through the printer.
import type { Turn } from './turn.ts';

/**
 * @source Names as in the CIP4 XJDF enumeration WorkStyle (Simplex, WorkAndBack, Perfecting, WorkAndTurn,
 * WorkAndTumble).
 */
export type WorkStyle = 'simplex' | 'work-and-back' | 'perfecting' | 'work-and-turn' | 'work-and-tumble';

/** All of them, in the order they are offered. */
export const WORK_STYLES: readonly WorkStyle[] = [
  'simplex',
  'work-and-back',
  'perfecting',
  'work-and-turn',
  'work-and-tumble',
];

/**
 * A work style together with its turn. One-form styles have their turn in their name; the two-form styles may
 * be turned either way; `simplex` is never turned.
 */
export type Work =
  | { readonly style: 'simplex' }
  | { readonly style: 'work-and-back' | 'perfecting'; readonly turn: Turn }
  | { readonly style: 'work-and-turn' | 'work-and-tumble' };

/** The turn between the passes, or `undefined` where the sheet is printed on one side only. */
export function turnOf(work: Work): Turn | undefined {
  switch (work.style) {
    case 'simplex':
      return undefined;
    case 'work-and-back':
    case 'perfecting':
      return work.turn;
    case 'work-and-turn':
      return 'side-to-side';
    case 'work-and-tumble':
      return 'end-to-end';
  }
}

/** Whether one form serves both passes, so that the layout must fall on itself when the sheet is turned. */
export function hasOneForm(work: Work): boolean {
  return work.style === 'work-and-turn' || work.style === 'work-and-tumble';
}
