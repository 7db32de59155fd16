// The dummy of one side in its parts: the edge below, the guide, the pencil line, and the head of each piece.
import { describe, expect, it } from 'vitest';
import type { Head } from '../../../shared/geometry/head.ts';
import type { Point } from '../../../shared/geometry/space.ts';
import type { Work } from '../../../shared/geometry/work.ts';
import { sheetOf } from '../../../shared/job/job.ts';
import type { PathShape, Shape } from '../../../shared/pdf/document/shape.ts';
import { drawPass, heldInWords, sheetIn } from '../../../shared/runSheet/drawPass.ts';
import { drawPiece } from '../../../shared/runSheet/pieceBox.ts';
import { seenPasses } from '../../../shared/runSheet/seenPasses.ts';
import { MEASURES } from '../../kit/setPapers.ts';
import { CARDS, jobOf } from '../../kit/ticketJobs.ts';

const SCALE = 0.2;

/** The drawings of both passes of the cards, held at a side or in the middle. */
function drawnPasses(across: string, work: Work) {
  const job = jobOf({ ...CARDS, sheet: { ...CARDS.sheet, hold: { across, along: 'lead' } } }, work);
  const sheet = sheetOf(job.brief).size;
  return seenPasses(job).map((pass) => ({
    pass,
    at: sheetIn(sheet, SCALE),
    shapes: drawPass({ pass, sheet, byHand: true, letters: new Map() }, SCALE, MEASURES).shapes,
  }));
}

const pointsOf = (shape: PathShape): readonly Point[] =>
  shape.contours.flatMap(({ from, along }) => [
    from,
    ...along.map((step) => ('to' in step ? step.to : step)),
  ]);
const boxOf = (shape: PathShape) => {
  const points = pointsOf(shape);
  const [xs, ys] = [points.map((p) => p.x), points.map((p) => p.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), bottom: Math.min(...ys), top: Math.max(...ys) };
};
const paths = (shapes: readonly Shape[]) => shapes.filter((s): s is PathShape => s.kind === 'path');
const words = (shapes: readonly Shape[]) => shapes.flatMap((s) => (s.kind === 'words' ? [s.words] : []));
const TUMBLE = { style: 'work-and-tumble' } as const;
const TURN = { style: 'work-and-turn' } as const;

describe('the drawing of a pass', () => {
  it('names the edge that comes last as side 1 names it', () => {
    const last = (work: Work) =>
      drawnPasses('left', work).map(({ shapes }) =>
        words(shapes).find((said) => /^(lead|tail) edge$/.test(said)),
      );
    expect(last(TURN)).toEqual(['tail edge', 'tail edge']);
    expect(last(TUMBLE)).toEqual(['tail edge', 'lead edge']);
  });

  it('has the guide beside the edge that it touches, and on both sides where the sheet is centred', () => {
    const guides = (across: string) =>
      drawnPasses(across, TURN).map(({ at, shapes }) =>
        paths(shapes)
          .map(boxOf)
          .filter(({ left, right, top, bottom }) => right - left === 7 && top - bottom > at.h / 3)
          .map(({ left, right }) =>
            right <= at.x ? 'left' : left >= at.x + at.w ? 'right' : 'over the sheet',
          ),
      );
    expect(guides('left')).toEqual([['left'], ['left']]);
    expect(guides('right')).toEqual([['right'], ['right']]);
    expect(guides('centre')).toEqual([
      ['left', 'right'],
      ['left', 'right'],
    ]);
  });

  it('has three strokes of the pencil over the edge, near the end where the turn brings them', () => {
    const strokes = (across: string, work: Work) =>
      drawnPasses(across, work).map(({ at, shapes }) => {
        const short = paths(shapes)
          .map(boxOf)
          .filter(({ left, right, top, bottom }) => top === bottom && Math.abs(right - left - 10) < 1e-9);
        expect(short).toHaveLength(3);
        const x = (short[0]!.left + short[0]!.right) / 2;
        return [
          Math.abs(x - at.x) < 1e-9 ? 'left' : Math.abs(x - at.x - at.w) < 1e-9 ? 'right' : 'off the edge',
          short[0]!.top > at.y + at.h / 2 ? 'lead' : 'tail',
        ];
      });
    expect(strokes('left', TURN)).toEqual([
      ['left', 'lead'],
      ['right', 'lead'],
    ]);
    expect(strokes('right', TUMBLE)).toEqual([
      ['right', 'lead'],
      ['right', 'tail'],
    ]);
  });

  it('says where the sheet is held', () => {
    expect(drawnPasses('right', TURN).map(({ pass }) => heldInWords(pass))).toEqual([
      'side guide: right edge',
      'side guide: left edge',
    ]);
    expect(drawnPasses('centre', TURN).map(({ pass }) => heldInWords(pass))).toEqual([
      'held in the middle',
      'held in the middle',
    ]);
  });
});

describe('the box of a piece', () => {
  const seen = (head: Head) => ({
    number: 7,
    piece: 'Card',
    face: 'front' as const,
    printed: true,
    trim: { x: 0, y: 0, w: 50, h: 50 },
    head,
  });

  it.each([
    [0, { x: 50, y: 180 }],
    [90, { x: 20, y: 130 }],
    [180, { x: 50, y: 80 }],
    [270, { x: 80, y: 130 }],
  ] as const)('has its triangle at the head, turned by %i degrees', (head, edge) => {
    const room = { x: 20, y: 80, w: 60, h: 100 };
    const triangle = paths(drawPiece(seen(head), room, undefined, MEASURES)).find(
      ({ fill }) => fill === 'ink',
    )!;
    const [tip, one, other] = pointsOf(triangle);
    // The tip is what lies nearest to the middle of the edge that the head points to.
    const far = (p: Point) => Math.hypot(p.x - edge.x, p.y - edge.y);
    expect(far(tip!)).toBeLessThan(2);
    expect(far(one!)).toBeGreaterThan(far(tip!));
    expect(far(other!)).toBeCloseTo(far(one!));
  });

  it('says its number, and its letter and name as far as there is room', () => {
    const said = (w: number, h: number, letter: string | undefined) =>
      words(drawPiece({ ...seen(0), piece: 'Place tag' }, { x: 0, y: 0, w, h }, letter, MEASURES));
    expect(said(200, 100, 'B')).toEqual(['F', '7 B Place tag']);
    expect(said(40, 100, 'B')).toEqual(['F', '7 B']);
    expect(said(40, 100, undefined)).toEqual(['F', '7']);
    expect(said(10, 12, 'B')).toEqual(['F']);
  });

  it('says blank where nothing is printed', () => {
    const blank = { ...seen(0), face: 'back' as const, printed: false };
    expect(words(drawPiece(blank, { x: 0, y: 0, w: 80, h: 60 }, undefined, MEASURES))).toEqual(['blank']);
  });
});
