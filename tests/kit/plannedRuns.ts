// Runs that were begun with a plan: the invitation on the hand-fed printer of the library that a studio begins with.
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import type { PlanCandidate } from '../../shared/plan/candidate.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { type PlannedRun, plannedRun } from '../../shared/run/planned.ts';
import { supperJob } from '../renderer/kit/supperJob.ts';
import { supperRun } from './runs.ts';

/** Each face covered once. */
const covered = () => 1;

/** The cheapest way by hand. */
export function candidateByHand(): PlanCandidate {
  const library = startingLibrary();
  const candidates = costCandidates(layOutCandidates(supperJob.brief, library), library, covered);
  const byHand = candidates.find(({ feed, work }) => feed.name === 'Hand feed' && work.style !== 'simplex');
  if (byHand === undefined) throw new Error('The library has a printer that is fed by hand');
  return byHand;
}

/** What it is planned to be. */
export function plannedByHand(): PlannedRun {
  return plannedRun(candidateByHand(), startingLibrary(), covered);
}

/** Figures that are easily reckoned with: 30 sheets twice through the printer, each part of the cost a round sum. */
export const roundPlan: PlannedRun = {
  printer: 'Hand-fed sheet printer',
  feed: 'Hand feed',
  paper: 'Smooth white',
  quality: 'Usual',
  currency: '$',
  labourPerHour: 30,
  sheets: 30,
  makeReadySheets: 0,
  passes: 2,
  inked: { area: 0.2, coverage: 1.5 },
  ink: 60,
  minutes: { makeReady: 6, atPrinter: 30, hands: 20 },
  cost: { paper: 12, ink: 6, labour: 15, makeReady: 3, trimming: 4, wear: 1.2, total: 41.2 },
};

export const plannedSupper = { ...supperRun, planned: roundPlan };
