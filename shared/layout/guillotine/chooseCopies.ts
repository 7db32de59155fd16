// How many copies of each design go on one sheet, and where, so that the order takes the fewest sheets.
import { type Fault, ok, type Result, refuse } from '../../fault/result.ts';
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { type CutTree, cellsOf, type LaidCell } from './cutTree.ts';
import type { Denser } from './denser.ts';
import { fewestSheets, type Sheets } from './fewestSheets.ts';
import { fitTogether } from './fitTogether.ts';
import { layIdentical } from './identical.ts';
import { layAlike } from './layAlike.ts';
import { shareOut } from './shareOut.ts';
import { type SizeOnSheet, sizesOf } from './sizes.ts';
import { offeredRegion } from './ticks.ts';
import { waysToLie } from './ways.ts';

/** A design: the cell it needs (pt, as it lies upright), how it may lie, how many are ordered (>= 1). */
export interface OrderedKind {
  readonly name: string;
  readonly cell: Size;
  readonly lies: Lies;
  readonly quantity: number;
}

/** One sheet for an order. A cell's `kind` is the place of its design in the list. */
export interface Copies {
  /** Copies of each design on a sheet, every one at least 1. */
  readonly copies: readonly number[];
  /** The sheets that the order takes. */
  readonly sheets: number;
  readonly cells: readonly LaidCell[];
  readonly tree: CutTree;
  /** Whether no sheet that a guillotine can cut takes fewer. */
  readonly proven: boolean;
  /** Of a design that is alone: whether a layout that no guillotine can cut would hold more. */
  readonly denser?: () => Denser;
}

/**
 * One sheet on which every design has at least one copy and which takes the fewest sheets for the order.
 *
 * Among such sheets it has the fewest copies, so that least is left over; spare room stays empty, for a copy more of one
 * design while the others set the number of sheets is only waste. A design that is alone fills its sheet: there the
 * spare room would serve nothing else, and the run gets no longer. Copies of a design lie together.
 *
 * Lengths in pt. Refuses a design that does not fit the region at all (`piece-too-large`) and designs that do not fit it
 * together (`pieces-do-not-fit-together`).
 */
export function chooseCopies(kinds: readonly OrderedKind[], region: Size): Result<Copies> {
  const room = offeredRegion(region);
  const tooLarge = kinds.find(({ cell, lies }) => waysToLie(cell, lies, room).length === 0);
  if (tooLarge !== undefined) return refuse(doesNotFit(tooLarge));
  const sizes = sizesOf(kinds, room);
  const chosen: Chosen | 'cannot' | 'unknown' =
    kinds.length === 1 ? fullSheet(kinds[0] as OrderedKind, region) : sheetFor(kinds, sizes, region);
  if (chosen === 'cannot' || chosen === 'unknown') return refuse(doNotFitTogether(kinds, chosen));

  const { copies, sheets, proven, denser } = chosen;
  const waiting = sizes.map(({ members }) =>
    members.map(({ kind }) => ({ kind, copies: copies[kind] as number })),
  );
  const tree = shareOut(chosen.layOut(), waiting);
  const crossed = new Set(
    sizes.flatMap(({ members }) => members.filter((m) => m.crossed).map((m) => m.kind)),
  );
  const cells = cellsOf(tree).map((cell) => ({
    ...cell,
    onItsSide: cell.onItsSide !== crossed.has(cell.kind),
  }));
  return ok({ copies, sheets, cells, tree, proven, ...(denser && { denser }) });
}

type Chosen = Sheets<CutTree> & Pick<Copies, 'denser'>;

function fullSheet({ cell, lies, quantity }: OrderedKind, region: Size): Chosen | 'cannot' {
  const { count, tree, proven, denser } = layIdentical(cell, lies, region);
  if (tree === undefined) return 'cannot';
  return { copies: [count], sheets: Math.ceil(quantity / count), layOut: () => tree, proven, denser };
}

function sheetFor(
  kinds: readonly OrderedKind[],
  sizes: readonly SizeOnSheet[],
  region: Size,
): Sheets<CutTree> | 'cannot' | 'unknown' {
  const room = offeredRegion(region);
  const alone = sizes.map(({ cell, lies }) => layIdentical(cell, lies, region));
  return fewestSheets(
    kinds.map((kind) => kind.quantity),
    (copies) => {
      const counts = sizes.map(({ members }) =>
        members.reduce((sum, { kind }) => sum + (copies[kind] as number), 0),
      );
      const tooMany = alone.filter(({ count }, size) => (counts[size] as number) > count);
      if (tooMany.length > 0) return tooMany.some(({ proven }) => proven) ? 'cannot' : 'unknown';
      const [size, another] = sizes;
      const fullest = alone[0]?.tree;
      if (size === undefined || another !== undefined || fullest === undefined) {
        return fitTogether(sizes, counts, room);
      }
      return { layOut: () => layAlike(size, counts[0] as number, room, fullest) };
    },
  );
}

function doesNotFit({ name, lies }: OrderedKind): Fault {
  const how =
    lies === 'either'
      ? ', neither upright nor on its side'
      : lies === 'upright'
        ? ' upright'
        : ' on its side';
  return {
    code: 'piece-too-large',
    message: `"${name}" does not fit the sheet${how}.`,
    remedy:
      lies === 'either'
        ? 'Take a larger sheet or a narrower gutter.'
        : 'Let it lie the other way too, or take a larger sheet.',
  };
}

function doNotFitTogether(kinds: readonly OrderedKind[], why: 'cannot' | 'unknown'): Fault {
  const names = kinds.map(({ name }) => `"${name}"`);
  const all = `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
  return {
    code: 'pieces-do-not-fit-together',
    message:
      why === 'cannot'
        ? `${all} fit the sheet one by one, but not all on one sheet.`
        : `No way was found to cut ${all} out of one sheet.`,
    remedy: 'Take a larger sheet, or make two jobs of it with fewer designs on a sheet.',
  };
}
