// The art of a job, made into forms for one sheet file: one form for a face, however often it is placed.
import type { PDFDocument } from 'pdf-lib';
import { ok } from '../../shared/fault/result.ts';
import { grow } from '../../shared/geometry/rect.ts';
import type { Job } from '../../shared/job/job.ts';
import { designNamed } from '../../shared/layout/forms.ts';
import { createFormMaker } from '../../shared/pdf/form/formMaker.ts';
import type { FaceSource } from '../../shared/pdf/sheet/writeSheets.ts';
import { points } from '../../shared/units/length.ts';
import { artFileOf, foundArtOf, type JobArtFiles } from './jobArt.ts';

/** Gives the sheet writer the faces of this job. */
export function faceSourceOf(job: Job, files: JobArtFiles): (target: PDFDocument) => FaceSource {
  return (target) => {
    const maker = createFormMaker(target);
    return {
      faceOf(pieceName, faceName) {
        const piece = designNamed(job.brief.pieces, pieceName);
        const face = piece[faceName];
        if (face === undefined) return ok(undefined);
        const bleed = points(piece.bleed);
        const box = grow(foundArtOf(job, pieceName, faceName).trim, bleed);
        const form = maker.formOf(artFileOf(files, face.file).art, face.page, face.rotate, box);
        if (!form.ok) return form;
        return ok({ form: form.value, bleed: { left: bleed, right: bleed, top: bleed, bottom: bleed } });
      },
      finish: () => maker.finish(),
    };
  };
}
