// Sheets for the cutting simulation: printed on both sides on paper that may be cut wrong, held as the printer holds it.
import type { SheetHold } from '../../shared/geometry/register.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import type { Position } from '../../shared/layout/position.ts';
import { type Ink, type Pile, printedSheet } from './cutSimulation.ts';

interface Printing {
  readonly sheet: { readonly w: number; readonly h: number };
  readonly arrangement: readonly Position[];
  readonly hold: SheetHold;
  readonly turn: Turn | undefined;
  /** How much too wide and too long the paper is. */
  readonly wrong: { readonly w: number; readonly h: number };
}

/** The printed sheet. Where it is printed on one side only, its back counts as printed just behind its front. */
export function printForCutting({ sheet, arrangement, hold, turn, wrong }: Printing): Pile {
  const paper = { w: sheet.w + wrong.w, h: sheet.h + wrong.h };
  // How far the image lies from the left and the tail of the paper, beyond where it was meant to.
  const right = { left: 0, right: wrong.w, centre: wrong.w / 2 }[hold.across];
  const up = { lead: wrong.h, centre: wrong.h / 2 }[hold.along];
  const ink = arrangement.map(({ trim }, position): Ink => {
    const { w, h } = trim;
    const front = { x: trim.x + right, y: trim.y + up, w, h };
    if (turn === undefined) return { position, front, back: front };
    // Meant for the turned sheet, printed as the first pass was, and looked at again from side 1.
    const meant =
      turn === 'side-to-side'
        ? { x: sheet.w - trim.x - w, y: trim.y }
        : { x: trim.x, y: sheet.h - trim.y - h };
    const laid = { x: meant.x + right, y: meant.y + up };
    const back =
      turn === 'side-to-side'
        ? { x: paper.w - laid.x - w, y: laid.y, w, h }
        : { x: laid.x, y: paper.h - laid.y - h, w, h };
    return { position, front, back };
  });
  return printedSheet(paper.w, paper.h, ink);
}
