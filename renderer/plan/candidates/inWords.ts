// What a candidate is, in words.
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { sizeInPoints } from '../../../shared/plan/measures.ts';
import type { Length } from '../../../shared/units/length.ts';
import { showNumber, showSize } from '../../../shared/units/show.ts';

/** `Smooth white 300 g/m2, 11 x 17 in, cut from a parent sheet`. */
export function paperOf({ paper, sheet, source }: Pick<PlanCandidate, 'paper' | 'sheet' | 'source'>): string {
  const from = { sheet: '', parent: ', cut from a parent sheet', roll: ', cut from a roll' }[source.is];
  return `${paper.name}, ${sizeInWords(sheet)}${from}`;
}

/** What is bought for a run. */
export function boughtInWords({ source, count }: Pick<PlanCandidate, 'source' | 'count'>): string {
  switch (source.is) {
    case 'sheet':
      return `${count.bought} sheets`;
    case 'parent':
      return `${count.bought} parent sheets of ${sizeInWords(source.form.size)}, ${source.out} out of each`;
    case 'roll':
      return `${showNumber(count.bought, 2)} m of the roll, ${showNumber(source.metres, 3)} m for each sheet`;
  }
}

/** `47: 40 needed, 3 overs, 4 for setting up`. */
export function sheetsInWords({ needed, overs, makeReady, sheets }: PlanCandidate['count']): string {
  return `${sheets}: ${needed} needed, ${overs} overs, ${makeReady} for setting up`;
}

/** In the unit that it was typed in. */
export function sizeInWords(size: readonly [Length, Length]): string {
  return showSize(sizeInPoints(size), size[0].unit);
}
