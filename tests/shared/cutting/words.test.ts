// The cutting order as it is said to the person at the guillotine.
import { describe, expect, it } from 'vitest';
import type { CuttingInput } from '../../../shared/cutting/cuttingInput.ts';
import type { CutRegister, CuttingOrder } from '../../../shared/cutting/order.ts';
import { planCuts } from '../../../shared/cutting/planCuts.ts';
import { sayKind, sayOrder, sayRegister, sayStep, sayTurn } from '../../../shared/cutting/words.ts';
import type { Work } from '../../../shared/geometry/work.ts';
import { gridToCut, LARGE_CUTTER, sheetToCut } from '../../kit/cutJobs.ts';

function planned(input: CuttingInput): CuttingOrder {
  const order = planCuts(input);
  if (!order.ok) throw new Error(order.fault.message);
  return order.value;
}

const said = (input: CuttingInput) => {
  const order = planned(input);
  return order.steps.map((step) => sayStep(order, step, input.unit));
};

describe('the steps', () => {
  it('of two by two with gutters are said as one would say them', () => {
    expect(said(gridToCut(2, 2, 1))).toEqual([
      'Side 1 up, jog to the lead edge and the left edge: the lead edge lies at the back gauge, the left edge at the left side guide. Back gauge 8 in. The margin comes off.',
      'Turn stack A a quarter clockwise: the left edge comes to the back gauge, the tail to the left side guide. Back gauge 6 in. The margin comes off.',
      'Turn stack A a quarter clockwise: the tail comes to the back gauge, the right edge to the left side guide. Back gauge 7 in. The margin comes off.',
      'Turn stack A a quarter clockwise: the right edge comes to the back gauge, the lead edge to the left side guide. Back gauge 5 in. The margin comes off.',
      'Leave stack A as it lies. Back gauge 3 in. First cut of the gutter. Set what lies before the knife aside as stack B.',
      'Leave stack A as it lies. Back gauge 2 in. Second cut of the gutter: what is left of it comes off.',
      'Take stacks A and B and turn them a quarter clockwise, side by side or one after another: the lead edge comes to the back gauge, the left edge to the left side guide. Back gauge 4 in. First cut of the gutter. Done: positions 3 and 4 before the knife.',
      'Leave stacks A and B as they lie. Back gauge 3 in. Second cut of the gutter: what is left of it comes off. Done: positions 1 and 2 behind it.',
    ]);
  });

  it('of neighbours whose trims touch part them with one cut', () => {
    expect(said(gridToCut(2, 1, 0, { unit: 'mm' })).at(-1)).toBe(
      'Leave stack A as it lies. Back gauge 50.8 mm. One cut parts the neighbours. Done: position 1 before the knife, position 2 behind it.',
    );
  });

  it('name the pieces that are done where the sheet has several', () => {
    const input = gridToCut(2, 2, 1);
    const [menu] = input.designs;
    const arrangement = input.arrangement.map((p, i) => (i === 3 ? { ...p, piece: 'Tag' } : p));
    const designs = [menu!, { ...menu!, name: 'Tag' }];
    expect(said({ ...input, arrangement, designs }).at(-2)).toContain(
      'Done: position 3 ("Card"), position 4 ("Tag") before the knife.',
    );
  });

  it('tell when a stack that was set aside is fetched, and how it lay', () => {
    const boxes = [
      { x: 1, y: 1, w: 2, h: 5 },
      { x: 3, y: 1, w: 2, h: 2 },
      { x: 5, y: 1, w: 3, h: 2 },
      { x: 3, y: 3, w: 3, h: 3 },
      { x: 6, y: 3, w: 2, h: 3 },
    ];
    expect(said(sheetToCut({ w: 9, h: 7 }, boxes, 72)).at(-1)).toBe(
      'Take stack B and turn it a quarter clockwise: the left edge comes to the back gauge, the tail to the left side guide. Back gauge 2 in. One cut parts the neighbours. Done: position 3 before the knife, position 2 behind it.',
    );
    const order = planned(gridToCut(2, 2, 1));
    const [, , , , , sixth, seventh, eighth] = order.steps;
    expect(sayStep(order, { ...sixth!, parts: seventh!.parts }, 'in')).toContain(
      'Take stacks A and B and lay them as they were cut, side by side or one after another. Back gauge 2 in.',
    );
    expect(sayStep(order, { ...eighth!, parts: [eighth!.parts[1]!] }, 'in')).toContain(
      'Take stack B and lay it as it was cut. Back gauge 3 in.',
    );
  });

  it('say when waste has to lie under the clamp', () => {
    const strip = { x: 1, y: 1, w: 3, h: 0.3 };
    expect(said(sheetToCut({ w: 5, h: 3 }, [strip], 72)).join(' ')).toContain(
      'Waste lies under the clamp, what is wanted before the knife.',
    );
  });
});

describe('the whole order', () => {
  it('counts the cuts, the settings and the turns', () => {
    expect(sayOrder(planned(gridToCut(2, 2, 1)), 'in')).toEqual([
      '10 cuts, 8 where strips are cut side by side; 8 settings of the back gauge; 5 turns.',
    ]);
    expect(sayOrder(planned(gridToCut(2, 1, 0)), 'in')).toEqual([
      '5 cuts; 5 settings of the back gauge; 3 turns.',
    ]);
    const one = sheetToCut({ w: 3, h: 2 }, [{ x: 0, y: 0, w: 2, h: 2 }], 72);
    expect(sayOrder(planned(one), 'in')).toEqual(['1 cut; 1 setting of the back gauge; 0 turns.']);
  });

  it('tells the lifts and how high they are', () => {
    const lifts = (sheets: number, changes = {}) =>
      sayOrder(planned(gridToCut(1, 1, 0, { run: { sheets, caliper: 1 }, ...changes })), 'in')[1];
    expect(lifts(100)).toBe('One lift of 100 sheets, 1.389 in high at the most.');
    expect(lifts(145)).toBe('2 lifts of 73 or 72 sheets, 1.014 in high at the most.');
    expect(lifts(288)).toBe('2 lifts of 144 sheets, 2 in high at the most.');
    expect(lifts(1)).toBe('One lift of 1 sheet, 0.014 in high at the most.');
  });
});

describe('the register of a cut', () => {
  const say = (side1: 0 | 0.5 | 1, side2?: 0 | 0.5 | 1) =>
    sayRegister({
      dimension: 'width',
      from: 'left',
      side1,
      ...(side2 === undefined ? {} : { side2 }),
    } satisfies CutRegister);

  it('is said for the sides that it concerns', () => {
    expect(say(0)).toBe('True to the image, whatever the width of the paper.');
    expect(say(0, 0)).toBe('True to the image of both sides, whatever the width of the paper.');
    expect(say(0, 1)).toBe(
      'An error in the width of the paper lies between this cut and the image: all of it from side 2.',
    );
    expect(say(0.5, 0.5)).toBe(
      'An error in the width of the paper lies between this cut and the image: half of it from side 1, half of it from side 2.',
    );
  });

  it('is what the turn and the hold make it', () => {
    const registers = (work: Work, across: 'left' | 'centre') =>
      planned(gridToCut(1, 1, 0, { work, hold: { across, along: 'lead' } })).steps.map((s) => [
        s.register.dimension,
        s.register.from,
        s.register.side1,
        s.register.side2,
      ]);
    const [length, width] = [
      ['length', 'lead'],
      ['width', 'left'],
    ];
    expect(registers({ style: 'work-and-turn' }, 'left')).toEqual([
      [...length!, 0, 0],
      [...width!, 0, 1],
      [...length!, 0, 0],
      [...width!, 0, 1],
    ]);
    expect(registers({ style: 'work-and-tumble' }, 'left')).toEqual([
      [...length!, 0, 1],
      [...width!, 0, 0],
      [...length!, 0, 1],
      [...width!, 0, 0],
    ]);
    expect(registers({ style: 'simplex' }, 'centre')).toEqual([
      [...length!, 0, undefined],
      [...width!, 0.5, undefined],
      [...length!, 0, undefined],
      [...width!, 0.5, undefined],
    ]);
  });
});

describe('what is told before the first cut', () => {
  const notices = (changes: Partial<CuttingInput>, gutter = 1) =>
    planned(gridToCut(2, 2, gutter, changes)).notices;

  it('is to check the corner of the paper, and to mind knife and load', () => {
    expect(notices({ work: { style: 'simplex' } })).toEqual([
      'Before the first cut, check that the lead edge and the left edge of the paper stand square to each other: what is held against raw paper is cut no truer than the paper is.',
      'Trimming: a guillotine or rotary cutter can maim. Use its guards, keep hands clear of clamp and knife, and let trained operators cut. The manual of the cutter and local rules come first.',
      'Lifting: paper is heavy. Take piles you can carry safely, from the knees, or use a truck; local rules come first.',
    ]);
  });

  it('is what the turn does to an error in the paper, and that both sides of one form look alike', () => {
    expect(notices({ work: { style: 'work-and-turn' } })).toEqual(
      expect.arrayContaining([
        'Both sides carry the same form: make sure that side 1, which was printed first, is up.',
        "Pass 1 lays the sheet to its left edge, pass 2 to its right edge: the whole of an error in the sheet's width goes between front and back. Trim both of these edges square and to one size before printing.",
      ]),
    );
    const centred = notices({ hold: { across: 'centre', along: 'centre' } });
    expect(centred).toContain(
      'The printer centres the sheet, so half of an error in its width goes into the margin at the left edge, and all cuts that go back to that edge are off by it.',
    );
    expect(centred).toContain(
      'The printer centres the sheet, so half of an error in its length goes into the margin at the lead edge, and all cuts that go back to that edge are off by it.',
    );
    expect(centred.join(' ')).not.toContain('between front and back');
  });

  it('is which cuts run through meeting art, and only if there is bleed', () => {
    const meeting =
      'In steps 5 and 6 one cut parts neighbours whose art runs up to it: where their colours differ, whatever the knife is off shows.';
    expect(notices({}, 0)).toContain(meeting);
    const designs = [{ name: 'Card', bleed: 0, turned: 'head-to-head' as const, hasBack: true }];
    expect(notices({ designs }, 0)).not.toContain(meeting);
    expect(notices({}, 1).join(' ')).not.toContain('neighbours whose art');
  });

  it('is for each cut whether the art of just its neighbours meets', () => {
    const bleeding = { name: 'Card', bleed: 9, turned: 'head-to-head' as const, hasBack: true };
    const designs = [bleeding, { ...bleeding, name: 'Plain', bleed: 0 }];
    /** The steps whose neighbours meet, on the sheet as it is and turned a quarter. */
    const meeting = (boxes: readonly (readonly [string, number, number, number, number])[]) =>
      [false, true].map((isTurned) => {
        const input = sheetToCut(
          { w: 8, h: 8 },
          boxes.map(([, x, y, w, h]) => (isTurned ? { x: y, y: x, w: h, h: w } : { x, y, w, h })),
          72,
        );
        const arrangement = input.arrangement.map((p, i) => ({ ...p, piece: boxes[i]![0] }));
        const order = planned({ ...input, arrangement, designs });
        const commons = order.steps.filter((s) => s.kind === 'common').length;
        const notice = order.notices.find((n) => n.includes('neighbours whose art')) ?? 'none';
        return [commons, /steps? [\d, and]+/.exec(notice)?.[0].trim() ?? notice];
      });
    const plain = [
      ['Plain', 1, 1, 2, 2],
      ['Plain', 3, 1, 2, 2],
    ] as const;
    expect(meeting(plain)).toEqual([
      [1, 'none'],
      [1, 'none'],
    ]);
    // A card that bleeds, in line with the cut but in another row, whose rows are parted first.
    const aside = [
      ...plain,
      ['Card', 3, 4, 2, 1],
      ['Plain', 1, 4, 1, 3],
      ['Plain', 2.5, 5.5, 3, 1.5],
    ] as const;
    expect(meeting(aside)).toEqual([
      [1, 'none'],
      [1, 'none'],
    ]);
    for (const [left, right] of [
      ['Card', 'Plain'],
      ['Plain', 'Card'],
    ] as const) {
      expect(
        meeting([
          [left, 1, 1, 2, 2],
          [right, 3, 1, 2, 2],
        ]),
      ).toEqual([
        [1, 'step 5'],
        [1, 'step 5'],
      ]);
    }
  });

  it('is which strips are slivers', () => {
    const sliver =
      'In steps 6 and 8 no more than 0.118 in comes off: cut low piles with a sharp knife, or the strip tears.';
    expect(notices({}, 0.1)).toContain(sliver);
    expect(notices({}, 0.12)).not.toContain(sliver);
  });

  it('is where waste lies under the clamp', () => {
    const strip = { x: 1, y: 1, w: 3, h: 0.3 };
    const order = planned(sheetToCut({ w: 5, h: 3 }, [strip], 72));
    const step = order.steps.find((s) => s.parts[0].behind.becomes === 'waste')!;
    expect(order.notices).toContain(
      `In step ${step.number} waste lies under the clamp and what is wanted before the knife: hold it square.`,
    );
  });

  it.each([
    ['left', { x: 0, y: 1 }],
    ['tail', { x: 1, y: 0 }],
    ['right', { x: 2, y: 1 }],
    ['lead', { x: 1, y: 2 }],
  ])('is that a piece at the %s edge of the paper ends with it', (_edge, at) => {
    const { notices: told } = planned(sheetToCut({ w: 4, h: 4 }, [{ ...at, w: 2, h: 2 }], 72));
    expect(told).toContain("The paper's own edge is an edge of position 1: nothing is cut there.");
  });

  it('is which pieces end with the paper, and which come off with their backs up', () => {
    const input = sheetToCut(
      { w: 4, h: 4 },
      [
        { x: 0, y: 0, w: 2, h: 2 },
        { x: 2, y: 2, w: 1, h: 1 },
      ],
      72,
    );
    const [front, back] = input.arrangement;
    const mixed = { ...input, arrangement: [front!, { ...back!, face: 'back' as const }] };
    expect(planned(mixed).notices).toEqual(
      expect.arrayContaining([
        "The paper's own edge is an edge of position 1: nothing is cut there.",
        'Position 2 comes off with the back up: turn it over before all go on one pile.',
      ]),
    );
    const third = { ...back!, trim: { ...back!.trim, x: 216 } };
    const two = {
      ...input,
      arrangement: [front!, ...[back!, third].map((p) => ({ ...p, face: 'back' as const }))],
    };
    expect(planned(two).notices).toContain(
      'Positions 2 and 3 come off with the back up: turn them over before all go on one pile.',
    );
    const backs = { ...input, arrangement: input.arrangement.map((p) => ({ ...p, face: 'back' as const })) };
    expect(planned(backs).notices.join(' ')).not.toContain('back up');
  });

  it('is not that a cutter of few pieces could be bettered', () => {
    expect(notices({ cutter: LARGE_CUTTER }).join(' ')).not.toContain('not proven');
  });
});

it('names every turn and every kind of cut', () => {
  expect(([1, -1, 2, 0] as const).map(sayTurn)).toEqual([
    'a quarter clockwise',
    'a quarter counter-clockwise',
    'half round',
    'not at all',
  ]);
  expect(sayKind('offcut')).toBe('An empty strip comes off.');
});
