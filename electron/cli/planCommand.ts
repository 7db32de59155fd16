// `plan`: every way to print a brief with a library of printers and papers, the best first, with all parts of its cost.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import { inkCoverage } from '../../shared/ink/coverage.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { facesOf } from '../../shared/job/job.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { type CoverageOfFaces, coverageFrom } from '../../shared/plan/coverageOfFaces.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { RANKINGS, type Ranking, rank } from '../../shared/plan/rank.ts';
import { measureJob } from '../coverage/jobCoverage.ts';
import { openBriefFile } from '../disk/briefFiles.ts';
import { readLibraryFile } from '../disk/libraryFiles.ts';
import { lookThroughArt } from '../job/layJob.ts';
import { answer, answerFault, progress } from './answer.ts';
import { describeCandidate, describeRefused, sayPlan } from './describePlan.ts';

export interface PlanOptions {
  readonly library: string;
  readonly coverage?: string;
  readonly by: string;
  readonly json: boolean;
}

export async function plan(briefPath: string, options: PlanOptions): Promise<void> {
  const { json } = options;
  const brief = await openBriefFile(briefPath);
  if (!brief.ok) return answerFault(json, brief.fault);
  const library = await readLibraryFile(options.library);
  if (!library.ok) return answerFault(json, library.fault);
  const by = rankingFrom(options.by);
  if (!by.ok) return answerFault(json, by.fault);
  const covered = await coverageOf(brief.value, options.coverage);
  if (!covered.ok) return answerFault(json, covered.fault);

  progress('Laying the job out in every way that the library allows');
  const laid = layOutCandidates(brief.value, library.value);
  const costed = costCandidates(laid, library.value, coverageFrom(covered.value));
  const candidates = rank(costed, by.value);
  const { currency } = library.value;
  answer(
    json,
    {
      title: brief.value.title,
      currency,
      rankedBy: by.value,
      coverage: covered.value,
      candidates: candidates.map(describeCandidate),
      refused: laid.refused.map(describeRefused),
    },
    sayPlan(brief.value, currency, candidates, laid.refused),
  );
}

function rankingFrom(word: string): Result<Ranking> {
  const ranking = RANKINGS.find((known) => known === word);
  return ranking === undefined
    ? refuse({
        code: 'plan-impossible',
        message: `Candidates are not ranked by ${word}.`,
        remedy: `Rank them by ${RANKINGS.slice(0, -1).join(', ')} or ${RANKINGS.at(-1)}.`,
        where: '--by',
      })
    : ok(ranking);
}

/** The coverage of every face: what was given for all of them, or what their art takes. */
async function coverageOf(brief: Brief, given: string | undefined): Promise<Result<CoverageOfFaces>> {
  if (given !== undefined) {
    const total = Number(given);
    if (given.trim() === '' || !(total >= 0 && total <= 4)) return refuse(noCoverage(given));
    return ok(facesOf(brief).map(({ piece, name }) => ({ piece: piece.name, face: name, total })));
  }
  progress('Measuring how much ink the art takes');
  const looked = await lookThroughArt(brief);
  if (!looked.ok) return withoutArt(looked.fault);
  const measured = await measureJob(looked.value.job);
  if (!measured.ok) return withoutArt(measured.fault);
  return ok(
    measured.value.map(({ piece, face, coverage }) => ({ piece, face, total: inkCoverage(coverage) })),
  );
}

function withoutArt(fault: Fault): Result<never> {
  const { remedy } = fault;
  return refuse({ ...fault, remedy: `${remedy} To plan without the art, say what it covers: --coverage 1.` });
}

function noCoverage(given: string): Fault {
  return {
    code: 'plan-impossible',
    message: `"${given}" is not a coverage.`,
    remedy: 'Give the sum of all inks: 0 for blank paper, 1 for one ink all over, 4 for four of them.',
    where: '--coverage',
  };
}
