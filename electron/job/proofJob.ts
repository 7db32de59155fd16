// What the proof is told of a job.

import { turnOf } from '../../shared/geometry/work.ts';
import type { Face, Piece } from '../../shared/job/brief.ts';
import { type Job, sheetOf, trimOf } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import type { FaceArt, ProofJob } from '../../shared/proof/job.ts';
import { points } from '../../shared/units/length.ts';
import { artFileOf, foundArtOf, type JobArtFiles } from './jobArt.ts';

/** The job as the proof sees it: places on the sheet, and the pages that should be seen there. */
export function proofJobOf(job: Job, files: JobArtFiles): ProofJob {
  const face = (piece: Piece, name: FaceName, { file, page, rotate }: Face): FaceArt => {
    const read = artFileOf(files, file).art.page(page);
    if (!read.ok) throw new Error(`Page ${page} of ${file} was there when the job was laid out`);
    const { trim } = foundArtOf(job, piece.name, name);
    return { art: file, page, rotate, trim, userUnit: read.value.userUnit };
  };
  return {
    sheet: sheetOf(job.brief).size,
    turn: job.brief.pieces.some((piece) => piece.back !== undefined) ? turnOf(job.brief.work) : undefined,
    positions: job.arrangement,
    pieces: job.brief.pieces.map((piece) => ({
      name: piece.name,
      trim: trimOf(piece),
      bleed: points(piece.bleed),
      turned: piece.turned,
      faces: {
        front: face(piece, 'front', piece.front),
        ...(piece.back === undefined ? {} : { back: face(piece, 'back', piece.back) }),
      },
    })),
  };
}
