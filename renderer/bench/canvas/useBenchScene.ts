// The scene of the bench as the state of the window is now, and the pictures that it needs.
import { useMemo } from 'react';
import { useStore } from 'zustand';
import { turnOf } from '../../../shared/geometry/work.ts';
import { useInks } from '../../sheet/paint/useInks.ts';
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

/** Only for what is drawn while a job is open; throws where none is. */
export function useBenchScene(): Scene {
  const build = useMemo(sceneBuilder, []);
  const inks = useInks();
  const scene = build({
    app: useStore(app),
    viewed: useStore(benchView.store),
    inks,
    findings: useStore(benchFindings),
    gesture: useStore(benchGesture).gesture,
  });
  if (scene === undefined) throw new Error('No job is open, yet its bench is drawn');
  return scene;
}

/** Both sides' faces are drawn, so that the other one is there when the sheet is turned. */
export function useBenchPictures({ view, window }: Pick<Scene, 'view' | 'window'>): void {
  const job = useSettledJob();
  const faces = useMemo(() => {
    const pieces = turnOf(job.brief.work) === undefined ? shownPieces(job, 1) : bothSides(job);
    return seenFaces(job, pieces, view, window, devicePixelRatio);
  }, [job, view, window]);
  useShownFaces(faces);
}

function bothSides(job: Parameters<typeof shownPieces>[0]) {
  return [...shownPieces(job, 1), ...shownPieces(job, 2)];
}
