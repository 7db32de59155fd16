// What the canvas of the bench shows: everything its layers are drawn from.
import type { View } from '../../../shared/bench/view.ts';
import type { Rect, Side, Size } from '../../../shared/geometry/space.ts';
import type { Job } from '../../../shared/job/job.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import type { ShownPiece } from '../../sheet/pieces/shownPieces.ts';
import type { SeenGuide } from '../paint/paintGuides.ts';

export interface Scene {
  readonly window: Size;
  readonly view: View;
  /** The job as it is shown, a gesture's preview included. */
  readonly job: Job;
  /** All pieces of the side that is looked at. */
  readonly pieces: readonly ShownPiece[];
  /** Those that lie still; as long as the same pieces move, they stay the very same list. */
  readonly resting: readonly ShownPiece[];
  /** Those that a hand moves. */
  readonly moving: readonly ShownPiece[];
  /** The chosen positions, and the partners that follow them. */
  readonly chosen: ReadonlySet<number>;
  readonly following: ReadonlySet<number>;
  readonly findings: readonly LayoutFinding[];
  /** What a hand does just now. */
  readonly gesture: Gesture | undefined;
}

export type Gesture =
  | {
      readonly does: 'drag';
      /** The positions that move. */
      readonly moving: ReadonlySet<number>;
      readonly guides: readonly SeenGuide[];
      /** What is dragged, as it lies on the side that is looked at. */
      readonly box: Rect<Side>;
      /** Where that is, in words. */
      readonly says: string;
    }
  | { readonly does: 'frame'; readonly frame: Rect<'screen'> };
