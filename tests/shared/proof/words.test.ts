import { describe, expect, it } from 'vitest';
import { checkSide, sameSize } from '../../../shared/proof/checkSide.ts';
import type { FaceFault, Recognised } from '../../../shared/proof/finding.ts';
import { findingOf } from '../../../shared/proof/words.ts';

const AT = { position: 3, side: 2, piece: 'Supper', face: 'back' } as const;
const AS_IT_SHOULD: Recognised = { piece: 'Supper', face: 'back', turned: 0, mirrored: false };

function said(fault: FaceFault, recognised: Partial<Recognised> | 'nothing' = {}): string {
  const seen = recognised === 'nothing' ? undefined : { ...AS_IT_SHOULD, ...recognised };
  const finding = findingOf(AT, fault, seen);
  expect(finding).toMatchObject({ ...AT, ...fault });
  expect(finding.message.startsWith('Position 3, side 2: ')).toBe(true);
  return finding.message.slice('Position 3, side 2: '.length);
}

describe('A finding is said in one sentence', () => {
  it('when a face lies the wrong way round', () => {
    expect(said({ kind: 'upside-down' }, { turned: 180 })).toBe('the back of "Supper" is upside down.');
    expect(said({ kind: 'quarter-turned' }, { turned: 90 })).toBe(
      'the back of "Supper" lies a quarter turn to the left.',
    );
    expect(said({ kind: 'quarter-turned' }, { turned: 270 })).toBe(
      'the back of "Supper" lies a quarter turn to the right.',
    );
  });

  it('when a face is mirrored', () => {
    const mirrored = { kind: 'mirrored' } as const;
    expect(said(mirrored)).toBe('the back of "Supper" is mirrored left to right.');
    expect(said(mirrored, { turned: 180 })).toBe('the back of "Supper" is mirrored top to bottom.');
    expect(said(mirrored, { turned: 90 })).toBe('the back of "Supper" is mirrored and turned a quarter.');
    expect(said(mirrored, { turned: 270 })).toBe('the back of "Supper" is mirrored and turned a quarter.');
  });

  it('when another face or another piece is there', () => {
    expect(said({ kind: 'wrong-face' }, { face: 'front' })).toBe(
      'the front of "Supper" is printed where the back of "Supper" should be.',
    );
    expect(said({ kind: 'wrong-piece' }, { piece: 'Dance', turned: 180 })).toBe(
      'the back of "Dance", upside down, is printed where the back of "Supper" should be.',
    );
    expect(said({ kind: 'wrong-piece' }, { piece: 'Dance', turned: 90 })).toBe(
      'the back of "Dance", turned a quarter, is printed where the back of "Supper" should be.',
    );
    expect(said({ kind: 'wrong-piece' }, { piece: 'Dance', turned: 90, mirrored: true })).toBe(
      'the back of "Dance", mirrored, is printed where the back of "Supper" should be.',
    );
  });

  it('when nothing is there, or something that should not be', () => {
    expect(said({ kind: 'nothing-printed' }, 'nothing')).toBe(
      'nothing is printed where the back of "Supper" should be.',
    );
    expect(said({ kind: 'unexpected-print' }, 'nothing')).toBe(
      'something is printed where "Supper" has no back and the paper should be blank.',
    );
  });

  it('when a face is off its place', () => {
    const off = (right: number, lead: number) => said({ kind: 'off-place', measured: { right, lead } });
    expect(off(0.6, 0)).toBe('the back of "Supper" is printed 0.6 mm too far to the right.');
    expect(off(-0.31, 0.04)).toBe('the back of "Supper" is printed 0.31 mm too far to the left.');
    expect(off(0, 1)).toBe('the back of "Supper" is printed 1 mm too far towards the lead edge.');
    expect(off(0.05, -2.25)).toBe(
      'the back of "Supper" is printed 0.05 mm too far to the right and 2.25 mm too far towards the tail.',
    );
  });

  it('when a face is out of scale or askew', () => {
    expect(said({ kind: 'wrong-scale', measured: { across: 98.04, up: 97.96 } })).toBe(
      'the back of "Supper" is printed at 98.0 % of its width and 98.0 % of its height.',
    );
    expect(said({ kind: 'askew', measured: { degrees: -0.5 } })).toBe(
      'the back of "Supper" is printed askew by 0.50 degrees.',
    );
  });

  it('when the art is not what is printed', () => {
    const differs = (share: number): FaceFault => ({ kind: 'art-differs', measured: { share } });
    expect(said(differs(0.127))).toBe(
      'the back of "Supper" differs from its art file in 12.7 % of its area.',
    );
    expect(said(differs(0.001))).toBe('the back of "Supper" differs from its art file in 0.1 % of its area.');
    expect(said(differs(0.0009))).toBe(
      'the back of "Supper" differs from its art file in less than 0.1 % of its area.',
    );
    expect(said(differs(0.5), 'nothing')).toBe(
      'what is printed there matches neither the back of "Supper" nor anything else of this job.',
    );
  });

  it('when the bleed does not reach', () => {
    expect(said({ kind: 'bleed-short', measured: { edge: 'lead', reaches: 1.18, wanted: 3.18 } })).toBe(
      'the bleed of the back of "Supper" does not reach on the lead edge (1.2 of 3.2 mm).',
    );
  });
});

describe('A side as a whole', () => {
  const sheet = { w: 792, h: 1224 };

  it('is right when its page is the sheet and all of it is shown', () => {
    expect(checkSide(1, { page: sheet, shown: sheet, pages: 2 }, sheet, 2)).toEqual([]);
    expect(checkSide(1, { page: sheet, shown: sheet, pages: 2 }, sheet, undefined)).toEqual([]);
    expect(sameSize({ w: 792.009, h: 1223.991 }, sheet)).toBe(true);
  });

  it('whose page is another size is said with both sizes', () => {
    const page = { w: 792, h: 1225 };
    expect(checkSide(2, { page, shown: page, pages: 1 }, sheet, 1)).toEqual([
      {
        kind: 'sheet-size',
        side: 2,
        message:
          'Side 2: the page is 279.4 × 432.15 mm (11 × 17.014 in), the sheet 279.4 × 431.8 mm (11 × 17 in). Its positions were not compared.',
        measured: { page, sheet },
      },
    ]);
    expect(sameSize({ w: 791, h: 1224 }, sheet)).toBe(false);
    expect(sameSize({ w: 1224, h: 792 }, sheet)).toBe(false);
  });

  it('of which only a part is shown is said to be cropped', () => {
    const shown = { w: 720, h: 1152 };
    expect(checkSide(1, { page: sheet, shown, pages: 1 }, sheet, 1)).toEqual([
      {
        kind: 'sheet-cropped',
        side: 1,
        message:
          'Side 1: only 254 × 406.4 mm (10 × 16 in) of the page of 279.4 × 431.8 mm (11 × 17 in) are shown, because it is cropped.',
        measured: { shown, page: sheet },
      },
    ]);
  });

  it('whose file has too many pages is said', () => {
    expect(checkSide(1, { page: sheet, shown: sheet, pages: 3 }, sheet, 2)).toEqual([
      {
        kind: 'page-count',
        side: 1,
        message: 'Side 1: the file has 3 pages where it should have 2.',
        measured: { pages: 3, wanted: 2 },
      },
    ]);
  });
});
