// What the art leaves untold: art that reads the same upside down cannot show that it is upside down.
import { type Area, countStrangers, isFlat } from './band.ts';
import type { Note } from './finding.ts';
import { structureIn } from './fit.ts';
import type { Album, ArtFace } from './gallery.ts';
import { cutMargin, flipPicture, type Picture, turnPicture } from './picture.ts';
import { FEWEST_STRANGERS } from './settle.ts';

/** What a face tells of itself. */
export interface Traits {
  readonly notes: readonly Note[];
  /** Whether a shift of it can be measured, in one direction at least. */
  readonly tellsPlace: boolean;
}

/** Looks at the art of one face. */
export function traitsOf(face: ArtFace, album: Album): Traits {
  const trim = trimmed(face, album);
  const name = `The ${face.face} of "${face.piece}"`;
  const note = (kind: Note['kind'], message: string): Note => ({
    kind,
    piece: face.piece,
    face: face.face,
    message: `${name} ${message}`,
  });
  if (isFlat(trim, whole(trim))) {
    const notes = [note('flat', 'is blank or of one colour: only its colour and its bleed can be proved.')];
    return { notes, tellsPlace: false };
  }
  const told = structureIn(trim, whole(trim));
  const notes: Note[] = [];
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
  return { notes, tellsPlace: told > 0 };
}

/** A note for every face that shows the same as an earlier one. */
export function notesOnAlikes(faces: readonly ArtFace[], album: Album): readonly Note[] {
  const means = faces.map((face) => meanOf(trimmed(face, album)));
  return faces.flatMap((face, i) => {
    const twin = faces.slice(0, i).find((other, j) => {
      const near = means[i]?.every((mean, c) => Math.abs(mean - (means[j]?.[c] ?? 0)) < 0.05);
      return near === true && looksLike(trimmed(face, album), trimmed(other, album));
    });
    if (twin === undefined) return [];
    const message = `The ${face.face} of "${face.piece}" shows the same as the ${twin.face} of "${twin.piece}": they cannot be told apart.`;
    return [{ kind: 'alike', piece: face.piece, face: face.face, message }];
  });
}

function trimmed(face: ArtFace, album: Album): Picture {
  return cutMargin(album.show(face, 0), face.grid.margin);
}

function looksLike(a: Picture, b: Picture): boolean {
  if (a.width !== b.width || a.height !== b.height) return false;
  return countStrangers(a, b, whole(a), FEWEST_STRANGERS) < FEWEST_STRANGERS;
}

function whole({ width, height }: Picture): Area {
  return { left: 0, top: 0, right: width, bottom: height };
}

/** The mean of each colour. */
function meanOf({ pixels }: Picture): readonly number[] {
  const sums = [0, 0, 0];
  for (let i = 0; i < pixels.length; i++) sums[i % 3] = (sums[i % 3] ?? 0) + (pixels[i] ?? 0);
  return sums.map((sum) => (sum * 3) / pixels.length);
}
