import { describe, expect, it } from 'vitest';
import { HEADS, type Head, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Edges } from '../../../shared/geometry/space.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { Reaches } from '../../../shared/layout/bleedReach.ts';
import { edgeTowards, OUTWARD, onFace } from '../../../shared/proof/edges.ts';
import {
  type Step,
  stepsToFaceBehind,
  stepsToShownFace,
  takeSteps,
  throughPaper,
  turnedBy,
  undoSteps,
} from '../../../shared/proof/hand.ts';
import { backOnSide2, pictureOfLetters } from '../../kit/painted.ts';
import { cutOut, hold, print, type Seen, turned, unturned } from '../../kit/paper.ts';

const TURNS: readonly Turn[] = ['side-to-side', 'end-to-end'];
const READERS: readonly ReaderTurn[] = ['head-to-head', 'head-to-toe'];
const SHEET = { w: 400, h: 600 };

/** Where a direction points that is drawn on a side of the sheet, once the piece is in the hand: paper in space. */
function inHand(head: Head, side: 1 | 2, turn: Turn, reader: ReaderTurn, pointing: number): Seen {
  const trim = { x: 50, y: 70, w: 100, h: 100 };
  const box =
    turn === 'side-to-side'
      ? { ...trim, x: SHEET.w - trim.x - trim.w }
      : { ...trim, y: SHEET.h - trim.y - trim.h };
  const ink =
    side === 1
      ? print([{ art: 'arrow', trim, head: pointing }], unturned)
      : print([{ art: 'arrow', trim: box, head: pointing }], turned(turn, SHEET.w, SHEET.h));
  const { front, turnedLikeAPage, turnedLikeACalendar } = hold(cutOut(ink, trim), head);
  if (side === 1) return front;
  return reader === 'head-to-head' ? turnedLikeAPage : turnedLikeACalendar;
}

const NAMES = { up: { x: 0, y: 1 }, down: { x: 0, y: -1 }, left: { x: -1, y: 0 }, right: { x: 1, y: 0 } };

describe('From the sheet into the hand', () => {
  const everyWay = TURNS.flatMap((turn) =>
    READERS.flatMap((reader) => HEADS.map((head) => ({ turn, reader, head }))),
  );

  it('a picture is turned as paper in space is', () => {
    // A picture with a mark at its upper edge and one at its left; where they go, those of an arrow on paper go.
    const colours = { '.': [255, 255, 255], h: [0, 9, 9], l: [9, 9, 0] } as const;
    const arrow = pictureOfLetters(['.h.', 'l..', '...'], colours);
    const places: Readonly<Record<number, string>> = { 1: 'up', 3: 'left', 5: 'right', 7: 'down' };
    for (const { turn, reader, head } of everyWay) {
      const steps1 = stepsToShownFace(head);
      const steps2: readonly Step[] = [{ flip: throughPaper(turn) }, ...stepsToFaceBehind(head, reader)];
      for (const [side, steps] of [
        [1, steps1],
        [2, steps2],
      ] as const) {
        const { pixels } = takeSteps(arrow, steps);
        const paper = inHand(head, side, turn, reader, 0);
        const zero = (colour: number) => pixels.findIndex((value, i) => value === 0 && i % 3 === colour);
        expect(places[Math.floor(zero(0) / 3)]).toBe(paper['arrow head']);
        expect(places[Math.floor(zero(2) / 3)]).toBe(paper['arrow left']);
      }
    }
  });

  it('a direction on the face is followed back to its side of the sheet', () => {
    for (const { turn, reader, head } of everyWay) {
      const steps1 = stepsToShownFace(head);
      const steps2: readonly Step[] = [{ flip: throughPaper(turn) }, ...stepsToFaceBehind(head, reader)];
      for (const [side, steps] of [
        [1, steps1],
        [2, steps2],
      ] as const) {
        for (const pointing of HEADS) {
          const onSide = { 0: NAMES.up, 90: NAMES.left, 180: NAMES.down, 270: NAMES.right }[pointing];
          const name = inHand(head, side, turn, reader, pointing)['arrow head'] as keyof typeof NAMES;
          const back = undoSteps(NAMES[name], steps);
          expect([back.x + 0, back.y + 0]).toEqual([onSide.x, onSide.y]);
        }
      }
    }
  });

  it('the picture of a back that lies right is turned by as much as its head, the other way', () => {
    for (const { turn, reader, head } of everyWay) {
      const position = { piece: 'A', face: 'front', head, trim: { x: 50, y: 70, w: 100, h: 100 } } as const;
      const back = backOnSide2(position, turn, reader, SHEET);
      expect(turnedBy(stepsToShownFace(head))).toBe((360 - head) % 360);
      const steps: readonly Step[] = [{ flip: throughPaper(turn) }, ...stepsToFaceBehind(head, reader)];
      expect(turnedBy(steps)).toBe((360 - back.head) % 360);
    }
  });

  it('side 2 looks through the paper as in a mirror, or as in water', () => {
    expect(throughPaper('side-to-side')).toBe('left-right');
    expect(throughPaper('end-to-end')).toBe('top-bottom');
  });
});

describe('The edges of a face', () => {
  /** A trim of 30 x 20 pt whose edges have 1 to 4 pt of bleed, less by half along their first 5 pt. */
  const trim = { w: 30, h: 20 };
  const around = stepped({ left: 1, right: 2, top: 3, bottom: 4 });

  const whole = (reaches: Reaches): Edges => {
    const at = (edge: keyof Edges) => Math.max(...reaches[edge].map(({ reach }) => reach));
    return { left: at('left'), right: at('right'), top: at('top'), bottom: at('bottom') };
  };

  it('are those of the sheet while it lies upright', () => {
    expect(onFace(around, trim, stepsToShownFace(0))).toEqual(around);
  });

  it('go round with the piece', () => {
    expect(whole(onFace(around, trim, stepsToShownFace(90)))).toEqual({
      left: 4,
      right: 3,
      top: 1,
      bottom: 2,
    });
    expect(whole(onFace(around, trim, stepsToShownFace(180)))).toEqual({
      left: 2,
      right: 1,
      top: 4,
      bottom: 3,
    });
    expect(whole(onFace(around, trim, stepsToShownFace(270)))).toEqual({
      left: 3,
      right: 4,
      top: 2,
      bottom: 1,
    });
  });

  it('change places when the reader turns the piece over', () => {
    const over = { left: 2, right: 1, top: 3, bottom: 4 };
    expect(whole(onFace(around, trim, stepsToFaceBehind(0, 'head-to-head')))).toEqual(over);
    const up = { left: 1, right: 2, top: 4, bottom: 3 };
    expect(whole(onFace(around, trim, stepsToFaceBehind(0, 'head-to-toe')))).toEqual(up);
  });

  it('keep the steps of a bleed where they are on the paper', () => {
    // The step is 5 pt from the lower left corner of side 1, on the left edge and on the lower one. Turned so that what
    // was at the left is below, it is at the right of that edge; half round, at the far ends of all.
    const at = (steps: readonly Step[], edge: keyof Edges) =>
      onFace(around, trim, steps)[edge].map(({ to }) => to);
    expect(at(stepsToShownFace(0), 'bottom')).toEqual([5, 30]);
    expect(at(stepsToShownFace(180), 'top')).toEqual([25, 30]);
    expect(at(stepsToShownFace(180), 'right')).toEqual([15, 20]);
    // Seen from behind as a page is turned, left and right change places and up stays up.
    expect(at(stepsToFaceBehind(0, 'head-to-head'), 'bottom')).toEqual([25, 30]);
    expect(at(stepsToFaceBehind(0, 'head-to-head'), 'right')).toEqual([5, 20]);
    expect(at(stepsToFaceBehind(0, 'head-to-toe'), 'top')).toEqual([5, 30]);
    expect(at(stepsToFaceBehind(0, 'head-to-toe'), 'left')).toEqual([15, 20]);
    // A quarter turn brings the head up that pointed left: the left edge, read upwards, becomes the top, read rightwards.
    expect(at(stepsToShownFace(90), 'top')).toEqual([5, 20]);
    expect(at(stepsToShownFace(90), 'right')).toEqual([25, 30]);
  });

  it('are found from the direction they lie in', () => {
    for (const edge of ['left', 'right', 'top', 'bottom'] as const)
      expect(edgeTowards(OUTWARD[edge])).toBe(edge);
  });
});

/** The same lengths, but half of them along the first 5 pt of each edge from the left or from below. */
function stepped(edges: Edges): Reaches {
  const step = (reach: number, length: number) => [
    { from: 0, to: 5, reach: reach / 2 },
    { from: 5, to: length, reach },
  ];
  return {
    left: step(edges.left, 20),
    right: step(edges.right, 20),
    top: step(edges.top, 30),
    bottom: step(edges.bottom, 30),
  };
}
