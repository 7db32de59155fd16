import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { paperError, registerEdges } from '../../../shared/geometry/register.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

/** Where a dot ends up on paper of `real` length, from the paper's own first edge, when the printer expects `nominal`. */
function layDot(
  dot: number,
  nominal: number,
  real: number,
  guide: 'low' | 'high' | 'centre',
  turnedOver: boolean,
): number {
  const gap = { low: 0, high: nominal - real, centre: (nominal - real) / 2 }[guide];
  const fromEdge = dot - gap;
  return turnedOver ? real - fromEdge : fromEdge;
}

describe('what an error in the size of the paper does', () => {
  const cases = [
    { turn: 'side-to-side', hold: { across: 'left', along: 'lead' }, guide: 'low' },
    { turn: 'side-to-side', hold: { across: 'right', along: 'lead' }, guide: 'high' },
    { turn: 'side-to-side', hold: { across: 'centre', along: 'lead' }, guide: 'centre' },
    { turn: 'end-to-end', hold: { across: 'left', along: 'lead' }, guide: 'high' },
    { turn: 'end-to-end', hold: { across: 'left', along: 'centre' }, guide: 'centre' },
  ] as const;

  for (const { turn, hold, guide } of cases) {
    it(`agrees with laying and turning a wrong sheet: ${turn}, ${guide === 'centre' ? 'centred' : `laid to an edge (${guide})`}`, () => {
      const lengths = numberFrom(200, 3000);
      fc.assert(
        fc.property(lengths, numberFrom(-9, 9), numberFrom(0, 1), (nominal, wrong, where) => {
          const real = nominal + wrong;
          const dot = where * nominal;
          const front = layDot(dot, nominal, real, guide, false);
          const back = layDot(nominal - dot, nominal, real, guide, true);
          const said = paperError(turn, hold);
          expect(Math.abs(back - front)).toBeCloseTo(said.betweenSides * Math.abs(wrong), 6);
          const fromLow = Math.abs(front - dot);
          const fromHigh = Math.abs(real - front - (nominal - dot));
          expect(Math.max(fromLow, fromHigh)).toBeCloseTo(said.toEdge * Math.abs(wrong), 6);
        }),
      );
    });
  }

  it('names the edges that lie at the guide in each pass', () => {
    expect(paperError('side-to-side', { across: 'left', along: 'lead' }).laidTo).toEqual(['left', 'right']);
    expect(paperError('side-to-side', { across: 'right', along: 'lead' }).laidTo).toEqual(['right', 'left']);
    expect(paperError('end-to-end', { across: 'right', along: 'lead' }).laidTo).toEqual(['lead', 'tail']);
    expect(paperError('end-to-end', { across: 'left', along: 'centre' }).laidTo).toBeUndefined();
  });

  it('says it in plain words', () => {
    expect(paperError('side-to-side', { across: 'left', along: 'lead' })).toMatchObject({
      dimension: 'width',
      words:
        "Pass 1 lays the sheet to its left edge, pass 2 to its right edge: the whole of an error in the sheet's width goes between front and back. Trim both of these edges square and to one size before printing.",
    });
    expect(paperError('end-to-end', { across: 'centre', along: 'centre' })).toMatchObject({
      dimension: 'length',
      words:
        'The printer centres the sheet, so an error in its length does not part front and back; half of it goes into each margin.',
    });
  });
});

it('asks for equal margins on the sides when turned side to side, on lead and tail when turned end to end', () => {
  // Common practice, no source.
  expect(registerEdges('side-to-side')).toEqual(['left', 'right']);
  expect(registerEdges('end-to-end')).toEqual(['lead', 'tail']);
});
