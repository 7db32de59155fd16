// What hands begin on a sheet: what a press does, what lies under the pointer, what is asked for.
import type { Point } from '../../../shared/geometry/space.ts';
import type { PointerDrag } from './followHand.ts';

/** The pointer that presses, and the keys that are down. */
export type Press = Pick<PointerEvent, 'pointerId' | 'shiftKey' | 'ctrlKey' | 'metaKey'>;

/** What hands do on a sheet, besides panning with the middle button or the space bar. */
export interface SheetHands {
  /** What pressing the main button here begins; none where it begins nothing. */
  readonly press: (at: Point<'screen'>, press: Press) => PointerDrag | undefined;
  /** The cursor over this place; no place when the pointer has gone. */
  readonly hover: (at: Point<'screen'> | undefined) => string;
  /** What can be done with what lies here is asked for. */
  readonly openMenu?: (at: Point<'screen'>) => void;
}
