// Refusals gathered: one entry for each reason, however many ways of working it stops.
import type { Fault } from '../fault/result.ts';
import type { Work } from '../geometry/work.ts';
import type { Feed, Paper, Printer } from '../library/library.ts';
import type { Length } from '../units/length.ts';
import type { Refused } from './candidate.ts';

/** What is refused. */
export interface RefusedOn {
  readonly printer: Printer;
  readonly feed: Feed;
  readonly paper?: Paper;
  readonly sheet?: readonly [Length, Length];
}

export class Refusals {
  readonly #all = new Map<string, Refused>();

  /** Adds a refusal of these ways of working; none for all of them. */
  add({ printer, feed, paper, sheet }: RefusedOn, works: readonly Work[], fault: Fault): void {
    const typed = sheet?.map((length) => length.typed).join(' x ');
    const key = JSON.stringify([printer.name, feed.name, paper?.name, typed, fault.message]);
    const before = this.#all.get(key)?.works ?? [];
    this.#all.set(key, {
      printer: printer.name,
      feed: feed.name,
      paper: paper?.name,
      sheet,
      works: [...before, ...works],
      fault,
    });
  }

  all(): readonly Refused[] {
    return [...this.#all.values()];
  }
}
