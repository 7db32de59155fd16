// A stack as it comes to the table: its name, how it last lay, and what its edges go back to.

import type { SheetEdge } from '../geometry/sheet.ts';
import { type Bounds, boundsOfPieces, type CuttingGrid, isRaw, type Part } from './cuttingGrid.ts';
import { letterFor } from './letters.ts';
import { oppositeEdge } from './lie.ts';
import type { CutKind } from './order.ts';
import type { CutChoice } from './search.ts';

/** A part of the sheet on its way through the cuts. */
export interface Stack {
  readonly name: string;
  readonly part: Part;
  /** The edge that lay at the back gauge when it was last cut; none before the first cut. */
  readonly lay: SheetEdge | undefined;
  /** The raw edge of the sheet that each edge goes back to. */
  readonly roots: Readonly<Record<SheetEdge, SheetEdge>>;
  /** Edges on which the first cut of a gutter left the gutter. */
  readonly gutters: readonly SheetEdge[];
}

/** The whole sheet before the first cut. */
export function uncut(part: Part): Stack {
  return {
    name: letterFor(0),
    part,
    lay: undefined,
    roots: { lead: 'lead', tail: 'tail', left: 'left', right: 'right' },
    gutters: [],
  };
}

/** The part of a stack behind the knife, and the one before it, each still under the name of the whole. */
export function partsOf(field: CuttingGrid, stack: Stack, choice: CutChoice): readonly [Stack, Stack] {
  const { gauge, behind, inFront } = choice;
  const half = (part: Part, cutEdge: SheetEdge): Stack => {
    const gutters = stack.gutters.filter((edge) => edge !== cutEdge);
    return {
      name: stack.name,
      part,
      lay: gauge,
      roots: { ...stack.roots, [cutEdge]: stack.roots[gauge] },
      gutters: reaches(field, part, cutEdge) ? gutters : [...gutters, cutEdge],
    };
  };
  return [half(behind, oppositeEdge(gauge)), half(inFront, gauge)];
}

function reaches(field: CuttingGrid, part: Part, edge: SheetEdge): boolean {
  return part.pieces.length > 0 && boundsOfPieces(field, part.pieces)[edge] === part[edge];
}

/** What a cut of this stack does. */
export function cutKindOf(field: CuttingGrid, stack: Stack, { gauge, behind, inFront }: CutChoice): CutKind {
  if (behind.pieces.length > 0 && inFront.pieces.length > 0) {
    const isCommon = reaches(field, behind, oppositeEdge(gauge)) && reaches(field, inFront, gauge);
    return isCommon ? 'common' : 'gutter';
  }
  const [waste, outer]: [Bounds, SheetEdge] =
    behind.pieces.length === 0 ? [behind, gauge] : [inFront, oppositeEdge(gauge)];
  if (isRaw(field, waste, outer)) return 'margin';
  return stack.gutters.includes(outer) ? 'second' : 'offcut';
}
