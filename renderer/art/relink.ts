// Printing faces from other files, or from their files as they are now: one edit, made only once every trim is found.
import type { Art } from '../../shared/contract/art.ts';
import { type ArtHandle, artOf, type FileEntry } from '../../shared/contract/handles.ts';
import { ok, type Result } from '../../shared/fault/result.ts';
import type { TakenArt } from '../../shared/job/commands.ts';
import { facesOf, type Job, trimOf } from '../../shared/job/job.ts';
import type { FaceName } from '../../shared/layout/position.ts';
import { checkBleed } from '../../shared/pdf/art/checkBleed.ts';
import { points } from '../../shared/units/length.ts';
import { artPictures } from '../art-pictures/windowArt.ts';
import { checkArt } from '../desk/artCheck.ts';
import { chooseFiles } from '../desk/choose.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';

/** A face of the open job. */
export interface FaceOfJob {
  readonly piece: string;
  readonly face: FaceName;
}

/** The faces of the open job that are printed from this art. */
export function facesFrom(art: ArtHandle): readonly FaceOfJob[] {
  const job = app.getState().history?.present;
  if (job === undefined) return [];
  return facesOf(job.brief).flatMap(({ piece, name, face }) =>
    artOf(face) === art ? [{ piece: piece.name, face: name }] : [],
  );
}

/** Takes changed art as its file is now. */
export async function takeAsItIs(art: ArtHandle): Promise<void> {
  await take(await host.art.look({ art }), facesFrom(art));
}

/** Prints these faces from the same pages of a file. */
export async function takeFrom(file: FileEntry, faces: readonly FaceOfJob[]): Promise<void> {
  await take(await host.art.takeIn({ file: file.file }), faces);
}

/** Asks for the file that these faces are to be printed from. */
export async function chooseOther(faces: readonly FaceOfJob[]): Promise<void> {
  const [file] = await chooseFiles('art', false);
  if (file !== undefined) await takeFrom(file, faces);
}

async function take(looked: Result<Art>, faces: readonly FaceOfJob[]): Promise<void> {
  const { history, report, perform, nameArt } = app.getState();
  if (history === undefined) return;
  if (!looked.ok) return report(looked.fault);
  const art = looked.value;
  const taken: TakenArt[] = [];
  for (const face of faces) {
    const found = await findOn(art, history.present, face);
    if (!found.ok) return report(found.fault);
    taken.push(found.value);
  }
  nameArt({ [art.art]: art.name });
  artPictures.forget(art.art);
  if (perform({ do: 'take-art', faces: taken }).ok) await checkArt();
}

/** Where the face lies on its page of the art; a file of one page serves every face. */
async function findOn(
  art: Art,
  job: Job,
  { piece: pieceName, face: faceName }: FaceOfJob,
): Promise<Result<TakenArt>> {
  const wanted = facesOf(job.brief).find(({ piece, name }) => piece.name === pieceName && name === faceName);
  if (wanted === undefined) throw new Error(`The job has no ${faceName} of ${pieceName}`);
  const { piece, face } = wanted;
  const number = art.pages.length === 1 ? 1 : face.page;
  const bleed = points(piece.bleed);
  const found = await host.art.findTrim({
    art: art.art,
    page: number,
    trim: trimOf(piece),
    bleed,
    rotate: face.rotate,
  });
  if (!found.ok) return found;
  const page = art.pages[number - 1];
  const reaches = page === undefined ? ok(undefined) : checkBleed(page, found.value.bleedReach, bleed);
  if (!reaches.ok) return reaches;
  const { trim, said } = found.value;
  return ok({
    file: art.art,
    page: number,
    found: { piece: pieceName, face: faceName, sha256: art.sha256, trim, said },
  });
}
