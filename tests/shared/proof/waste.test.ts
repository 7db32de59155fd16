import { describe, expect, it } from 'vitest';
import type { Rect } from '../../../shared/geometry/space.ts';
import type { Mark } from '../../../shared/marks/mark.ts';
import type { PageSource } from '../../../shared/proof/pageSource.ts';
import type { Picture } from '../../../shared/proof/picture.ts';
import { drawSide } from '../../../shared/proof/sideDrawing.ts';
import { checkWaste } from '../../../shared/proof/waste.ts';
import { sourceBy } from '../../kit/sourceBy.ts';

const MM = 72 / 25.4;
const DPI = 200;
const SHEET = { w: 80 * MM, h: 60 * MM };
const PRINTED: Rect = { x: 20 * MM, y: 20 * MM, w: 40 * MM, h: 20 * MM };
const CROP: Mark = {
  kind: 'line',
  from: { x: 25 * MM, y: 45 * MM },
  to: { x: 25 * MM, y: 50 * MM },
  width: 0.25,
  ink: 'registration',
};
const RING: Mark = {
  kind: 'ring',
  centre: { x: 40 * MM, y: 10 * MM },
  radius: 2 * MM,
  width: 0.25,
  ink: 'black',
};
const BAR: Mark = {
  kind: 'shape',
  corners: [
    { x: 50 * MM, y: 52 * MM },
    { x: 60 * MM, y: 52 * MM },
    { x: 60 * MM, y: 55 * MM },
    { x: 50 * MM, y: 55 * MM },
  ],
  ink: 'black',
};
const WORDS: Mark = {
  kind: 'words',
  words: 'Odd cards, side 1',
  at: { x: 10 * MM, y: 4 * MM },
  size: 6,
  width: 50,
  head: 0,
  ink: 'black',
};

/** Whether there is ink at a point of the sheet, in mm from the left edge and from the tail. */
type Ink = (x: number, y: number) => boolean;

const box =
  (left: number, tail: number, w: number, h: number): Ink =>
  (x, y) =>
    x >= left && x < left + w && y >= tail && y < tail + h;
const piece = box(20, 20, 40, 20);
// 0.25 pt are 0.088 mm.
const crop = (right = 0, up = 0) => box(25 - 0.044 + right, 45 + up, 0.088, 5);
const ring =
  (radius = 2): Ink =>
  (x, y) =>
    Math.abs(Math.hypot(x - 40, y - 10) - radius) < 0.044;
const bar = (w = 10) => box(50, 52, w, 3);
const words: Ink = (x, y) => x >= 10.2 && x < 10 + 50 / MM && y >= 4 && y < 5.5 && x % 1 < 0.5;

/** Paper with this ink, each pixel as dark as it is covered. */
function sheetWith(...inks: readonly Ink[]): PageSource {
  const PARTS = 4;
  return sourceBy(SHEET, ({ a, d, e, f }, width, height): Picture => {
    const pixels = new Uint8Array(width * height * 3).fill(255);
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        let covered = 0;
        for (let i = 0; i < PARTS * PARTS; i++) {
          const x = (column + ((i % PARTS) + 0.5) / PARTS - e) / a / MM;
          const y = (row + (Math.floor(i / PARTS) + 0.5) / PARTS - f) / d / MM;
          if (inks.some((ink) => ink(x, y))) covered++;
        }
        const at = (row * width + column) * 3;
        pixels.fill(255 - Math.round((255 * covered) / PARTS ** 2), at, at + 3);
      }
    }
    return { width, height, pixels };
  });
}

const check = (marks: readonly Mark[], ...inks: readonly Ink[]) =>
  checkWaste(1, drawSide(sheetWith(piece, ...inks), [PRINTED], DPI / 72, undefined), {
    printed: [PRINTED],
    marks,
  });
const kinds = (marks: readonly Mark[], ...inks: readonly Ink[]) =>
  check(marks, ...inks).map(({ kind }) => kind);

describe('The waste of a side', () => {
  it('is right with every mark in its place and white elsewhere', () => {
    expect(check([CROP, RING, BAR, WORDS], crop(), ring(), bar(), words)).toEqual([]);
  });

  it('may have a crop mark 0.1 mm off; at 0.5 mm and at 3 mm the mark is missed and its ink is told', () => {
    expect(kinds([CROP], crop(0.1))).toEqual([]);
    expect(kinds([CROP], crop(0.5))).toEqual(['mark-missing', 'stray-ink']);
    expect(kinds([CROP], crop(3))).toEqual(['mark-missing', 'stray-ink']);
    expect(kinds([CROP], crop(0, 3))).toEqual(['mark-missing', 'stray-ink']);
  });

  it('may have a crop mark a twentieth too short, but not a fifth', () => {
    expect(kinds([CROP], box(25 - 0.044, 45, 0.088, 4.75))).toEqual([]);
    expect(kinds([CROP], box(25 - 0.044, 45, 0.088, 4))).toEqual(['mark-missing']);
  });

  it('misses a mark that is not there, by its name and its place', () => {
    const missed = check([CROP, RING, BAR, WORDS]);
    expect(missed.map(({ message }) => message)).toEqual([
      'Side 1: a line of the marks should be printed 25.0 mm from the left edge and 47.5 mm from the tail, and is not there as it should be.',
      'Side 1: the ring of a register target should be printed 40.0 mm from the left edge and 10.0 mm from the tail, and is not there as it should be.',
      'Side 1: a filled mark should be printed 55.0 mm from the left edge and 53.5 mm from the tail, and is not there as it should be.',
      // From 0.24 of 6 pt below the baseline to 0.93 above it: the middle lies 0.73 mm above it.
      'Side 1: the line "Odd cards, side 1" should be printed 18.8 mm from the left edge and 4.7 mm from the tail, and is not there as it should be.',
    ]);
  });

  it('misses a ring of another size, half a bar and half a line of type', () => {
    expect(kinds([RING], ring(2.6))).toEqual(['mark-missing', 'stray-ink']);
    expect(kinds([RING], ring(1.4))).toEqual(['mark-missing', 'stray-ink']);
    expect(kinds([BAR], bar(5))).toEqual(['mark-missing']);
    expect(kinds([WORDS], (x, y) => x < 18 && words(x, y))).toEqual(['mark-missing']);
  });

  it('looks for words that are knocked out of a bar, and not for the bar below them', () => {
    const knocked: Mark = { ...WORDS, at: { x: 51 * MM, y: 53 * MM }, width: 8 * MM, ink: 'paper' };
    expect(kinds([BAR, knocked], (x, y) => bar()(x, y) && !box(51, 53, 4, 1.5)(x, y))).toEqual([]);
    expect(kinds([BAR, knocked], bar())).toEqual(['mark-missing']);
  });

  it('tells a dot of half a millimetre and where it is, and lets the grain of a renderer pass', () => {
    const [stray, ...more] = check([], box(70, 30, 0.5, 0.5));
    expect(more).toEqual([]);
    expect(stray?.kind).toBe('stray-ink');
    expect(stray?.message).toMatch(
      /^Side 1: there is ink \(0\.[567] x 0\.[567] mm\) 70\.[23] mm from the left edge and 30\.[23] mm from the tail, where the paper should be white\.$/,
    );
    expect(kinds([], box(70, 30, 0.1, 0.1))).toEqual([]);
  });

  it('lets the ink of a piece reach 0.2 mm past its bleed, not 1 mm', () => {
    expect(kinds([], box(59, 20, 1.2, 20))).toEqual([]);
    expect(kinds([], box(59, 20, 2, 20))).toEqual(['stray-ink']);
  });

  it('tells two blots that lie apart as two, one long stroke as one, and no more than a dozen places', () => {
    expect(kinds([], box(5, 5, 1, 1), box(70, 50, 1, 1))).toHaveLength(2);
    expect(kinds([], box(5, 55, 70, 0.5))).toHaveLength(1);
    const dots = Array.from({ length: 14 }, (_, i) => box(2 + 5.5 * i, 55, 0.6, 0.6));
    expect(kinds([], ...dots)).toHaveLength(12);
  });
});
