// A gang run: several designs of one size in different numbers, shared out over a few forms.

/** What is wanted, and what sheets and forms cost. */
export interface GangOrder {
  /** Pieces wanted of each design, whole and from 1. */
  readonly quantities: readonly number[];
  /** Places of a form: the pieces that one sheet yields. */
  readonly slots: number;
  /** What one sheet costs: paper, ink, and the time that it takes. */
  readonly sheetCost: number;
  /** What one form costs before its first sheet is printed: plates or files, and make-ready. */
  readonly formCost: number;
  /** No more forms than this; as many as there are designs where it is not said. */
  readonly mostForms?: number | undefined;
}

/** One form: copies of each design on it, and the good sheets printed from it. */
export interface GangForm {
  readonly copies: readonly number[];
  readonly sheets: number;
}

/** Forms that make the order, weighed. */
export interface GangPlan {
  /** The longest run first. */
  readonly forms: readonly GangForm[];
  /** Of all forms together. */
  readonly sheets: number;
  readonly cost: number;
  /** Of each design, what is printed beyond what is wanted. */
  readonly leftOver: readonly number[];
  /** What the pieces left over took of the cost of the sheets, each slot bearing its share. */
  readonly leftOverCost: number;
  /** Places of a form that stay empty, counted once for every sheet. */
  readonly emptyPlaces: number;
}

/** Weighs forms that make the order. Throws where they do not: forms that came out of a solver are right or a mistake. */
export function weighGang(order: GangOrder, forms: readonly GangForm[]): GangPlan {
  const printed = order.quantities.map((_, design) => sum(forms.map((f) => copiesOf(f, design) * f.sheets)));
  const short = order.quantities.findIndex((wanted, design) => (printed[design] ?? 0) < wanted);
  if (short >= 0) throw new Error(`The forms print too few of design ${short + 1}`);
  const used = forms.map((form) => sum(form.copies));
  if (used.some((places) => places > order.slots))
    throw new Error('A form holds more than it has places for');
  const sheets = sum(forms.map((form) => form.sheets));
  const leftOver = order.quantities.map((wanted, design) => (printed[design] ?? 0) - wanted);
  return {
    forms: forms.toSorted((a, b) => b.sheets - a.sheets),
    sheets,
    cost: order.sheetCost * sheets + order.formCost * forms.length,
    leftOver,
    leftOverCost: (order.sheetCost / order.slots) * sum(leftOver),
    emptyPlaces: sum(forms.map((form, f) => (order.slots - (used[f] ?? 0)) * form.sheets)),
  };
}

/** Copies of a design on a form. */
export function copiesOf(form: Pick<GangForm, 'copies'>, design: number): number {
  return form.copies[design] ?? 0;
}

export function sum(numbers: readonly number[]): number {
  return numbers.reduce((all, one) => all + one, 0);
}
