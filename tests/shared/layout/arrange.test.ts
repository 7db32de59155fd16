// Laying out, checked against facts of the trade, an independent simulation of paper, and published optima.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grow, holds, overlap } from '../../../shared/geometry/rect.ts';
import { usableArea } from '../../../shared/geometry/sheet.ts';
import { hasOneForm, turnOf } from '../../../shared/geometry/work.ts';
import { type ArrangeInput, arrange } from '../../../shared/layout/arrange.ts';
import { checkArrangement } from '../../../shared/layout/check.ts';
import { formsOf } from '../../../shared/layout/forms.ts';
import type { Lies } from '../../../shared/layout/lies.ts';
import { arrangeInputs } from '../../kit/arrangeInputs.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { cutOut, hold, print, turned, unturned } from '../../kit/paper.ts';
import published from '../../reference/cutting/identical_rectangles.json' with { type: 'json' };

const INCH = 72;

const supper: ArrangeInput = {
  sheet: { w: 11 * INCH, h: 17 * INCH },
  unprintable: { lead: 0.2 * INCH, tail: 0.3 * INCH, left: 0.125 * INCH, right: 0.125 * INCH },
  work: { style: 'work-and-turn' },
  gutter: 0.25 * INCH,
  centring: { across: 'centre', along: 'centre' },
  unit: 'in',
  designs: [
    {
      name: 'Supper',
      trim: { w: 5 * INCH, h: 7 * INCH },
      bleed: 0.125 * INCH,
      lies: 'either',
      quantity: 120,
      turned: 'head-to-head',
      hasBack: true,
    },
  ],
};

function lay(input: ArrangeInput) {
  const laid = arrange(input);
  if (!laid.ok) throw new Error(laid.fault.message);
  return laid.value;
}

function refusal(input: ArrangeInput) {
  const laid = arrange(input);
  if (laid.ok) throw new Error('It was laid out');
  return laid.fault;
}

const withPiece = (changes: object): ArrangeInput => ({
  ...supper,
  designs: [{ ...supper.designs[0]!, ...changes }],
});

describe('the 5 x 7 in card, work-and-turn on 11 x 17 in', () => {
  it('is four up: two fronts on the left and two backs on the right', () => {
    const { positions } = lay(supper);
    // Common practice, no source: two fronts and two backs on 11 x 17 for one set-up.
    expect(positions.map((p) => [p.face, p.head])).toEqual([
      ['front', 0],
      ['back', 0],
      ['front', 0],
      ['back', 0],
    ]);
  });

  it('has equal side margins, and its bleeds take 5.25 x 7.25 in a card', () => {
    const { positions } = lay(supper);
    const xs = positions.map((p) => p.trim.x);
    expect(xs).toEqual([27, 405, 27, 405]);
    expect(792 - (405 + 360)).toBe(27);
    expect(grow(positions[0]!.trim, 9)).toMatchObject({ w: 5.25 * INCH, h: 7.25 * INCH });
    expect(positions.map((p) => p.trim.y)).toEqual([621, 621, 99, 99]);
  });
});

describe('cards lying on their side', () => {
  it('have the heads of their backs the other way when turned side to side', () => {
    // Common practice, no source.
    const { positions } = lay({ ...supper, sheet: { w: 17 * INCH, h: 11 * INCH } });
    expect(positions.map((p) => [p.face, p.head])).toEqual([
      ['front', 90],
      ['back', 270],
      ['front', 90],
      ['back', 270],
    ]);
  });
});

describe('the lie of a piece', () => {
  it.each<[Lies, number, number]>([
    ['upright', 4, 0],
    ['on-its-side', 3, 90],
    ['either', 4, 0],
  ])('is kept: %s', (lies, up, head) => {
    const { positions } = lay({
      ...withPiece({ lies }),
      work: { style: 'work-and-back', turn: 'side-to-side' },
    });
    expect(positions).toHaveLength(up);
    expect(positions.every((p) => p.head === head && p.face === 'front')).toBe(true);
  });
});

describe('where the block lies', () => {
  it('is as asked where no edge has to register', () => {
    const input: ArrangeInput = { ...supper, work: { style: 'work-and-back', turn: 'side-to-side' } };
    const lead = lay({ ...input, centring: { across: 'centre', along: 'lead' } }).positions;
    expect(lead[0]!.trim.y + lead[0]!.trim.h).toBeCloseTo(1224 - 14.4 - 9, 6);
    const left = lay({ ...input, centring: { across: 'left', along: 'tail' } }).positions;
    expect(left[0]!.trim.x).toBeCloseTo(18, 6);
    expect(left.at(-1)!.trim.y).toBeCloseTo(21.6 + 9, 6);
  });
});

describe('several designs on one sheet', () => {
  it('shares the places by the quantities, and each sheet holds every design', () => {
    const designs = [90, 30].map((quantity, i) => ({ ...supper.designs[0]!, name: `Card ${i}`, quantity }));
    const { positions } = lay({ ...supper, work: { style: 'work-and-back', turn: 'side-to-side' }, designs });
    const up = (name: string) => positions.filter((p) => p.piece === name).length;
    expect([up('Card 0'), up('Card 1')]).toEqual([3, 1]);
  });

  it('lays pieces of different sizes beside each other', () => {
    const designs = [
      { ...supper.designs[0]!, quantity: 20 },
      { ...supper.designs[0]!, name: 'Tag', trim: { w: 144, h: 252 }, quantity: 40 },
    ];
    const { positions } = lay({ ...supper, work: { style: 'simplex' }, sheet: { w: 936, h: 1368 }, designs });
    expect(new Set(positions.map((p) => p.piece))).toEqual(new Set(['Supper', 'Tag']));
    expect(
      checkArrangement(
        positions,
        designs,
        { size: { w: 936, h: 1368 }, unprintable: supper.unprintable, work: { style: 'simplex' } },
        'in',
      ),
    ).toEqual([]);
  });

  it('is refused when they do not all fit', () => {
    const designs = [0, 1, 2, 3, 4].map((i) => ({ ...supper.designs[0]!, name: `Card ${i}` }));
    expect(refusal({ ...supper, work: { style: 'work-and-back', turn: 'side-to-side' }, designs }).code).toBe(
      'pieces-do-not-fit-together',
    );
  });
});

describe('a piece that is too large', () => {
  it('is refused with the room there is, either way', () => {
    expect(
      refusal({ ...withPiece({ trim: { w: 11 * INCH, h: 17 * INCH } }), work: { style: 'simplex' } }),
    ).toEqual({
      code: 'piece-too-large',
      message:
        '"Supper" (11 × 17 in and 0.125 in bleed) does not fit the sheet either way: there is room for a trim of 10.5 × 16.25 in.',
      remedy: 'Take a larger sheet, feed it the other way, or let the piece lie the other way.',
      where: 'sheet',
    });
  });

  it('is refused for one form when it fits the sheet but not a half of it', () => {
    const fault = refusal(withPiece({ trim: { w: 9 * INCH, h: 12 * INCH } }));
    expect(fault.code).toBe('no-room-after-turning');
    expect(fault.message).toContain(
      'there is room for a trim of 5.125 × 16.25 in on one half of it, which work-and-turn needs.',
    );
    expect(fault.remedy).toContain('work-and-back');
    expect(
      arrange({
        ...withPiece({ trim: { w: 9 * INCH, h: 12 * INCH } }),
        work: { style: 'work-and-back', turn: 'end-to-end' },
      }).ok,
    ).toBe(true);
  });

  it('is refused for the lie that was asked for', () => {
    const input = {
      ...withPiece({ trim: { w: 12 * INCH, h: 5 * INCH }, lies: 'upright' }),
      work: { style: 'simplex' } as const,
    };
    expect(refusal(input).message).toContain('does not fit the sheet upright:');
    expect(
      lay({ ...input, designs: [{ ...input.designs[0]!, lies: 'on-its-side' }] }).positions[0]!.head,
    ).toBe(90);
  });

  it('is refused where nothing can be printed at all', () => {
    const bare = { ...supper, unprintable: { lead: 610, tail: 610, left: 9, right: 9 } };
    expect(refusal({ ...bare, designs: [{ ...supper.designs[0]!, bleed: 20 }] })).toMatchObject({
      code: 'no-room-after-turning',
      message:
        'Nothing is left to print on: the border that the printer cannot print and the bleeds fill the 11 × 17 in sheet.',
      remedy: 'Check the sheet size and the unprintable border in the brief.',
      where: 'sheet',
    });
    expect(refusal({ ...supper, unprintable: { lead: 700, tail: 700, left: 9, right: 9 } }).code).toBe(
      'no-room-after-turning',
    );
  });
});

describe('what is said of a layout', () => {
  it('says that a layout which no guillotine can cut would hold more', () => {
    // 4 x 7 in 22 x 30: 22 up by guillotine, 23 otherwise; a classic of the pallet-loading literature.
    const input: ArrangeInput = {
      ...supper,
      sheet: { w: 220, h: 300 },
      unprintable: { lead: 0, tail: 0, left: 0, right: 0 },
      work: { style: 'simplex' },
      gutter: 0,
      designs: [{ ...supper.designs[0]!, trim: { w: 40, h: 70 }, bleed: 0, hasBack: false }],
    };
    const laid = lay(input);
    expect(laid.positions).toHaveLength(22);
    expect(laid.notices).toEqual([
      'A layout that no guillotine can cut would hold 23 up instead of 22; it is not used, because every cut must run from edge to edge.',
    ]);
  });

  it('counts both halves of a one-form sheet when it says so', () => {
    const input: ArrangeInput = {
      ...supper,
      sheet: { w: 440, h: 300 },
      unprintable: { lead: 0, tail: 0, left: 0, right: 0 },
      gutter: 0,
      designs: [{ ...supper.designs[0]!, trim: { w: 40, h: 70 }, bleed: 0 }],
    };
    const { positions, notices } = lay(input);
    expect(positions).toHaveLength(44);
    expect(notices[0]).toContain('would hold 46 up instead of 44;');
  });

  it('says when it is not known whether such a layout would hold more', () => {
    // 8 x 3 in 49 x 28: 56 up by guillotine and by five blocks, 57 by an L-shaped layout (Birgin, Lobato, Morabito).
    const input: ArrangeInput = {
      ...supper,
      sheet: { w: 490, h: 280 },
      unprintable: { lead: 0, tail: 0, left: 0, right: 0 },
      work: { style: 'simplex' },
      gutter: 0,
      designs: [{ ...supper.designs[0]!, trim: { w: 80, h: 30 }, bleed: 0, hasBack: false }],
    };
    const { positions, notices } = lay(input);
    expect(positions).toHaveLength(56);
    expect(notices).toEqual([
      'No more than 56 up can be cut by a guillotine; whether a layout that none can cut would hold more (at most 57) is not known.',
    ]);
    const turned = lay({
      ...input,
      sheet: { w: 980, h: 280 },
      work: { style: 'work-and-turn' },
      designs: [{ ...input.designs[0]!, hasBack: true }],
    });
    expect(turned.notices[0]).toContain(
      'No more than 112 up can be cut by a guillotine; whether a layout that none can cut would hold more (at most 114)',
    );
  });

  it('says that the backs are not printed in simplex', () => {
    expect(lay({ ...supper, work: { style: 'simplex' } }).notices).toContain(
      'simplex prints one side only: the back of "Supper" is not printed.',
    );
    expect(lay(supper).notices).toEqual([]);
  });
});

describe('optima computed by another method', () => {
  // Cases of the trade; the file says how their optima were computed.
  const units = { mm: INCH / 25.4, '1/16 in': INCH / 16, '1/16': INCH / 16 } as const;

  it.each(published.print_cases.map((c) => [c.name, c] as const))('are reached: %s', (_name, one) => {
    const k = units[one.unit as keyof typeof units];
    const [across, along] = one.imageable.map((n) => n * k) as [number, number];
    const [w, h] = one.cell_trim_plus_two_bleeds.map((n) => n * k) as [number, number];
    const { positions } = lay({
      ...supper,
      sheet: { w: across, h: along },
      unprintable: { lead: 0, tail: 0, left: 0, right: 0 },
      work: { style: 'simplex' },
      gutter: 2,
      designs: [{ ...supper.designs[0]!, trim: { w: w - 2, h: h - 2 }, bleed: 1 }],
    });
    expect(positions).toHaveLength(one.guillotine_optimal_mixed);
  });

  it('are halves mirrored in a one-form style: never more than the whole sheet, never fewer than a half twice', () => {
    const whole = lay({ ...supper, work: { style: 'work-and-back', turn: 'side-to-side' } }).positions.length;
    expect(lay(supper).positions.length).toBeLessThanOrEqual(whole);
  });
});

describe('every style, turn, reader and lie', () => {
  const inputs = arrangeInputs({
    sheetFrom: 13,
    mostDesigns: 2,
    centring: fc.constant({ across: 'centre', along: 'centre' } as const),
  });

  it('gives a sheet that prints, cuts and reads right, with nothing over anything else', () => {
    let laidOut = 0;
    fc.assert(
      fc.property(inputs, (input) => {
        const laid = arrange(input);
        if (!laid.ok) return;
        laidOut += 1;
        const { positions } = laid.value;
        const turn = turnOf(input.work);
        const usable = usableArea(input.sheet, input.unprintable, turn)!;
        const findings = checkArrangement(
          positions,
          input.designs,
          { size: input.sheet, unprintable: input.unprintable, work: input.work },
          'in',
        );
        expect(findings.filter((f) => f.kind !== 'bleed-clipped')).toEqual([]);
        positions.forEach((p, i) => {
          const design = input.designs.find((d) => d.name === p.piece)!;
          expect(holds(usable, grow(p.trim, design.bleed))).toBe(true);
          for (const other of positions.slice(i + 1)) {
            expect(overlap(grow(p.trim, input.gutter / 2), grow(other.trim, input.gutter / 2))).toBe(false);
          }
        });
        const forms = formsOf(positions, input.designs, input.work, input.sheet);
        const faces = (side: 1 | 2) =>
          forms
            .filter((f) => f.sides.includes(side))
            .flatMap((f) =>
              f.placements.map((p) => ({ art: `${p.piece} ${p.face}`, trim: p.trim, head: p.head })),
            );
        const ink = [
          ...print(faces(1), unturned),
          ...(turn === undefined ? [] : print(faces(2), turned(turn, input.sheet.w, input.sheet.h))),
        ];
        for (const p of positions) {
          const design = input.designs.find((d) => d.name === p.piece)!;
          const held = hold(cutOut(ink, p.trim), p.head);
          const reads = (face: string) => ({
            [`${p.piece} ${face} head`]: 'up',
            [`${p.piece} ${face} foot`]: 'down',
            [`${p.piece} ${face} left`]: 'left',
          });
          expect(held.front).toEqual(reads(p.face));
          const behind = design.turned === 'head-to-head' ? held.turnedLikeAPage : held.turnedLikeACalendar;
          expect(behind).toEqual(turn === undefined ? {} : reads(p.face === 'front' ? 'back' : 'front'));
        }
        if (hasOneForm(input.work)) expect(positions.length % 2).toBe(0);
      }),
      drawnCases(150),
    );
    expect(laidOut).toBeGreaterThan(75);
  });
});
