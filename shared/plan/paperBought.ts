// The paper that a run takes: how much of it is bought and what that costs.
import type { Price, StockForm } from '../library/library.ts';
import { SHEETS_PER_REAM } from '../library/paperWeight.ts';
import { points } from '../units/length.ts';
import type { SheetSource } from './candidate.ts';
import { metres, sizeInPoints, squareMetres } from './measures.ts';

/** Sheets, parent sheets, or metres of a roll, for so many sheets to be printed. */
export function boughtFor(source: SheetSource, sheets: number): number {
  switch (source.is) {
    case 'sheet':
      return sheets;
    case 'parent':
      return Math.ceil(sheets / source.out);
    case 'roll':
      return sheets * source.metres;
  }
}

/** The area of one sheet, one parent sheet, or one metre of a roll, in m2. */
export function areaBought(form: StockForm): number {
  return form.is === 'roll' ? metres(points(form.width)) : squareMetres(sizeInPoints(form.size));
}

/** What one sheet, one parent sheet, or one metre of a roll costs, not rounded. */
export function pricePer(form: StockForm, grammage: number): number {
  const { amount, per }: Price = form.price;
  switch (per) {
    case 'sheet':
    case 'metre':
      return amount;
    case 'ream':
      return amount / SHEETS_PER_REAM;
    case 'kg':
      return (amount * grammage * areaBought(form)) / 1000;
  }
}
