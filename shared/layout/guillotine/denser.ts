// Whether a layout that no guillotine can cut would hold more identical pieces. It is only said, never laid.
import { type PinwheelTask, searchPinwheels } from './pinwheels.ts';

/** The answer: surely not; yes, at least so many; or not known, but surely no more than so many. */
export type Denser =
  | { readonly kind: 'no-more' }
  | { readonly kind: 'more'; readonly atLeast: number }
  | { readonly kind: 'unknown'; readonly atMost: number };

/**
 * Whether a region could hold more than `count` cells of one size if cuts need not run from edge to edge, `count` being
 * what a guillotine gets out of it and `atMost` a bound on any layout. Pinwheels are tried where a task is given; the work
 * is bounded by a count, about as much again as laying the pieces.
 */
export function couldHoldMore(count: number, atMost: number, task: PinwheelTask | undefined): Denser {
  if (atMost <= count) return { kind: 'no-more' };
  const found = task === undefined ? count : searchPinwheels(task, count);
  return found > count ? { kind: 'more', atLeast: found } : { kind: 'unknown', atMost };
}
