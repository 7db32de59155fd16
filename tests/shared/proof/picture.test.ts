import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, headOf } from '../../../shared/geometry/head.ts';
import { cutMargin, flipPicture, type Picture, turnPicture } from '../../../shared/proof/picture.ts';
import { type Colour, pictureOfLetters } from '../../kit/painted.ts';

const LETTERS: Readonly<Record<string, Colour>> = Object.fromEntries(
  [...'abcdefghijklmnopqrstuvwxyz'].map((letter, i) => [letter, [i, 100 + i, 200 + i] as const]),
);

const picture = (...rows: readonly string[]) => pictureOfLetters(rows, LETTERS);

const anyPicture = fc
  .record({ width: fc.integer({ min: 1, max: 7 }), height: fc.integer({ min: 1, max: 7 }) })
  .map(({ width, height }): Picture => {
    const pixels = Uint8Array.from({ length: width * height * 3 }, (_, i) => (i * 37) % 256);
    return { width, height, pixels };
  });

describe('A picture', () => {
  it('turned counter-clockwise has its right edge on top', () => {
    expect(turnPicture(picture('abc', 'def'), 90)).toEqual(picture('cf', 'be', 'ad'));
  });

  it('turned half round has its lower right corner at the upper left', () => {
    expect(turnPicture(picture('abc', 'def'), 180)).toEqual(picture('fed', 'cba'));
  });

  it('turned three quarters has its left edge on top', () => {
    expect(turnPicture(picture('abc', 'def'), 270)).toEqual(picture('da', 'eb', 'fc'));
  });

  it('not turned is itself', () => {
    expect(turnPicture(picture('abc', 'def'), 0)).toEqual(picture('abc', 'def'));
  });

  it('in a mirror has left and right exchanged', () => {
    expect(flipPicture(picture('abc', 'def'), 'left-right')).toEqual(picture('cba', 'fed'));
  });

  it('in water has top and bottom exchanged', () => {
    expect(flipPicture(picture('abc', 'def'), 'top-bottom')).toEqual(picture('def', 'abc'));
  });

  it('without its margin is what lies inside', () => {
    expect(cutMargin(picture('abcde', 'fghij', 'klmno', 'pqrst'), 1)).toEqual(picture('ghi', 'lmn'));
    expect(cutMargin(picture('abc', 'def'), 0)).toEqual(picture('abc', 'def'));
  });

  it('comes back when what was done is undone', () => {
    fc.assert(
      fc.property(anyPicture, fc.constantFrom(...HEADS), (any, head) => {
        expect(turnPicture(turnPicture(any, head), headOf(-head))).toEqual(any);
        expect(flipPicture(flipPicture(any, 'left-right'), 'left-right')).toEqual(any);
        expect(flipPicture(flipPicture(any, 'top-bottom'), 'top-bottom')).toEqual(any);
      }),
    );
  });

  it('flipped both ways is turned half round', () => {
    fc.assert(
      fc.property(anyPicture, (any) => {
        expect(flipPicture(flipPicture(any, 'left-right'), 'top-bottom')).toEqual(turnPicture(any, 180));
      }),
    );
  });
});
