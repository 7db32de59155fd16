// The scene of the bench as the state of the window is now, and the pictures that it needs.
import { useMemo } from 'react';
import { useStore } from 'zustand';
import { turnOf } from '../../../shared/geometry/work.ts';
import type { Job } from '../../../shared/job/job.ts';
import { seenFaces } from '../../sheet/pieces/seenFaces.ts';
import { shownPieces } from '../../sheet/pieces/shownPieces.ts';
import { useShownFaces } from '../../sheet/pieces/usePicturesOf.ts';
import { app } from '../../state/store.ts';
import { benchView } from '../benchView.ts';
import { benchFindings } from '../findings.ts';
import { useSettledJob } from '../useSettledJob.ts';
import { sceneBuilder } from './buildScene.ts';
import { benchGesture } from './gestureState.ts';
import type { Scene } from './scene.ts';

const build = sceneBuilder();

/** The scene as it is now. Only while a job is open; throws where none is. */
export function benchScene(): Scene {
  const scene = build({
    app: app.getState(),
    viewed: benchView.store.getState(),
    findings: benchFindings.getState(),
    gesture: benchGesture.getState().gesture,
  });
  if (scene === undefined) throw new Error('No job is open, yet its bench is drawn');
  return scene;
}

/** The same, followed: the component is drawn again with every change of it. */
export function useBenchScene(): Scene {
  useStore(app);
  useStore(benchView.store);
  useStore(benchFindings);
  useStore(benchGesture);
  return benchScene();
}

/** Both sides' faces are drawn, so that the other one is there when the sheet is turned. */
export function useBenchPictures(): void {
  const job = useSettledJob();
  const { view, window } = useStore(benchView.store);
  const faces = useMemo(
    () => seenFaces(job, bothSides(job), view, window, devicePixelRatio),
    [job, view, window],
  );
  useShownFaces(faces);
}

function bothSides(job: Job) {
  const front = shownPieces(job, 1);
  return turnOf(job.brief.work) === undefined ? front : [...front, ...shownPieces(job, 2)];
}
