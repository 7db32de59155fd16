// Laying a job: the brief read, its art looked through, its trims found, and its pieces arranged.
import { ok, type Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { type FoundArt, facesOf, JOB_SCHEMA, type Job, trimOf } from '../../shared/job/job.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { checkBleed } from '../../shared/pdf/art/checkBleed.ts';
import { findTrim } from '../../shared/pdf/art/findTrim.ts';
import { points } from '../../shared/units/length.ts';
import { artFileOf, type JobArtFiles, openJobArt } from './jobArt.ts';

export interface LaidJob {
  readonly job: Job;
  /** What the person should know, in words: of the art first, then of the layout. */
  readonly notices: readonly string[];
}

/** Lays out a brief whose faces name whole paths. Nothing is written. */
export async function layJob(brief: Brief): Promise<Result<LaidJob>> {
  const looked = await lookThroughArt(brief);
  if (!looked.ok) return looked;
  const { job, notices } = looked.value;
  const arranged = layOutBrief(brief);
  if (!arranged.ok) return arranged;
  return ok({
    job: { ...job, arrangement: arranged.value.positions },
    notices: [...notices, ...arranged.value.notices],
  });
}

/** A brief whose faces name whole paths as a job with its art, not laid out yet. */
export async function lookThroughArt(brief: Brief): Promise<Result<LaidJob>> {
  const files = await openJobArt(brief);
  if (!files.ok) return files;
  const art = findArt(brief, files.value);
  if (!art.ok) return art;
  return ok({
    job: { schema: JOB_SCHEMA, brief, art: art.value, arrangement: [] },
    notices: [
      ...[...files.value.values()].flatMap((file) => file.notices),
      ...art.value.map((a) => `${a.piece}, ${a.face}: ${a.said}`),
    ],
  });
}

/** The trim of every face on its page, with bleed enough around it. */
function findArt(brief: Brief, files: JobArtFiles): Result<readonly FoundArt[]> {
  const found: FoundArt[] = [];
  for (const { piece, name, face } of facesOf(brief)) {
    const { art, sha256 } = artFileOf(files, face.file);
    const page = art.page(face.page);
    if (!page.ok) return page;
    const [x, y] = face.trimAt ?? [];
    const trim = findTrim(page.value, {
      trim: trimOf(piece),
      bleed: points(piece.bleed),
      rotate: face.rotate,
      trimAt: x && y && { x: points(x), y: points(y) },
    });
    if (!trim.ok) return trim;
    const bleed = checkBleed(page.value, trim.value.bleedReach, points(piece.bleed));
    if (!bleed.ok) return bleed;
    found.push({ piece: piece.name, face: name, sha256, trim: trim.value.trim, said: trim.value.said });
  }
  return ok(found);
}
