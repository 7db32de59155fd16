import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { backUp, countFaults } from '../../../shared/bench/backUp.ts';
import { HEADS, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { Work } from '../../../shared/geometry/work.ts';
import type { Design } from '../../../shared/layout/forms.ts';
import { partnerOf } from '../../../shared/layout/partner.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { cutOut, hold, print, turned, unturned } from '../../kit/paper.ts';

const size = { w: 792, h: 1224 };
const unprintable = { lead: 0, tail: 0, left: 0, right: 0 };
const sheetOf = (work: Work) => ({ size, unprintable, work });
const card: Design = { name: 'Supper', bleed: 9, turned: 'head-to-head', hasBack: true };
const tag: Design = { ...card, name: 'Tag' };
const front = (x: number, y: number, rest: Partial<Position> = {}): Position => ({
  piece: 'Supper',
  face: 'front',
  trim: { x, y, w: 360, h: 504 },
  head: 0,
  ...rest,
});
const workAndTurn = sheetOf({ style: 'work-and-turn' });
const twoForms = sheetOf({ style: 'work-and-back', turn: 'side-to-side' });

const messages = (
  arrangement: readonly Position[],
  sheet = workAndTurn,
  taken: Turn = 'side-to-side',
  designs: readonly Design[] = [card, tag],
) => backUp(arrangement, designs, sheet, taken, 'in').map((b) => b.message);

describe('what lies behind each piece', () => {
  it('is its own back, the right way up, when a sheet of two forms is turned as it was laid out', () => {
    const backed = backUp(
      [front(27, 600), front(405, 600, { head: 180 })],
      [card],
      twoForms,
      'side-to-side',
      'in',
    );
    expect(backed.map((b) => [b.position, b.fault, b.message])).toEqual([
      [0, undefined, ''],
      [1, undefined, ''],
    ]);
    expect(backed[0]?.trim).toEqual({ x: 405, y: 600, w: 360, h: 504 });
    expect(backed[0]?.printed?.face).toBe('back');
    expect(countFaults(backed)).toEqual([]);
  });

  it('is nothing where one form does not fall on itself', () => {
    expect(messages([front(27, 600)])).toEqual([
      'Position 1 ("Supper", front) has nothing printed behind it.',
    ]);
  });

  it('is told when it is another piece or the same face', () => {
    expect(messages([front(27, 600), front(405, 600)])).toEqual([
      'Position 1 ("Supper", front) has the front of "Supper" behind it.',
      'Position 2 ("Supper", front) has the front of "Supper" behind it.',
    ]);
    expect(messages([front(27, 600), front(405, 600, { piece: 'Tag', face: 'back' })])[0]).toBe(
      'Position 1 ("Supper", front) has the back of "Tag" behind it.',
    );
  });

  it('is told when it is upside down or on its side', () => {
    expect(messages([front(27, 600), front(405, 600, { face: 'back', head: 180 })])).toEqual([
      'Position 1 ("Supper", front) has the back of "Supper" behind it upside down.',
      'Position 2 ("Supper", back) has the front of "Supper" behind it upside down.',
    ]);
    expect(messages([front(27, 600), front(405, 600, { face: 'back', head: 90 })])[0]).toBe(
      'Position 1 ("Supper", front) has the back of "Supper" behind it lying on its side.',
    );
  });

  it('is told when it is out of place, and by how much', () => {
    expect(messages([front(27, 600), front(414, 582, { face: 'back' })])[0]).toBe(
      'Position 1 ("Supper", front) has the back of "Supper" behind it, off by 0.125 in across the feed and 0.25 in along the feed.',
    );
    expect(messages([front(27, 600), front(405, 582, { face: 'back' })])[0]).toMatch(
      /off by 0\.25 in along the feed\.$/,
    );
    expect(messages([front(27, 600), front(405.01, 600, { face: 'back' })])).toEqual(['', '']);
  });

  it('is rightly blank behind a piece without a back, and told when it is not', () => {
    const leaflet = { ...card, hasBack: false };
    expect(messages([front(27, 600)], twoForms, 'side-to-side', [leaflet])).toEqual(['']);
    expect(messages([front(27, 600), front(405, 600)], workAndTurn, 'side-to-side', [leaflet])[0]).toBe(
      'Position 1 ("Supper", front) should be blank behind, but has the front of "Supper" there.',
    );
  });

  it('is upside down on every piece when a two-sided sheet is turned the wrong way', () => {
    const backed = backUp([front(216, 360)], [card], twoForms, 'end-to-end', 'in');
    expect(backed[0]?.fault).toBe('upside-down');
    const four = [front(27, 100), front(405, 100), front(27, 620), front(405, 620)];
    expect(countFaults(backUp(four, [card], twoForms, 'end-to-end', 'in'))).toEqual([
      '4 of 4 pieces with the back upside down',
    ]);
  });

  it('counts each kind of fault on its own', () => {
    const mixed = [front(27, 600), front(405, 600, { face: 'back', head: 180 }), front(27, 0)];
    expect(countFaults(backUp(mixed, [card], workAndTurn, 'side-to-side', 'in'))).toEqual([
      '1 of 3 pieces with nothing printed behind',
      '2 of 3 pieces with the back upside down',
    ]);
  });

  it('agrees with paper that is printed, turned either way, printed again and cut', () => {
    const arb = fc.record({
      x: fc.integer({ min: 0, max: 432 }),
      y: fc.integer({ min: 0, max: 720 }),
      head: fc.constantFrom(...HEADS),
      reader: fc.constantFrom<ReaderTurn>('head-to-head', 'head-to-toe'),
      laid: fc.constantFrom<Turn>('side-to-side', 'end-to-end'),
      taken: fc.constantFrom<Turn>('side-to-side', 'end-to-end'),
    });
    fc.assert(
      fc.property(arb, ({ head, reader, laid, taken }) => {
        // In the middle of the sheet the wrong turn leaves a piece in its place, so that its head can be read.
        const lies = head === 90 || head === 270 ? { w: 504, h: 360 } : { w: 360, h: 504 };
        const trim = { x: (792 - lies.w) / 2, y: (1224 - lies.h) / 2, ...lies };
        const position: Position = { piece: 'Supper', face: 'front', trim, head };
        const design = { ...card, turned: reader };
        const sheet = sheetOf({ style: 'work-and-back', turn: laid });
        const [backed] = backUp([position], [design], sheet, taken, 'in');
        const back = partnerOf(position, reader, laid, size);
        const ink = [
          ...print([{ art: 'front', trim, head }], unturned),
          ...print([{ art: 'back', trim: back.trim, head: back.head }], turned(taken, size.w, size.h)),
        ];
        const inHand = hold(cutOut(ink, trim), head);
        const seen = reader === 'head-to-head' ? inHand.turnedLikeAPage : inHand.turnedLikeACalendar;
        const expected = { up: undefined, down: 'upside-down', left: 'on-its-side', right: 'on-its-side' };
        expect(backed?.fault).toBe(expected[seen['back head']!]);
      }),
    );
  });
});
