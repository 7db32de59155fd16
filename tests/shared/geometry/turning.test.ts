// The laws of turning, proved by turning paper in space and reading the pieces that come out.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, lying, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import { behind, formsOf } from '../../../shared/layout/forms.ts';
import { partnerOf } from '../../../shared/layout/partner.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { numberFrom } from '../../kit/anyNumber.ts';
import { cutOut, hold, type Printed, print, turned, unturned } from '../../kit/paper.ts';

const turns = fc.constantFrom<Turn>('side-to-side', 'end-to-end');
const readerTurns = fc.constantFrom<ReaderTurn>('head-to-head', 'head-to-toe');
const heads = fc.constantFrom(...HEADS);
const lengths = numberFrom(20, 300);
const sheets = fc.record({
  w: numberFrom(700, 2000),
  h: numberFrom(700, 2000),
});

/** A piece somewhere on a sheet, lying any way. */
const laid = fc
  .record({
    sheet: sheets,
    w: lengths,
    h: lengths,
    head: heads,
    across: numberFrom(0, 1),
    along: numberFrom(0, 1),
  })
  .map(({ sheet, w, h, head, across, along }) => {
    const room = lying({ w, h }, head);
    const trim = { x: across * (sheet.w - room.w), y: along * (sheet.h - room.h), ...room };
    const position: Position = { piece: 'Menu', face: 'front', trim, head };
    return { sheet, position };
  });

const design = (turnedBy: ReaderTurn) => ({ name: 'Menu', bleed: 9, turned: turnedBy, hasBack: true });
const asPrinted = (p: {
  piece: string;
  face: string;
  trim: Position['trim'] | { x: number; y: number; w: number; h: number };
  head: number;
}): Printed => ({
  art: `${p.piece} ${p.face}`,
  trim: p.trim,
  head: p.head,
});

const reads = (face: string) => ({
  [`Menu ${face} head`]: 'up',
  [`Menu ${face} foot`]: 'down',
  [`Menu ${face} left`]: 'left',
});

describe('two forms', () => {
  it('puts every back behind its own front, the right way up and unmirrored, whatever the turn and the lie', () => {
    fc.assert(
      fc.property(laid, turns, readerTurns, ({ sheet, position }, turn, readerTurn) => {
        const [first, second] = formsOf(
          [position],
          [design(readerTurn)],
          { style: 'work-and-back', turn },
          sheet,
        );
        const ink = [
          ...print(first!.placements.map(asPrinted), unturned),
          ...print(second!.placements.map(asPrinted), turned(turn, sheet.w, sheet.h)),
        ];
        const held = hold(cutOut(ink, position.trim), position.head);
        expect(held.front).toEqual(reads('front'));
        expect(readerTurn === 'head-to-head' ? held.turnedLikeAPage : held.turnedLikeACalendar).toEqual(
          reads('back'),
        );
      }),
    );
  });

  it('turns the head the other way on the back of a card lying on its side that is turned side to side', () => {
    // Common practice, no source.
    const position: Position = {
      piece: 'Menu',
      face: 'front',
      trim: { x: 90, y: 90, w: 504, h: 360 },
      head: 90,
    };
    expect(behind(position, 'head-to-head', 'side-to-side', { w: 1224, h: 792 })).toEqual({
      piece: 'Menu',
      face: 'back',
      trim: { x: 630, y: 90, w: 504, h: 360 },
      head: 270,
    });
  });

  it('leaves the place behind a piece without a back blank', () => {
    const bare = { ...design('head-to-head'), hasBack: false };
    const trim = { x: 90, y: 90, w: 360, h: 504 };
    const laid: Position[] = [
      { piece: 'Menu', face: 'front', trim, head: 0 },
      { piece: 'Tag', face: 'front', trim: { ...trim, y: 650 }, head: 0 },
    ];
    const designs = [bare, { ...design('head-to-head'), name: 'Tag' }];
    const work = { style: 'perfecting', turn: 'end-to-end' } as const;
    const forms = formsOf(laid, designs, work, { w: 792, h: 1224 });
    expect(forms.map((f) => [f.number, f.sides, f.placements.map((p) => `${p.piece} ${p.face}`)])).toEqual([
      [1, [1], ['Menu front', 'Tag front']],
      [2, [2], ['Tag back']],
    ]);
    expect(formsOf(laid, [bare, { ...bare, name: 'Tag' }], work, { w: 792, h: 1224 })).toHaveLength(1);
  });

  it('prints no bleed of a neighbour onto a place that stays blank', () => {
    const bare = { ...design('head-to-head'), hasBack: false };
    const trim = { x: 90, y: 90, w: 360, h: 504 };
    const laid: Position[] = [
      { piece: 'Menu', face: 'front', trim, head: 0 },
      { piece: 'Tag', face: 'front', trim: { ...trim, y: 598 }, head: 0 },
    ];
    const designs = [bare, { ...design('head-to-head'), name: 'Tag' }];
    const forms = formsOf(
      laid,
      designs,
      { style: 'work-and-back', turn: 'side-to-side' },
      { w: 792, h: 1224 },
    );
    expect(forms[1]?.placements.map((p) => p.bleed)).toEqual([[{ x: 333, y: 596, w: 378, h: 515 }]]);
  });

  it('prints one form on one side in simplex', () => {
    const position: Position = {
      piece: 'Menu',
      face: 'front',
      trim: { x: 90, y: 90, w: 360, h: 504 },
      head: 0,
    };
    const forms = formsOf([position], [design('head-to-head')], { style: 'simplex' }, { w: 792, h: 1224 });
    expect(forms.map((f) => [f.number, f.sides, f.placements.length])).toEqual([[1, [1], 1]]);
  });

  it('does not print pieces that the job does not have', () => {
    const position: Position = {
      piece: 'Ghost',
      face: 'front',
      trim: { x: 90, y: 90, w: 360, h: 504 },
      head: 0,
    };
    expect(() =>
      formsOf([position], [design('head-to-head')], { style: 'simplex' }, { w: 792, h: 1224 }),
    ).toThrow('No design is called "Ghost"');
  });
});

describe('one form', () => {
  const oneForm = fc.constantFrom<'work-and-turn' | 'work-and-tumble'>('work-and-turn', 'work-and-tumble');

  it('serves both sides: with each partner as its mirror, every piece on either half reads right', () => {
    fc.assert(
      fc.property(laid, oneForm, readerTurns, ({ sheet, position }, style, readerTurn) => {
        const turn = style === 'work-and-turn' ? 'side-to-side' : 'end-to-end';
        const partner = partnerOf(position, readerTurn, turn, sheet);
        // A piece across the axis would have to be its own partner.
        const apart =
          turn === 'side-to-side'
            ? Math.abs(position.trim.x - partner.trim.x) >= position.trim.w
            : Math.abs(position.trim.y - partner.trim.y) >= position.trim.h;
        fc.pre(apart);
        const forms = formsOf([position, partner], [design(readerTurn)], { style }, sheet);
        expect(forms).toHaveLength(1);
        expect(forms[0]!.sides).toEqual([1, 2]);
        const faces = forms[0]!.placements.map(asPrinted);
        const ink = [...print(faces, unturned), ...print(faces, turned(turn, sheet.w, sheet.h))];
        for (const p of [position, partner]) {
          const held = hold(cutOut(ink, p.trim), p.head);
          const other = p.face === 'front' ? 'back' : 'front';
          expect(held.front).toEqual(reads(p.face));
          expect(readerTurn === 'head-to-head' ? held.turnedLikeAPage : held.turnedLikeACalendar).toEqual(
            reads(other),
          );
        }
      }),
    );
  });
});

it('comes back to where it was when the sheet is turned twice', () => {
  fc.assert(
    fc.property(laid, turns, readerTurns, ({ sheet, position }, turn, readerTurn) => {
      const twice = partnerOf(partnerOf(position, readerTurn, turn, sheet), readerTurn, turn, sheet);
      expect(twice.head).toBe(position.head);
      expect(twice.face).toBe(position.face);
      expect(twice.trim.x).toBeCloseTo(position.trim.x, 8);
      expect(twice.trim.y).toBeCloseTo(position.trim.y, 8);
    }),
  );
});
