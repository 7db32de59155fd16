// The ink of the jobs that are open: measured when it is first asked for, and kept for as long as the art stays the same.
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { CoveredFace, FaceCoverage } from '../../shared/ink/coverage.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { MAX_JOB_MEGABYTES } from '../thread/limits.ts';
import { Thread } from '../thread/thread.ts';
import { threadFault } from '../thread/threadFailure.ts';
import { markedFaces } from './jobCoverage.ts';

const START = new URL('./startCoverageWorker.mjs', import.meta.url);

/** A face takes a second or two. */
const MAX_SECONDS = 300;

export class InkDesk {
  /** By the marks of the faces, which hold the hash of their art. */
  readonly #known = new Map<string, FaceCoverage>();
  #last: Promise<unknown> = Promise.resolve();

  /**
   * The coverage of every face of a job whose faces name whole paths. Refusals: those of `measureJob`, and
   * `art-took-too-long`.
   */
  coverage(job: Job): Promise<Result<readonly CoveredFace[]>> {
    const next = this.#last.then(() => this.#coverage(job));
    this.#last = next.catch(() => undefined);
    return next;
  }

  async #coverage(job: Job): Promise<Result<readonly CoveredFace[]>> {
    const faces = markedFaces(job);
    const kept = faces.flatMap(({ piece, face, mark }) => {
      const coverage = this.#known.get(mark);
      return coverage === undefined ? [] : [{ piece, face, coverage }];
    });
    if (kept.length === facesOf(job.brief).length) return ok(kept);
    const came = await new Thread(START, MAX_JOB_MEGABYTES).run<Result<readonly CoveredFace[]>>(job, {
      seconds: MAX_SECONDS,
    });
    if (!came.ok) return refuse(threadFault(came.fault, MEASURING));
    const measured = came.value;
    if (!measured.ok) return measured;
    measured.value.forEach(({ coverage }, i) => {
      const face = faces[i];
      if (face !== undefined) this.#known.set(face.mark, coverage);
    });
    return measured;
  }
}

const MEASURING = {
  code: 'art-took-too-long',
  work: 'Measuring the ink of the art',
  remedy: 'Have the art exported again with less detail.',
} as const;
