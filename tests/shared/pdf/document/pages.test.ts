// Blocks, shapes and pages: where they come to lie, and the file that is written of them.
import { describe, expect, it } from 'vitest';
import { officeFaces } from '../../../../electron/ticket/officeFaces.ts';
import {
  below,
  beside,
  indent,
  type PageBlock,
  place,
  space,
} from '../../../../shared/pdf/document/block.ts';
import { drawShape } from '../../../../shared/pdf/document/drawShape.ts';
import {
  type Furniture,
  fillPages,
  heightOf,
  PAGE_MARGIN_PT,
  type Passage,
  pageRoom,
} from '../../../../shared/pdf/document/fillPages.ts';
import { plainPaper } from '../../../../shared/pdf/document/plainPaper.ts';
import {
  box,
  carryShapes,
  curve,
  line,
  moveShapes,
  polygon,
  type Shape,
} from '../../../../shared/pdf/document/shape.ts';
import { writeDocument } from '../../../../shared/pdf/document/writeDocument.ts';
import { ask, picturesOf } from '../../../kit/readBack.ts';

const ink = { tone: 'ink', width: 1 } as const;

/** A block that is one filled box. */
const solid = (w: number, h: number): PageBlock => ({
  w,
  h,
  shapes: [box({ x: 0, y: -h, w, h }, { fill: 'ink' })],
});
const topsOf = (shapes: readonly Shape[]) =>
  shapes.map((shape) => {
    if (shape.kind !== 'path') throw new Error('Only boxes are looked at');
    const [contour] = shape.contours;
    return { x: contour!.from.x, top: (contour!.along[1] as { y: number }).y };
  });

describe('blocks', () => {
  it('stand below and beside one another with their gaps', () => {
    const stack = below([solid(10, 20), solid(30, 5)], 4);
    expect([stack.w, stack.h]).toEqual([30, 29]);
    expect(topsOf(stack.shapes)).toEqual([
      { x: 0, top: 0 },
      { x: 0, top: -24 },
    ]);
    const row = beside([solid(10, 20), solid(30, 5)], 4);
    expect([row.w, row.h]).toEqual([44, 20]);
    expect(topsOf(row.shapes)).toEqual([
      { x: 0, top: 0 },
      { x: 14, top: 0 },
    ]);
    expect(topsOf(indent(solid(10, 20), 7).shapes)).toEqual([{ x: 7, top: 0 }]);
    expect(topsOf(place(solid(10, 20), 3, 100))).toEqual([{ x: 3, top: 100 }]);
    expect(below([], 4)).toEqual({ w: 0, h: 0, shapes: [] });
    expect(space(9).h).toBe(9);
  });
});

describe('shapes', () => {
  it('are moved and turned with everything that they are drawn from', () => {
    const bend = curve({ x: 1, y: 0 }, { c1: { x: 2, y: 0 }, c2: { x: 3, y: 1 }, to: { x: 4, y: 2 } }, ink);
    const [moved] = moveShapes([bend], 10, 20);
    expect(moved).toMatchObject({
      contours: [
        {
          from: { x: 11, y: 20 },
          along: [{ c1: { x: 12, y: 20 }, c2: { x: 13, y: 21 }, to: { x: 14, y: 22 } }],
        },
      ],
    });
    const words: Shape = {
      kind: 'words',
      words: 'F',
      at: { x: 2, y: 1 },
      size: 9,
      weight: 'plain',
      tone: 'ink',
      head: 270,
    };
    const quarter = { a: 0, b: 1, c: -1, d: 0, e: 0, f: 0 };
    expect(carryShapes([words], quarter, 90)).toEqual([{ ...words, at: { x: -1, y: 2 }, head: 0 }]);
  });

  it('are drawn by operators of ISO 32000: q, g, G, w, d, m, l, c, h, f, S, B, Q', () => {
    const encode = () => '<0102>';
    expect(
      drawShape(line({ x: 1, y: 2 }, { x: 3, y: 4 }, { tone: 'soft', width: 2, dash: [3, 1] }), encode),
    ).toBe('q 0.35 G 2 w [3 1] 0 d 1 2 m 3 4 l S Q');
    const corners = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 0, y: 1 },
    ] as const;
    expect(drawShape(polygon([...corners], { fill: 'pale' }), encode)).toBe(
      'q 0.88 g 0 0 m 1 0 l 0 1 l h f Q',
    );
    expect(drawShape(polygon([...corners], { fill: 'paper', stroke: ink }), encode)).toBe(
      'q 1 g 0 G 1 w [] 0 d 0 0 m 1 0 l 0 1 l h B Q',
    );
    const words: Shape = {
      kind: 'words',
      words: 'F',
      at: { x: 2, y: 1 },
      size: 9,
      weight: 'strong',
      tone: 'ink',
      head: 90,
    };
    expect(drawShape(words, encode)).toBe('BT 0 g /Strong 9 Tf 0 1 -1 0 2 1 Tm <0102> Tj ET');
  });
});

describe('pages', () => {
  const paper = { w: 200, h: 300 };
  const furniture: Furniture = { head: () => solid(10, 6), foot: () => solid(10, 4) };
  const room = 300 - 2 * PAGE_MARGIN_PT - 10;
  const passage = (...heights: readonly number[]): Passage => ({
    blocks: heights.map((h) => solid(20, h)),
    gap: 2,
    above: 5,
  });
  /** The tops of what stands between head and foot on each page, counted from the top of the room. */
  const filled = (passages: readonly Passage[]) =>
    fillPages(paper, passages, furniture).map((shapes) =>
      topsOf(shapes)
        .slice(1, -1)
        .map(({ top }) => 300 - PAGE_MARGIN_PT - 6 - top),
    );

  it('are filled from the top, and a passage that has no room goes whole to the next', () => {
    expect(pageRoom(paper, furniture)).toBe(room);
    expect(filled([passage(50, 50), passage(60), passage(60)])).toEqual([[0, 52, 107], [0]]);
    // One more point of height would not have fitted: 102 + 5 + (room - 107).
    expect(filled([passage(50, 50), passage(room - 107)])).toHaveLength(1);
    expect(filled([passage(50, 50), passage(room - 106)])).toHaveLength(2);
    expect(heightOf([passage(50, 50), { blocks: [], gap: 0, above: 9 }, passage(60)])).toBe(5 + 102 + 5 + 60);
  });

  it('tear only a passage that is taller than a page, between its blocks', () => {
    expect(filled([passage(100, 100, 100)])).toEqual([[0, 102], [0]]);
  });

  it('begin anew where a passage asks for it, and leave nothing for one without blocks', () => {
    expect(filled([passage(10), { ...passage(10), onNewPage: true }])).toEqual([[0], [0]]);
    expect(filled([{ blocks: [], gap: 1, above: 50 }, passage(10)])).toEqual([[0]]);
    expect(filled([{ ...passage(10), onNewPage: true }])).toEqual([[0]]);
  });

  it('have their head at the upper margin and their foot at the lower one', () => {
    const [shapes] = fillPages(paper, [passage(10)], furniture);
    const tops = topsOf(shapes!).map(({ top }) => top);
    expect([tops[0], tops.at(-1)]).toEqual([300 - PAGE_MARGIN_PT, PAGE_MARGIN_PT + 4]);
  });

  it('are A4 or Letter', () => {
    expect(plainPaper('in')).toEqual({ w: 612, h: 792 });
    for (const unit of ['mm', 'pt'] as const) {
      expect(plainPaper(unit).w).toBeCloseTo(595.2756, 4);
      expect(plainPaper(unit).h).toBeCloseTo(841.8898, 4);
    }
  });
});

describe('the file of a document', () => {
  const words = (text: string, weight: 'plain' | 'strong'): Shape => ({
    kind: 'words',
    words: text,
    at: { x: 20, y: 150 },
    size: 12,
    weight,
    tone: 'ink',
    head: 0,
  });
  const write = async (pages: readonly (readonly Shape[])[], duplex?: 'DuplexFlipLongEdge') =>
    writeDocument({
      title: 'Größe ø',
      created: '2026-03-01T10:00:00Z',
      paper: { w: 200, h: 300 },
      pages,
      faces: await officeFaces(),
      ...(duplex === undefined ? {} : { duplex }),
    });

  it('is whole to qpdf, has its words to poppler, and is the same bytes again', async () => {
    const pages = [[words('Knock up', 'plain')], [words('LEAD EDGE', 'strong')]];
    const { bytes, notices } = await write(pages);
    expect(ask(bytes, 'qpdf', '--check', 'FILE')).toContain('No syntax or stream encoding errors');
    expect(ask(bytes, 'pdftotext', 'FILE', '-').replace(/\s+/g, ' ').trim()).toBe('Knock up LEAD EDGE');
    expect(ask(bytes, 'pdfinfo', 'FILE')).toMatch(/Title:\s+Größe ø/);
    expect(notices).toEqual([]);
    expect(Buffer.compare((await write(pages)).bytes, bytes)).toBe(0);
  });

  it('asks not to be scaled, and for one side unless a turn is asked for', async () => {
    const asked = async (duplex?: 'DuplexFlipLongEdge') =>
      ask((await write([[]], duplex)).bytes, 'qpdf', '--qdf', '--object-streams=disable', 'FILE', '-');
    expect(await asked()).toMatch(/\/Duplex \/Simplex[\s\S]*\/PrintScaling \/None/);
    expect(await asked('DuplexFlipLongEdge')).toContain('/Duplex /DuplexFlipLongEdge');
  });

  it('prints its tones as black, dark, light and white', async () => {
    const tones = ['ink', 'soft', 'pale', 'paper'] as const;
    const shapes = tones.map((tone, i) => box({ x: 10 + 40 * i, y: 100, w: 30, h: 30 }, { fill: tone }));
    const [page] = await picturesOf((await write([shapes])).bytes, 1);
    const greys = tones.map((_tone, i) => page!.at(25 + 40 * i, 115)[0]);
    expect(greys[0]).toBeLessThan(5);
    expect(greys[1]).toBeGreaterThan(70);
    expect(greys[1]).toBeLessThan(110);
    expect(greys[2]).toBeGreaterThan(210);
    expect(greys[3]).toBe(255);
  });

  it('says which characters its type lacks', async () => {
    const { notices } = await write([[words('Tea 茶', 'plain')]]);
    expect(notices).toEqual(['The type of the marks lacks 茶: a box stands for each.']);
  });
});
