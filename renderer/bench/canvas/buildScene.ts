// Building the scene of the bench from the state of the window; what has not changed is kept as it was.
import type { Job } from '../../../shared/job/job.ts';
import { partnerIndex } from '../../../shared/job/partners.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import type { ArtPictures } from '../../art-pictures/artPictures.ts';
import { shownJob } from '../../state/jobState.ts';
import type { AppState } from '../../state/store.ts';
import type { BenchView } from '../benchView.ts';
import { picturesFinder } from '../model/picturesFinder.ts';
import { movePieces, type SideUp, shownPieces } from '../model/shownPieces.ts';
import type { Inks } from '../paint/inks.ts';
import type { Gesture, Scene } from './scene.ts';

export interface SceneParts {
  readonly app: AppState;
  readonly viewed: BenchView;
  readonly inks: Inks;
  readonly findings: readonly LayoutFinding[];
  readonly gesture: Gesture | undefined;
}

/** Gives a builder of scenes; `undefined` while no job is open. */
export function sceneBuilder(pictures: ArtPictures): (parts: SceneParts) => Scene | undefined {
  const piecesOf = remember((job: Job, side: SideUp) => shownPieces(job, side));
  const picturesOf = remember((brief: Job['brief'], art: Job['art']) =>
    picturesFinder({ brief, art }, pictures),
  );
  const chosenOf = remember((selection: readonly number[]) => new Set(selection));
  const followingOf = remember((job: Job, selection: readonly number[]) => followersOf(job, selection));

  const movedOf = (app: AppState, job: Job, moving: ReadonlySet<number>) =>
    movePieces(piecesOf(app.history?.present ?? job, app.side), job, app.side, moving);

  return ({ app, viewed, inks, findings, gesture }) => {
    const job = shownJob(app);
    if (job === undefined) return undefined;
    return {
      window: viewed.window,
      view: viewed.view,
      inks,
      job,
      pieces: gesture?.does === 'drag' ? movedOf(app, job, gesture.moving) : piecesOf(job, app.side),
      picturesOf: picturesOf(job.brief, job.art),
      chosen: chosenOf(app.selection),
      following: followingOf(job, app.selection),
      findings,
      gesture,
    };
  };
}

/** Remembers the last answer for as long as it is asked the same. */
function remember<A extends readonly unknown[], R>(work: (...asked: A) => R): (...asked: A) => R {
  let last: { readonly asked: A; readonly answer: R } | undefined;
  return (...asked) => {
    if (last === undefined || !asked.every((value, i) => Object.is(value, last?.asked[i]))) {
      last = { asked, answer: work(...asked) };
    }
    return last.answer;
  };
}

function followersOf(job: Job, selection: readonly number[]): ReadonlySet<number> {
  const chosen = new Set(selection);
  const partners = selection.flatMap((i) => {
    const position = job.arrangement[i];
    return (position && partnerIndex(job, position)) ?? [];
  });
  return new Set(partners.filter((i) => !chosen.has(i)));
}
