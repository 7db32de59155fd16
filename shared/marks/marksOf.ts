// All the marks of one form, each in free room of the margins, and in words what found none.
import { around } from '../geometry/rect.ts';
import { printableArea, type SheetEdge, type SheetEdges, usableArea } from '../geometry/sheet.ts';
import type { Rect, Size, Space } from '../geometry/space.ts';
import { applyToRect, type Transform } from '../geometry/transform.ts';
import { lookFromBehind, type Turn } from '../geometry/turn.ts';
import { hasOneForm, turnOf, type Work } from '../geometry/work.ts';
import type { Form, Placement } from '../layout/placement.ts';
import { cropMarks, type MarkedCell } from './cropMarks.ts';
import { leadBars } from './leadBar.ts';
import { boundsOf, carryMark, type Mark, type Measure, type Stamp } from './mark.ts';
import { registerNotices } from './notices.ts';
import { registerTargets } from './registerTargets.ts';
import { CLEARANCE_PT, keepClear, marginsAround, type Place, placeFirst } from './room.ts';
import { drawRulers } from './ruler.ts';
import { oneLine, SHORTER_TITLES, type SlugFacts, shorten, slugs, turnWords } from './slug.ts';

export interface MarksInput {
  readonly sheet: Size;
  readonly unprintable: SheetEdges;
  readonly work: Work;
  /** All forms of the job, so that both sides get the same crop marks and targets. */
  readonly forms: readonly Form[];
  /** The form to be marked: one of them. */
  readonly form: Form;
  readonly slug: SlugFacts;
  readonly measure: Measure;
}

export interface Marks {
  /** In the order they are printed, in the frame of the form's side. */
  readonly marks: readonly Mark[];
  /** What was left out for want of room, and what to do about it. */
  readonly notices: readonly string[];
}

/**
 * The marks of one form.
 *
 * Crop marks and register targets are worked out once for the sheet, from the places on both its sides and within what
 * is printable on both, and looked at from behind for side 2: so they coincide when the sheet is held to the light. The
 * lead-edge bar, the ruler and the slug are set for each form. Nothing touches a bleed, nothing leaves the printable
 * area; what finds no room is left out and said.
 */
export function marksOf(input: MarksInput): Marks {
  const { sheet, unprintable, work, forms, form, measure } = input;
  const turn = turnOf(work);
  const both = usableArea(sheet, unprintable, turn);
  const cells = distinctCells(
    forms.flatMap((f) => f.placements.flatMap((p) => cellsOnSide1(p, f, turn, sheet))),
  );
  const block = around(cells.flatMap((c) => c.bleed));
  if (both === undefined || block === undefined) return { marks: [], notices: [] };

  const crops = cropMarks(cells, both);
  const targets = registerTargets(
    sheet,
    marginsAround(both, block),
    keepClear([...cells.flatMap((c) => c.bleed), ...crops.marks.map(boundsOf)], CLEARANCE_PT),
    hasOneForm(work) ? turn : undefined,
  );
  const view = viewOf(form.number, turn, sheet);
  const register = [...crops.marks, ...targets.marks].map((m) => carryMark(m, view));

  const taken = [
    ...cells.flatMap((c) => c.bleed.map((r) => applyToRect(view, r))),
    ...register.map(boundsOf),
  ];
  const margins = marginsAround(printableArea(sheet, unprintable), applyToRect(view, block));
  const marks: Mark[] = [...register];
  const place = (stamps: readonly Stamp[], places: readonly Place[]): boolean => {
    const placed = placeFirst(stamps, places, taken);
    marks.push(...(placed ?? []));
    taken.push(...(placed ?? []).map(boundsOf));
    return placed !== undefined;
  };

  const notices = form.number === 1 ? registerNotices(crops, targets) : [];
  if (!place(leadBars(form, measure), [{ margin: margins.lead, head: 0, wish: { x: 0.5, y: 1 } }])) {
    notices.push('No room for the lead-edge bar: mark the lead edge of the pile by hand.');
  }
  if (!place(drawRulers(measure), outerPlaces(margins, 1))) {
    notices.push('No room for the ruler: check the size of the print by measuring between crop marks.');
  }
  const title = oneLine(input.slug.job);
  const setSlug = (words: string) =>
    place(
      slugs({ ...input.slug, job: words }, form, forms.length, turnWords(work, form, sheet), measure),
      outerPlaces(margins, 0),
    );
  if (!setSlug(title)) {
    const shorter = SHORTER_TITLES.map((length) => shorten(title, length)).find(
      (words) => words !== title && setSlug(words),
    );
    notices.push(
      shorter === undefined
        ? 'No room for the slug: write job, form and side on the pile by hand.'
        : `No room for the whole title in the slug: it says "${shorter}".`,
    );
  }
  return { marks, notices };
}

/** Where a placement is cut out, as it lies on side 1: on the side that prints it, or on both. */
function cellsOnSide1(
  { trim, bleed }: Placement,
  form: Form,
  turn: Turn | undefined,
  sheet: Size,
): readonly MarkedCell[] {
  return form.sides.map((side) => {
    const view = viewOf(side, turn, sheet);
    return { trim: applyToRect(view, trim), bleed: bleed.map((r) => applyToRect(view, r)) };
  });
}

/** Front and back of a piece are cut out at one place, which is looked at once. */
function distinctCells(cells: readonly MarkedCell[]): readonly MarkedCell[] {
  const found = new Map<string, MarkedCell>();
  for (const cell of cells) {
    const key = [cell.trim, ...cell.bleed].flatMap(({ x, y, w, h }) => [x, y, w, h].map((v) => v.toFixed(3)));
    found.set(key.join(' '), cell);
  }
  return [...found.values()];
}

/** Side 1 as it looks from this side, and this side as it looks from side 1: the way there is the way back. */
function viewOf(side: 1 | 2, turn: Turn | undefined, sheet: Size): Transform<Space, Space> {
  if (side === 1) return { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
  if (turn === undefined) throw new Error('A second side needs a sheet that is turned');
  return lookFromBehind(turn, sheet) as Transform<Space, Space>;
}

/** Where ruler and slug may go: the tail first, then the lead, then the sides, read from the right. */
function outerPlaces(margins: Readonly<Record<SheetEdge, Rect>>, end: 0 | 1): readonly Place[] {
  return [
    { margin: margins.tail, head: 0, wish: { x: end, y: 0 } },
    { margin: margins.lead, head: 0, wish: { x: end, y: 1 } },
    { margin: margins.left, head: 90, wish: { x: 0, y: end } },
    { margin: margins.right, head: 90, wish: { x: 1, y: end } },
  ];
}
