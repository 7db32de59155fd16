// The art files of a job: each opened once, and unchanged since the job was laid out.
import { basename } from 'node:path';
import { type Fault, ok, type Result } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { type FoundArt, facesOf, type Job } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import { type OpenArtFile, openArtFile } from '../art/openArtFile.ts';

/** The opened art files of a brief, by their whole paths. */
export type JobArtFiles = ReadonlyMap<string, OpenArtFile>;

/**
 * Opens every art file of a brief whose faces name whole paths, and tries out the pages that its faces are printed from.
 * The first that cannot be used is the refusal.
 */
export async function openJobArt(brief: Brief): Promise<Result<JobArtFiles>> {
  const files = new Map<string, OpenArtFile>();
  const faces = facesOf(brief).map(({ face }) => face);
  for (const path of new Set(faces.map((face) => face.file))) {
    const pages = new Set(faces.filter((face) => face.file === path).map((face) => face.page));
    const opened = await openArtFile(path, undefined, { pages: [...pages] });
    if (!opened.ok) return opened;
    files.set(path, opened.value);
  }
  return ok(files);
}

/** The opened file of a face. Throws where it was not among those opened: that is our own mistake. */
export function artFileOf(files: JobArtFiles, path: string): OpenArtFile {
  const opened = files.get(path);
  if (opened === undefined) throw new Error(`The art file ${path} has not been opened`);
  return opened;
}

/** The job's record of a face's art. Throws where it has none: `changedArt` has been asked before. */
export function foundArtOf(job: Job, piece: string, face: FaceName): FoundArt {
  const found = job.art.find((a) => a.piece === piece && a.face === face);
  if (found === undefined) throw new Error(`The job has no art for the ${face} of ${piece}`);
  return found;
}

/** A fault if any file is not the one that the job was laid out with. */
export function changedArt(job: Job, files: JobArtFiles): Fault | undefined {
  for (const { piece, name, face } of facesOf(job.brief)) {
    const found = job.art.find((a) => a.piece === piece.name && a.face === name);
    if (found === undefined)
      return artChanged(`The job was laid out without ${basename(face.file)}.`, face.file);
    if (found.sha256 !== artFileOf(files, face.file).sha256) {
      return artChanged(`${basename(face.file)} has changed since the job was laid out with it.`, face.file);
    }
  }
  return undefined;
}

function artChanged(message: string, where: string): Fault {
  return {
    code: 'art-changed',
    message,
    remedy: 'Lay the job out again with the new art and look it through, or put the old file back.',
    where,
  };
}
