// Building the scene of the bench from the state of the window; what has not changed is kept as it was.
import type { Job } from '../../../shared/job/job.ts';
import { partnerIndex } from '../../../shared/job/partners.ts';
import type { LayoutFinding } from '../../../shared/layout/check.ts';
import {
  moveShownPieces,
  type ShownPiece,
  type SideUp,
  shownPieces,
} from '../../sheet/pieces/shownPieces.ts';
import type { SheetView } from '../../sheet/sheetView.ts';
import { shownJob } from '../../state/jobState.ts';
import type { AppState } from '../../state/store.ts';
import type { Gesture, Scene } from './scene.ts';

export interface SceneParts {
  readonly app: AppState;
  readonly viewed: SheetView;
  readonly findings: readonly LayoutFinding[];
  readonly gesture: Gesture | undefined;
}

/** Gives a builder of scenes; `undefined` while no job is open. */
export function sceneBuilder(): (parts: SceneParts) => Scene | undefined {
  const piecesOf = remember((job: Job, side: SideUp) => shownPieces(job, side));
  const chosenOf = remember((selection: readonly number[]) => new Set(selection));
  const followingOf = remember((job: Job, selection: readonly number[]) => followersOf(job, selection));

  const restingOf = remember((pieces: readonly ShownPiece[], moving: ReadonlySet<number>) =>
    pieces.filter((p) => !moving.has(p.position)),
  );

  return ({ app, viewed, findings, gesture }) => {
    const job = shownJob(app);
    if (job === undefined) return undefined;
    const drag = gesture?.does === 'drag' ? gesture : undefined;
    const before = piecesOf(app.history?.present ?? job, app.side);
    const pieces =
      drag === undefined ? piecesOf(job, app.side) : moveShownPieces(before, job, app.side, drag.moving);
    return {
      window: viewed.window,
      view: viewed.view,
      job,
      pieces,
      resting: drag === undefined ? pieces : restingOf(before, drag.moving),
      moving: drag === undefined ? [] : pieces.filter((p) => drag.moving.has(p.position)),
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
