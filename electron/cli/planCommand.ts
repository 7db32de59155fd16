// `plan`: every way to print a brief with a library of printers and papers, the best first, with all parts of its cost.
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import type { Library } from '../../shared/library/library.ts';
import { readLibrary } from '../../shared/library/readLibrary.ts';
import { costCandidates } from '../../shared/plan/costCandidates.ts';
import { layOutCandidates } from '../../shared/plan/layOutCandidates.ts';
import { RANKINGS, type Ranking, rank } from '../../shared/plan/rank.ts';
import { readJson } from '../files/readJson.ts';
import { answer, answerFault, progress } from './answer.ts';
import { describeCandidate, describeRefused, sayPlan } from './describePlan.ts';

export interface PlanOptions {
  readonly library: string;
  readonly coverage: string;
  readonly by: string;
  readonly json: boolean;
}

export async function plan(briefPath: string, options: PlanOptions): Promise<void> {
  const { json } = options;
  const written = await readJson(briefPath, 'brief');
  if (!written.ok) return answerFault(json, written.fault);
  const brief = readBrief(written.value);
  if (!brief.ok) return answerFault(json, brief.fault);
  const library = await libraryIn(options.library);
  if (!library.ok) return answerFault(json, library.fault);
  const by = rankingFrom(options.by);
  if (!by.ok) return answerFault(json, by.fault);
  const coverage = coverageFrom(options.coverage);
  if (!coverage.ok) return answerFault(json, coverage.fault);

  progress('Laying the job out in every way that the library allows');
  const laid = layOutCandidates(brief.value, library.value);
  const candidates = rank(
    costCandidates(laid, library.value, () => coverage.value),
    by.value,
  );
  const { currency } = library.value;
  answer(
    json,
    {
      title: brief.value.title,
      currency,
      rankedBy: by.value,
      coverage: coverage.value,
      candidates: candidates.map(describeCandidate),
      refused: laid.refused.map(describeRefused),
    },
    sayPlan(brief.value, currency, candidates, laid.refused),
  );
}

async function libraryIn(path: string): Promise<Result<Library>> {
  const written = await readJson(path, 'library');
  return written.ok ? readLibrary(written.value) : written;
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

function coverageFrom(written: string): Result<number> {
  const total = Number(written);
  if (written.trim() !== '' && total >= 0 && total <= 4) return ok(total);
  return refuse({
    code: 'plan-impossible',
    message: `"${written}" is not a coverage.`,
    remedy: 'Give the sum of all inks: 0 for blank paper, 1 for one ink all over, 4 for four of them.',
    where: '--coverage',
  });
}
