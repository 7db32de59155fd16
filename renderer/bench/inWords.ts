// The bench in words, for those who hear it: what the canvas shows, and what a hand does on it.
import { turnOf, type Work } from '../../shared/geometry/work.ts';
import type { Job } from '../../shared/job/job.ts';
import { sheetOf } from '../../shared/job/job.ts';
import { showSize } from '../../shared/units/show.ts';
import type { SideUp } from '../sheet/pieces/shownPieces.ts';
import type { Gesture } from './canvas/scene.ts';

/** What a person sees at a glance. */
export function benchInWords(job: Job, side: SideUp, chosen: number, faults: number): string {
  const count = job.arrangement.length;
  const pieces = count === 1 ? 'One piece lies' : `${count} pieces lie`;
  const sheet = showSize(sheetOf(job.brief).size, job.brief.units);
  const selected =
    chosen === 0 ? 'none is selected' : chosen === count ? 'all are selected' : `${chosen} selected`;
  const wrong = faults === 0 ? 'nothing is wrong' : `${faults} to look at`;
  return `Side ${side} of a sheet of ${sheet}, lead edge at the top${turnWords(job.brief.work)}. ${pieces} on it, ${selected}, ${wrong}.`;
}

function turnWords(work: Work): string {
  const turn = turnOf(work);
  if (turn === undefined) return '';
  return turn === 'side-to-side' ? ', turned side to side' : ', turned end to end';
}

/** What holds the dragged piece; empty where nothing does. */
export function gestureInWords(gesture: Gesture | undefined): string {
  if (gesture?.does !== 'drag' || gesture.guides.length === 0) return '';
  return `Held by ${gesture.guides.map((g) => g.name).join(', ')}.`;
}
