// What a guillotine does not cut, and why: pieces in the way of every cut, and what the machine does not take.
import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import type { CuttingInput } from '../../../shared/cutting/cuttingInput.ts';
import type { CuttingOrder } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import { gridToCut, LARGE_CUTTER, sheetToCut } from '../../kit/cutJobs.ts';

type Box = Readonly<Record<'x' | 'y' | 'w' | 'h', number>>;

function planned(input: CuttingInput): CuttingOrder {
  const order = planCuts(input);
  if (!order.ok) throw new Error(order.fault.message);
  return order.value;
}

function refusal(input: CuttingInput) {
  const order = planCuts(input);
  if (order.ok) throw new Error('It was cut');
  return order.fault;
}

describe('a small guillotine of no make', () => {
  const card = (w: number, h: number, changes: Partial<CuttingInput> = {}) =>
    planCuts(
      sheetToCut({ w, h }, [{ x: 10, y: 10, w: w - 20, h: h - 20 }], 72 / 25.4, {
        cutter: ANY_CUTTER,
        unit: 'mm',
        ...changes,
      }),
    );

  // Sizes in mm: SRA3 (as sold, 320 x 450) and B2 (ISO 216, 500 x 707). What such a machine takes: from memory.
  it('takes an SRA3 sheet either way, and none of B2', () => {
    expect([card(320, 450).ok, card(450, 320).ok]).toEqual([true, true]);
    expect([card(500, 707).ok, card(707, 500).ok]).toEqual([false, false]);
  });

  it('holds nothing shorter than 35 mm', () => {
    expect([card(200, 55.1).ok, card(200, 54.9).ok]).toEqual([true, false]);
  });

  it('cuts 50 mm at once, 500 sheets of a tenth of a millimetre, with a guide at either hand', () => {
    const lifts = (sheets: number) => {
      const order = card(320, 450, { run: { sheets, caliper: 7.2 / 25.4 } });
      return order.ok ? order.value.lifts?.sheets : undefined;
    };
    expect([lifts(500), lifts(501)]).toEqual([[500], [251, 250]]);
    const right = card(320, 450, { hold: { across: 'right', along: 'lead' } });
    expect(right.ok && right.value.steps[0]?.side).toEqual({ hand: 'right', edge: 'right' });
  });
});

describe('what cannot be cut', () => {
  /** Five pieces like the sails of a windmill around its axle, at 1 unit from the edges. */
  const windmill = [
    { x: 1, y: 1, w: 2, h: 1 },
    { x: 3, y: 1, w: 1, h: 2 },
    { x: 2, y: 3, w: 2, h: 1 },
    { x: 1, y: 2, w: 1, h: 2 },
    { x: 2, y: 2, w: 1, h: 1 },
  ];

  it('is refused with the pieces in the way', () => {
    expect(refusal(sheetToCut({ w: 5, h: 5 }, windmill, 100))).toEqual({
      code: 'no-guillotine-order',
      message:
        'No cut from edge to edge parts positions 1, 2, 3, 4 and 5: the one that comes nearest, along the right edge of position 1 ("Card", front), would run through position 3 ("Card", front).',
      remedy: 'Move position 3 clear of that line on the bench, or lay the sheet out afresh.',
    });
  });

  it('names the edge along which the nearest cut would run, whichever it is', () => {
    const nearest = (boxes: readonly Box[]) =>
      /along the (.*) of position (\d)/
        .exec(refusal(sheetToCut({ w: 5, h: 5 }, boxes, 100)).message)
        ?.slice(1);
    const mirrored = windmill.map(({ x, w, ...rest }) => ({ ...rest, x: 5 - x - w, w }));
    // The inner edge of the first sail runs through one other sail, and no cut runs through none.
    expect(nearest(windmill)).toEqual(['right edge', '1']);
    expect(nearest(mirrored)).toEqual(['left edge', '1']);
    // Its lying sails halved, so that cuts up the sheet run through two, and those that part the halves through one.
    const [first, second, third, ...rest] = windmill as [Box, Box, Box, Box, Box];
    const halves = (of: Box) => [
      { ...of, h: of.h / 2 },
      { ...of, y: of.y + of.h / 2, h: of.h / 2 },
    ];
    const halved = [...halves(first), second, ...halves(third), ...rest];
    expect(nearest(halved)).toEqual(['edge towards the lead', '1']);
    expect(nearest(halved.map(({ y, h, ...of }) => ({ ...of, y: 5 - y - h, h })))).toEqual([
      'edge towards the tail',
      '1',
    ]);
  });

  it('is refused too where the rest of the sheet could be cut', () => {
    const beside = [0, 1, 2, 3].map((y) => ({ x: 4, y, w: 2, h: 1 }));
    const fault = refusal(sheetToCut({ w: 6, h: 5 }, [...beside, ...windmill], 100));
    expect(fault.message).toBe(
      'No cut from edge to edge parts positions 5, 6, 7, 8 and 9: the one that comes nearest, along the right edge of position 5 ("Card", front), would run through position 7 ("Card", front).',
    );
  });

  it('names the first of many and counts the others', () => {
    const axle = Array.from({ length: 4 }, (_, i) => ({
      x: 2 + (i % 2) * 0.5,
      y: 2 + Math.floor(i / 2) * 0.5,
      w: 0.5,
      h: 0.5,
    }));
    const fault = refusal(sheetToCut({ w: 5, h: 5 }, [...windmill.slice(0, 4), ...axle], 100));
    expect(fault.message).toContain('positions 1, 2, 3, 4, 5, 6 and 2 more:');
  });

  it('can be cut as soon as one sail is moved clear', () => {
    const moved = windmill.map((p, i) => (i === 2 ? { ...p, x: 3 } : p));
    expect(planned(sheetToCut({ w: 6, h: 5 }, moved, 100)).steps.length).toBeGreaterThan(0);
  });

  it('is a sheet on which nothing lies', () => {
    expect(refusal(sheetToCut({ w: 5, h: 5 }, [], 100))).toEqual({
      code: 'no-guillotine-order',
      message: 'There is nothing to cut: no piece lies on the sheet.',
      remedy: 'Lay the sheet out first.',
    });
  });

  it('is a piece that runs off the sheet, or lies over another', () => {
    const piece = { x: 1, y: 1, w: 2, h: 2 };
    expect(refusal(sheetToCut({ w: 2.9, h: 5 }, [piece], 100))).toEqual({
      code: 'no-guillotine-order',
      message: 'Position 1 ("Card", front) runs off the sheet.',
      remedy: 'Move it on the bench, or lay the sheet out afresh.',
    });
    expect(refusal(sheetToCut({ w: 5, h: 5 }, [piece, { ...piece, x: 2 }], 100)).message).toBe(
      'Position 1 ("Card", front) lies over position 2 ("Card", front), so no cut can free both.',
    );
  });

  it('is a strip that the clamp does not reach, which is named with what the cutter holds', () => {
    const strip = { x: 1, y: 0.4, w: 3, h: 0.3 };
    expect(refusal(sheetToCut({ w: 5, h: 1.1 }, [strip], 72))).toEqual({
      code: 'cutter-refuses',
      message:
        'Position 1 ("Card", front) is 0.3 in at its narrowest, and "Large guillotine" holds nothing shorter than 0.5 in behind its knife.',
      remedy:
        'Cut such pieces by other means, lay them next to larger ones, or take a cutter whose back gauge comes nearer to the knife.',
    });
    // Next to a larger piece it falls before the knife.
    const larger = { x: 1, y: 0.7, w: 3, h: 3 };
    expect(planned(sheetToCut({ w: 5, h: 5 }, [larger, strip], 72)).cuts).toBe(5);
  });

  it('is a sheet larger than the cutter takes', () => {
    const cutter = { ...LARGE_CUTTER, widest: 5 * 72, deepest: 7 * 72 };
    expect(refusal(gridToCut(2, 2, 1, { cutter }))).toEqual({
      code: 'cutter-refuses',
      message:
        '"Large guillotine" takes 5 in along the knife and 7 in behind it, too little to cut the 7 × 9 in sheet.',
      remedy: 'Take a larger cutter or a smaller sheet, or correct the figures of the cutter.',
    });
  });

  it('is a pile of which not one sheet goes under the clamp', () => {
    expect(refusal(gridToCut(1, 1, 0, { run: { sheets: 2, caliper: 145 } }))).toEqual({
      code: 'cutter-refuses',
      message: 'One sheet of 2.014 in is thicker than what goes under the clamp of "Large guillotine".',
      remedy: 'Check the caliper of the paper and the figures of the cutter.',
    });
  });

  it('is not a sheet that the cutter takes once it is parted, though that costs more cuts', () => {
    // 7 units along the knife, and the gauge goes back 7 units behind it: the first cut must part the sheet.
    const cutter = { ...LARGE_CUTTER, widest: 7 * 72, deepest: 7 * 72, leastGauge: 108 };
    const order = planned(gridToCut(2, 2, 1, { cutter }));
    expect(order.steps[0]).toMatchObject({ gauge: 'lead', kind: 'gutter' });
    expect(order.cuts).toBeGreaterThan(10);
  });
});
