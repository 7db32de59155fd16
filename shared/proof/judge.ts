// The judgement on one face at one position: what is there, and everything that is wrong with it.

import type { FaceAlignment, Found } from './alignment.ts';
import type { ArtFace } from './artFaces.ts';
import { blur, countOutliers } from './band.ts';
import { FACE_EDGES } from './edges.ts';
import { type FaceView, printedRect, sheetEdge } from './faceViews.ts';
import type { FaceFault, FaceShift, Reach, Recognised } from './finding.ts';
import { type Identified, identify, isUpright, type ProofKnowledge } from './identify.ts';
import type { PixelComparison } from './pixelComparison.ts';
import { bleedOf, inMillimetres, placingFaults, shiftOf } from './placing.ts';
import { isBlankWithin } from './sideDrawing.ts';

/** What is thought of one face at one position. */
interface Verdict {
  readonly faults: readonly FaceFault[];
  readonly recognised: Recognised | undefined;
  readonly shift: FaceShift | undefined;
  readonly bleed: readonly Reach[];
}

/** What the view of a face is judged with. */
export interface Judging {
  readonly known: ProofKnowledge;
  readonly comparison: PixelComparison;
  /** Whether the art of a face has enough structure to measure a shift by. */
  readonly hasStructure: (face: ArtFace) => boolean;
}

/**
 * Judges the view of a face. Nearly every face is just what its art is when it is drawn there, which is seen at once; what is not
 * is rendered by itself, found out and measured.
 */
export function judge(look: FaceView, { known, comparison, hasStructure }: Judging): Verdict {
  const expected = known.faces.find((f) => f.piece === look.piece.name && f.face === look.face);
  if (expected === undefined) {
    const blank = isBlankWithin(look.drawing, look.trim);
    return unrecognised(blank ? [] : [{ kind: 'unexpected-print' }]);
  }
  if (comparison.matches(look, expected)) return asItShould(look, hasStructure(expected));
  const found = observe(look);
  const identity = identify(found, expected, known);
  if (identity.is === 'nothing') return unrecognised([{ kind: 'nothing-printed' }]);
  if (identity.is === 'unknown') return unrecognised([artDiffers(found, identity.instead)]);
  const { face, mirrored, turned, placed } = identity;
  const recognised: Recognised = { piece: face.piece, face: face.face, mirrored, turned };
  const shift = hasStructure(face) ? shiftOf(look, placed) : undefined;
  if (face !== expected || !isUpright(identity)) {
    return { faults: [{ kind: mistake(identity, expected) }], recognised, shift, bleed: [] };
  }
  const placing = placingFaults(look, placed, shift);
  const straight = placing.every(({ kind }) => kind === 'off-place');
  const { bleed, faults } = straight ? bleedOf(look, found, identity) : { bleed: [], faults: [] };
  // In its place, or nearly there, the comparison by pixels decides: a rendering is too coarse for small type.
  const agrees =
    identity.agrees && (placing.length + faults.length > 0 || comparison.matches(look, face, placed));
  const differs = agrees ? [] : [artDiffers(found, identity)];
  return { faults: [...placing, ...differs, ...faults], recognised, shift, bleed };
}

/** The verdict on a face that is just as it should be. */
function asItShould(look: FaceView, hasStructure: boolean): Verdict {
  const bleed = FACE_EDGES.flatMap((edge): readonly Reach[] => {
    const reach = Math.max(...look.wanted[edge].map((stretch) => stretch.reach));
    if (!(reach > 0)) return [];
    return [{ edge: sheetEdge(look, edge), reaches: inMillimetres(reach), wanted: inMillimetres(reach) }];
  });
  return {
    faults: [],
    recognised: { piece: look.piece.name, face: look.face, mirrored: false, turned: 0 },
    shift: hasStructure ? { right: 0, lead: 0 } : undefined,
    bleed,
  };
}

/** What was found, ready to be compared. */
function observe(look: FaceView): Found {
  let blurred: Found['picture'] | undefined;
  const { grid, lie } = look;
  const picture = look.render();
  return {
    picture,
    blurred: () => {
      blurred ??= blur(picture);
      return blurred;
    },
    grid,
    lie,
    printed: printedRect(look),
  };
}

function unrecognised(faults: readonly FaceFault[]): Verdict {
  return { faults, recognised: undefined, shift: undefined, bleed: [] };
}

/** How to call a face that is not the expected one, or is it the wrong way round. */
function mistake(
  { face, mirrored, turned }: Identified,
  expected: ArtFace,
): 'wrong-piece' | 'wrong-face' | 'mirrored' | 'upside-down' | 'quarter-turned' {
  if (face.piece !== expected.piece) return 'wrong-piece';
  if (face !== expected) return 'wrong-face';
  if (mirrored) return 'mirrored';
  return turned === 180 ? 'upside-down' : 'quarter-turned';
}

function artDiffers(found: Found, { picture, area }: FaceAlignment): FaceFault {
  const all = Math.max(1, (area.right - area.left) * (area.bottom - area.top));
  const strange = countOutliers(found.blurred(), blur(picture), area, all);
  return { kind: 'art-differs', measured: { share: strange / all } };
}
