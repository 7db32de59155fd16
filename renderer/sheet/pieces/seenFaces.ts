// Which faces are on the screen and how large, so that their pictures are made just so sharp.
import { toScreen, type View } from '../../../shared/bench/view.ts';
import { layInto } from '../../../shared/geometry/lie.ts';
import { around, intersection } from '../../../shared/geometry/rect.ts';
import type { Rect, Side, Size } from '../../../shared/geometry/space.ts';
import { applyToRect, chain, inverse } from '../../../shared/geometry/transform.ts';
import type { Job } from '../../../shared/job/job.ts';
import type { SeenFace } from '../../art-pictures/artPictures.ts';
import { faceArtOf, printedPart } from '../../art-pictures/faceArt.ts';
import type { ShownPiece } from './shownPieces.ts';

/** Every face that is placed, once; `density` is the pixels of the device for each px of the window. */
export function seenFaces(
  job: Job,
  pieces: readonly ShownPiece[],
  view: View,
  window: Size,
  density: number,
): readonly SeenFace[] {
  const all: Rect<'screen'> = { x: 0, y: 0, ...window };
  const names = [...new Set(pieces.flatMap((p) => (p.face === undefined ? [] : [`${p.face} ${p.piece}`])))];
  return names.flatMap((name) => {
    const placed = pieces.filter((p) => `${p.face} ${p.piece}` === name);
    const [first] = placed;
    const face = first?.face && faceArtOf(job, first.piece, first.face);
    if (face === undefined) return [];
    const seen = placed.flatMap((p) => {
      const lay = chain(layInto<'piece', Side>(p.trim, p.head), toScreen<Side>(view));
      const part = intersection(all, applyToRect(lay, printedPart(face)));
      return part === undefined ? [] : [applyToRect(inverse(lay), part)];
    });
    return [{ face, seen: around(seen), scale: view.zoom * density }];
  });
}
