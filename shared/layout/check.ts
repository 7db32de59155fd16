// What is wrong with an arrangement, in words and by position: live on the bench, and once more before sending.
import { grow, holds, overlap, wholeOf } from '../geometry/rect.ts';
import { registerEdges } from '../geometry/register.ts';
import { type SheetEdges, usableArea } from '../geometry/sheet.ts';
import type { Size } from '../geometry/space.ts';
import { TOLERANCE } from '../geometry/tolerance.ts';
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import type { Unit } from '../units/length.ts';
import { showLength } from '../units/show.ts';
import { type Reaches, reachAlong } from './bleedReach.ts';
import { bleedAreas } from './bleeds.ts';
import { type Design, designNamed } from './forms.ts';
import { coincide, partnerOf } from './partner.ts';
import type { Position } from './position.ts';
import { registerMargins } from './registerMargins.ts';

/** What can be wrong. All but `bleed-clipped` and `margins-unequal` spoil the sheet. */
export type LayoutFault =
  | 'off-sheet'
  | 'trim-unprintable'
  | 'bleed-unprintable'
  | 'overlap'
  | 'bleed-clipped'
  | 'no-partner'
  | 'margins-unequal';

/** One thing that is wrong, and the positions it concerns, counted from 0. */
export interface LayoutFinding {
  readonly kind: LayoutFault;
  readonly positions: readonly number[];
  readonly message: string;
}

export interface LaidSheet {
  readonly size: Size;
  readonly unprintable: SheetEdges;
  readonly work: Work;
}

/** Everything that is wrong with the arrangement, in the order of its positions. Lengths are said in `unit`. */
export function checkArrangement(
  arrangement: readonly Position[],
  designs: readonly Design[],
  sheet: LaidSheet,
  unit: Unit,
): readonly LayoutFinding[] {
  return [
    ...arrangement.flatMap((_p, i) => checkPlace(arrangement, i, designs, sheet)),
    ...checkOverlaps(arrangement),
    ...checkBleeds(arrangement, designs, unit),
    ...(hasOneForm(sheet.work) ? checkMirror(arrangement, designs, sheet, unit) : []),
  ];
}

function checkPlace(
  arrangement: readonly Position[],
  index: number,
  designs: readonly Design[],
  sheet: LaidSheet,
): readonly LayoutFinding[] {
  const position = arrangement[index];
  if (position === undefined) return [];
  const say = (kind: LayoutFault, what: string): LayoutFinding[] => [
    { kind, positions: [index], message: `${nameOf(position, index)} ${what}` },
  ];
  if (!holds(wholeOf(sheet.size), position.trim)) return say('off-sheet', 'runs off the sheet.');
  const turn = turnOf(sheet.work);
  const usable = usableArea(sheet.size, sheet.unprintable, turn);
  const sides = turn === undefined ? '' : ', on one side of the sheet or the other';
  if (usable === undefined || !holds(usable, position.trim)) {
    return say('trim-unprintable', `lies partly where the printer cannot print${sides}.`);
  }
  if (!holds(usable, grow(position.trim, designNamed(designs, position.piece).bleed))) {
    return say('bleed-unprintable', `has bleed where the printer cannot print${sides}.`);
  }
  return [];
}

function checkOverlaps(arrangement: readonly Position[]): readonly LayoutFinding[] {
  return arrangement.flatMap((a, i) =>
    arrangement.flatMap((b, j) =>
      j > i && overlap(a.trim, b.trim)
        ? [
            {
              kind: 'overlap' as const,
              positions: [i, j],
              message: `${nameOf(a, i)} lies over ${nameOf(b, j)}.`,
            },
          ]
        : [],
    ),
  );
}

function checkBleeds(
  arrangement: readonly Position[],
  designs: readonly Design[],
  unit: Unit,
): readonly LayoutFinding[] {
  const bleeding = arrangement.map((p) => ({ trim: p.trim, bleed: designNamed(designs, p.piece).bleed }));
  const areas = bleedAreas(bleeding);
  return arrangement.flatMap((position, i) => {
    const [one, area] = [bleeding[i], areas[i]];
    if (one === undefined || area === undefined) return [];
    const where = sayShort(reachAlong(one.trim, area), one.bleed, unit);
    if (where === undefined) return [];
    const message = `${nameOf(position, i)} keeps only part of its ${showLength(one.bleed, unit)} bleed, because a neighbour is too near: ${where}.`;
    return [{ kind: 'bleed-clipped' as const, positions: [i], message }];
  });
}

/** Edges of side 1, as the printer meets them. */
const EDGE_NAMES = { top: 'lead edge', bottom: 'tail edge', left: 'left edge', right: 'right edge' } as const;

/** Where a bleed does not reach as far as it should, and how far it does: `0.5 mm at part of the lead edge`. */
function sayShort(reaches: Reaches, bleed: number, unit: Unit): string | undefined {
  const short = (['top', 'bottom', 'left', 'right'] as const).flatMap((edge) => {
    const lacking = reaches[edge].filter(({ reach }) => reach < bleed - TOLERANCE);
    if (lacking.length === 0) return [];
    const least = Math.min(...lacking.map(({ reach }) => reach));
    const part = lacking.length < reaches[edge].length ? 'part of ' : '';
    return [`${showLength(least, unit)} at ${part}the ${EDGE_NAMES[edge]}`];
  });
  return short.length === 0 ? undefined : short.join(', ');
}

/** One form serves both passes only if it falls on itself when the sheet is turned. */
function checkMirror(
  arrangement: readonly Position[],
  designs: readonly Design[],
  sheet: LaidSheet,
  unit: Unit,
): readonly LayoutFinding[] {
  const turn = turnOf(sheet.work);
  if (turn === undefined) return [];
  const lonely = arrangement.flatMap((position, i) => {
    const partner = partnerOf(position, designNamed(designs, position.piece).turned, turn, sheet.size);
    if (arrangement.some((other) => coincide(other, partner))) return [];
    const message = `${nameOf(position, i)} has no ${partner.face} behind it when the sheet is turned ${turn}.`;
    return [{ kind: 'no-partner' as const, positions: [i], message }];
  });
  return [...lonely, ...checkMargins(arrangement, sheet, turn, unit)];
}

function checkMargins(
  arrangement: readonly Position[],
  sheet: LaidSheet,
  turn: 'side-to-side' | 'end-to-end',
  unit: Unit,
): readonly LayoutFinding[] {
  const beside = registerMargins(
    arrangement.map((p) => p.trim),
    turn,
    sheet.size,
  );
  if (beside === undefined || beside.equal) return [];
  const [first, second] = registerEdges(turn);
  const { margins } = beside;
  const message = `The ${first} margin is ${showLength(margins[0], unit)} and the ${second} margin ${showLength(margins[1], unit)}; they register the second pass and must be equal.`;
  return [{ kind: 'margins-unequal', positions: [], message }];
}

function nameOf(position: Position, index: number): string {
  return `Position ${index + 1} ("${position.piece}", ${position.face})`;
}
