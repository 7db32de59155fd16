// Where the art of a placed face comes to lie on the sheet, as a matrix that starts at the page of its file.
import { layInto } from '../geometry/lie.ts';
import type { Size } from '../geometry/space.ts';
import { chain, type Transform } from '../geometry/transform.ts';
import type { Job } from '../job/job.ts';
import { formsOfJob } from '../job/nameJobFiles.ts';
import { designNamed } from '../layout/forms.ts';
import type { Placement } from '../layout/placement.ts';
import { turnArt } from '../pdf/art/turnArt.ts';

/** How large the pages are that are turned before they are placed, as viewed, in pt, by `pageKey`. */
export type PageSizes = ReadonlyMap<string, Size>;

/** What a page is called among the page sizes. */
export function pageKey(file: string, page: number): string {
  return `${file} ${page}`;
}

/**
 * From the page as it is viewed (lower left of its media box at the origin, pt) to the side that prints it;
 * `undefined` where the page is turned by the brief and its size is not known, or the job has no art for the face.
 */
export function contentMatrix(
  job: Job,
  { piece, face, trim, head }: Placement,
  sizes: PageSizes,
): Transform<'art', 'side1' | 'side2'> | undefined {
  const art = designNamed(job.brief.pieces, piece)[face];
  const found = job.art.find((a) => a.piece === piece && a.face === face);
  if (art === undefined || found === undefined) return undefined;
  const { x, y } = found.trim;
  const toTrim: Transform<'art', 'piece'> = { a: 1, b: 0, c: 0, d: 1, e: -x, f: -y };
  const laid = chain(toTrim, layInto<'piece', 'side1' | 'side2'>(trim, head));
  if (art.rotate === 0) return laid;
  const size = sizes.get(pageKey(art.file, art.page));
  return size === undefined ? undefined : chain(turnArt(size, art.rotate), laid);
}

/** The first face on the sheet whose page has no matrix, in words; none where all have one. */
export function unplacedFace(job: Job, sizes: PageSizes): string | undefined {
  const lost = formsOfJob(job)
    .flatMap((form) => form.placements)
    .find((placement) => contentMatrix(job, placement, sizes) === undefined);
  return lost && `the ${lost.face} of ${lost.piece}`;
}
