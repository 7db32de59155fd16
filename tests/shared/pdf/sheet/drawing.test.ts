import { PDFDocument, PDFName, type PDFRef } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { Head } from '../../../../shared/geometry/head.ts';
import { lying } from '../../../../shared/geometry/head.ts';
import type { Placement } from '../../../../shared/layout/placement.ts';
import type { Mark } from '../../../../shared/marks/mark.ts';
import { drawMark } from '../../../../shared/pdf/sheet/drawMarks.ts';
import { numbers } from '../../../../shared/pdf/sheet/operators.ts';
import { drawFace } from '../../../../shared/pdf/sheet/placeFace.ts';
import { embedType } from '../../../../shared/pdf/sheet/setType.ts';
import { addSheetPage } from '../../../../shared/pdf/sheet/sheetPage.ts';
import { sheetFont } from '../../../kit/fourColours.ts';
import { picturesOf } from '../../../kit/readBack.ts';

/** Marks alone on a page of 100 x 100 pt, as PDFium shows them at four pixels for each pt. */
async function show(...marks: readonly Mark[]) {
  const target = await PDFDocument.create({ updateMetadata: false });
  const type = await embedType(target, sheetFont);
  const operators = marks.map((mark) => drawMark(mark, type.encode));
  addSheetPage(target, { w: 100, h: 100 }, { operators, forms: {}, face: type.ref });
  const [picture] = await picturesOf(await target.save(), 4);
  return (x: number, y: number) => (picture?.at(x, y) ?? []).every((c) => c < 128);
}

const words = (more: Partial<Mark & { kind: 'words' }>): Mark => ({
  kind: 'words',
  words: '■■■■■■■■',
  at: { x: 20, y: 50 },
  size: 20,
  width: 30,
  head: 0,
  ink: 'black',
  ...more,
});

describe('numbers in a content stream', () => {
  it('are plain decimals to a ten-thousandth of a point', () => {
    expect(numbers(1, -2.5, 0.00004, -0.00004, 1e-7, 123456.78901, 1 / 3)).toBe(
      '1 -2.5 0 0 0 123456.789 0.3333',
    );
  });
});

describe('marks as they are printed', () => {
  it('keep words inside their own box, however long they turn out', async () => {
    const isInk = await show(words({}));
    expect(isInk(45, 57)).toBe(true);
    expect(isInk(51, 57)).toBe(false);
  });

  it.each<[Head, number, number]>([
    [0, 35, 57],
    [90, 13, 65],
    [180, 5, 43],
    [270, 27, 35],
  ])('turn words by their head, %i degrees counter-clockwise about where they start', async (head, x, y) => {
    const isInk = await show(words({ head }));
    expect(isInk(x, y)).toBe(true);
    expect(isInk(40 - x, 100 - y)).toBe(false);
  });

  it('draw a ring round', async () => {
    const isInk = await show({
      kind: 'ring',
      centre: { x: 50, y: 50 },
      radius: 40,
      width: 2,
      ink: 'registration',
    });
    for (let degrees = 0; degrees < 360; degrees += 15) {
      const [x, y] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
      expect(isInk(50 + 40 * x, 50 + 40 * y)).toBe(true);
      expect(isInk(50 + 38 * x, 50 + 38 * y)).toBe(false);
      expect(isInk(50 + 42 * x, 50 + 42 * y)).toBe(false);
    }
  });

  it('fill shapes, and knock out of them what is paper', async () => {
    const square = (from: number, to: number) => [
      { x: from, y: from },
      { x: to, y: from },
      { x: to, y: to },
      { x: from, y: to },
    ];
    const isInk = await show(
      { kind: 'shape', corners: square(10, 90), ink: 'black' },
      { kind: 'shape', corners: square(40, 60), ink: 'paper' },
    );
    expect([isInk(5, 5), isInk(20, 20), isInk(50, 50)]).toEqual([false, true, false]);
  });

  it('draw a line as thick as it is and not beyond its ends', async () => {
    const isInk = await show({
      kind: 'line',
      from: { x: 20, y: 50 },
      to: { x: 80, y: 50 },
      width: 4,
      ink: 'black',
    });
    expect([isInk(21, 50), isInk(79, 51.5), isInk(50, 48.5)]).toEqual([true, true, true]);
    expect([isInk(19, 50), isInk(81, 50), isInk(50, 52.5), isInk(50, 47.5)]).toEqual([
      false,
      false,
      false,
      false,
    ]);
  });
});

describe('a face on its place', () => {
  const bleed = { left: 1, right: 2, top: 4, bottom: 8 };
  const place = (head: Head): Placement => {
    const trim = { x: 100, y: 200, ...lying({ w: 50, h: 70 }, head) };
    const wide = { x: 0, y: 0, w: 1000, h: 1000 };
    return { piece: 'Card', face: 'front', trim, head, bleed: [wide] };
  };

  // The lower left of the form is `left` and `bottom` away from the lower left of the trim, head up; turned by its head
  // about the trim it comes to lie there.
  it.each<[Head, string]>([
    [0, '1 0 0 1 99 192'],
    [90, '0 1 -1 0 178 199'],
    [180, '-1 0 0 -1 151 278'],
    [270, '0 -1 1 0 92 251'],
  ])('lies there with bleeds that differ from edge to edge, head at %i', (head, matrix) => {
    expect(drawFace(place(head), bleed, 'Art1')).toBe(`q ${matrix} cm /Art1 Do Q`);
  });

  it('is cut off where it is to be printed less far than its art reaches', () => {
    const narrow = { ...place(0), bleed: [{ x: 99, y: 192, w: 53, h: 81.9 }] };
    expect(drawFace(narrow, bleed, 'Art2')).toBe('q 99 192 53 81.9 re W n 1 0 0 1 99 192 cm /Art2 Do Q');
    const exact = { ...place(0), bleed: [{ x: 99, y: 192, w: 53, h: 82 }] };
    expect(drawFace(exact, bleed, 'Art2')).toBe('q 1 0 0 1 99 192 cm /Art2 Do Q');
    const stepped = [
      { x: 99, y: 192, w: 53, h: 80 },
      { x: 120, y: 272, w: 32, h: 2 },
    ];
    expect(drawFace({ ...place(0), bleed: stepped }, bleed, 'Art2')).toBe(
      'q 99 192 53 80 re 120 272 32 2 re W n 1 0 0 1 99 192 cm /Art2 Do Q',
    );
  });
});

describe('the page of a sheet', () => {
  it('holds the forms it draws by their names, and no face where there are no words', async () => {
    const target = await PDFDocument.create({ updateMetadata: false });
    const form: PDFRef = target.context.register(
      target.context.stream('', { Type: 'XObject', Subtype: 'Form' }),
    );
    addSheetPage(
      target,
      { w: 100, h: 200 },
      { operators: ['/Art1 Do'], forms: { Art1: form }, face: undefined },
    );
    const resources = target.getPage(0).node.Resources();
    expect(resources?.lookup(PDFName.of('XObject'))?.toString()).toContain(`/Art1 ${form.toString()}`);
    expect(resources?.lookup(PDFName.of('Font'))?.toString()).not.toContain('MarkFace');
  });
});
