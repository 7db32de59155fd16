// A hand that has pressed: followed until it is free, and by nothing afterwards.
import { expect, it } from 'vitest';
import { followHand } from '../../../../renderer/sheet/hand/followHand.ts';
import { holdToPan } from '../../../../renderer/sheet/hand/holdToPan.ts';

const HAND = 7;

/** A window whose frames are drawn when the test says so, and a hold that writes down what it is told. */
function press() {
  const window = new EventTarget();
  const told: string[] = [];
  const frames: (() => void)[] = [];
  const cancel = followHand(
    {
      pointerId: HAND,
      placeOf: (event) => ({ x: event.clientX, y: event.clientY }),
      hold: {
        move: (at) => told.push(`moved to ${at.x}`),
        end: () => told.push('let go'),
        cancel: () => told.push('cancelled'),
      },
      onFree: () => told.push('free'),
    },
    window,
    (work) => frames.push(work),
  );
  const hear = (type: string, parts: object) =>
    window.dispatchEvent(Object.assign(new Event(type, { cancelable: true }), parts));
  return {
    told,
    cancel,
    move: (x: number, pointerId = HAND) => hear('pointermove', { pointerId, clientX: x, clientY: 0 }),
    hear: (type: string, pointerId = HAND) => hear(type, { pointerId, clientX: 0, clientY: 0 }),
    key: (key: string) => hear('keydown', { key }),
    draw: () => {
      for (const frame of frames.splice(0)) frame();
    },
  };
}

it('moves once a frame, to where the hand is last', () => {
  const hand = press();
  hand.move(1);
  hand.move(2);
  hand.draw();
  hand.draw();
  hand.move(3);
  hand.draw();
  expect(hand.told).toEqual(['moved to 2', 'moved to 3']);
});

it('ends where the hand let go, and nothing follows the mouse afterwards', () => {
  const hand = press();
  hand.move(5);
  hand.hear('pointerup');
  hand.move(9);
  hand.draw();
  hand.hear('pointerup');
  hand.key('Escape');
  expect(hand.told).toEqual(['moved to 5', 'let go', 'free']);
});

it.each([
  ['Escape', (hand: ReturnType<typeof press>) => hand.key('Escape')],
  ['a pointer that is taken away', (hand: ReturnType<typeof press>) => hand.hear('pointercancel')],
  ['a view that goes', (hand: ReturnType<typeof press>) => hand.cancel()],
])('is cancelled by %s, once, without a last move', (_by, end) => {
  const hand = press();
  hand.move(5);
  end(hand);
  hand.draw();
  hand.move(9);
  hand.draw();
  hand.hear('pointerup');
  expect(hand.told).toEqual(['cancelled', 'free']);
});

it('does not listen to another finger, nor to other keys', () => {
  const hand = press();
  hand.move(5, 8);
  hand.hear('pointerup', 8);
  hand.key('a');
  hand.draw();
  expect(hand.told).toEqual([]);
});

it('carries the view along, and takes a press without a move for a click', () => {
  const moved: (readonly number[])[] = [];
  let clicks = 0;
  const hold = holdToPan(
    { x: 10, y: 10 },
    (dx, dy) => moved.push([dx, dy]),
    () => {
      clicks += 1;
    },
  );
  hold.move({ x: 12, y: 10 }, { altKey: false });
  hold.end();
  expect([moved, clicks]).toEqual([[[2, 0]], 1]);
  hold.move({ x: 22, y: 15 }, { altKey: false });
  hold.move({ x: 10, y: 10 }, { altKey: false });
  hold.end();
  // Back where it began, but it has been elsewhere.
  expect([moved.slice(1), clicks]).toEqual([
    [
      [10, 5],
      [-12, -5],
    ],
    1,
  ]);
});
