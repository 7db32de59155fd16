import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  intoHand,
  pageInWords,
  pageShown,
  TAKEN,
  takeInHand,
  turnHeld,
} from '../../../renderer/lighttable/cardInHand.ts';
import { nearestEdge } from '../../../renderer/lighttable/nearestEdge.ts';
import { HEADS, lying, type ReaderTurn } from '../../../shared/geometry/head.ts';
import { apply, applyToRect } from '../../../shared/geometry/transform.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { Job } from '../../../shared/job/job.ts';
import { partnerOf } from '../../../shared/layout/partner.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { cutOut, hold, print, turned, unturned } from '../../kit/paper.ts';
import { supperJob } from '../kit/supperJob.ts';

const WAYS: readonly ReaderTurn[] = ['head-to-head', 'head-to-toe'];
const TURNS: readonly Turn[] = ['side-to-side', 'end-to-end'];

function jobWith(turn: Turn, reader: ReaderTurn, arrangement: readonly Position[]): Job {
  return {
    ...supperJob,
    brief: {
      ...supperJob.brief,
      work: { style: 'work-and-back', turn },
      pieces: supperJob.brief.pieces.map((p) => ({ ...p, turned: reader })),
    },
    arrangement,
  };
}

/** A position of either face, its head anywhere. */
const at = (head: 0 | 90 | 180 | 270, face: 'front' | 'back' = 'front'): Position => ({
  piece: 'Supper',
  face,
  head,
  trim: { x: 100, y: 200, ...lying({ w: 360, h: 504 }, head) },
});

describe('a piece in hand', () => {
  it('is held with its front towards the eye, the right way up, at its own size', () => {
    for (const head of HEADS) {
      const held = takeInHand(jobWith('side-to-side', 'head-to-head', [at(head)]), 0)!;
      expect(held.size).toEqual({ w: 360, h: 504 });
      expect(pageInWords(pageShown(held, TAKEN)!)).toBe('the front of "Supper", the right way up');
    }
  });

  it('whose back lies on side 1 is held by its front all the same', () => {
    for (const turn of TURNS) {
      const held = takeInHand(jobWith(turn, 'head-to-toe', [at(90, 'back')]), 0)!;
      expect(held.front.side).toBe(2);
      expect(pageInWords(held.front)).toBe('the front of "Supper", the right way up');
      expect(pageInWords(pageShown(held, turnHeld(TAKEN, 'head-to-toe'))!)).toBe(
        'the back of "Supper", the right way up',
      );
    }
  });

  it('shows its back as paper would that was printed, turned, printed again, cut and turned by its reader', () => {
    const any = fc.record({
      head: fc.constantFrom(...HEADS),
      turn: fc.constantFrom(...TURNS),
      reader: fc.constantFrom(...WAYS),
      way: fc.constantFrom(...WAYS),
    });
    fc.assert(
      fc.property(any, ({ head, turn, reader, way }) => {
        const position = at(head);
        const held = takeInHand(jobWith(turn, reader, [position]), 0)!;
        const said = pageInWords(pageShown(held, turnHeld(TAKEN, way))!);
        const back = partnerOf(position, reader, turn, { w: 792, h: 1224 });
        const ink = [
          ...print([{ art: 'front', trim: position.trim, head }], unturned),
          ...print([{ art: 'back', trim: back.trim, head: back.head }], turned(turn, 792, 1224)),
        ];
        const inHand = hold(cutOut(ink, position.trim), head);
        const seen = way === 'head-to-head' ? inHand.turnedLikeAPage : inHand.turnedLikeACalendar;
        const stands = seen['back head'] === 'up' ? 'the right way up' : 'upside down';
        expect(said).toBe(`the back of "Supper", ${stands}`);
      }),
    );
  });

  it('turned twice about different axes is upside down, and four times as it was', () => {
    const twice = turnHeld(turnHeld(TAKEN, 'head-to-head'), 'head-to-toe');
    expect(twice).toEqual({ shows: 'front', flipped: true });
    expect(turnHeld(turnHeld(twice, 'head-to-head'), 'head-to-toe')).toEqual(TAKEN);
    const held = takeInHand(jobWith('side-to-side', 'head-to-head', [at(0)]), 0)!;
    expect(pageInWords(pageShown(held, twice)!)).toBe('the front of "Supper", upside down');
  });

  it('is cut from just its own place on each side', () => {
    for (const head of HEADS) {
      const held = takeInHand(jobWith('end-to-end', 'head-to-head', [at(head)]), 0)!;
      for (const page of [held.front, held.behind!]) {
        const cut = applyToRect(intoHand(page), page.trim);
        expect([cut.x, cut.y, cut.w, cut.h].map((n) => Math.round(n * 1e6) / 1e6 + 0)).toEqual([
          0, 0, 360, 504,
        ]);
      }
    }
    // With its head to the left, what is at the left of side 1 is up in the hand.
    const onItsSide = takeInHand(jobWith('side-to-side', 'head-to-head', [at(90)]), 0)!;
    expect(apply(intoHand(onItsSide.front), { x: 100, y: 200 + 360 }).y).toBeCloseTo(504, 9);
  });

  it('on a sheet printed on one side has blank paper behind', () => {
    const simplex: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'simplex' } } };
    const held = takeInHand(simplex, 0)!;
    expect(pageShown(held, turnHeld(TAKEN, 'head-to-head'))).toBeUndefined();
  });

  it('with nothing printed behind it has blank paper there too', () => {
    const oneForm: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-turn' } } };
    const lonely = { ...oneForm, arrangement: [supperJob.arrangement[0]!] };
    const held = takeInHand(lonely, 0)!;
    expect(pageInWords(held.behind!)).toBe('blank paper');
    const backAlone = { ...oneForm, arrangement: [{ ...supperJob.arrangement[0]!, face: 'back' as const }] };
    expect(pageInWords(takeInHand(backAlone, 0)!.front)).toBe('blank paper');
  });

  it('is told when it lies on its side behind', () => {
    const oneForm: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-turn' } } };
    const [a, b] = supperJob.arrangement;
    const job = { ...oneForm, arrangement: [a!, { ...b!, face: 'back' as const, head: 90 as const }] };
    expect(pageInWords(takeInHand(job, 0)!.behind!)).toBe('the back of "Supper", lying on its side');
  });

  it('cannot be taken where there is none', () => {
    expect(takeInHand(supperJob, 9)).toBeUndefined();
  });
});

describe('the edge that a hand takes', () => {
  const paper = { x: 100, y: 50, w: 200, h: 400 };

  it('is the nearest one, within a quarter of the paper', () => {
    expect(nearestEdge({ x: 110, y: 250 }, paper)).toBe('left');
    expect(nearestEdge({ x: 260, y: 250 }, paper)).toBe('right');
    expect(nearestEdge({ x: 200, y: 140 }, paper)).toBe('lead');
    expect(nearestEdge({ x: 200, y: 380 }, paper)).toBe('tail');
    expect(nearestEdge({ x: 150, y: 250 }, paper)).toBe('left');
    expect(nearestEdge({ x: 151, y: 250 }, paper)).toBeUndefined();
  });

  it('may be missed by a little', () => {
    expect(nearestEdge({ x: 84, y: 250 }, paper)).toBe('left');
    expect(nearestEdge({ x: 83, y: 250 }, paper)).toBeUndefined();
    expect(nearestEdge({ x: 200, y: 467 }, paper)).toBeUndefined();
  });
});
