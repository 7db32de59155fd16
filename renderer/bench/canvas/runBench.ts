// The canvas of the bench at work: it follows the state of the window and is drawn whenever that changes.
import type { StoreApi } from 'zustand/vanilla';
import { turnOf } from '../../../shared/geometry/work.ts';
import type { Job } from '../../../shared/job/job.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import type { ArtPictures } from '../../art-pictures/artPictures.ts';
import type { AppState } from '../../state/store.ts';
import type { BenchViewing } from '../benchView.ts';
import { seenFaces } from '../model/seenFaces.ts';
import { type ShownPiece, type SideUp, shownPieces } from '../model/shownPieces.ts';
import { readInks } from '../paint/inks.ts';
import { sceneBuilder } from './buildScene.ts';
import { layBench } from './layers.ts';
import type { Gesture, Scene } from './scene.ts';

export interface BenchParts {
  readonly app: StoreApi<AppState>;
  readonly viewing: BenchViewing;
  readonly findings: StoreApi<readonly LayoutFinding[]>;
  readonly gesture: StoreApi<{ readonly gesture: Gesture | undefined }>;
  readonly pictures: ArtPictures;
}

export interface RunningBench {
  /** What is shown just now; none while no job is open. */
  readonly scene: () => Scene | undefined;
  readonly stop: () => void;
}

/** The faces of the other side are drawn too, so that they are there when the sheet is turned. */
function otherSide(job: Job, side: SideUp): readonly ShownPiece[] {
  return turnOf(job.brief.work) === undefined ? [] : shownPieces(job, side === 1 ? 2 : 1);
}

/** Draws the bench into an element until it is stopped; pictures of the art are freed then. */
export function runBench(into: HTMLDivElement, parts: BenchParts): RunningBench {
  const { app, viewing, findings, gesture, pictures } = parts;
  const layers = layBench(into);
  const build = sceneBuilder(pictures);
  let inks = readInks(into);
  let scene: Scene | undefined;
  let stopped = false;
  let asked: { readonly view: unknown; readonly pieces: unknown; readonly window: unknown } | undefined;

  const draw = () => {
    scene = build({
      app: app.getState(),
      viewed: viewing.store.getState(),
      inks,
      findings: findings.getState(),
      gesture: gesture.getState().gesture,
    });
    if (scene === undefined) return;
    layers.show(scene);
    if (scene.gesture?.does !== 'drag') askPictures(scene);
  };
  /** Several changes of one moment are drawn once. */
  let due = false;
  const drawSoon = () => {
    if (due) return;
    due = true;
    queueMicrotask(() => {
      due = false;
      if (!stopped) draw();
    });
  };
  const askPictures = ({ job, pieces, view, window }: Scene) => {
    if (asked?.view === view && asked.pieces === pieces && asked.window === window) return;
    asked = { view, pieces, window };
    const shown = [...pieces, ...otherSide(job, app.getState().side)];
    pictures.show(seenFaces(job, shown, view, window, devicePixelRatio));
  };
  const surround = new MutationObserver(() => {
    inks = readInks(into);
    drawSoon();
  });
  surround.observe(document.documentElement, { attributes: true });
  const stops = [
    app.subscribe(drawSoon),
    viewing.store.subscribe(drawSoon),
    findings.subscribe(drawSoon),
    gesture.subscribe(drawSoon),
    pictures.subscribe(layers.redrawArt),
  ];
  draw();
  return {
    scene: () => scene,
    stop: () => {
      stopped = true;
      for (const stop of stops) stop();
      surround.disconnect();
      layers.destroy();
      pictures.show([]);
    },
  };
}
