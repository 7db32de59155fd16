// Pictures of the cut pieces as a person would hold them: the front, and beside it the back, turned as its reader does.
import { mkdir } from 'node:fs/promises';
import { join } from 'node:path';
import { encode } from 'fast-png';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import type { FaceView } from '../../shared/proof/faceViews.ts';
import { cutMargin, type Picture } from '../../shared/proof/picture.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { saveWhole } from '../disk/saveWhole.ts';

/** A picture of one position, as PNG. */
export interface ProofPicture {
  /** From 1. */
  readonly position: number;
  /** A plain file name, such as `01-supper-front-back.png`. */
  readonly name: string;
  readonly png: Uint8Array;
}

/** Neutral grey around and between the faces, so that white paper is seen as paper. */
const GROUND = 128;
/** The width of that ground, as a share of the piece. */
const GROUND_SHARE = 0.04;

/** The picture of a position from its looks: one face, or front beside back. `all` is the number of positions. */
export function pictureOf(looks: readonly FaceView[], all: number): ProofPicture {
  const faces = [...looks].sort((a, b) => (a.face === b.face ? 0 : a.face === 'front' ? -1 : 1));
  const [first] = faces;
  if (first === undefined) throw new Error('A picture of a position needs at least one face');
  const digits = Math.max(2, String(all).length);
  const parts = [
    String(first.position).padStart(digits, '0'),
    slug(first.piece.name),
    ...faces.map((f) => f.face),
  ];
  const { width, height, pixels } = sideBySide(
    faces.map((face) => cutMargin(face.picture, face.grid.margin)),
  );
  const png = encode({ width, height, data: pixels, channels: 3, depth: 8 });
  return { position: first.position, name: `${parts.join('-')}.png`, png };
}

/** Pictures of one height in a row, on a ground that shows their edges. */
function sideBySide(pictures: readonly Picture[]): Picture {
  const tallest = Math.max(...pictures.map((p) => p.height));
  const ground = Math.max(1, Math.round(tallest * GROUND_SHARE));
  const width = pictures.reduce((sum, p) => sum + p.width + ground, ground);
  const height = tallest + 2 * ground;
  const pixels = new Uint8Array(width * height * 3).fill(GROUND);
  let left = ground;
  for (const picture of pictures) {
    for (let y = 0; y < picture.height; y++) {
      const row = picture.pixels.subarray(y * picture.width * 3, (y + 1) * picture.width * 3);
      pixels.set(row, ((y + ground) * width + left) * 3);
    }
    left += picture.width + ground;
  }
  return { width, height, pixels };
}

/** A name as every file system takes it: small letters and digits, accents dropped, the rest a dash. */
function slug(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/\p{Mark}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 60);
  return plain === '' ? 'piece' : plain;
}

/**
 * Writes the pictures into a folder, which is made if it is not there, each whole or not at all; older pictures of
 * the same names are replaced. Gives the paths that were written.
 */
export async function writePictures(
  pictures: readonly ProofPicture[],
  folder: string,
): Promise<Result<readonly string[]>> {
  const paths: string[] = [];
  let path = folder;
  try {
    await mkdir(folder, { recursive: true });
    for (const { name, png } of pictures) {
      path = join(folder, name);
      await saveWhole(path, png, true);
      paths.push(path);
    }
    return ok(paths);
  } catch (error) {
    return refuse(writingFault(error, path));
  }
}
