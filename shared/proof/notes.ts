// What the art leaves untold: art that reads the same upside down cannot show that it is upside down.

import { MIN_RENDERED_OUTLIERS } from './alignment.ts';
import type { ArtFace, FacePictures } from './artFaces.ts';
import { countOutliers, isFlat, wholeArea } from './band.ts';
import type { ProofNote } from './finding.ts';
import { cutMargin, flipPicture, type Picture, turnPicture } from './picture.ts';
import { observableDirections } from './structure.ts';

/** What a face tells of itself. */
export interface Traits {
  readonly notes: readonly ProofNote[];
  /** Whether a shift of it can be measured, in one direction at least. */
  readonly hasStructure: boolean;
  /** Its mean colour, which only few other faces share. */
  readonly mean: readonly number[];
}

/** Looks at the art of one face: its trim, whichever way it lies. */
export function traitsOf(face: ArtFace, trim: Picture): Traits {
  const mean = meanOf(trim);
  const name = `The ${face.face} of "${face.piece}"`;
  const note = (kind: ProofNote['kind'], message: string): ProofNote => ({
    kind,
    piece: face.piece,
    face: face.face,
    message: `${name} ${message}`,
  });
  if (isFlat(trim, wholeArea(trim))) {
    const notes = [note('flat', 'is blank or of one colour: only its colour and its bleed can be proved.')];
    return { notes, hasStructure: false, mean };
  }
  const told = observableDirections(trim, wholeArea(trim)).length;
  const notes: ProofNote[] = [];
  if (told < 2) {
    const ways = told === 1 ? 'along one direction only' : 'nowhere';
    notes.push(note('place-untold', `is so even that its place can be told ${ways}.`));
  }
  if (looksLike(trim, turnPicture(trim, 180))) {
    notes.push(note('head-untold', 'looks the same upside down: its head cannot be told.'));
  }
  if (looksLike(trim, flipPicture(trim, 'left-right')) || looksLike(trim, flipPicture(trim, 'top-bottom'))) {
    notes.push(note('mirror-untold', 'looks the same in a mirror: whether it is mirrored cannot be told.'));
  }
  return { notes, hasStructure: told > 0, mean };
}

/** A note for every face that shows the same as an earlier one. */
export function notesOnAlikes(
  traits: ReadonlyMap<ArtFace, Traits>,
  facePictures: FacePictures,
): readonly ProofNote[] {
  const faces = [...traits];
  return faces.flatMap(([face, { mean }], i) => {
    const twin = faces.slice(0, i).find(([other, { mean: otherMean }]) => {
      const near = mean.every((value, c) => Math.abs(value - (otherMean[c] ?? 0)) < SAME_MEAN);
      return near && looksLike(trimmed(face, facePictures), trimmed(other, facePictures));
    })?.[0];
    if (twin === undefined) return [];
    const message = `The ${face.face} of "${face.piece}" shows the same as the ${twin.face} of "${twin.piece}": they cannot be told apart.`;
    return [{ kind: 'alike', piece: face.piece, face: face.face, message }];
  });
}

/** Faces that show the same have means nearer than this, in levels of 255. */
const SAME_MEAN = 0.05;

function trimmed(face: ArtFace, facePictures: FacePictures): Picture {
  return cutMargin(facePictures.pictureOf(face, 0), face.grid.margin);
}

function looksLike(a: Picture, b: Picture): boolean {
  if (a.width !== b.width || a.height !== b.height) return false;
  return countOutliers(a, b, wholeArea(a), MIN_RENDERED_OUTLIERS) < MIN_RENDERED_OUTLIERS;
}

/** The mean of each colour. */
function meanOf({ pixels }: Picture): readonly number[] {
  let [red, green, blue] = [0, 0, 0];
  for (let i = 0; i < pixels.length; i += 3) {
    red += pixels[i] ?? 0;
    green += pixels[i + 1] ?? 0;
    blue += pixels[i + 2] ?? 0;
  }
  return [red, green, blue].map((sum) => (sum * 3) / pixels.length);
}
