import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  angleOfDrag,
  cssMatrixOf,
  type Grip,
  type Pose,
  poseOf,
  see,
  showsOther,
  turnByEdge,
  whereItFalls,
} from '../../../shared/bench/turning.ts';
import { numberFrom } from '../../kit/anyNumber.ts';

const EYE = 2000;
const grips = fc.record<Grip>({
  axis: fc.constantFrom('x', 'y'),
  end: fc.constantFrom(1, -1),
  grabbed: numberFrom(100, 400),
});
const angles = numberFrom(0, 180);
const coordinate = numberFrom(-400, 400);

/** A pinhole eye and a paper that really turns in space: what the poses must agree with. */
function photograph(point: { x: number; y: number }, angle: number, grip: Grip) {
  const a = (angle * Math.PI) / 180;
  const along = grip.axis === 'x' ? point.x : point.y;
  const beside = grip.axis === 'x' ? point.y : point.x;
  // Towards the eye is positive; the end that was taken rises.
  const height = (p: number) => grip.end * p * Math.sin(a);
  const z = height(along) - height(grip.end * grip.grabbed);
  const nearer = EYE / (EYE - z);
  const [u, v] = [along * Math.cos(a) * nearer, beside * nearer];
  return grip.axis === 'x' ? { x: u, y: v } : { x: v, y: u };
}

describe('turning by hand', () => {
  it('is done side to side by the side edges and end to end by lead and tail', () => {
    expect(turnByEdge('left')).toBe('side-to-side');
    expect(turnByEdge('right')).toBe('side-to-side');
    expect(turnByEdge('lead')).toBe('end-to-end');
    expect(turnByEdge('tail')).toBe('end-to-end');
  });

  it('begins lying, stands upright when the hand is over the axis, and ends turned', () => {
    expect(angleOfDrag(300, 300)).toBe(0);
    expect(angleOfDrag(300, 150)).toBeCloseTo(60, 9);
    expect(angleOfDrag(300, 0)).toBeCloseTo(90, 9);
    expect(angleOfDrag(300, -300)).toBe(180);
  });

  it('does not turn by pulling outwards, nor beyond the other side', () => {
    expect(angleOfDrag(300, 500)).toBe(0);
    expect(angleOfDrag(300, -500)).toBe(180);
  });

  it('falls back when it is let go before it stands upright, and turns over from there on', () => {
    expect(whereItFalls(0)).toBe('falls back');
    expect(whereItFalls(89.9)).toBe('falls back');
    expect(whereItFalls(90)).toBe('turns over');
    expect(whereItFalls(180)).toBe('turns over');
    expect(showsOther(89.9)).toBe(false);
    expect(showsOther(90)).toBe(true);
  });

  it('keeps the point that was taken under the hand all the way', () => {
    fc.assert(
      fc.property(grips, numberFrom(-1, 1), (grip, share) => {
        const hand = share * grip.grabbed;
        const pose = poseOf('front', angleOfDrag(grip.grabbed, hand), grip, EYE);
        const taken = grip.end * grip.grabbed;
        const seen = see(pose, grip.axis === 'x' ? { x: taken, y: 0 } : { x: 0, y: taken });
        expect(seen[grip.axis]).toBeCloseTo(grip.end * hand, 6);
      }),
    );
  });

  it('looks as an eye sees paper that turns in space', () => {
    fc.assert(
      fc.property(grips, angles, coordinate, coordinate, (grip, angle, x, y) => {
        const seen = see(poseOf('front', angle, grip, EYE), { x, y });
        const real = photograph({ x, y }, angle, grip);
        expect(seen.x).toBeCloseTo(real.x, 6);
        expect(seen.y).toBeCloseTo(real.y, 6);
      }),
    );
  });

  it('shows the page behind on the same paper: its mirror falls on the page in front', () => {
    fc.assert(
      fc.property(grips, angles, coordinate, coordinate, (grip, angle, x, y) => {
        const front = see(poseOf('front', angle, grip, EYE), { x, y });
        const mirrored = grip.axis === 'x' ? { x: -x, y } : { x, y: -y };
        const behind = see(poseOf('behind', angle, grip, EYE), mirrored);
        expect(behind.x).toBeCloseTo(front.x, 6);
        expect(behind.y).toBeCloseTo(front.y, 6);
      }),
    );
  });

  it('shows the page behind upright and unchanged once the paper is turned', () => {
    const grip: Grip = { axis: 'x', end: 1, grabbed: 300 };
    const seen = see(poseOf('behind', 180, grip, EYE), { x: 120, y: -80 });
    expect(seen.x).toBeCloseTo(120, 9);
    expect(seen.y).toBeCloseTo(-80, 9);
  });

  it('makes the far edge recede while the paper stands in the air', () => {
    const grip: Grip = { axis: 'x', end: 1, grabbed: 300 };
    const pose = poseOf('front', 60, grip, EYE);
    const near = see(pose, { x: 300, y: 100 });
    const far = see(pose, { x: -300, y: 100 });
    expect(near).toEqual({ x: expect.closeTo(150, 9), y: expect.closeTo(100, 9) });
    // 600 pt of paper at 60 degrees lie 519.6 behind the hand: 2000 / 2519.6 of the size.
    expect(far.y).toBeCloseTo((100 * 2000) / (2000 + 600 * Math.sin(Math.PI / 3)), 9);
  });

  it('is the same picture as a matrix of the page', () => {
    fc.assert(
      fc.property(
        grips,
        angles,
        fc.constantFrom('front' as const, 'behind' as const),
        coordinate,
        coordinate,
        (grip, angle, page, x, y) => {
          const pose: Pose = poseOf(page, angle, grip, EYE);
          const m = cssMatrixOf(pose);
          const row = (r: number) => m[r]! * x + m[4 + r]! * y + m[8 + r]! * 0 + m[12 + r]!;
          const seen = see(pose, { x, y });
          expect(row(0) / row(3)).toBeCloseTo(seen.x, 6);
          expect(row(1) / row(3)).toBeCloseTo(seen.y, 6);
          expect(row(2)).toBe(0);
        },
      ),
    );
  });
});
