// The ink of the jobs that are open: measured when it is first asked for, and kept for as long as the art stays the same.
import { type Fault, ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { CoveredFace, FaceCoverage } from '../../shared/ink/coverage.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { runThread } from '../thread/runThread.ts';
import { markedFaces } from './jobCoverage.ts';

const START = new URL('./startCoverageWorker.mjs', import.meta.url);

/** So long a job may take: a face takes a second or two. */
const SECONDS = 300;

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
    const measured = await runThread<Result<readonly CoveredFace[]>>(START, job, { seconds: SECONDS })
      .outcome;
    if (measured === undefined) return refuse(GIVEN_UP);
    if (!measured.ok) return measured;
    measured.value.forEach(({ coverage }, i) => {
      const face = faces[i];
      if (face !== undefined) this.#known.set(face.mark, coverage);
    });
    return measured;
  }
}

const GIVEN_UP: Fault = {
  code: 'art-took-too-long',
  message: 'The ink of the art could not be measured: it took too long, or the art broke the measuring.',
  remedy: 'Have the art exported again with less detail.',
};
