// The forms of a job: what each pass prints, worked out from the arrangement on side 1 by the law of turning.
import { type Head, headBehind, type ReaderTurn } from '../geometry/head.ts';
import type { Rect, Side, Size } from '../geometry/space.ts';
import { seenFromBehind, type Turn } from '../geometry/turn.ts';
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import { bleedAreas } from './bleeds.ts';
import type { Form, Placement } from './placement.ts';
import { type FaceName, otherFace, type Position } from './position.ts';

/** What the forms need to know of a design. */
export interface Design {
  readonly name: string;
  /** In pt. */
  readonly bleed: number;
  readonly turned: ReaderTurn;
  readonly hasBack: boolean;
}

/** A face as it lies on a side. */
export interface Lying<S extends Side> {
  readonly piece: string;
  readonly face: FaceName;
  readonly trim: Rect<S>;
  readonly head: Head;
}

/** What has to be printed behind a position, as seen on side 2. */
export function behind(position: Position, turned: ReaderTurn, turn: Turn, sheet: Size): Lying<'side2'> {
  return {
    piece: position.piece,
    face: otherFace(position.face),
    trim: seenFromBehind(position.trim, turn, sheet),
    head: headBehind(position.head, turn, turned),
  };
}

/**
 * What each pass prints. A one-form style gives the one form that serves both sides, the two-form styles one for
 * each, `simplex` one for side 1 only. A position whose piece has no back leaves its place blank behind; where no piece
 * has one, there is no second form.
 *
 * @throws when a position names a piece that is not among the designs.
 */
export function formsOf(
  arrangement: readonly Position[],
  designs: readonly Design[],
  work: Work,
  sheet: Size,
): readonly Form[] {
  const turn = turnOf(work);
  const first = placementsOf(arrangement, designs);
  if (turn === undefined) return [{ number: 1, sides: [1], placements: first }];
  if (hasOneForm(work)) return [{ number: 1, sides: [1, 2], placements: first }];
  const second = placementsOf(
    arrangement.map((p) => behind(p, designNamed(designs, p.piece).turned, turn, sheet)),
    designs,
  );
  const front: Form = { number: 1, sides: [1], placements: first };
  return second.length === 0 ? [front] : [front, { number: 2, sides: [2], placements: second }];
}

/**
 * Which forms go into one file: each its own, but both into one where the printer turns the sheet itself. For anything
 * that stands for the forms of a job, one for each.
 */
export function groupByFile<T>(work: Work, forms: readonly T[]): readonly (readonly T[])[] {
  return work.style === 'perfecting' ? [forms] : forms.map((form) => [form]);
}

/** The design of this name. Throws where there is none: the job has been validated before. */
export function designNamed<D extends { readonly name: string }>(designs: readonly D[], name: string): D {
  const design = designs.find((d) => d.name === name);
  if (design === undefined) throw new Error(`No design is called "${name}"`);
  return design;
}

function placementsOf<S extends Side>(
  lying: readonly Lying<S>[],
  designs: readonly Design[],
): Placement<S>[] {
  // A place that stays blank keeps its neighbours' bleeds out as any other does.
  const areas = bleedAreas(lying.map((l) => ({ trim: l.trim, bleed: designNamed(designs, l.piece).bleed })));
  return lying.flatMap((l, i) => {
    const bleed = areas[i];
    const isPrinted = l.face === 'front' || designNamed(designs, l.piece).hasBack;
    return bleed === undefined || !isPrinted ? [] : [{ ...l, bleed }];
  });
}
