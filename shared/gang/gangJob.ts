// A brief with several pieces of one size as a gang run: what to ask the planner, and its plan in words of the brief.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';
import { same } from '../geometry/tolerance.ts';
import { hasOneForm } from '../geometry/work.ts';
import type { Brief, Piece } from '../job/brief.ts';
import { trimOf } from '../job/job.ts';
import { layOutBrief } from '../job/layOutJob.ts';
import { points } from '../units/length.ts';
import { showLength, showSize } from '../units/show.ts';
import { copiesOf, type GangOrder, type GangPlan, sum } from './gang.ts';

/** What sheets and forms cost, and how many forms may be made. */
export type GangCosts = Pick<GangOrder, 'sheetCost' | 'formCost' | 'mostForms'>;

/** A plan for a brief: which pieces share a form, how many up, and how many good sheets of each form. Overs come on top. */
export interface GangProposal {
  /** The longest run first. */
  readonly forms: readonly ProposedForm[];
  readonly pieces: readonly GangedPiece[];
  /** Good sheets of all forms together. */
  readonly sheets: number;
  readonly cost: number;
  /** What the pieces left over took of it. */
  readonly leftOverCost: number;
  /** What no plan can cost less than. */
  readonly bound: number;
  /** How far the plan may be from the best, as a share of its cost; 0 where it is proven the best. */
  readonly gap: number;
}

/** One form, and what a sheet of it yields. */
export interface ProposedForm {
  readonly sheets: number;
  readonly pieces: readonly { readonly piece: string; readonly up: number; readonly printed: number }[];
  /** Pieces more that a sheet has room for. */
  readonly spare: number;
}

/** What a piece gets out of all forms together. */
export interface GangedPiece {
  readonly piece: string;
  readonly wanted: number;
  readonly printed: number;
  readonly leftOver: number;
}

/**
 * The order that a brief makes: places are the pieces of one size that its sheet holds. In a one-form style a place is a
 * front with its back beside it, which yields two pieces a sheet.
 *
 * Refuses (`gang-impossible`) a brief with one piece, or with pieces unlike in trim, bleed or how they may lie; and what
 * the layout refuses.
 */
export function gangOrderOf(brief: Brief, costs: GangCosts): Result<GangOrder> {
  const [first, ...others] = brief.pieces;
  if (first === undefined || others.length === 0) return refuse(ONE_PIECE);
  const unlike = others.find((piece) => !alike(first, piece));
  if (unlike !== undefined) return refuse(notAlike(first, unlike, brief));
  const alone = layOutBrief({ ...brief, pieces: [first] });
  if (!alone.ok) return alone;
  const each = piecesPerPlace(brief);
  return ok({
    ...costs,
    quantities: brief.pieces.map((piece) => Math.ceil(piece.quantity / each)),
    slots: alone.value.positions.length / each,
  });
}

/** The plan of an order in words of its brief. */
export function proposeGang(
  brief: Brief,
  order: GangOrder,
  { plan, bound, gap }: { readonly plan: GangPlan; readonly bound: number; readonly gap: number },
): GangProposal {
  const each = piecesPerPlace(brief);
  const forms = plan.forms.map((form) => ({
    sheets: form.sheets,
    pieces: brief.pieces.flatMap(({ name }, design) => {
      const up = each * copiesOf(form, design);
      return up === 0 ? [] : [{ piece: name, up, printed: up * form.sheets }];
    }),
    spare: each * (order.slots - sum(form.copies)),
  }));
  const pieces = brief.pieces.map(({ name, quantity }) => {
    const printed = sum(forms.flatMap((f) => f.pieces.filter((p) => p.piece === name)).map((p) => p.printed));
    return { piece: name, wanted: quantity, printed, leftOver: printed - quantity };
  });
  const perPiece = order.sheetCost / (each * order.slots);
  return {
    forms,
    pieces,
    sheets: plan.sheets,
    cost: plan.cost,
    leftOverCost: perPiece * sum(pieces.map((piece) => piece.leftOver)),
    bound,
    gap,
  };
}

/** A brief for each form: its pieces in just the numbers that it prints, which the layout lays out as planned. */
export function briefsOfGang(brief: Brief, { forms }: Pick<GangProposal, 'forms'>): readonly Brief[] {
  return forms.map((form, f) => ({
    ...brief,
    title: forms.length === 1 ? brief.title : `${brief.title}, form ${f + 1} of ${forms.length}`,
    pieces: brief.pieces.flatMap((piece) => {
      const here = form.pieces.find((one) => one.piece === piece.name);
      return here === undefined ? [] : [{ ...piece, quantity: here.printed }];
    }),
  }));
}

function piecesPerPlace(brief: Brief): 1 | 2 {
  return hasOneForm(brief.work) ? 2 : 1;
}

function alike(a: Piece, b: Piece): boolean {
  const [trimA, trimB] = [trimOf(a), trimOf(b)];
  return (
    same(trimA.w, trimB.w) &&
    same(trimA.h, trimB.h) &&
    same(points(a.bleed), points(b.bleed)) &&
    a.lies === b.lies
  );
}

const ONE_PIECE: Fault = {
  code: 'gang-impossible',
  message: 'A gang run needs several pieces; the brief has one.',
  remedy: 'Add the other pieces to the brief, or lay the one out by itself.',
  where: 'pieces',
};

function notAlike(first: Piece, unlike: Piece, { units }: Brief): Fault {
  const says = (piece: Piece) =>
    `"${piece.name}" is ${showSize(trimOf(piece), units)} with ${showLength(points(piece.bleed), units)} bleed and may lie ${piece.lies === 'either' ? 'either way' : piece.lies}`;
  return {
    code: 'gang-impossible',
    message: `Pieces that share forms in a gang run must be alike: ${says(first)}, ${says(unlike)}.`,
    remedy: 'Make a job of its own for each size.',
    where: 'pieces',
  };
}
