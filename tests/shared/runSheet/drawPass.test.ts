// The dummy of one side in its parts: the edge below, the guide, the pencil line, and how it fills its block.
import { describe, expect, it } from 'vitest';
import type { Work } from '../../../shared/geometry/work.ts';
import { sheetOf } from '../../../shared/job/job.ts';
import type { Shape } from '../../../shared/pdf/document/shape.ts';
import { drawPass, heldInWords, LABELS_ABOVE, scaleFor, sheetIn } from '../../../shared/runSheet/drawPass.ts';
import { seenPasses } from '../../../shared/runSheet/seenPasses.ts';
import { MEASURES } from '../../kit/setPapers.ts';
import { extentOf, liesIn, pathsIn, pointsOf, roomOf, textIn, wordsIn } from '../../kit/shapes.ts';
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

const words = (shapes: readonly Shape[]) => wordsIn(shapes).map((said) => said.words);
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
        pathsIn(shapes)
          .map(extentOf)
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
        const short = pathsIn(shapes)
          .map(extentOf)
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

describe('the drawing of a pass in its block', () => {
  const job = jobOf(CARDS);
  const sheet = sheetOf(job.brief).size;
  const draw = (scale: number, work: Work = TURN, byHand = true) =>
    seenPasses(jobOf(CARDS, work)).map((pass) => ({
      at: sheetIn(sheet, scale),
      block: drawPass({ pass, sheet, byHand, letters: new Map() }, scale, MEASURES),
    }));
  const find = (shapes: readonly Shape[], said: RegExp) => wordsIn(shapes).find((w) => said.test(w.words))!;

  it('is as large as its room lets it be, one way or the other, and no part of it lies outside', () => {
    for (const room of [
      { w: 200, h: 700 },
      { w: 500, h: 260 },
    ]) {
      const [{ block, at }] = draw(scaleFor(sheet, room)) as [ReturnType<typeof draw>[number]];
      expect(Math.abs(block.w - room.w) < 1e-6 || Math.abs(block.h - room.h) < 1e-6).toBe(true);
      expect(block.w <= room.w + 1e-6 && block.h <= room.h + 1e-6).toBe(true);
      const whole = { left: 0, right: block.w, bottom: -block.h, top: 0 };
      for (const words of wordsIn(block.shapes).filter(({ head }) => head === 0)) {
        expect(liesIn(roomOf(words), whole)).toBe(true);
      }
      for (const path of pathsIn(block.shapes)) expect(liesIn(extentOf(path), whole)).toBe(true);
      // The sheet itself, with the sides that it has.
      expect(at.w / at.h).toBeCloseTo(sheet.w / sheet.h);
      expect(at.y + at.h).toBeCloseTo(-LABELS_ABOVE);
      const drawn = pathsIn(block.shapes).map(extentOf);
      expect(drawn).toContainEqual({ left: at.x, right: at.x + at.w, bottom: at.y, top: at.y + at.h });
    }
    expect(scaleFor({ w: 100, h: 100 }, { w: 1000, h: 130 }, 30)).toBe(1);
  });

  it('has every place where the form has it, in small', () => {
    const [{ block, at }] = draw(0.3) as [ReturnType<typeof draw>[number]];
    const frames = pathsIn(block.shapes).map(extentOf);
    for (const { trim } of job.arrangement) {
      const [left, bottom] = [at.x + trim.x * 0.3, at.y + trim.y * 0.3];
      const mine = frames.filter((f) => Math.hypot(f.left - left, f.bottom - bottom) < 1e-6);
      expect(mine.some((f) => Math.abs(f.right - left - trim.w * 0.3) < 1e-6)).toBe(true);
    }
  });

  it('stands between its words: pass, feed and lead edge above, the last edge and the guide below', () => {
    for (const { block, at } of draw(0.3)) {
      const middle = (said: RegExp) => {
        const { left, right, bottom, top } = roomOf(find(block.shapes, said));
        return { x: (left + right) / 2, bottom, top };
      };
      const [pass, edge, held] = [middle(/^PASS/), middle(/^tail edge$/), middle(/^side guide/)];
      const bar = middle(/^LEAD/);
      for (const { x } of [pass, edge, held, bar]) expect(x).toBeCloseTo(at.x + at.w / 2);
      const feed = middle(/^into the printer$/);
      expect(pass.bottom).toBeGreaterThan(feed.bottom);
      expect(feed.bottom).toBeGreaterThan(bar.bottom);
      expect(bar.bottom).toBeGreaterThan(at.y + at.h);
      expect(edge.top).toBeLessThan(at.y);
      expect(held.top).toBeLessThan(edge.top);
    }
    expect(textIn(draw(0.3, TURN, false)[1]!.block.shapes)).toMatch(/^SIDE 2 /);
  });

  it('has a black bar along the whole lead edge, its words white on it', () => {
    for (const { block, at } of draw(0.3)) {
      const bar = pathsIn(block.shapes)
        .filter(({ fill }) => fill === 'ink')
        .map(extentOf)
        .find(({ left, right }) => Math.abs(right - left - at.w) < 1e-6)!;
      expect([bar.left, bar.bottom]).toEqual([at.x, at.y + at.h + 1]);
      const said = find(block.shapes, /^LEAD/);
      expect(said.tone).toBe('paper');
      expect(liesIn(roomOf(said), bar)).toBe(true);
    }
  });

  it('says on the bar what there is room for, and never that another edge leads than does', () => {
    const bars = (work: Work) =>
      [0.1, 0.16, 0.24, 0.45].map((scale) =>
        draw(scale, work).map(({ block }) => find(block.shapes, /^LEAD/).words),
      );
    expect(bars(TURN)).toEqual([
      ['LEAD EDGE', 'LEAD EDGE'],
      ['LEAD EDGE', 'LEAD EDGE: the same'],
      ['LEAD EDGE', 'LEAD EDGE: the same edge again'],
      ['LEAD EDGE', 'LEAD EDGE: the same edge again'],
    ]);
    expect(bars(TUMBLE)).toEqual([
      ['LEAD EDGE', 'LEAD: the tail'],
      ['LEAD EDGE', 'LEAD EDGE: now the tail'],
      ['LEAD EDGE', 'LEAD EDGE: now the tail of pass 1'],
      ['LEAD EDGE', 'LEAD EDGE: now the tail of pass 1'],
    ]);
    expect(draw(0.06, TUMBLE).map(({ block }) => find(block.shapes, /^LEAD/).words)).toEqual([
      'LEAD',
      'LEAD',
    ]);
  });

  it('has an arrow over the bar that points into the printer', () => {
    const [{ block, at }] = draw(0.3) as [ReturnType<typeof draw>[number]];
    const middle = at.x + at.w / 2;
    const triangles = pathsIn(block.shapes).filter((p) => p.fill === 'ink' && pointsOf(p).length === 3);
    const tip = triangles.find((p) => pointsOf(p)[0]!.y > at.y + at.h)!;
    const [top, ...feet] = pointsOf(tip);
    expect(top!.x).toBeCloseTo(middle);
    for (const foot of feet) expect(foot.y).toBeLessThan(top!.y);
    expect((feet[0]!.x + feet[1]!.x) / 2).toBeCloseTo(middle);
    const shaft = pathsIn(block.shapes)
      .map(extentOf)
      .find(({ left, right }) => left === right && Math.abs(left - middle) < 1e-6)!;
    expect(shaft.bottom).toBeGreaterThan(at.y + at.h + 15 - 1e-6);
    expect(shaft.top).toBeGreaterThanOrEqual(feet[0]!.y);
    expect(shaft.top).toBeLessThan(top!.y);
    expect(roomOf(find(block.shapes, /^into/)).left).toBeGreaterThan(feet[1]!.x);
  });

  it('fills the block of a guide that touches, and leaves those of a centred sheet open', () => {
    const looks = (across: string) =>
      drawnPasses(across, TURN).map(({ at, shapes }) =>
        pathsIn(shapes)
          .filter((path) => {
            const { left, right, top, bottom } = extentOf(path);
            return right - left === 7 && top - bottom > at.h / 3;
          })
          .map((path) => {
            const { left, right, top, bottom } = extentOf(path);
            const off = left >= at.x + at.w ? left - at.x - at.w : at.x - right;
            expect(off).toBeCloseTo(2);
            expect((top + bottom) / 2).toBeCloseTo(at.y + at.h / 2);
            return path.fill ?? path.stroke?.tone;
          }),
      );
    expect(looks('left')).toEqual([['ink'], ['ink']]);
    const open = drawnPasses('centre', TURN)[0]!.shapes;
    expect(
      pathsIn(open).filter((p) => extentOf(p).right - extentOf(p).left === 7 && p.fill === 'ink'),
    ).toEqual([]);
    expect(looks('centre')[0]).toEqual(['ink', 'ink']);
  });

  it('keeps the strokes of the pencil on the sheet, one above the other', () => {
    for (const { at, shapes } of drawnPasses('left', TUMBLE)) {
      const strokes = pathsIn(shapes)
        .map(extentOf)
        .filter(({ left, right, top, bottom }) => top === bottom && Math.abs(right - left - 10) < 1e-9);
      const heights = strokes.map(({ top }) => top);
      expect(new Set(heights).size).toBe(3);
      for (const y of heights) expect(y > at.y && y < at.y + at.h).toBe(true);
      // Close to the end: within a tenth of the drawn sheet.
      const ends = heights.map((y) => Math.min(y - at.y, at.y + at.h - y));
      expect(Math.max(...ends)).toBeLessThan(at.h / 5);
    }
  });
});
