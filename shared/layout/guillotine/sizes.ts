// Which kinds need the same size of cell, so that their copies can change places.
import type { Size } from '../../geometry/space.ts';
import type { Lies } from '../lies.ts';
import { type Way, waysToLie } from './ways.ts';

/** A size of cell (pt) and all the kinds that need it. */
export interface SizeOnSheet {
  /** As the first of its kinds lies upright. */
  readonly cell: Size;
  readonly lies: Lies;
  /** The ways that fit the room. */
  readonly ways: readonly Way[];
  readonly members: readonly Member[];
}

/** A kind (its place in the list); `crossed` if it lies on its side where the first of its size lies upright. */
export interface Member {
  readonly kind: number;
  readonly crossed: boolean;
}

/** The sizes in the order in which they first come up. A room in ticks. */
export function sizesOf(
  kinds: readonly { readonly cell: Size; readonly lies: Lies }[],
  room: Size,
): SizeOnSheet[] {
  const sizes = new Map<string, SizeOnSheet & { readonly members: Member[] }>();
  for (const [kind, { cell, lies }] of kinds.entries()) {
    const ways = waysToLie(cell, lies, room);
    const rooms = ways.map(({ w, h }) => `${w} x ${h}`).toSorted();
    const size = sizes.get(rooms.join());
    if (size === undefined)
      sizes.set(rooms.join(), { cell, lies, ways, members: [{ kind, crossed: false }] });
    else size.members.push({ kind, crossed: isCrossed(ways, size.ways) });
  }
  return [...sizes.values()];
}

/** Whether the way with the room of the first's first way lies the other way round. */
function isCrossed(ways: readonly Way[], firsts: readonly Way[]): boolean {
  const [first] = firsts;
  const same = ways.find((way) => way.w === first?.w && way.h === first?.h);
  return same?.onItsSide !== first?.onItsSide;
}
