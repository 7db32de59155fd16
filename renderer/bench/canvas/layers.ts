// The canvas of the bench in four layers, so that a drag draws only what moves: sheet, pieces, dragged pieces, words.
import Konva from 'konva';
import { turnOf } from '../../../shared/geometry/work.ts';
import { sheetOf } from '../../../shared/job/job.ts';
import { paintGuides } from '../paint/paintGuides.ts';
import { paintMargins } from '../paint/paintMargins.ts';
import { paintChosen, paintFindings, paintFollowing, paintNumbers } from '../paint/paintMarks.ts';
import { inWindow, paintArt, paintLines } from '../paint/paintPieces.ts';
import { paintRulers } from '../paint/paintRulers.ts';
import { paintAxis, paintFeed, paintGrips, paintPaper } from '../paint/paintSheet.ts';
import type { Paper } from '../paint/pen.ts';
import type { Scene } from './scene.ts';

export interface BenchLayers {
  /** Draws what has changed since the scene before. */
  readonly show: (scene: Scene) => void;
  /** Draws the pieces again, because a picture has come. */
  readonly redrawArt: () => void;
  readonly destroy: () => void;
}

type Painter = (paper: Paper, scene: Scene) => void;

export function layBench(into: HTMLDivElement): BenchLayers {
  const stage = new Konva.Stage({ container: into, width: 1, height: 1, listening: false });
  let scene: Scene | undefined;
  const add = (paint: Painter) => {
    const layer = new Konva.Layer({ listening: false });
    const shape = new Konva.Shape({
      listening: false,
      perfectDrawEnabled: false,
      sceneFunc: (context) => {
        if (scene !== undefined) paint(context._context, scene);
      },
    });
    layer.add(shape);
    stage.add(layer);
    return layer;
  };
  const sheet = add(paintSheetLayer);
  const pieces = add(paintPiecesLayer);
  const dragged = add(paintDraggedLayer);
  const words = add(paintWordsLayer);

  return {
    show: (next) => {
      const before = scene;
      scene = next;
      if (before?.window.w !== next.window.w || before.window.h !== next.window.h) {
        stage.size({ width: next.window.w, height: next.window.h });
      }
      const seenOtherwise =
        before === undefined ||
        before.view !== next.view ||
        before.window !== next.window ||
        before.inks !== next.inks;
      if (seenOtherwise || before.job.brief !== next.job.brief) sheet.batchDraw();
      if (seenOtherwise || restingChanged(before, next)) pieces.batchDraw();
      if (seenOtherwise || movingOf(before) !== undefined || movingOf(next) !== undefined)
        dragged.batchDraw();
      words.batchDraw();
    },
    redrawArt: () => {
      pieces.batchDraw();
      dragged.batchDraw();
    },
    destroy: () => stage.destroy(),
  };
}

function movingOf({ gesture }: Scene): ReadonlySet<number> | undefined {
  return gesture?.does === 'drag' ? gesture.moving : undefined;
}

/** While the same pieces move, those that rest stay as they were drawn. */
function restingChanged(before: Scene, next: Scene): boolean {
  const moving = movingOf(next);
  if (moving !== movingOf(before)) return true;
  return moving === undefined && (before.pieces !== next.pieces || before.picturesOf !== next.picturesOf);
}

const paintSheetLayer: Painter = (paper, { job, view, inks }) => {
  const seen = { ...sheetOf(job.brief), turn: turnOf(job.brief.work) };
  paintPaper(paper, seen, view, inks);
  paintFeed(paper, seen.size, view, inks);
  paintGrips(paper, seen, view, inks);
};

const paintPiecesLayer: Painter = (paper, scene) => {
  const moving = movingOf(scene);
  const resting = moving === undefined ? scene.pieces : scene.pieces.filter((p) => !moving.has(p.position));
  paintPieces(paper, scene, resting);
};

const paintDraggedLayer: Painter = (paper, scene) => {
  const moving = movingOf(scene);
  if (moving === undefined) return;
  paintPieces(
    paper,
    scene,
    scene.pieces.filter((p) => moving.has(p.position)),
  );
};

function paintPieces(paper: Paper, scene: Scene, pieces: Scene['pieces']): void {
  const { view, window, picturesOf } = scene;
  const seen = inWindow(pieces, view, window);
  paintArt(paper, seen, picturesOf, view);
  paintLines(paper, seen, view);
  paintNumbers(paper, seen, view);
}

const paintWordsLayer: Painter = (paper, scene) => {
  const { job, view, window, inks, pieces, chosen, following, findings, gesture } = scene;
  const { size, unprintable } = sheetOf(job.brief);
  const turn = turnOf(job.brief.work);
  const seen = inWindow(pieces, view, window);
  paintAxis(paper, { size, unprintable, turn }, view);
  paintFindings(paper, seen, findings, view);
  paintFollowing(
    paper,
    seen.filter((p) => following.has(p.position)),
    view,
  );
  paintChosen(
    paper,
    seen.filter((p) => chosen.has(p.position)),
    view,
  );
  if (turn !== undefined) paintMargins(paper, pieces, job, turn, view);
  if (gesture?.does === 'drag') paintGuides(paper, gesture, size, job.brief.units, view);
  if (gesture?.does === 'frame') paintFrame(paper, gesture.frame, inks.accent);
  paintRulers(paper, view, window, job.brief.units, inks);
};

function paintFrame(
  paper: Paper,
  { x, y, w, h }: { x: number; y: number; w: number; h: number },
  colour: string,
) {
  paper.strokeStyle = colour;
  paper.lineWidth = 1;
  paper.setLineDash([4, 3]);
  paper.strokeRect(Math.round(x) + 0.5, Math.round(y) + 0.5, Math.round(w), Math.round(h));
  paper.setLineDash([]);
}
