// What the name of a file says of the art in it: the piece's name, and whether it is a front or a back.
import type { FaceName } from '../layout/position.ts';

const FRONT = /(^|[\s._-])(front|recto|side[\s._-]?(1|a)|outside)(?=$|[\s._-])/i;
const BACK = /(^|[\s._-])(back|reverse|verso|side[\s._-]?(2|b)|inside)(?=$|[\s._-])/i;

export interface NameWords {
  readonly name: string;
  readonly face: FaceName | undefined;
}

/** The name of the piece and the face, as a file name tells them: `harvest-supper_front.pdf`. */
export function wordsOfName(fileName: string): NameWords {
  const bare = fileName.replace(/\.[^.]*$/, '');
  const front = FRONT.test(bare);
  const back = BACK.test(bare);
  // A name that says both says neither.
  if (front === back) return { name: tidy(bare), face: undefined };
  return { name: tidy(bare.replace(front ? FRONT : BACK, ' ')), face: front ? 'front' : 'back' };
}

/** The name of the piece alone. */
export function stemOf(fileName: string): string {
  return wordsOfName(fileName).name;
}

/** Whether one file says it is the front, and the other the back, of the same piece. */
export function oppositeFaceName(front: string, back: string): boolean {
  const [one, other] = [wordsOfName(front), wordsOfName(back)];
  return one.face === 'front' && other.face === 'back' && one.name.toLowerCase() === other.name.toLowerCase();
}

function tidy(name: string): string {
  const words = name.replace(/[\s._-]+/g, ' ').trim();
  return words === '' ? 'Piece' : words.charAt(0).toUpperCase() + words.slice(1);
}
