// How much ink every face of a job takes, for what is really placed: its trim and its bleed.
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { grow } from '../../shared/geometry/rect.ts';
import type { CoveredFace } from '../../shared/ink/coverage.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { points } from '../../shared/units/length.ts';
import { artFileOf, changedArt, openJobArt } from '../job/jobArt.ts';
import { Renderer } from '../proof/renderer.ts';
import { type MeasuredPage, measureFace } from './measureFace.ts';

/** A face of a job, and a mark that only faces with the same art in the same box share. */
export interface MarkedFace extends Omit<MeasuredPage, 'art'> {
  readonly piece: string;
  readonly face: 'front' | 'back';
  readonly file: string;
  readonly mark: string;
}

/** The faces of a job that it was laid out with the art of, each with its mark. */
export function markedFaces(job: Job): readonly MarkedFace[] {
  return facesOf(job.brief).flatMap(({ piece, name, face }) => {
    const found = job.art.find((art) => art.piece === piece.name && art.face === name);
    if (found === undefined) return [];
    const { sha256, trim } = found;
    const box = grow(trim, points(piece.bleed));
    const { file, page, rotate } = face;
    const mark = [sha256, page, rotate, box.x, box.y, box.w, box.h].join(' ');
    return [{ piece: piece.name, face: name, file, page, rotate, box, mark }];
  });
}

/**
 * Measures the faces of a job whose files are named by whole paths. Refusals: those of the art, and `art-changed` where a
 * file is no longer the one that the job was laid out with.
 */
export async function measureJob(job: Job): Promise<Result<readonly CoveredFace[]>> {
  const files = await openJobArt(job.brief);
  if (!files.ok) return files;
  const changed = changedArt(job, files.value);
  if (changed !== undefined) return refuse(changed);
  const renderer = await Renderer.start();
  const measured = new Map<string, CoveredFace['coverage']>();
  const faces: CoveredFace[] = [];
  for (const { piece, face, file, mark, ...page } of markedFaces(job)) {
    const known = measured.get(mark);
    const coverage =
      known === undefined
        ? await measureFace(renderer, { ...page, art: artFileOf(files.value, file).art })
        : ok(known);
    if (!coverage.ok) return coverage;
    measured.set(mark, coverage.value);
    faces.push({ piece, face, coverage: coverage.value });
  }
  renderer.close();
  return ok(faces);
}
