import { describe, expect, it } from 'vitest';
import { HEADS } from '../../../shared/geometry/head.ts';
import {
  type Affine,
  flipSource,
  renderLying,
  scaleSource,
  turnSource,
} from '../../../shared/proof/pageSource.ts';
import { flipPicture, turnPicture } from '../../../shared/proof/picture.ts';
import { type Paint, paintedSource } from '../../kit/painted.ts';

const SIZE = { w: 40, h: 30 };

/** Every place has a colour of its own. */
const everywhere: Paint = (x, y) => [Math.floor(x) * 6, Math.floor(y) * 8, Math.floor(x / 4) * 20];
const source = paintedSource(SIZE, everywhere);

/** One pixel to the pt, `w` by `h` of them, lower left at (x, y). */
function through(x: number, y: number, h: number): Affine {
  return { a: 1, b: 0, c: 0, d: -1, e: -x, f: y + h };
}

const whole = source.render(through(0, 0, 30), 40, 30);

describe('A source', () => {
  it('seen through the paper is its mirror image, whatever part is looked at', () => {
    for (const flip of ['left-right', 'top-bottom'] as const) {
      const behind = flipSource(source, flip);
      expect(behind.size).toEqual(SIZE);
      expect(behind.render(through(0, 0, 30), 40, 30)).toEqual(flipPicture(whole, flip));
    }
    const corner = source.render(through(30, 0, 7), 10, 7);
    const behind = flipSource(source, 'left-right').render(through(0, 0, 7), 10, 7);
    expect(behind).toEqual(flipPicture(corner, 'left-right'));
    const top = source.render(through(3, 20, 10), 10, 10);
    const below = flipSource(source, 'top-bottom').render(through(3, 0, 10), 10, 10);
    expect(below).toEqual(flipPicture(top, 'top-bottom'));
  });

  it('turned counter-clockwise has its lower left corner at the origin again', () => {
    for (const head of HEADS) {
      const turned = turnSource(source, head);
      const { w, h } = turned.size;
      expect([w, h]).toEqual(head === 90 || head === 270 ? [30, 40] : [40, 30]);
      expect(turned.render(through(0, 0, h), w, h)).toEqual(turnPicture(whole, head));
    }
  });

  it('of a page in a larger unit has every length multiplied', () => {
    const half = paintedSource({ w: 20, h: 15 }, (x, y) => everywhere(2 * x, 2 * y));
    const large = scaleSource(half, 2);
    expect(large.size).toEqual(SIZE);
    expect(large.render(through(0, 0, 30), 40, 30)).toEqual(whole);
  });

  it('shows the same whichever way it lay when it was rendered', () => {
    const matrix = through(5, 3, 20);
    for (const lie of HEADS) {
      expect(renderLying(source, matrix, 30, 20, lie)).toEqual(source.render(matrix, 30, 20));
    }
  });

  it('that lies on its side is rendered lying on its side', () => {
    const sizes: (readonly number[])[] = [];
    const watched = {
      size: SIZE,
      render: (matrix: Affine, width: number, height: number) => {
        sizes.push([width, height, Math.sign(matrix.a), Math.sign(matrix.b)]);
        return source.render(matrix, width, height);
      },
    };
    for (const lie of HEADS) renderLying(watched, through(0, 0, 20), 30, 20, lie);
    expect(sizes).toEqual([
      [30, 20, 1, 0],
      [20, 30, 0, 1],
      [30, 20, -1, 0],
      [20, 30, 0, -1],
    ]);
  });
});
