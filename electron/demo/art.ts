// The art of the demo: cards for a harvest supper on Wrenfold Green, a village that is on no map.
import type { PDFPage } from 'pdf-lib';
import { addCard, centredLine, flood, INKS, leaf, openSketchbook, type Sketchbook, wheatEar } from './pen.ts';

/** A printed page size of the demo, in pt, and the bleed around it. */
export const CARD = { trim: { w: 360, h: 504 }, bleed: 9 } as const;
export const MENU = { trim: { w: 252, h: 540 }, bleed: 9 } as const;
export const TAG = { trim: { w: 144, h: 252 }, bleed: 9 } as const;

/** The invitation: front and back of a 5 x 7 in card. */
export async function drawSupper(drawnOn: Date): Promise<Uint8Array> {
  const book = await openSketchbook('Harvest supper invitation', drawnOn);
  const middle = CARD.trim.w / 2;

  const front = addCard(book, CARD.trim, CARD.bleed);
  flood(front, CARD.bleed, INKS.forest);
  for (const [i, lean] of [58, 38, 19, 0, -19, -38, -58].entries()) {
    wheatEar(front, middle, -12, 205 - Math.abs(3 - i) * 14, lean, i % 2 === 0 ? INKS.straw : INKS.moss);
  }
  const gold = { x: middle, color: INKS.straw, font: book.roman };
  centredLine(front, 'WRENFOLD GREEN', { ...gold, y: 436, size: 11, tracking: 4 });
  centredLine(front, 'Harvest', { ...gold, y: 368, size: 50, font: book.bold, color: INKS.cream });
  centredLine(front, 'Supper', { ...gold, y: 314, size: 50, font: book.bold, color: INKS.cream });
  rule(front, middle, 292, 60);
  centredLine(front, 'the last Saturday of September', { ...gold, y: 268, size: 13 });

  const back = addCard(book, CARD.trim, CARD.bleed);
  flood(back, CARD.bleed, INKS.cream);
  border(back, CARD.trim, 18);
  const dark = { x: middle, color: INKS.ink, font: book.roman, size: 12.5 };
  centredLine(back, 'You are asked to table', {
    ...dark,
    y: 418,
    size: 19,
    font: book.bold,
    color: INKS.forest,
  });
  rule(back, middle, 402, 60);
  [
    'Long tables under the limes, from six o’clock.',
    'Soup, pies, late plums and new bread;',
    'fiddles after dark.',
  ].forEach((line, i) => {
    centredLine(back, line, { ...dark, y: 366 - i * 24 });
  });
  centredLine(back, 'Bring a cup, and a song.', { ...dark, y: 270, font: book.bold, color: INKS.rust });
  for (const [dx, lean] of [
    [-60, 24],
    [0, 0],
    [60, -24],
  ] as const) {
    leaf(back, middle + dx, 118 - Math.abs(dx) * 0.2, 86, lean, dx === 0 ? INKS.rust : INKS.moss);
  }
  centredLine(back, 'Answers to the mill house before the first.', { ...dark, y: 62, size: 10.5 });
  return save(book);
}

/** The menu, read like a wall calendar: front and back of a 3.5 x 7.5 in card. */
export async function drawMenu(drawnOn: Date): Promise<Uint8Array> {
  const book = await openSketchbook('Harvest supper menu', drawnOn);
  const middle = MENU.trim.w / 2;

  const front = addCard(book, MENU.trim, MENU.bleed);
  flood(front, MENU.bleed, INKS.rust);
  for (const [i, lean] of [40, 14, -14, -40].entries()) {
    leaf(front, middle, 64, 130 - (i % 3 === 0 ? 22 : 0), lean, i % 2 === 0 ? INKS.straw : INKS.cream);
  }
  centredLine(front, 'Menu', { x: middle, y: 372, size: 46, font: book.bold, color: INKS.cream });
  centredLine(front, 'LONG TABLE', {
    x: middle,
    y: 340,
    size: 10,
    font: book.roman,
    color: INKS.straw,
    tracking: 4,
  });

  const back = addCard(book, MENU.trim, MENU.bleed);
  flood(back, MENU.bleed, INKS.cream);
  border(back, MENU.trim, 16);
  const courses = [
    ['First', 'Barley soup, brown butter'],
    ['Then', 'Leek and hazel pie'],
    ['And', 'Beans from the mill garden'],
    ['Last', 'Plums in their own syrup'],
    ['After', 'Walnuts and hard cheese'],
  ] as const;
  courses.forEach(([name, dish], i) => {
    const y = 462 - i * 86;
    centredLine(back, name, { x: middle, y, size: 17, font: book.bold, color: INKS.rust });
    centredLine(back, dish, { x: middle, y: y - 22, size: 11, font: book.roman, color: INKS.ink });
  });
  return save(book);
}

/** The place tag: front and back of a 2 x 3.5 in tag. */
export async function drawTag(drawnOn: Date): Promise<Uint8Array> {
  const book = await openSketchbook('Harvest supper place tag', drawnOn);
  const middle = TAG.trim.w / 2;

  const front = addCard(book, TAG.trim, TAG.bleed);
  flood(front, TAG.bleed, INKS.straw);
  wheatEar(front, middle, 30, 120, 0, INKS.forest);
  wheatEar(front, middle, 30, 96, 24, INKS.moss);
  wheatEar(front, middle, 30, 96, -24, INKS.moss);
  centredLine(front, 'This place', { x: middle, y: 196, size: 17, font: book.bold, color: INKS.forest });
  centredLine(front, 'is kept for', { x: middle, y: 174, size: 12, font: book.roman, color: INKS.forest });

  const back = addCard(book, TAG.trim, TAG.bleed);
  flood(back, TAG.bleed, INKS.moss);
  centredLine(back, 'HARVEST', {
    x: middle,
    y: 196,
    size: 12,
    font: book.bold,
    color: INKS.cream,
    tracking: 3,
  });
  centredLine(back, 'SUPPER', {
    x: middle,
    y: 178,
    size: 12,
    font: book.bold,
    color: INKS.cream,
    tracking: 3,
  });
  leaf(back, middle, 44, 92, 12, INKS.cream);
  return save(book);
}

function rule(page: PDFPage, middle: number, y: number, half: number): void {
  page.drawLine({
    start: { x: middle - half, y },
    end: { x: middle + half, y },
    thickness: 0.8,
    color: INKS.rust,
  });
}

function border(page: PDFPage, trim: { w: number; h: number }, inset: number): void {
  page.drawRectangle({
    x: inset,
    y: inset,
    width: trim.w - 2 * inset,
    height: trim.h - 2 * inset,
    borderColor: INKS.moss,
    borderWidth: 1,
  });
}

function save(book: Sketchbook): Promise<Uint8Array> {
  return book.pdf.save();
}
