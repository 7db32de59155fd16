// The light table in the window: the lit sheet, looked at nearer and from farther away, its pieces to be picked up.
import { useMemo, useState } from 'react';
import { useStore } from 'zustand';
import type { Backed } from '../../shared/bench/backUp.ts';
import { toScreen } from '../../shared/bench/view.ts';
import type { Point, Side } from '../../shared/geometry/space.ts';
import { apply, inverse } from '../../shared/geometry/transform.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { PaintedLayer } from '../sheet/canvas/PaintedLayer.tsx';
import { SheetCanvas } from '../sheet/canvas/SheetCanvas.tsx';
import { holdToPan } from '../sheet/hand/holdToPan.ts';
import { useInks } from '../sheet/paint/useInks.ts';
import { pieceAt } from '../sheet/pieces/picking.ts';
import { seenFaces } from '../sheet/pieces/seenFaces.ts';
import { shownPieces } from '../sheet/pieces/shownPieces.ts';
import { usePicturesOf, useShownFaces } from '../sheet/pieces/usePicturesOf.ts';
import { app, useJob } from '../state/store.ts';
import { lightView } from './lightView.ts';
import { paintLight } from './paintLight.ts';

export function LightCanvas({
  through,
  backed,
  words,
}: {
  readonly through: number;
  readonly backed: readonly Backed[];
  /** What the canvas shows. */
  readonly words: string;
}) {
  const job = useJob();
  const inks = useInks();
  const picturesOf = usePicturesOf(job);
  const [lit, setLit] = useState<number | undefined>(undefined);
  const { view, window } = useStore(lightView.store);
  const turn = turnOf(job.brief.work);
  const sheet = sheetOf(job.brief).size;
  const front = useMemo(() => shownPieces(job, 1), [job]);
  const behind = useMemo(() => (turn === undefined ? [] : shownPieces(job, 2)), [job, turn]);
  useShownFaces(
    useMemo(
      () => seenFaces(job, [...front, ...behind], view, window, devicePixelRatio),
      [job, front, behind, view, window],
    ),
  );

  const under = (at: Point<'screen'>) => pieceAt(front, apply(inverse(toScreen<Side>(view)), at))?.position;
  return (
    <SheetCanvas
      viewing={lightView}
      sheet={sheet}
      hands={{
        press: (at) => holdToPan(at, lightView.panBy, () => app.getState().takeInHand(under(at))),
        hover: (at) => {
          setLit(at && under(at));
          return 'default';
        },
      }}
      layers={
        <PaintedLayer
          paint={(pen) =>
            paintLight(pen, { sheet, turn, view, front, behind, backed, picturesOf, through, lit }, inks)
          }
        />
      }
      role="img"
      aria-label={words}
    />
  );
}
