// What is printed behind each piece when the sheet is turned one way or the other, and what is wrong with it in words.
import { headBehind, headOf } from '../geometry/head.ts';
import { intersection } from '../geometry/rect.ts';
import type { Rect } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';
import { seenFromBehind, type Turn } from '../geometry/turn.ts';
import type { LaidSheet } from '../layout/check.ts';
import { type Design, designNamed, formsOf } from '../layout/forms.ts';
import type { Placement } from '../layout/placement.ts';
import { otherFace, type Position } from '../layout/position.ts';
import type { Unit } from '../units/length.ts';
import { showLength } from '../units/show.ts';

/** What can be wrong behind a piece, the gravest first. */
export type BackFault =
  | 'nothing-behind'
  | 'not-blank'
  | 'other-piece'
  | 'same-face'
  | 'upside-down'
  | 'on-its-side'
  | 'off-place';

/** What one piece has behind it. */
export interface Backed {
  /** The index of its position, from 0. */
  readonly position: number;
  /** Where the piece lies as side 2 is looked at. */
  readonly trim: Rect<'side2'>;
  /** What is printed there, if anything. */
  readonly printed: Placement | undefined;
  readonly fault: BackFault | undefined;
  /** What is wrong in words; empty where nothing is. */
  readonly message: string;
}

/**
 * What lies behind each piece when side 2 is printed after the sheet was turned by `taken`, which may be the wrong
 * turn: the printer then prints the same page on other paper. Lengths are said in `unit`.
 */
export function backUp(
  arrangement: readonly Position[],
  designs: readonly Design[],
  sheet: LaidSheet,
  taken: Turn,
  unit: Unit,
): readonly Backed[] {
  const second = formsOf(arrangement, designs, sheet.work, sheet.size).find((f) => f.sides.includes(2));
  const placements = second?.placements ?? [];
  return arrangement.map((position, index) => {
    const design = designNamed(designs, position.piece);
    const trim = seenFromBehind(position.trim, taken, sheet.size);
    const printed = mostOver(trim, placements);
    const wanted = position.face === 'back' || design.hasBack ? otherFace(position.face) : undefined;
    const head = headBehind(position.head, taken, design.turned);
    const fault = faultOf(position, wanted, head, trim, printed);
    const message =
      fault === undefined ? '' : `${nameOf(position, index)} ${say(fault, trim, printed, unit)}`;
    return { position: index, trim, printed, fault, message };
  });
}

function mostOver(trim: Rect<'side2'>, placements: readonly Placement[]): Placement | undefined {
  let most = { area: TOLERANCE, placement: undefined as Placement | undefined };
  for (const placement of placements) {
    const common = intersection<'side1' | 'side2'>(trim, placement.trim);
    const area = common === undefined ? 0 : common.w * common.h;
    if (area > most.area) most = { area, placement };
  }
  return most.placement;
}

function faultOf(
  position: Position,
  wanted: 'front' | 'back' | undefined,
  head: number,
  trim: Rect<'side2'>,
  printed: Placement | undefined,
): BackFault | undefined {
  if (wanted === undefined) return printed === undefined ? undefined : 'not-blank';
  if (printed === undefined) return 'nothing-behind';
  if (printed.piece !== position.piece) return 'other-piece';
  if (printed.face !== wanted) return 'same-face';
  const turned = headOf(printed.head - head);
  if (turned === 180) return 'upside-down';
  if (turned !== 0) return 'on-its-side';
  const { x, y } = offset(trim, printed);
  return Math.abs(x) > TOLERANCE || Math.abs(y) > TOLERANCE ? 'off-place' : undefined;
}

function say(fault: BackFault, trim: Rect<'side2'>, printed: Placement | undefined, unit: Unit): string {
  const other = printed === undefined ? 'nothing' : `the ${printed.face} of "${printed.piece}"`;
  switch (fault) {
    case 'nothing-behind':
      return 'has nothing printed behind it.';
    case 'not-blank':
      return `should be blank behind, but has ${other} there.`;
    case 'other-piece':
    case 'same-face':
      return `has ${other} behind it.`;
    case 'upside-down':
      return `has ${other} behind it upside down.`;
    case 'on-its-side':
      return `has ${other} behind it lying on its side.`;
    case 'off-place': {
      const { x, y } = printed === undefined ? { x: 0, y: 0 } : offset(trim, printed);
      const ways = [
        ...(Math.abs(x) > TOLERANCE ? [`${showLength(Math.abs(x), unit)} across the feed`] : []),
        ...(Math.abs(y) > TOLERANCE ? [`${showLength(Math.abs(y), unit)} along the feed`] : []),
      ];
      return `has ${other} behind it, off by ${ways.join(' and ')}.`;
    }
  }
}

/** How far the middle of what is printed lies from the middle of the piece, in pt. */
function offset(trim: Rect<'side2'>, printed: Placement): { readonly x: number; readonly y: number } {
  return {
    x: printed.trim.x + printed.trim.w / 2 - trim.x - trim.w / 2,
    y: printed.trim.y + printed.trim.h / 2 - trim.y - trim.h / 2,
  };
}

function nameOf(position: Position, index: number): string {
  return `Position ${index + 1} ("${position.piece}", ${position.face})`;
}

const SUMMED: Readonly<Record<BackFault, string>> = {
  'nothing-behind': 'with nothing printed behind',
  'not-blank': 'printed behind though it should be blank',
  'other-piece': 'with another piece behind',
  'same-face': 'with the same face on both sides',
  'upside-down': 'with the back upside down',
  'on-its-side': 'with the back lying on its side',
  'off-place': 'with the back out of place',
};

/** The faults counted, one line for each kind: `4 of 4 pieces with the back upside down`. Empty where all is well. */
export function countFaults(backed: readonly Backed[]): readonly string[] {
  return (Object.keys(SUMMED) as BackFault[]).flatMap((fault) => {
    const count = backed.filter((b) => b.fault === fault).length;
    return count === 0 ? [] : [`${count} of ${backed.length} pieces ${SUMMED[fault]}`];
  });
}
