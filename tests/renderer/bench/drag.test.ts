import { expect, it } from 'vitest';
import { beginDrag, dragBy } from '../../../renderer/bench/gesture/drag.ts';
import { supperJob } from '../kit/supperJob.ts';

const [first] = supperJob.arrangement;

const across = (dragged: ReturnType<typeof dragBy>) => [
  dragged.box.x,
  dragged.guides.filter((g) => g.axis === 'x').map((g) => g.name),
];

it('a place where the bleed would not be printed holds nothing and is not named', () => {
  const arrangement = [
    { ...first!, trim: { x: 100, y: 0, w: 360, h: 504 } },
    { ...first!, trim: { x: 400, y: 0, w: 20, h: 504 } },
  ];
  const drag = beginDrag({ ...supperJob, arrangement }, [0], 0)!;
  // A gutter to the right of position 2 it would lie from 438 to 798; the sheet ends at 792, its print at 783, and
  // with the bleed of 9 the trim at 774.
  expect(across(dragBy(drag, 340, 60, 30))).toEqual([414, ['printable edge (right)']]);
});

it('a piece stops where its bleed still prints, and goes on to the edge of the sheet when it goes freely', () => {
  const drag = beginDrag(supperJob, [0], 0)!;
  expect(across(dragBy(drag, -300, 0, 8))).toEqual([18, ['printable edge (left)']]);
  expect(across(dragBy(drag, -300, 0, 0))).toEqual([0, []]);
});

it('a piece that lies beyond what prints is not thrown back by the first touch', () => {
  const arrangement = [{ ...first!, trim: { x: 2, y: 300, w: 360, h: 504 } }];
  const drag = beginDrag({ ...supperJob, arrangement }, [0], 0)!;
  expect(dragBy(drag, 1, 0, 0.5).box.x).toBe(3);
});

it('there is nothing to drag where there is no such position', () => {
  expect(beginDrag(supperJob, [7], 7)).toBeUndefined();
});
