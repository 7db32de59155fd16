// Snap targets: the places where a piece would rightly lie, each with the name and the lines that show it.
import type { SheetAxis, Span } from '../axis.ts';

/** What a target is about, the weightiest first: where two offer the same place, this order says which is named first. */
export const GUIDE_KINDS = [
  'equal-margins',
  'gutter',
  'printable-edge',
  'mirror',
  'sheet-centre',
  'in-line',
] as const;

export type GuideKind = (typeof GUIDE_KINDS)[number];

/** What is drawn and named while a snap holds. */
export interface Guide {
  readonly kind: GuideKind;
  /** In words, as it stands beside the guide: `equal side margins`. */
  readonly name: string;
  /** The axis along which the piece was drawn to its place. */
  readonly axis: SheetAxis;
  /** Where lines cross that axis, in pt on side 1. */
  readonly lines: readonly number[];
  /** Stretches of that axis that are told by their length; more than one are equal. */
  readonly gaps: readonly Span[];
}

export interface SnapTarget extends Guide {
  /** Where the lower end of what is moved would lie on the axis, in pt. */
  readonly at: number;
  /** The stretch of the other axis beside which it counts; everywhere when there is none. */
  readonly beside?: Span;
}
