// Jobs to be marked: random sheets with random rows of pieces, some places left empty, in every work style.

import fc from 'fast-check';
import { HEADS, type Head, lying, type ReaderTurn } from '../../shared/geometry/head.ts';
import type { SheetEdges } from '../../shared/geometry/sheet.ts';
import type { Size } from '../../shared/geometry/space.ts';
import { hasOneForm, turnOf, type Work } from '../../shared/geometry/work.ts';
import { WORKS } from '../../shared/job/compareWorks.ts';
import { type Design, formsOf } from '../../shared/layout/forms.ts';
import { partnerOf } from '../../shared/layout/partner.ts';
import type { Form } from '../../shared/layout/placement.ts';
import type { Position } from '../../shared/layout/position.ts';
import type { MarksInput } from '../../shared/marks/marksOf.ts';
import { numberFrom } from './anyNumber.ts';

/** A block of equal pieces on a sheet, in pt. */
export interface Block {
  readonly sheet: Size;
  readonly trim: Size;
  readonly bleed: number;
  readonly gutter: number;
  readonly across: number;
  readonly along: number;
  readonly work: Work;
  readonly head?: Head;
  readonly turned?: ReaderTurn;
  readonly hasBack?: boolean;
  /** Which places stay empty, by number from the lower left, row by row. */
  readonly empty?: readonly number[];
  /** How far the block lies from the middle of the sheet; only what the turn allows is used. */
  readonly off?: { readonly x: number; readonly y: number };
}

/** The forms of a block. In a one-form style the half at the left (or tail) is laid and its partners added. */
export function formsOfBlock(block: Block): readonly Form[] {
  const { sheet, bleed, gutter, across, along, work, head = 0, turned = 'head-to-head', empty = [] } = block;
  const size = lying(block.trim, head);
  const turn = turnOf(work);
  const folds = hasOneForm(work) ? turn : undefined;
  const off = {
    x: folds === 'side-to-side' ? 0 : (block.off?.x ?? 0),
    y: folds === 'end-to-end' ? 0 : (block.off?.y ?? 0),
  };
  const left = (sheet.w - across * size.w - (across - 1) * gutter) / 2 + off.x;
  const bottom = (sheet.h - along * size.h - (along - 1) * gutter) / 2 + off.y;
  const laid = Array.from({ length: across * along }, (_, i) => i)
    .filter((i) => !empty.includes(i))
    .filter((i) => folds !== 'side-to-side' || (i % across) * 2 + 1 < across)
    .filter((i) => folds !== 'end-to-end' || Math.floor(i / across) * 2 + 1 < along)
    .map((i): Position => {
      const x = left + (i % across) * (size.w + gutter);
      const y = bottom + Math.floor(i / across) * (size.h + gutter);
      return { piece: 'Card', face: 'front', trim: { x, y, ...size }, head };
    });
  const partners = folds === undefined ? [] : laid.map((p) => partnerOf(p, turned, folds, sheet));
  const design: Design = { name: 'Card', bleed, turned, hasBack: block.hasBack ?? true };
  return formsOf([...laid, ...partners], [design], work, sheet);
}

/** Every way of working. */
export const works: fc.Arbitrary<Work> = fc.constantFrom(...WORKS);

/** Blocks of all kinds, from roomy margins to none. */
const blocks: fc.Arbitrary<Block> = fc.record({
  sheet: fc.constant({ w: 0, h: 0 }),
  trim: fc.record({ w: numberFrom(40, 260), h: numberFrom(40, 260) }),
  bleed: fc.constantFrom(0, 3, 9),
  gutter: fc.constantFrom(0, 6, 18, 60),
  across: fc.integer({ min: 1, max: 5 }),
  along: fc.integer({ min: 1, max: 5 }),
  work: works,
  head: fc.constantFrom(...HEADS),
  turned: fc.constantFrom<ReaderTurn[]>('head-to-head', 'head-to-toe'),
  hasBack: fc.boolean(),
  empty: fc.array(fc.integer({ min: 1, max: 24 }), { maxLength: 4 }),
  off: fc.record({ x: numberFrom(-20, 20), y: numberFrom(-20, 20) }),
});

const unprintables: fc.Arbitrary<SheetEdges> = fc.record({
  lead: numberFrom(0, 20),
  tail: numberFrom(0, 20),
  left: numberFrom(0, 20),
  right: numberFrom(0, 20),
});

/** A measure that is near enough to a real face. */
export const measure = (words: string): number => 0.6 * [...words].length;

/** What is handed in for marking, all forms of a random job with margins of 40 to 140 pt around its block. */
export const markedJobs: fc.Arbitrary<readonly MarksInput[]> = fc
  .tuple(blocks, unprintables, numberFrom(40, 140), numberFrom(40, 140), fc.string({ maxLength: 120 }))
  .map(([drawn, unprintable, marginX, marginY, job]) => {
    const size = lying(drawn.trim, drawn.head ?? 0);
    const even = (n: number, folds: boolean) => (folds ? n + (n % 2) : n);
    const turn = hasOneForm(drawn.work) ? turnOf(drawn.work) : undefined;
    const across = even(drawn.across, turn === 'side-to-side');
    const along = even(drawn.along, turn === 'end-to-end');
    const sheet = {
      w: across * size.w + (across - 1) * drawn.gutter + 2 * marginX,
      h: along * size.h + (along - 1) * drawn.gutter + 2 * marginY,
    };
    const forms = formsOfBlock({ ...drawn, sheet, across, along });
    const slug = { job, sheets: 33, date: '2026-03-01' };
    return forms.map((form) => ({ sheet, unprintable, work: drawn.work, forms, form, slug, measure }));
  });
