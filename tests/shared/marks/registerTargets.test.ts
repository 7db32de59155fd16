import { describe, expect, it } from 'vitest';
import { boundsOf } from '../../../shared/marks/mark.ts';
import { registerNotices } from '../../../shared/marks/notices.ts';
import { registerTargets } from '../../../shared/marks/registerTargets.ts';
import { marginsAround } from '../../../shared/marks/room.ts';

const MM = 72 / 25.4;
const sheet = { w: 800, h: 1000 };
const area = { x: 10, y: 20, w: 780, h: 960 };
const margins = marginsAround(area, { x: 100, y: 150, w: 500, h: 700 });

const middles = (marks: readonly { kind: string }[]) =>
  marks.flatMap((m) => ('centre' in m ? [m.centre as { x: number; y: number }] : []));

describe('register targets', () => {
  it('stand on the middle axes of the sheet, halfway between bleeds and printable edge', () => {
    const { marks, bare } = registerTargets(sheet, margins, [], undefined);
    expect(middles(marks)).toEqual([
      { x: 400, y: (852 + 980) / 2 },
      { x: 400, y: (20 + 148) / 2 },
      { x: (10 + 98) / 2, y: 500 },
      { x: (602 + 790) / 2, y: 500 },
    ]);
    expect(bare).toEqual([]);
  });

  it('are a ring and a cross of 6 mm in hairlines on all plates', () => {
    const { marks } = registerTargets(sheet, margins, [], undefined);
    const [ring, level, upright] = marks;
    expect(ring).toMatchObject({
      kind: 'ring',
      width: 0.25,
      ink: 'registration',
      radius: expect.closeTo(0.3 * 6 * MM, 9),
    });
    for (const stroke of [level, upright]) expect(stroke).toMatchObject({ width: 0.25, ink: 'registration' });
    expect(boundsOf(level!)).toMatchObject({ w: expect.closeTo(6 * MM, 9), h: 0.25 });
    expect(boundsOf(upright!)).toMatchObject({ w: 0.25, h: expect.closeTo(6 * MM, 9) });
  });

  it('shrink to 4 mm in a narrow margin, and are left out of a narrower one', () => {
    const narrow = {
      ...margins,
      left: { ...margins.left, w: 5 * MM },
      right: { ...margins.right, w: 3 * MM },
    };
    const { marks, bare } = registerTargets(sheet, narrow, [], undefined);
    expect(marks).toHaveLength(9);
    expect(marks[6]).toMatchObject({ kind: 'ring', radius: expect.closeTo(0.3 * 4 * MM, 9) });
    expect(bare).toEqual(['right']);
  });

  it('give way along their axis to what is there already', () => {
    const { marks } = registerTargets(sheet, margins, [{ x: 390, y: 900, w: 20, h: 30 }], undefined);
    expect(middles(marks)[0]).toEqual({ x: 400, y: expect.closeTo(930 + 3 * MM, 9) });
  });

  it('come with their mirror image where one form serves both passes', () => {
    const even = marginsAround({ x: 10, y: 20, w: 780, h: 960 }, { x: 150, y: 150, w: 500, h: 700 });
    const { marks } = registerTargets(sheet, even, [], 'side-to-side');
    const found = middles(marks);
    expect(found).toHaveLength(4);
    for (const { x, y } of found) expect(found).toContainEqual({ x: expect.closeTo(800 - x, 9), y });
    const tumbled = marginsAround({ x: 10, y: 20, w: 780, h: 960 }, { x: 100, y: 150, w: 500, h: 700 });
    const ends = middles(registerTargets(sheet, tumbled, [], 'end-to-end').marks);
    expect(ends).toHaveLength(4);
    for (const { x, y } of ends) expect(ends).toContainEqual({ x, y: expect.closeTo(1000 - y, 9) });
  });

  it('are missing at both registering edges or at none where one form serves both passes', () => {
    const narrow = { ...margins, left: { ...margins.left, w: 5 }, right: { ...margins.right, w: 5 } };
    expect(registerTargets(sheet, narrow, [], 'side-to-side').bare).toEqual(['left', 'right']);
  });
});

describe('what is said of crop marks and targets', () => {
  const crops = { marks: [], bare: [], cuts: 9, unmarked: 0 };
  const targets = { marks: [], bare: [] };

  it('is nothing when all have found room', () => {
    expect(registerNotices(crops, targets)).toEqual([]);
  });

  it('names the edges that have none', () => {
    expect(
      registerNotices({ ...crops, bare: ['left'] }, { ...targets, bare: ['lead', 'tail', 'left'] }),
    ).toEqual([
      'No room for crop marks at the left side: set the knife by the others.',
      'No room for a register target at the lead edge, tail edge and left side.',
    ]);
  });

  it('counts the cuts that have no mark', () => {
    for (const unmarked of [1, 2]) {
      expect(registerNotices({ ...crops, unmarked }, targets)).toEqual([
        `${unmarked} of 9 cuts have no crop mark: set them by measure.`,
      ]);
    }
  });

  it('is short when there are none at all', () => {
    const all = ['lead', 'tail', 'left', 'right'] as const;
    expect(registerNotices({ ...crops, bare: all, unmarked: 9 }, { ...targets, bare: all })).toEqual([
      'No room for crop marks: cut by measure, or leave wider margins.',
      'No room for register targets: judge the back-up by the crop marks.',
    ]);
  });
});
