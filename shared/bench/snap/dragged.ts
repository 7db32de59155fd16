// What a snap is about: the pieces that are dragged, and those that rest around them.
import type { Rect, Size } from '../../geometry/space.ts';

/** What is dragged, in pt: the size of its trims together, and how far its bleed reaches around them. */
export interface DraggedBox {
  readonly size: Size;
  readonly bleed: number;
  /** Whether a partner follows as its mirror. */
  readonly partnered: boolean;
}

/** A piece that stays where it is while another is dragged. */
export interface Neighbour {
  readonly trim: Rect<'side1'>;
  /** As guides name it: `position 3`. */
  readonly name: string;
}
