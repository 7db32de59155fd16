// Arranging the pieces on side 1: as many up as a guillotine can cut, every back behind its own front.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { lying } from '../geometry/head.ts';
import { around, grow, shift } from '../geometry/rect.ts';
import { type SheetEdges, usableArea } from '../geometry/sheet.ts';
import type { Rect, Size } from '../geometry/space.ts';
import { same, within } from '../geometry/tolerance.ts';
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import type { Unit } from '../units/length.ts';
import { showLength, showSize } from '../units/show.ts';
import { type Centring, placeBlock } from './centring.ts';
import { type Design, designNamed } from './forms.ts';
import { type Copies, chooseCopies } from './guillotine/chooseCopies.ts';
import type { LaidCell } from './guillotine/cutTree.ts';
import type { Lies } from './lies.ts';
import { partnerOf } from './partner.ts';
import type { Position } from './position.ts';
import { cellOf, halfRoom, type Room, wholeRoom } from './room.ts';

/** A design to be arranged: its trim (pt, head up), how it may lie and how many are ordered. */
export interface OrderedDesign extends Design {
  readonly trim: Size;
  readonly lies: Lies;
  readonly quantity: number;
}

/** All lengths in pt. */
export interface ArrangeInput {
  readonly sheet: Size;
  readonly unprintable: SheetEdges;
  readonly work: Work;
  readonly gutter: number;
  readonly centring: Centring;
  /** The unit that refusals speak in. */
  readonly unit: Unit;
  readonly designs: readonly OrderedDesign[];
}

export interface Arranged {
  /** In reading order, from the lead edge and from the left. */
  readonly positions: readonly Position[];
  /** What the person should know of this layout, in words. */
  readonly notices: readonly string[];
}

/**
 * Lays the designs out on side 1. In a one-form style the fronts lie on one half and their backs, as mirrors, on the
 * other; else every front lies on side 1 and its back follows behind it.
 *
 * The block is centred as asked. Refuses (`piece-too-large`, `no-room-after-turning`, `pieces-do-not-fit-together`)
 * with what is needed and what there is.
 */
export function arrange(input: ArrangeInput): Result<Arranged> {
  const turn = turnOf(input.work);
  const usable = usableArea(input.sheet, input.unprintable, turn);
  const bleed = Math.max(...input.designs.map((d) => d.bleed));
  const room = usable && roomIn(usable, bleed, input);
  if (usable === undefined || room === undefined) return refuse(nothingPrintable(input));
  const tooLarge = input.designs.find((design) => !fitsInto(room.region, design, input.gutter));
  if (tooLarge !== undefined) return refuse(tooLargeFor(tooLarge, room.region, input));

  const perCell = hasOneForm(input.work) ? 2 : 1;
  const chosen = chooseCopies(
    input.designs.map((d) => ({
      name: d.name,
      cell: cellOf(d.trim, input.gutter),
      lies: d.lies,
      quantity: Math.ceil(d.quantity / perCell),
    })),
    room.region,
  );
  if (!chosen.ok) return chosen;
  const fronts = chosen.value.cells.map((cell) => frontOf(cell, room, input));
  const positions = hasOneForm(input.work) ? fronts.flatMap((front) => withPartner(front, input)) : fronts;
  const centred = centreBlock(positions, usable, input);
  return ok({
    positions: inReadingOrder(centred),
    notices: noticesOf(chosen.value, input, perCell),
  });
}

/** The room for cells; nothing where the bleeds alone fill the usable area. */
function roomIn(usable: Rect<'side1'>, bleed: number, input: ArrangeInput): Room | undefined {
  const turn = turnOf(input.work);
  const room =
    turn !== undefined && hasOneForm(input.work)
      ? halfRoom(usable, bleed, input.gutter, turn, input.sheet)
      : wholeRoom(usable, bleed, input.gutter);
  return room.region.w > 0 && room.region.h > 0 ? room : undefined;
}

function fitsInto(region: Size, design: OrderedDesign, gutter: number): boolean {
  const heads = ([0, 90] as const).filter(
    (head) => design.lies === 'either' || (design.lies === 'upright') === (head === 0),
  );
  return heads.some((head) => {
    const cell = lying(cellOf(design.trim, gutter), head);
    return within(cell.w, region.w) && within(cell.h, region.h);
  });
}

function frontOf(cell: LaidCell, room: Room, input: ArrangeInput): Position {
  const design = input.designs[cell.kind];
  if (design === undefined) throw new Error(`There is no design number ${cell.kind}`);
  return { piece: design.name, face: 'front', trim: room.trimOf(cell), head: cell.onItsSide ? 90 : 0 };
}

function withPartner(front: Position, input: ArrangeInput): readonly Position[] {
  const turn = turnOf(input.work);
  if (turn === undefined) throw new Error('One form serves both sides only when the sheet is turned');
  return [front, partnerOf(front, designNamed(input.designs, front.piece).turned, turn, input.sheet)];
}

/** Moves all positions together so that their block, bleeds included, lies where it is asked to. */
function centreBlock(
  positions: readonly Position[],
  usable: Rect<'side1'>,
  input: ArrangeInput,
): readonly Position[] {
  const block = around(positions.map((p) => grow(p.trim, designNamed(input.designs, p.piece).bleed)));
  if (block === undefined) return positions;
  const to = placeBlock(block, usable, input.sheet, input.centring);
  return positions.map((p) => ({ ...p, trim: shift(p.trim, to.x - block.x, to.y - block.y) }));
}

function inReadingOrder(positions: readonly Position[]): readonly Position[] {
  const top = (p: Position) => p.trim.y + p.trim.h;
  return positions.toSorted((a, b) => (same(top(a), top(b)) ? a.trim.x - b.trim.x : top(b) - top(a)));
}

/** Two one-form halves hold twice what one of them holds; the cells of a whole side count once. */
function noticesOf(chosen: Copies, input: ArrangeInput, perCell: 1 | 2): readonly string[] {
  const notices: string[] = [];
  const count = chosen.cells.length;
  const denser = chosen.denser?.();
  if (denser?.kind === 'more') {
    notices.push(
      `A layout that no guillotine can cut would hold ${denser.atLeast * perCell} up instead of ${count * perCell}; it is not used, because every cut must run from edge to edge.`,
    );
  }
  if (denser?.kind === 'unknown') {
    notices.push(
      `No more than ${count * perCell} up can be cut by a guillotine; whether a layout that none can cut would hold more (at most ${denser.atMost * perCell}) is not known.`,
    );
  }
  if (!chosen.proven) {
    notices.push('This layout is good, but it is not proven that no other would need fewer sheets.');
  }
  for (const design of input.designs) {
    if (design.hasBack && input.work.style === 'simplex') {
      notices.push(`simplex prints one side only: the back of "${design.name}" is not printed.`);
    }
  }
  return notices;
}

function nothingPrintable(input: ArrangeInput): Fault {
  return {
    code: 'no-room-after-turning',
    message: `Nothing is left to print on: the border that the printer cannot print and the bleeds fill the ${showSize(input.sheet, input.unit)} sheet.`,
    remedy: 'Check the sheet size and the unprintable border in the brief.',
    where: 'sheet',
  };
}

function tooLargeFor(design: OrderedDesign, region: Size, input: ArrangeInput): Fault {
  const { unit, gutter } = input;
  const half = hasOneForm(input.work) ? ` on one half of it, which ${input.work.style} needs` : '';
  const lies = design.lies === 'either' ? 'either way' : design.lies;
  // What the trims may take up: the region is counted in cells, which carry a gutter more.
  const room = { w: Math.max(0, region.w - gutter), h: Math.max(0, region.h - gutter) };
  return {
    code: hasOneForm(input.work) ? 'no-room-after-turning' : 'piece-too-large',
    message: `"${design.name}" (${showSize(design.trim, unit)} and ${showLength(design.bleed, unit)} bleed) does not fit the sheet ${lies}: there is room for a trim of ${showSize(room, unit)}${half}.`,
    remedy: hasOneForm(input.work)
      ? 'Take a larger sheet, or work-and-back, which has the whole side for each face.'
      : 'Take a larger sheet, feed it the other way, or let the piece lie the other way.',
    where: 'sheet',
  };
}
