// The judgement on one face at one position: what is there, and everything that is wrong with it.
import { countStrangers, isBlank, soften } from './band.ts';
import type { Fault, Reach, Recognised, Shift } from './finding.ts';
import { type ArtFace, IN_PLACE } from './gallery.ts';
import { type Identified, identify, isUpright, type Known } from './identify.ts';
import { type Look, printedRect } from './looks.ts';
import { bleedOf, placingFaults, shiftOf } from './placing.ts';
import { areaInView, type Found, type Settled } from './settle.ts';

/** What is thought of one face at one position. */
interface Verdict {
  readonly faults: readonly Fault[];
  readonly recognised: Recognised | undefined;
  readonly shift: Shift | undefined;
  readonly bleed: readonly Reach[];
}

/** Judges a look. `tellsPlace` says whether the art of a face has enough structure to measure a shift by. */
export function judge(look: Look, known: Known, tellsPlace: (face: ArtFace) => boolean): Verdict {
  const found = holdUp(look);
  const expected = known.faces.find((f) => f.piece === look.piece.name && f.face === look.face);
  if (expected === undefined) {
    const blank = isBlank(look.picture, areaInView(found, IN_PLACE));
    return unrecognised(blank ? [] : [{ kind: 'unexpected-print' }]);
  }
  const identity = identify(found, expected, known);
  if (identity.is === 'nothing') return unrecognised([{ kind: 'nothing-printed' }]);
  if (identity.is === 'unknown') return unrecognised([artDiffers(found, identity.instead)]);
  const { face, mirrored, turned, placed, agrees } = identity;
  const recognised: Recognised = { piece: face.piece, face: face.face, mirrored, turned };
  const shift = tellsPlace(face) ? shiftOf(look, placed) : undefined;
  if (face !== expected || !isUpright(identity)) {
    return { faults: [{ kind: mistake(identity, expected) }], recognised, shift, bleed: [] };
  }
  const placing = placingFaults(look, placed, shift);
  const straight = placing.every(({ kind }) => kind === 'off-place');
  const { bleed, faults } = straight ? bleedOf(look, found, identity) : { bleed: [], faults: [] };
  const differs = agrees ? [] : [artDiffers(found, identity)];
  return { faults: [...placing, ...differs, ...faults], recognised, shift, bleed };
}

/** What was found, ready to be compared. */
function holdUp(look: Look): Found {
  let softened: Found['picture'] | undefined;
  const { picture, grid, lie } = look;
  return {
    picture,
    softened: () => {
      softened ??= soften(picture);
      return softened;
    },
    grid,
    lie,
    printed: printedRect(look),
  };
}

function unrecognised(faults: readonly Fault[]): Verdict {
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

function artDiffers(found: Found, { picture, area }: Settled): Fault {
  const all = Math.max(1, (area.right - area.left) * (area.bottom - area.top));
  const strange = countStrangers(found.softened(), soften(picture), area, all);
  return { kind: 'art-differs', measured: { share: strange / all } };
}
