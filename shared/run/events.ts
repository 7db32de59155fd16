// What happens to the sheets of a run, one event after another, as the person at the printer tells it.
import type { RunPlan } from './plan.ts';

/** Which time through the printer. */
export type Pass = 1 | 2;

/** One thing that happened. Sheets and pieces are whole numbers, 1 or more unless it says otherwise. */
export type RunEvent =
  | { readonly kind: 'begun'; readonly plan: RunPlan }
  /** Blank sheets laid in, at the beginning or later. */
  | { readonly kind: 'loaded'; readonly sheets: number }
  /** One sheet was printed as all will be, and looked at. */
  | { readonly kind: 'proofed'; readonly go: true }
  | { readonly kind: 'proofed'; readonly go: false; readonly reason: string }
  | { readonly kind: 'good'; readonly pass: Pass; readonly sheets: number }
  | { readonly kind: 'spoiled'; readonly pass: Pass; readonly sheets: number; readonly reason: string }
  /** All that came good out of pass 1 is dry and lies turned for pass 2. */
  | { readonly kind: 'turned' }
  /** Pieces of one design that came from the knife. One of the two numbers may be 0. */
  | {
      readonly kind: 'trimmed';
      readonly piece: string;
      readonly good: number;
      readonly spoiled: number;
      /** Why some were spoiled; empty where none were. */
      readonly reason: string;
    }
  | { readonly kind: 'delivered'; readonly pieces: readonly DeliveredPieces[] }
  /** What only the person or the printer's own counter knows of the run. At least one of the two. */
  | {
      readonly kind: 'measured';
      /** Ink that the run took, in ml. */
      readonly ink?: number | undefined;
      /** How long somebody stood at it, in minutes. */
      readonly minutes?: number | undefined;
    }
  /** An earlier event was a miscount and did not happen. */
  | { readonly kind: 'undone'; readonly of: number };

interface DeliveredPieces {
  readonly piece: string;
  readonly pieces: number;
}

/** An event as it stands in the log: the host has given it its number, from 1 on, and its time. */
export interface RunLogEntry {
  readonly id: number;
  /** In UTC: `2026-03-01T14:30:00.000Z`. */
  readonly at: string;
  readonly event: RunEvent;
}

/**
 * Why sheets are spoiled, as offered in each pass. Other words may be used too.
 *
 * @source common practice, no source
 */
export const USUAL_REASONS: Readonly<Record<Pass | 'trim', readonly string[]>> = {
  1: ['setting up', 'jam or misfeed', 'skewed', 'colour or banding', 'smudged'],
  2: ['out of register', 'turned the wrong way', 'jam or misfeed', 'skewed', 'colour or banding', 'smudged'],
  trim: ['miscut', 'edge torn or nicked', 'smudged'],
};

/** What an event is called where it is shown or taken back. */
export function nameOfEvent(event: RunEvent): string {
  switch (event.kind) {
    case 'begun':
      return 'Run begun';
    case 'loaded':
      return `${sheetsOf(event.sheets)} loaded`;
    case 'proofed':
      return event.go ? 'Proof sheet: go' : `Proof sheet: no-go (${event.reason})`;
    case 'good':
      return `Pass ${event.pass}: ${event.sheets} good`;
    case 'spoiled':
      return `Pass ${event.pass}: ${event.sheets} spoiled (${event.reason})`;
    case 'turned':
      return 'Dried and turned';
    case 'trimmed': {
      const spoiled = event.spoiled === 0 ? '' : `, ${event.spoiled} spoiled (${event.reason})`;
      return `${event.piece} trimmed: ${event.good} good${spoiled}`;
    }
    case 'delivered':
      return `Delivered: ${event.pieces.map(({ piece, pieces }) => `${pieces} ${piece}`).join(', ')}`;
    case 'measured':
      return `Measured: ${[
        ...(event.ink === undefined ? [] : [`${event.ink} ml of ink`]),
        ...(event.minutes === undefined ? [] : [`${event.minutes} minutes`]),
      ].join(', ')}`;
    case 'undone':
      return 'Taken back';
  }
}

/** A number of sheets in words: `1 sheet`, `20 sheets`. */
export function sheetsOf(count: number): string {
  return count === 1 ? '1 sheet' : `${count} sheets`;
}
