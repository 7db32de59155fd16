// Paper in space: ink is laid on it, it is turned, cut and turned by its reader, all with rotations of points. Knows
// nothing of the program's laws; the tests ask it what a person would see.

type Vec = readonly [number, number, number];
type Matrix = readonly [Vec, Vec, Vec];

/** A pose of the paper: first rotated about the origin, then moved. */
interface Pose {
  readonly rotation: Matrix;
  readonly move: Vec;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** A drop of ink: which mark of which art it is, and where on the paper it lies. z > 0 is side 1, z < 0 side 2. */
export interface Ink {
  readonly mark: string;
  readonly at: Vec;
}

/** One face to be printed: its trim in the frame of the pass, and how far its head is turned counter-clockwise. */
export interface Printed {
  readonly art: string;
  readonly trim: Box;
  readonly head: number;
}

const turnAbout = (axis: Vec, degrees: number): Matrix => {
  const a = (degrees * Math.PI) / 180;
  const [x, y, z] = axis;
  const c = Math.cos(a);
  const s = Math.sin(a);
  const k = 1 - c;
  return [
    [c + x * x * k, x * y * k - z * s, x * z * k + y * s],
    [y * x * k + z * s, c + y * y * k, y * z * k - x * s],
    [z * x * k - y * s, z * y * k + x * s, c + z * z * k],
  ];
};

const dot = (a: Vec, b: Vec): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const times = (m: Matrix, v: Vec): Vec => [dot(m[0], v), dot(m[1], v), dot(m[2], v)];
const transpose = (m: Matrix): Matrix => [
  [m[0][0], m[1][0], m[2][0]],
  [m[0][1], m[1][1], m[2][1]],
  [m[0][2], m[1][2], m[2][2]],
];
const add = (a: Vec, b: Vec): Vec => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
const less = (a: Vec, b: Vec): Vec => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

const ALONG_THE_FEED: Vec = [0, 1, 0];
const ACROSS_THE_FEED: Vec = [1, 0, 0];
const TOWARDS_THE_EYE: Vec = [0, 0, 1];

/** Half the thickness of the paper; any positive number does. */
const HALF = 0.5;

/** The paper as it lies in the second pass: turned half round about an axis, its lower left again at the origin. */
export function turned(how: 'side-to-side' | 'end-to-end', width: number, length: number): Pose {
  return how === 'side-to-side'
    ? { rotation: turnAbout(ALONG_THE_FEED, 180), move: [width, 0, 0] }
    : { rotation: turnAbout(ACROSS_THE_FEED, 180), move: [0, length, 0] };
}

/** The paper as it lies in the first pass. */
export const unturned: Pose = { rotation: turnAbout(TOWARDS_THE_EYE, 0), move: [0, 0, 0] };

/**
 * Prints faces on what lies upwards in this pose. Each face leaves three drops: near its head, near its foot, and
 * to the left of its middle as a reader sees it.
 */
export function print(faces: readonly Printed[], pose: Pose): Ink[] {
  const back = transpose(pose.rotation);
  return faces.flatMap(({ art, trim, head }) => {
    const lies = Math.round(Math.abs(Math.sin((head * Math.PI) / 180)));
    const [w, h] = lies === 1 ? [trim.h, trim.w] : [trim.w, trim.h];
    const middle: Vec = [trim.x + trim.w / 2, trim.y + trim.h / 2, 0];
    const marks: readonly (readonly [string, Vec])[] = [
      ['head', [0, h * 0.4, 0]],
      ['foot', [0, -h * 0.4, 0]],
      ['left', [-w * 0.4, 0, 0]],
    ];
    return marks.map(([mark, offset]) => {
      const onTable = add(middle, times(turnAbout(TOWARDS_THE_EYE, head), offset));
      const top = pose.rotation[2][2] > 0 ? HALF : -HALF;
      const flat = times(back, less([onTable[0], onTable[1], 0], [pose.move[0], pose.move[1], 0]));
      return { mark: `${art} ${mark}`, at: [flat[0], flat[1], top] as Vec };
    });
  });
}

/** The drops on the piece that the knife frees at this box of side 1, both faces, as measured from its middle. */
export function cutOut(ink: readonly Ink[], box: Box): Ink[] {
  const middle: Vec = [box.x + box.w / 2, box.y + box.h / 2, 0];
  return ink
    .filter(({ at }) => Math.abs(at[0] - middle[0]) < box.w / 2 && Math.abs(at[1] - middle[1]) < box.h / 2)
    .map(({ mark, at }) => ({ mark, at: less(at, middle) }));
}

/** What the eye sees of a piece: the marks of the face towards it, each by its main direction from the middle. */
export type Seen = Readonly<Record<string, 'up' | 'down' | 'left' | 'right'>>;

/** Holds a piece so that a head turned by `head` on side 1 is up, and looks at it. */
export function hold(
  piece: readonly Ink[],
  head: number,
): { front: Seen; turnedLikeAPage: Seen; turnedLikeACalendar: Seen } {
  const upright = spin(piece, turnAbout(TOWARDS_THE_EYE, -head));
  return {
    front: look(upright),
    turnedLikeAPage: look(spin(upright, turnAbout(ALONG_THE_FEED, 180))),
    turnedLikeACalendar: look(spin(upright, turnAbout(ACROSS_THE_FEED, 180))),
  };
}

function spin(piece: readonly Ink[], rotation: Matrix): Ink[] {
  return piece.map(({ mark, at }) => ({ mark, at: times(rotation, at) }));
}

function look(piece: readonly Ink[]): Seen {
  const seen = piece.filter(({ at }) => at[2] > 0);
  return Object.fromEntries(
    seen.map(({ mark, at }) => {
      if (Math.abs(at[0]) > Math.abs(at[1])) return [mark, at[0] > 0 ? 'right' : 'left'] as const;
      return [mark, at[1] > 0 ? 'up' : 'down'] as const;
    }),
  );
}
