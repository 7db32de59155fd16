// Facts, cautions and the head of a page: nothing runs out of its box, nothing lies over anything else.
import { describe, expect, it } from 'vitest';
import { furnitureOf, setCautions, setFacts } from '../../../shared/runSheet/styles.ts';
import { MEASURES } from '../../kit/setPapers.ts';
import {
  type Extent,
  extentOf,
  liesApart,
  liesIn,
  pathsIn,
  roomOf,
  textIn,
  wordsIn,
} from '../../kit/shapes.ts';

const WIDTH = 531;

/** Boxes in a row: of one size, from edge to edge, with the same room between them. */
function expectRow(frames: readonly Extent[], width: number, height: number) {
  const [first] = frames;
  expect(first!.left).toBeCloseTo(0);
  expect(frames.at(-1)!.right).toBeCloseTo(width);
  for (const [i, frame] of frames.entries()) {
    expect(frame.right - frame.left).toBeCloseTo(first!.right - first!.left);
    expect([frame.top, frame.bottom].map((y) => Number(y.toFixed(6)) + 0)).toEqual([
      0,
      Number((-height).toFixed(6)),
    ]);
    const next = frames[i + 1];
    if (next !== undefined) expect(next.left - frame.right).toBeCloseTo(6);
  }
}

describe('facts seen from afar', () => {
  const FACTS = [
    { label: 'Load', figure: '287 sheets', note: '273 needed and 14 overs' },
    {
      label: 'Sheet',
      figure: '320 × 450 mm',
      note: 'Uncoated card of the heavier kind, across × along the feed',
    },
    { label: 'Way of working', figure: 'work-and-tumble', note: 'turned end-to-end' },
    { label: 'On a sheet', figure: '22 up', note: 'one' },
  ];
  const block = setFacts(FACTS, WIDTH, MEASURES);
  const frames = pathsIn(block.shapes).map(extentOf);

  it('stand in boxes of one size across the page', () => {
    expect(block.w).toBeCloseTo(WIDTH);
    expect(frames).toHaveLength(4);
    expectRow(frames, WIDTH, block.h);
    expect(
      pathsIn(block.shapes).every(({ stroke, fill }) => stroke?.tone === 'ink' && fill === undefined),
    ).toBe(true);
  });

  it('have label, figure and note one below the other, each well within its box', () => {
    for (const [i, { label, figure, note }] of FACTS.entries()) {
      const mine = wordsIn(block.shapes).filter((words) => liesIn(roomOf(words), frames[i]!, 3));
      expect(textIn(mine)).toBe(`${label} ${figure} ${note}`);
      const tops = mine.map((words) => words.at.y);
      expect(tops).toEqual(tops.toSorted((a, b) => b - a));
      expect(mine.every((a) => mine.every((b) => a === b || liesApart(roomOf(a), roomOf(b))))).toBe(true);
      expect(mine[0]!.at.x).toBeCloseTo(frames[i]!.left + 6);
    }
    expect(wordsIn(block.shapes)).toHaveLength(
      frames.flatMap((frame) => wordsIn(block.shapes).filter((w) => liesIn(roomOf(w), frame, 3))).length,
    );
  });

  it('have their figures on one line, the longest as large as their box lets them be', () => {
    const figures = wordsIn(block.shapes).filter(({ words }) => FACTS.some(({ figure }) => figure === words));
    expect(figures).toHaveLength(4);
    for (const { at } of figures) expect(at.y).toBeCloseTo(figures[0]!.at.y);
    const inner = frames[0]!.right - frames[0]!.left - 12;
    for (const figure of figures) {
      const { left, right } = roomOf(figure);
      // Either of the full size, or from side to side.
      if (figure.size < 17) expect(right - left).toBeCloseTo(inner);
      expect(figure.size).toBeLessThanOrEqual(17);
    }
    expect(figures.map(({ size }) => size < 17)).toEqual([false, true, true, false]);
  });

  it('cut a figure short that would be too small to be seen', () => {
    const [said] = wordsIn(
      setFacts([{ label: '', figure: 'a way of working with no end to its name', note: '' }], 90, MEASURES)
        .shapes,
    ).filter(({ weight }) => weight === 'strong');
    expect(said!.size).toBe(10);
    expect(said!.words).toMatch(/^a way.*…$/);
  });
});

describe('cautions', () => {
  const SAID = [
    'Feeding: keep clear of rollers.',
    'Trimming: a guillotine can maim, so let trained operators cut.',
    'Lifting.',
  ];
  const block = setCautions(SAID, WIDTH, MEASURES);
  const frames = pathsIn(block.shapes).filter(({ stroke }) => stroke !== undefined);
  const signs = pathsIn(block.shapes).filter(({ fill }) => fill === 'ink');

  it('stand side by side in boxes of one height, a black sign at the left of each', () => {
    expectRow(frames.map(extentOf), WIDTH, block.h);
    expect(signs).toHaveLength(3);
    for (const [i, sign] of signs.map(extentOf).entries()) {
      const frame = extentOf(frames[i]!);
      expect([sign.left, sign.bottom, sign.top]).toEqual([frame.left, frame.bottom, frame.top]);
      expect(sign.right - sign.left).toBe(16);
    }
  });

  it('have a white mark in the middle of the sign', () => {
    const marks = wordsIn(block.shapes).filter(({ tone }) => tone === 'paper');
    expect(marks.map(({ words }) => words)).toEqual(['!', '!', '!']);
    for (const [i, mark] of marks.entries()) {
      const [room, sign] = [roomOf(mark), extentOf(signs[i]!)];
      expect(room.left + room.right).toBeCloseTo(sign.left + sign.right);
      expect(room.top + room.bottom).toBeCloseTo(sign.top + sign.bottom);
    }
  });

  it('are told whole, beside the sign and within the box', () => {
    for (const [i, said] of SAID.entries()) {
      const right = { ...extentOf(frames[i]!), left: extentOf(signs[i]!).right };
      const mine = wordsIn(block.shapes).filter(
        (words) => words.tone === 'ink' && liesIn(roomOf(words), right, 4),
      );
      expect(textIn(mine)).toBe(said);
    }
  });
});

describe('the head of a page', () => {
  it('says what it is at the left, and the day and the page at the right', () => {
    const { head, foot } = furnitureOf('Run sheet', 'Supper', '2026-03-01', WIDTH, MEASURES);
    const { shapes, w, h } = head(1, 2);
    const [left, right] = wordsIn(shapes);
    expect([left!.words, right!.words]).toEqual(['Run sheet · Supper', '2026-03-01 · page 1 of 2']);
    expect([w, roomOf(left!).left]).toEqual([WIDTH, 0]);
    expect(roomOf(right!).right).toBeCloseTo(WIDTH);
    expect(left!.at.y).toBeCloseTo(right!.at.y);
    expect(-h).toBeLessThan(roomOf(left!).bottom - 4);
    expect(foot(1, 2)).toEqual({ w: 0, h: 0, shapes: [] });
  });

  it('cuts a title short before it meets the day', () => {
    const { head } = furnitureOf('Dummy', 'A supper '.repeat(30), '2026-03-01', WIDTH, MEASURES);
    const [left, right] = wordsIn(head(1, 9).shapes);
    expect(left!.words).toMatch(/…$/);
    const room = roomOf(right!).left - roomOf(left!).right;
    expect(room).toBeGreaterThanOrEqual(12);
    expect(room).toBeLessThan(24);
  });
});
