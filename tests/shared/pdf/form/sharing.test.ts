import { PDFDocument } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { ArtLimits } from '../../../../shared/pdf/art/limits.ts';
import type { OpenArt } from '../../../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../../../shared/pdf/form/formMaker.ts';
import {
  CARD,
  type FileParts,
  type Objects,
  type PageParts,
  pack,
  signpost,
  writePages,
} from '../../../kit/pdfs.ts';
import { opened, placed } from '../../../kit/placed.ts';
import { formsOf, readObjects } from '../../../kit/qpdf.ts';

/** Bytes that do not pack, as a photograph's. */
const noise = Uint8Array.from({ length: 60_000 }, (_, i) => (Math.imul(i, 2654435761) >>> 13) & 255);

const PHOTO: Objects = {
  3: {
    dict: '/Type /XObject /Subtype /Image /Width 200 /Height 100 /BitsPerComponent 8 /ColorSpace /DeviceRGB',
    data: noise,
  },
};

const photoPage = (number: number): PageParts => ({
  media: CARD,
  resources: '/XObject << /Photo 3 0 R >>',
  drawing: `q 378 0 0 522 0 0 cm /Photo Do Q ${signpost(CARD, `0.${number % 10} 1 1`)}`,
});

const WHOLE = { x: 0, y: 0, w: 378, h: 522 };

describe('one page placed again and again', () => {
  it('is one form for the same turn and box, and shares all it draws with for others', async () => {
    const art = await opened(writePages([photoPage(1)], { objects: PHOTO }));
    const target = await PDFDocument.create({ updateMetadata: false });
    const maker = createFormMaker(target);
    const first = maker.formOf(art, 1, 0, WHOLE);
    expect(maker.formOf(art, 1, 0, { ...WHOLE })).toEqual(first);
    const others = [
      maker.formOf(art, 1, 180, WHOLE),
      maker.formOf(art, 1, 0, { ...WHOLE, x: 1 }),
      maker.formOf(art, 1, 0, { ...WHOLE, y: 1 }),
      maker.formOf(art, 1, 0, { ...WHOLE, w: 1 }),
      maker.formOf(art, 1, 0, { ...WHOLE, h: 1 }),
    ];
    expect(new Set([first, ...others].map((form) => form.ok && form.value)).size).toBe(6);
    expect((await target.save()).length).toBeLessThan(noise.length + 6 * 1500);
  });

  it('adds less than 200 kB for 400 placings, however large it is', async () => {
    const bytes = writePages([photoPage(1)], { objects: PHOTO });
    const art = await opened(bytes);
    const { bytes: sheets } = await placed(...Array.from({ length: 400 }, () => ({ art })));
    expect(sheets.length - bytes.length).toBeLessThan(200_000);
    expect(new Set(formsOf(readObjects(sheets))).size).toBe(1);
  });
});

it('keeps what 100 pages share as one copy', async () => {
  const pages = Array.from({ length: 100 }, (_, i) => photoPage(i));
  const bytes = writePages(pages, { objects: PHOTO });
  const art = await opened(bytes);
  const { bytes: sheets } = await placed(...pages.map((_, i) => ({ art, page: i + 1 })));
  expect(sheets.length).toBeLessThan(1.5 * bytes.length);
  const made = readObjects(sheets);
  const photos = formsOf(made).map(
    (form) => made.follow(made.follow(form)['/Resources'])['/XObject']['/Photo'],
  );
  expect(new Set(photos).size).toBe(1);
});

it('makes inherited resources of all pages one object', async () => {
  const page: PageParts = { media: CARD, resources: null, drawing: '/Photo Do' };
  const bytes = writePages([page, page], {
    objects: PHOTO,
    root: '/Resources << /XObject << /Photo 3 0 R >> >>',
  });
  const art = await opened(bytes);
  const { bytes: sheets } = await placed({ art, page: 1 }, { art, page: 2 });
  const made = readObjects(sheets);
  const [one, other] = formsOf(made).map((form) => made.follow(form)['/Resources']);
  expect(one).toBe(other);
});

it('gives the same bytes each time, and leaves the art as it was', async () => {
  const art = await opened(writePages([photoPage(1)], { objects: PHOTO }));
  const before = await art.document.save();
  const { bytes: first } = await placed({ art });
  const { bytes: second } = await placed({ art });
  expect(second).toEqual(first);
  expect(await art.document.save()).toEqual(before);
});

describe('a page that cannot be placed', () => {
  async function refusal(page: PageParts, file: FileParts = {}, limits: Partial<ArtLimits> = {}, n = 1) {
    const art: OpenArt = await opened(writePages([page], file), { name: 'supper.pdf', limits });
    const maker = createFormMaker(await PDFDocument.create());
    const form = maker.formOf(art, n, 0, WHOLE);
    return form.ok ? undefined : form.fault;
  }

  const tooLarge = {
    code: 'art-too-large',
    message: 'There is more in page 1 of supper.pdf than can be placed safely.',
    remedy: 'Simplify the page, or turn its most detailed drawings into pictures, and export it again.',
    where: 'supper.pdf',
  };
  const damaged = {
    code: 'art-damaged',
    message: 'Part of page 1 of supper.pdf is damaged and cannot be read.',
    remedy: 'Ask for the file again, or export it again.',
    where: 'supper.pdf',
  };

  it('is not there', async () => {
    expect(await refusal({ media: CARD }, {}, {}, 2)).toMatchObject({ code: 'art-page-missing' });
  });

  it('has no size', async () => {
    expect(await refusal({})).toMatchObject({ code: 'art-size-unclear' });
  });

  it('unpacks to more than the limit, in one part or in several', async () => {
    const drawing = '0 g '.repeat(300_000);
    const limits = { unpacked: drawing.length };
    expect(await refusal({ media: CARD, drawing }, {}, limits)).toBeUndefined();
    expect(await refusal({ media: CARD, drawing: `${drawing} ` }, {}, limits)).toEqual(tooLarge);
    expect(await refusal({ media: CARD, drawing: [drawing, '0 g'] }, {}, limits)).toEqual(tooLarge);
    expect(await refusal({ media: CARD, drawing: [drawing, ''] }, {}, limits)).toBeUndefined();
  });

  it('unpacks a thousandfold and is stopped on the way', async () => {
    const bomb = pack(new Uint8Array(50_000_000));
    const page: PageParts = { media: CARD, more: '/Contents 3 0 R' };
    expect(await refusal(page, { objects: { 3: bomb } }, { unpacked: 2_000_000 })).toEqual(tooLarge);
  });

  it('is longer unpacked than the limit although it is not packed', async () => {
    const page: PageParts = { media: CARD, more: '/Contents 3 0 R' };
    const objects = { 3: { data: '0 g 0 g' } };
    expect(await refusal(page, { objects }, { unpacked: 7 })).toBeUndefined();
    expect(await refusal(page, { objects }, { unpacked: 6 })).toEqual(tooLarge);
  });

  it('uses more objects than the limit', async () => {
    const objects = { 3: '[4 0 R]', 4: '[5 0 R]', 5: '[]' };
    const page: PageParts = { media: CARD, resources: '/Properties << /P << /Chain 3 0 R >> >>' };
    expect(await refusal(page, { objects }, { objects: 4 })).toBeUndefined();
    expect(await refusal(page, { objects }, { objects: 3 })).toEqual(tooLarge);
  });

  it('nests deeper than the limit', async () => {
    const nested = (depth: number) =>
      `/Properties << /P << /N ${'['.repeat(depth)}${']'.repeat(depth)} >> >>`;
    expect(await refusal({ media: CARD, resources: nested(100) })).toBeUndefined();
    expect(await refusal({ media: CARD, resources: nested(400) })).toEqual(tooLarge);
  });

  it('draws with an object that cannot be read', async () => {
    const page: PageParts = { media: CARD, resources: '/Font << /F1 3 0 R >>' };
    expect(await refusal(page, { objects: { 3: '<< /Type /Font /Widths [1 2 --3] >>' } })).toEqual(damaged);
    expect(
      await refusal({ media: CARD }, { objects: { 3: '<< /Type /Font /Widths [1 2 --3] >>' } }),
    ).toBeUndefined();
  });

  it('is drawn by what is no drawing, or by parts of which one cannot be unpacked', async () => {
    expect(await refusal({ media: CARD, more: '/Contents 3 0 R' }, { objects: { 3: '(words)' } })).toEqual(
      damaged,
    );
    const objects: Objects = {
      3: { data: '0 g' },
      4: { dict: '/Filter /FlateDecode', data: 'no deflate at all' },
    };
    expect(await refusal({ media: CARD, more: '/Contents [3 0 R 4 0 R]' }, { objects })).toEqual(damaged);
    expect(await refusal({ media: CARD, more: '/Contents [3 0 R 3 0 R]' }, { objects })).toBeUndefined();
    expect(await refusal({ media: CARD, more: '/Contents [3 0 R 99 0 R]' }, { objects })).toBeUndefined();
  });
});

it('is not joined from parts whose packing the program does not undo', async () => {
  for (const parms of [
    '<< /Predictor 12 /Columns 4 >>',
    '[<< /Predictor 12 /Columns 4 >>]',
    '<< /Predictor 2 >>',
  ]) {
    const objects: Objects = { 3: pack('\x020 g ', `/DecodeParms ${parms}`) };
    const art = await opened(writePages([{ media: CARD, more: '/Contents [3 0 R 3 0 R]' }], { objects }));
    const maker = createFormMaker(await PDFDocument.create());
    expect(maker.formOf(art, 1, 0, WHOLE)).toMatchObject({ ok: false, fault: { code: 'art-damaged' } });
  }
  const objects: Objects = { 3: pack('0 g ', '/DecodeParms << /Predictor 1 >>') };
  const art = await opened(writePages([{ media: CARD, more: '/Contents [3 0 R 3 0 R]' }], { objects }));
  expect((await placed({ art })).notices).toEqual([]);
});

it('says what the art itself has to say', async () => {
  const bytes = writePages([{ media: CARD, rotate: 45 }]);
  const { notices } = await placed({ art: await opened(bytes, { name: 'supper.pdf' }) });
  expect(notices).toEqual(['The Rotate of page 1 of supper.pdf is 45, no quarter turn; it was taken as 0.']);
});
