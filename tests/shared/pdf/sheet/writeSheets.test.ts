import type { PDFDocument } from 'pdf-lib';
import { beforeAll, describe, expect, it } from 'vitest';
import { refuse } from '../../../../shared/fault/result.ts';
import { HEADS } from '../../../../shared/geometry/head.ts';
import { grow } from '../../../../shared/geometry/rect.ts';
import type { Rect } from '../../../../shared/geometry/space.ts';
import type { Work } from '../../../../shared/geometry/work.ts';
import type { Placement } from '../../../../shared/layout/placement.ts';
import { boundsOf } from '../../../../shared/marks/mark.ts';
import { marksOf } from '../../../../shared/marks/marksOf.ts';
import {
  type FaceSource,
  type SheetForm,
  type SheetsInput,
  writeSheets,
} from '../../../../shared/pdf/sheet/writeSheets.ts';
import { drawFourColours, FACE_COLOURS, facesOf, type Quarter, sheetFont } from '../../../kit/fourColours.ts';
import { type Block, formsOfBlock } from '../../../kit/markedJobs.ts';
import { ask, type PagePicture, picturesOf } from '../../../kit/readBack.ts';

const trim = { w: 100, h: 140 };
const bleed = 9;
let art: Uint8Array;
let openFaces: (target: PDFDocument) => FaceSource;

beforeAll(async () => {
  art = await drawFourColours(trim, bleed);
  openFaces = await facesOf(art, trim, bleed);
});

const block = (work: Work, more: Partial<Block> = {}): Block => ({
  sheet: { w: 400, h: 500 },
  trim,
  bleed,
  gutter: 18,
  across: 2,
  along: 2,
  work,
  ...more,
});

const unprintable = { lead: 10, tail: 10, left: 10, right: 10 };

function inputFor(laid: Block, title = 'Harvest supper'): SheetsInput {
  const { sheet, work } = laid;
  const forms = formsOfBlock(laid);
  const slug = { job: title, sheets: 33, date: '2026-03-01' };
  const marked = forms.map((form): SheetForm => {
    const input = { sheet, unprintable, work, forms, form, slug, measure: sheetFont.measure };
    return { form, marks: marksOf(input).marks };
  });
  return { sheet, work, forms: marked, openFaces, font: sheetFont, title, created: '2026-03-01T14:30:00Z' };
}

async function write(input: SheetsInput) {
  const written = await writeSheets(input);
  if (!written.ok) throw new Error(written.fault.message);
  return written.value;
}

const simplex: Work = { style: 'simplex' };

/** Where the middle of a quarter lies on the sheet: turned about the middle of the piece, counter-clockwise. */
function middleOf(quarter: Quarter, { trim: t, head }: Placement): { x: number; y: number } {
  const angle = (head * Math.PI) / 180;
  const [w, h] = head % 180 === 0 ? [t.w, t.h] : [t.h, t.w];
  const dx = ((quarter.endsWith('left') ? -1 : 1) * w) / 4;
  const dy = ((quarter.startsWith('lower') ? -1 : 1) * h) / 4;
  return {
    x: t.x + t.w / 2 + dx * Math.cos(angle) - dy * Math.sin(angle),
    y: t.y + t.h / 2 + dx * Math.sin(angle) + dy * Math.cos(angle),
  };
}

function expectFaces(picture: PagePicture, placements: readonly Placement[]): void {
  for (const placement of placements) {
    for (const [quarter, colour] of Object.entries(FACE_COLOURS[placement.face])) {
      const { x, y } = middleOf(quarter as Quarter, placement);
      expect(picture.at(x, y)).toEqual(colour);
    }
  }
}

const isWhite = (colour: readonly number[]) => colour.every((c) => c === 255);

describe('a sheet as PDFium shows it', () => {
  it.each(HEADS)('has every face on its place with its head at %i degrees', async (head) => {
    const laid = block(simplex, { head });
    const { files } = await write(inputFor(laid));
    const [picture] = await picturesOf(files[0]!.bytes, 1);
    expect([picture!.width, picture!.height]).toEqual([400, 500]);
    expectFaces(picture!, formsOfBlock(laid)[0]!.placements);
  });

  it('prints art as far as its bleed goes and not further', async () => {
    const laid = block(simplex, { across: 1, along: 1 });
    const { files } = await write({
      ...inputFor(laid),
      forms: [{ form: formsOfBlock(laid)[0]!, marks: [] }],
    });
    const [picture] = await picturesOf(files[0]!.bytes, 4);
    const { x, y, w, h } = grow({ x: 150, y: 180, ...trim }, bleed);
    for (const [inside, outside] of [
      [picture!.at(x + 0.5, 250), picture!.at(x - 0.5, 250)],
      [picture!.at(x + w - 0.5, 250), picture!.at(x + w + 0.5, 250)],
      [picture!.at(200, y + 0.5), picture!.at(200, y - 0.5)],
      [picture!.at(200, y + h - 0.5), picture!.at(200, y + h + 0.5)],
    ]) {
      expect(isWhite(inside!)).toBe(false);
      expect(isWhite(outside!)).toBe(true);
    }
  });

  it('cuts two bleeds off at the middle of a gutter that is too narrow for both', async () => {
    const laid = block(simplex, { across: 2, along: 1, gutter: 6 });
    const { files } = await write(inputFor(laid));
    const [picture] = await picturesOf(files[0]!.bytes, 4);
    const left = [picture!.at(199.5, 200), picture!.at(199.5, 300)];
    const right = [picture!.at(200.5, 200), picture!.at(200.5, 300)];
    const { front } = FACE_COLOURS;
    expect(left).toEqual([front['lower right'], front['upper right']]);
    expect(right).toEqual([front['lower left'], front['upper left']]);
  });

  it.each<Work>([
    { style: 'work-and-back', turn: 'side-to-side' },
    { style: 'work-and-back', turn: 'end-to-end' },
    { style: 'work-and-turn' },
    { style: 'work-and-tumble' },
  ])('has fronts and backs where the forms of %o want them', async (work) => {
    const laid = block(work, { head: 90, trim, off: { x: 7, y: -5 } });
    const { files } = await write(inputFor(laid));
    const forms = formsOfBlock(laid);
    expect(files.map((f) => f.forms)).toEqual(forms.map((f) => [f]));
    for (const [i, file] of files.entries()) {
      const pictures = await picturesOf(file.bytes, 1);
      expect(pictures).toHaveLength(1);
      expectFaces(pictures[0]!, forms[i]!.placements);
    }
  });

  it('is one file of two pages for a printer that turns the sheet itself', async () => {
    const laid = block({ style: 'perfecting', turn: 'end-to-end' });
    const { files } = await write(inputFor(laid));
    const forms = formsOfBlock(laid);
    expect(files.map((f) => f.forms)).toEqual([forms]);
    const pictures = await picturesOf(files[0]!.bytes, 1);
    expect(pictures).toHaveLength(2);
    expectFaces(pictures[0]!, forms[0]!.placements);
    expectFaces(pictures[1]!, forms[1]!.placements);
  });

  it('stays blank behind a piece that has no back', async () => {
    const laid = block({ style: 'work-and-back', turn: 'side-to-side' });
    const input = inputFor(laid);
    const { files } = await write({
      ...input,
      forms: input.forms.map(({ form }) => ({ form, marks: [] })),
      openFaces: (target) => {
        const faces = openFaces(target);
        return {
          ...faces,
          faceOf: (piece, face) =>
            face === 'back' ? { ok: true, value: undefined } : faces.faceOf(piece, face),
        };
      },
    });
    const [front] = await picturesOf(files[0]!.bytes, 1);
    const [back] = await picturesOf(files[1]!.bytes, 1);
    expectFaces(front!, input.forms[0]!.form.placements);
    for (let x = 5; x < 400; x += 10) {
      for (let y = 5; y < 500; y += 10) expect(isWhite(back!.at(x, y))).toBe(true);
    }
  });

  it('has ink in every mark, and none outside marks and bleeds', async () => {
    const input = inputFor(block(simplex, { gutter: 30, head: 270, sheet: { w: 450, h: 420 } }));
    const { files } = await write(input);
    const scale = 4;
    const [picture] = await picturesOf(files[0]!.bytes, scale);
    const { form, marks } = input.forms[0]!;
    const inked = [...form.placements.flatMap((p) => p.bleed), ...marks.map(boundsOf)].map((b) =>
      grow(b, 1 / scale),
    );
    const strayAt: string[] = [];
    for (let x = 0.5 / scale; x < input.sheet.w; x += 1 / scale) {
      for (let y = 0.5 / scale; y < input.sheet.h; y += 1 / scale) {
        if (!isWhite(picture!.at(x, y)) && !inked.some((b) => isIn(b, x, y))) strayAt.push(`${x} ${y}`);
      }
    }
    expect(strayAt).toEqual([]);
    expect(marks.length).toBeGreaterThan(100);
    for (const mark of marks) expect(hasInk(picture!, grow(boundsOf(mark), 0.5 / scale), scale)).toBe(true);
  });
});

const isIn = (b: Rect, x: number, y: number) => x >= b.x && x <= b.x + b.w && y >= b.y && y <= b.y + b.h;

function hasInk(picture: PagePicture, b: Rect, scale: number): boolean {
  for (let x = b.x; x <= b.x + b.w; x += 0.5 / scale) {
    for (let y = b.y; y <= b.y + b.h; y += 0.5 / scale) if (!isWhite(picture.at(x, y))) return true;
  }
  return false;
}

describe('a sheet as qpdf and poppler read it', () => {
  it('is sound in every work style', async () => {
    for (const work of [simplex, { style: 'perfecting', turn: 'side-to-side' } as const]) {
      const { files } = await write(inputFor(block(work)));
      expect(ask(files[0]!.bytes, 'qpdf', '--check', 'FILE')).toContain(
        'No syntax or stream encoding errors',
      );
    }
  });

  it('has the size of the sheet in all its boxes, and is PDF 1.7', async () => {
    const { files } = await write(inputFor(block(simplex)));
    const told = ask(files[0]!.bytes, 'pdfinfo', '-box', 'FILE');
    for (const box of ['MediaBox', 'CropBox', 'BleedBox', 'TrimBox']) {
      expect(told).toMatch(new RegExp(`${box}: +0\\.00 +0\\.00 +400\\.00 +500\\.00`));
    }
    expect(told).toMatch(/PDF version: +1\.7/);
    expect(told).toMatch(/Page rot: +0/);
  });

  it('says what it is and claims no more', async () => {
    const { files } = await write(inputFor(block(simplex), 'Harvest 収穫 “supper” 🌾\ud800'));
    const told = ask(files[0]!.bytes, 'pdfinfo', '-isodates', 'FILE');
    expect(told).toMatch(/Title: +Harvest 収穫 “supper” 🌾\ufffd/);
    expect(told).toMatch(/Creator: +Turnlay\n/);
    expect(told).toMatch(/Producer: +Turnlay with @cantoo\/pdf-lib\n/);
    expect(told).toMatch(/CreationDate: +2026-03-01T14:30:00Z/);
    expect(told).toMatch(/ModDate: +2026-03-01T14:30:00Z/);
    expect(told).not.toMatch(/PDF\/X|PDF subtype/);
    const objects = ask(files[0]!.bytes, 'qpdf', '--json', '--json-key=qpdf', 'FILE');
    expect(objects).toContain('"/Trapped": "/Unknown"');
  });

  it.each<[Work, Block['sheet'], string]>([
    [simplex, { w: 400, h: 500 }, 'Simplex'],
    [{ style: 'work-and-turn' }, { w: 400, h: 500 }, 'Simplex'],
    [{ style: 'perfecting', turn: 'side-to-side' }, { w: 400, h: 500 }, 'DuplexFlipLongEdge'],
    [{ style: 'perfecting', turn: 'end-to-end' }, { w: 400, h: 500 }, 'DuplexFlipShortEdge'],
    [{ style: 'perfecting', turn: 'side-to-side' }, { w: 500, h: 400 }, 'DuplexFlipShortEdge'],
  ])('asks for %o on %o: %s, and never to be scaled', async (work, sheet, duplex) => {
    const { files } = await write(inputFor(block(work, { sheet })));
    const objects = ask(files[0]!.bytes, 'qpdf', '--json', '--json-key=qpdf', 'FILE');
    expect(objects).toContain(`"/Duplex": "/${duplex}"`);
    expect(objects).toContain('"/PrintScaling": "/None"');
  });

  it('has register marks on all plates and words in black', async () => {
    const { files } = await write(inputFor(block(simplex)));
    const plain = ask(files[0]!.bytes, 'qpdf', '--qdf', '--object-streams=disable', 'FILE', '-');
    expect(plain).toMatch(/\/AllPlates \[\s*\/Separation\s*\/All\s*\/DeviceCMYK/);
    expect(plain).toMatch(/0\.25 w \/AllPlates CS 1 SCN [\d.]+ [\d.]+ m [\d.]+ [\d.]+ l S/);
    expect(plain).toMatch(/0 0 0 1 k\nBT|0 0 0 1 k BT/);
    expect(plain).not.toMatch(/AllPlates cs/);
  });

  it('compresses what it prints', async () => {
    const { files } = await write(inputFor(block(simplex)));
    const page = ask(files[0]!.bytes, 'qpdf', '--json', '--json-key=qpdf', 'FILE');
    expect(page).toContain('"/Filter": "/FlateDecode"');
    expect(new TextDecoder('latin1').decode(files[0]!.bytes)).not.toContain('AllPlates CS');
  });

  it('embeds the type of its marks as a subset that can be searched', async () => {
    const { files } = await write(inputFor(block(simplex)));
    expect(ask(files[0]!.bytes, 'pdffonts', 'FILE')).toMatch(
      /TRNLAY\+Marks +CID TrueType +Identity-H +yes yes yes/,
    );
    const text = ask(files[0]!.bytes, 'pdftotext', '-layout', 'FILE', '-');
    expect(text).toContain('LEAD EDGE · side 1');
    expect(text).toContain('Harvest supper');
    expect(text).toContain('form 1 of 1 · side 1 · 33 sheets · 2026-03-01');
    expect(text).toContain('measure me: 50 mm');
  });

  it('carries no type where it has no words', async () => {
    const input = inputFor(block(simplex));
    const { files } = await write({ ...input, forms: input.forms.map(({ form }) => ({ form, marks: [] })) });
    expect(ask(files[0]!.bytes, 'pdffonts', 'FILE')).not.toContain('Marks');
  });

  it('sets words as long as they were measured, where they were put', async () => {
    const input = inputFor(block(simplex));
    const { files } = await write(input);
    const boxes = ask(files[0]!.bytes, 'pdftotext', '-bbox', 'FILE', '-');
    const dates = /xMin="([\d.]+)" yMin="[\d.]+" xMax="([\d.]+)" yMax="([\d.]+)">2026-03-01</.exec(boxes);
    const starts = /xMin="([\d.]+)"[^>]*>form</.exec(boxes);
    const slug = input.forms[0]!.marks.find((m) => m.kind === 'words' && m.words.startsWith('form 1'));
    if (slug?.kind !== 'words') throw new Error('no slug');
    expect(Number(starts?.[1])).toBeCloseTo(slug.at.x, 1);
    expect(Number(dates?.[2])).toBeCloseTo(slug.at.x + slug.width, 1);
    const bottom = 500 - Number(dates?.[3]);
    expect(bottom).toBeGreaterThan(slug.at.y - 0.3 * slug.size);
    expect(bottom).toBeLessThan(slug.at.y);
  });
});

describe('what is written', () => {
  it('is the same, byte for byte, for the same job', async () => {
    const input = inputFor(block({ style: 'work-and-back', turn: 'side-to-side' }));
    const [once, again] = [await write(input), await write(input)];
    expect(again.files.map((f) => Buffer.from(f.bytes).toString('base64'))).toEqual(
      once.files.map((f) => Buffer.from(f.bytes).toString('base64')),
    );
  });

  it('holds one copy of the art for 400 placements and adds less than 200 kB to it', async () => {
    const laid = block(simplex, { across: 20, along: 20, sheet: { w: 2500, h: 3300 } });
    const { files } = await write(inputFor(laid));
    expect(files[0]!.bytes.length - art.length).toBeLessThan(200_000);
    const plain = ask(files[0]!.bytes, 'qpdf', '--qdf', 'FILE', '-');
    expect(plain.match(/\/Art1 Do/g)).toHaveLength(400);
    expect(plain.match(/\/Subtype \/Form/g)).toHaveLength(1);
  });

  it('names the characters that the type of the marks lacks, each once', async () => {
    const { notices } = await write(
      inputFor(block({ style: 'work-and-back', turn: 'side-to-side' }), '収穫収'),
    );
    expect(notices).toEqual(['The type of the marks lacks 収 穫: a box stands for each.']);
  });

  it('hands on what is wrong with the art, and what is to be known of it', async () => {
    const fault = {
      code: 'art-page-missing',
      message: 'There is no page 2.',
      remedy: 'Choose another page.',
    } as const;
    const input = inputFor(block(simplex));
    const broken = await writeSheets({
      ...input,
      openFaces: () => ({ faceOf: () => refuse(fault), finish: () => [] }),
    });
    expect(broken).toEqual({ ok: false, fault });
    const { notices } = await write({
      ...input,
      openFaces: (target) => ({
        ...openFaces(target),
        finish: () => ['The art has layers.', 'The art has layers.'],
      }),
    });
    expect(notices).toEqual(['The art has layers.']);
  });

  it('needs a time in UTC', async () => {
    const input = inputFor(block(simplex));
    await expect(writeSheets({ ...input, created: '2026-03-01' })).rejects.toThrow('not a time in UTC');
  });
});
