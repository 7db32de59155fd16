// The bench in four layers, so that a drag draws only what moves: sheet, resting pieces, moving pieces, words.
import { memo } from 'react';
import type { View } from '../../../shared/bench/view.ts';
import type { Rect, Size } from '../../../shared/geometry/space.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { PaintedLayer } from '../../sheet/canvas/PaintedLayer.tsx';
import type { Inks } from '../../sheet/paint/inks.ts';
import { inWindow, type PicturesOf, paintArt, paintLines } from '../../sheet/paint/paintPieces.ts';
import { paintAxis, paintFeed, paintGrips, paintPaper } from '../../sheet/paint/paintSheet.ts';
import type { Pen } from '../../sheet/paint/pen.ts';
import { useInks } from '../../sheet/paint/useInks.ts';
import type { ShownPiece } from '../../sheet/pieces/shownPieces.ts';
import { paintGuides } from '../paint/paintGuides.ts';
import { paintMargins } from '../paint/paintMargins.ts';
import { paintChosen, paintFindings, paintFollowing, paintNumbers } from '../paint/paintMarks.ts';
import { paintRulers } from '../paint/paintRulers.ts';
import type { Scene } from './scene.ts';
import { useBenchScene } from './useBenchScene.ts';

/** Follows the scene by itself, so that a drag draws nothing else of the window again. */
export function BenchLayers({ picturesOf }: { readonly picturesOf: PicturesOf }) {
  const inks = useInks();
  const scene = useBenchScene();
  const { job, view, window, resting, moving } = scene;
  return (
    <>
      <SheetLayer brief={job.brief} view={view} inks={inks} />
      <PiecesLayer pieces={resting} view={view} window={window} picturesOf={picturesOf} />
      <PiecesLayer pieces={moving} view={view} window={window} picturesOf={picturesOf} />
      <PaintedLayer paint={(pen) => paintWords(pen, scene, inks)} />
    </>
  );
}

const SheetLayer = memo(function SheetLayer({
  brief,
  view,
  inks,
}: {
  readonly brief: Job['brief'];
  readonly view: View;
  readonly inks: Inks;
}) {
  const seen = { ...sheetOf(brief), turn: turnOf(brief.work) };
  return (
    <PaintedLayer
      paint={(pen) => {
        paintPaper(pen, seen, view, inks);
        paintFeed(pen, seen.size, view, inks);
        paintGrips(pen, seen, view, inks);
      }}
    />
  );
});

const PiecesLayer = memo(function PiecesLayer({
  pieces,
  view,
  window,
  picturesOf,
}: {
  readonly pieces: readonly ShownPiece[];
  readonly view: View;
  readonly window: Size;
  readonly picturesOf: PicturesOf;
}) {
  const seen = inWindow(pieces, view, window);
  return (
    <PaintedLayer
      paint={(pen) => {
        paintArt(pen, seen, picturesOf, view);
        paintLines(pen, seen, view);
        paintNumbers(pen, seen, view);
      }}
    />
  );
});

function paintWords(pen: Pen, scene: Scene, inks: Inks): void {
  const { job, view, window, pieces, chosen, following, findings, gesture } = scene;
  const { size, unprintable } = sheetOf(job.brief);
  const turn = turnOf(job.brief.work);
  const seen = inWindow(pieces, view, window);
  const among = (positions: ReadonlySet<number>) => seen.filter((p) => positions.has(p.position));
  paintAxis(pen, { size, unprintable, turn }, view);
  paintFindings(pen, seen, findings, view);
  paintFollowing(pen, among(following), view);
  paintChosen(pen, among(chosen), view);
  if (turn !== undefined) paintMargins(pen, pieces, job, turn, view);
  if (gesture?.does === 'drag') paintGuides(pen, gesture, size, job.brief.units, view);
  if (gesture?.does === 'frame') paintFrame(pen, gesture.frame, inks.accent);
  paintRulers(pen, view, window, job.brief.units, inks);
}

function paintFrame(pen: Pen, { x, y, w, h }: Rect<'screen'>, colour: string): void {
  pen.strokeStyle = colour;
  pen.lineWidth = 1;
  pen.setLineDash([4, 3]);
  pen.strokeRect(Math.round(x) + 0.5, Math.round(y) + 0.5, Math.round(w), Math.round(h));
  pen.setLineDash([]);
}
