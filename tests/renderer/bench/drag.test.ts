import { expect, it } from 'vitest';
import { beginDrag, dragBy } from '../../../renderer/bench/gesture/drag.ts';
import { supperJob } from '../kit/supperJob.ts';

const [first] = supperJob.arrangement;

it('a place that would carry a piece off the sheet holds nothing and is not named', () => {
  const arrangement = [
    { ...first!, trim: { x: 100, y: 0, w: 360, h: 504 } },
    { ...first!, trim: { x: 400, y: 0, w: 20, h: 504 } },
  ];
  const drag = beginDrag({ ...supperJob, arrangement }, [0], 0)!;
  // A gutter to the right of position 2 it would lie from 438 to 798; the sheet ends at 792.
  const across = (dx: number) => {
    const { box, guides } = dragBy(drag, dx, 60, 10);
    return [box.x, guides.filter((g) => g.axis === 'x').map((g) => g.name)];
  };
  expect(across(340)).toEqual([432, []]);
  expect(drag.targets.some((t) => t.axis === 'x' && t.at === 438)).toBe(true);
});

it('there is nothing to drag where there is no such position', () => {
  expect(beginDrag(supperJob, [7], 7)).toBeUndefined();
});
