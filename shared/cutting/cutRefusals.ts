// Why a sheet is not cut: said so that the person knows which pieces to move, or which figure of the cutter is too small.
import type { Fault } from '../fault/result.ts';
import { holds, overlap, wholeOf } from '../geometry/rect.ts';
import type { SheetEdge } from '../geometry/sheet.ts';
import type { Size } from '../geometry/space.ts';
import type { Position } from '../layout/position.ts';
import type { Unit } from '../units/length.ts';
import { showLength, showSize } from '../units/show.ts';
import type { Cutter } from './cutter.ts';
import type { NoWayThrough } from './inTheWay.ts';
import { sayList, sayMany } from './sayList.ts';

const BY_HAND = 'Move it on the bench, or lay the sheet out afresh.';

/** What keeps an arrangement from being cut at all, before any cut is looked for. */
export function arrangementFault(arrangement: readonly Position[], sheet: Size): Fault | undefined {
  if (arrangement.length === 0) {
    return noOrder('There is nothing to cut: no piece lies on the sheet.', 'Lay the sheet out first.');
  }
  const off = arrangement.findIndex((p) => !holds(wholeOf(sheet), p.trim));
  if (off >= 0) return noOrder(`${sayPosition(arrangement, off, 'P')} runs off the sheet.`, BY_HAND);
  for (const [i, one] of arrangement.entries()) {
    const over = arrangement.findIndex((other, j) => j > i && overlap(one.trim, other.trim));
    if (over >= 0) {
      const message = `${sayPosition(arrangement, i, 'P')} lies over ${sayPosition(arrangement, over)}, so no cut can free both.`;
      return noOrder(message, BY_HAND);
    }
  }
  return undefined;
}

/** The arrangement has no order of cuts from edge to edge. */
export function blockedFault(arrangement: readonly Position[], blocked: NoWayThrough): Fault {
  const { pieces, along, through } = blocked;
  return noOrder(
    `No cut from edge to edge parts ${sayMany(
      'position',
      pieces.map((p) => p + 1),
    )}: the one that comes nearest, along the ${sayEdge(along.edge)} of ${sayPosition(arrangement, along.piece)}, would run through ${sayList(through.map((p) => sayPosition(arrangement, p)))}.`,
    `Move ${sayMany(
      'position',
      through.map((p) => p + 1),
    )} clear of that line on the bench, or lay the sheet out afresh.`,
  );
}

/** The sheet, or a part that has to come off it first, is more than the cutter takes. */
export function tooLargeFault(sheet: Size, cutter: Cutter, unit: Unit): Fault {
  return refused(
    `"${cutter.name}" takes ${showLength(cutter.widest, unit)} along the knife and ${showLength(cutter.deepest, unit)} behind it, too little to cut the ${showSize(sheet, unit)} sheet.`,
    'Take a larger cutter or a smaller sheet, or correct the figures of the cutter.',
  );
}

/** A piece is shorter than the clamp reaches, and nothing lies next to it that could be held instead. */
export function tooNarrowFault(arrangement: readonly Position[], cutter: Cutter, unit: Unit): Fault {
  const narrow = arrangement.map(({ trim }) => Math.min(trim.w, trim.h));
  const least = Math.min(...narrow);
  return refused(
    `${sayPosition(arrangement, narrow.indexOf(least), 'P')} is ${showLength(least, unit)} at its narrowest, and "${cutter.name}" holds nothing shorter than ${showLength(cutter.leastGauge, unit)} behind its knife.`,
    'Cut such pieces by other means, lay them next to larger ones, or take a cutter whose back gauge comes nearer to the knife.',
  );
}

/** The pile is too high, or one sheet is. */
export function tooThickFault(caliper: number, cutter: Cutter, unit: Unit): Fault {
  return refused(
    `One sheet of ${showLength(caliper, unit)} is thicker than what goes under the clamp of "${cutter.name}".`,
    'Check the caliper of the paper and the figures of the cutter.',
  );
}

function noOrder(message: string, remedy: string): Fault {
  return { code: 'no-guillotine-order', message, remedy };
}

function refused(message: string, remedy: string): Fault {
  return { code: 'cutter-refuses', message, remedy };
}

/** A position as it is named in a sentence, or at its beginning. */
function sayPosition(arrangement: readonly Position[], index: number, p: 'p' | 'P' = 'p'): string {
  const position = arrangement[index];
  if (position === undefined) throw new Error(`There is no position ${index}`);
  return `${p}osition ${index + 1} ("${position.piece}", ${position.face})`;
}

function sayEdge(edge: SheetEdge): string {
  return {
    left: 'left edge',
    right: 'right edge',
    lead: 'edge towards the lead',
    tail: 'edge towards the tail',
  }[edge];
}
