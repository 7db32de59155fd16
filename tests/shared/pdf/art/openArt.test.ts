import fc from 'fast-check';
import { PDFRef } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import type { FaultCode } from '../../../../shared/fault/result.ts';
import { type OpenOptions, openArt } from '../../../../shared/pdf/art/openArt.ts';
import { asStream } from '../../../../shared/pdf/art/peek.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import { CARD, signpost, writeObjects, writePages } from '../../../kit/pdfs.ts';
import { opened } from '../../../kit/placed.ts';
import { throughQpdf } from '../../../kit/qpdf.ts';

const text = (words: string) => new Uint8Array(Buffer.from(words, 'latin1'));
const card = () => writePages([{ media: CARD, drawing: signpost(CARD) }]);

async function refusal(bytes: Uint8Array, options?: OpenOptions): Promise<[FaultCode, string]> {
  const art = await openArt(bytes, { name: 'supper.pdf', ...options });
  if (art.ok) throw new Error('It opened');
  expect(art.fault.remedy).toMatch(/^[A-Z].*\.$/);
  expect(art.fault.where).toBe('supper.pdf');
  return [art.fault.code, art.fault.message];
}

describe('what is not a PDF is named for what it is', () => {
  it.each([
    ['', 'it is empty'],
    ['\xff\xd8\xff\xe0 JFIF', 'it is a JPEG picture'],
    ['\x89PNG\r\n\x1a\n', 'it is a PNG picture'],
    ['GIF89a', 'it is a GIF picture'],
    ['II*\x00', 'it is a TIFF picture'],
    ['MM\x00*', 'it is a TIFF picture'],
    ['8BPS', 'it is a layered picture'],
    ['RIFF....WEBP', 'it is a picture, a sound or a film'],
    ['%!PS-Adobe-3.0', 'it is PostScript'],
    ['\xc5\xd0\xd3\xc6', 'it is PostScript with a preview'],
    ['\x06\x06\xed\xf5', 'it is a layout document'],
    ['PK\x03\x04', 'it is an office document or a ZIP archive'],
    ['\xd0\xcf\x11\xe0', 'it is an office document'],
    ['{\\rtf1', 'it is a word processor document'],
    ['<svg xmlns', 'it is an SVG drawing'],
    ['<?xml version', 'it is an XML file'],
    ['<!DOCTYPE html>', 'it is a web page'],
    ['<html>', 'it is a web page'],
  ])('%j', async (beginning, is) => {
    expect(await refusal(text(beginning))).toEqual(['art-not-pdf', `supper.pdf is not a PDF: ${is}.`]);
  });

  it('is only said not to be a PDF where nothing is known of it', async () => {
    expect(await refusal(text('Dear printer,'))).toEqual(['art-not-pdf', 'supper.pdf is not a PDF.']);
  });

  it('takes a header within the first 1024 bytes and none behind them', async () => {
    const late = (gap: number) => Buffer.concat([Buffer.alloc(gap, 0x20), card()]);
    expect((await openArt(late(1024 - 5))).ok).toBe(true);
    expect(await refusal(late(1024 - 4))).toEqual(['art-not-pdf', 'supper.pdf is not a PDF.']);
  });
});

describe('a locked file', () => {
  const lock = (user: string, bits: string, ...more: string[]) =>
    throughQpdf(card(), '--allow-weak-crypto', '--encrypt', user, 'owner', bits, ...more, '--');

  it.each(['40', '128', '256'])('needs its password, %s bits', async (bits) => {
    const bytes = lock('open sesame', bits);
    expect(await refusal(bytes)).toEqual(['art-locked', 'supper.pdf needs a password to open.']);
    const wrong = await refusal(bytes, { password: 'sesame' });
    expect(wrong).toEqual(['art-locked', 'The password given does not open supper.pdf.']);
    for (const password of ['open sesame', 'owner']) {
      const art = await opened(bytes, { password });
      expect(art.page(1)).toMatchObject({ ok: true, value: { size: { w: 378, h: 522 } } });
    }
  });

  it('opens with AES of 128 bits as with the others', async () => {
    const bytes = lock('open sesame', '128', '--use-aes=y');
    expect((await refusal(bytes))[0]).toBe('art-locked');
    expect((await opened(bytes, { password: 'open sesame' })).pageCount).toBe(1);
  });

  it('opens by itself when only changing it is forbidden, and says so', async () => {
    const bytes = lock('', '256', '--modify=none', '--print=none', '--assemble=n');
    expect((await opened(bytes, { name: 'supper.pdf' })).notices).toEqual([
      'The author of supper.pdf has not allowed printing, changing or putting its pages together with others. Ask for permission, or for a file without restrictions.',
    ]);
  });

  it('says only what is forbidden, and nothing where all is allowed', async () => {
    const fixed = await opened(lock('', '256', '--modify=assembly'), { name: 'supper.pdf' });
    expect(fixed.notices).toEqual([
      'The author of supper.pdf has not allowed changing. Ask for permission, or for a file without restrictions.',
    ]);
    expect((await opened(lock('', '256'))).notices).toEqual([]);
  });
});

describe('a damaged file', () => {
  it('is refused when it begins as a PDF and holds nothing', async () => {
    const sentence = 'supper.pdf is damaged: it begins as a PDF but cannot be read.';
    expect(await refusal(text('%PDF-1.7\n'))).toEqual(['art-damaged', sentence]);
    expect(await refusal(text('%PDF-1.7\n1 0 obj\n<< /Type /Catalog >>\nendobj\n'))).toEqual([
      'art-damaged',
      sentence,
    ]);
    const bare = writeObjects({ 1: '<< /Type /Catalog /Pages 9 0 R >>' });
    expect(await refusal(bare)).toEqual(['art-damaged', sentence]);
  });

  it('whose end is cut off in the middle of its trailer is read without it', async () => {
    const whole = card();
    const cut = whole.subarray(0, Buffer.from(whole).indexOf('/Root') + 3);
    const art = await opened(cut, { name: 'supper.pdf' });
    expect(art.pageCount).toBe(1);
    expect(art.notices).toEqual([
      'The end of supper.pdf is damaged, so it was read without it. Look closely at the proof.',
    ]);
  });

  it('whose end is cut off keeps what its drawings say of trailers', async () => {
    const words = 'BT (Missing: trailer, startxref) Tj ET';
    const whole = Buffer.from(
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: '<< /Type /Pages /Count 1 /Kids [3 0 R] >>',
        3: '<< /Type /Page /MediaBox [0 0 378 522] /Contents 4 0 R >>',
        4: { data: words },
      }),
    );
    for (const cut of [whole.indexOf('/Root') + 3, whole.lastIndexOf('startxref') + 10]) {
      const art = await opened(whole.subarray(0, cut), { name: 'supper.pdf' });
      const drawing = asStream(art.document.context, PDFRef.of(4))!;
      expect(Buffer.from(drawing.contents).toString()).toBe(words);
      expect(art.notices).toHaveLength(1);
    }
  });

  it('whose end is cut off is not read without it when it is encrypted', async () => {
    const bytes = throughQpdf(card(), '--encrypt', '', 'owner', '256', '--', '--object-streams=disable');
    const cut = bytes.subarray(0, Buffer.from(bytes).indexOf('trailer') + 20);
    const readable = Buffer.from(cut).includes('/Encrypt');
    expect(readable).toBe(false);
    const told = Buffer.concat([cut, Buffer.from(' /Encrypt ')]);
    expect((await refusal(told))[0]).toBe('art-damaged');
  });

  it('keeps the number of a page that is lost, and opens the others', async () => {
    const art = await opened(
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: '<< /Type /Pages /Count 3 /Kids [3 0 R 44 0 R 5 0 R] >>',
        3: '<< /Type /Page /MediaBox [0 0 10 20] >>',
        5: '<< /Type /Page /MediaBox [0 0 30 40] >>',
      }),
      { name: 'supper.pdf' },
    );
    expect(art.pageCount).toBe(3);
    expect(art.page(3)).toMatchObject({ ok: true, value: { size: { w: 30, h: 40 } } });
    expect(art.page(2)).toEqual({
      ok: false,
      fault: {
        code: 'art-damaged',
        message: 'Page 2 of supper.pdf is lost: the file lists it but does not hold it.',
        remedy: 'Ask for the file again, or export it again.',
        where: 'supper.pdf',
      },
    });
  });
});

describe('the pages', () => {
  it('must be there', async () => {
    expect(await refusal(writePages([]))).toEqual(['art-empty', 'supper.pdf has no pages.']);
    const nested = writeObjects({
      1: '<< /Type /Catalog /Pages 2 0 R >>',
      2: '<< /Type /Pages /Count 0 /Kids [3 0 R] >>',
      3: '<< /Type /Pages /Count 0 >>',
    });
    expect((await refusal(nested))[0]).toBe('art-empty');
  });

  it('must not be more than 2,000', async () => {
    const many = writeObjects({
      1: '<< /Type /Catalog /Pages 2 0 R >>',
      2: `<< /Type /Pages /Count 10000 /MediaBox [0 0 378 522] /Kids [${'3 0 R '.repeat(10_000)}] >>`,
      3: '<< /Type /Page /Parent 2 0 R >>',
    });
    const sentence = 'supper.pdf has 10000 pages; at most 2000 are read.';
    expect(await refusal(many)).toEqual(['art-too-large', sentence]);
  });

  it('are counted up to the limit and no further, whatever the file says of their number', async () => {
    const file = (pages: number) =>
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: `<< /Type /Pages /Count 1 /MediaBox [0 0 378 522] /Kids [${'3 0 R '.repeat(pages)}] >>`,
        3: '<< /Type /Page /Parent 2 0 R >>',
      });
    expect((await opened(file(5), { limits: { pages: 5 } })).pageCount).toBe(5);
    const tooMany = await refusal(file(6), { limits: { pages: 5 } });
    expect(tooMany).toEqual(['art-too-large', 'supper.pdf has more than 5 pages; at most 5 are read.']);
  });

  it('are found through a tree that leads back to itself', async () => {
    const art = await opened(
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: '<< /Type /Pages /Count 2 /Kids [3 0 R 4 0 R] /MediaBox [0 0 10 20] >>',
        3: '<< /Type /Pages /Count 1 /Kids [2 0 R 5 0 R 3 0 R] >>',
        4: '<< /Type /Page >>',
        5: '<< /Type /Page /MediaBox [0 0 30 40] >>',
      }),
    );
    const sizes = [1, 2].map((n) => art.page(n)).map((page) => page.ok && page.value.size.w);
    expect(art.pageCount).toBe(2);
    expect(sizes).toEqual([30, 10]);
  });

  it('may lie deep, but not without end', async () => {
    const deep = (levels: number) => {
      const nodes = Array.from({ length: levels }, (_, i) => [
        i + 2,
        `<< /Type /Pages /Count 1 /Kids [${i + 3} 0 R] >>`,
      ]);
      return writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        ...Object.fromEntries(nodes),
        [levels + 2]: '<< /Type /Page /MediaBox [0 0 10 20] >>',
      });
    };
    expect((await opened(deep(500))).pageCount).toBe(1);
    const sentence = 'The pages of supper.pdf are listed in a tangle that no program needs.';
    expect(await refusal(deep(501))).toEqual(['art-too-large', sentence]);
  });

  it('are not looked for in a tree that grows by doubling', async () => {
    const levels = 40;
    const nodes = Array.from({ length: levels }, (_, i) => [
      i + 2,
      `<< /Type /Pages /Count 1 /Kids [${i + 3} 0 R ${i + 3} 0 R] >>`,
    ]);
    const bytes = writeObjects({
      1: '<< /Type /Catalog /Pages 2 0 R >>',
      ...Object.fromEntries(nodes),
      [levels + 2]: '<< /Type /Pages /Count 0 /Kids [] >>',
    });
    expect((await refusal(bytes))[0]).toBe('art-too-large');
  });

  it('are named from 1 to the last', async () => {
    const art = await opened(writePages([{ media: CARD }, { media: CARD }]), { name: 'supper.pdf' });
    for (const n of [0, 3, 1.5, -1, Number.NaN]) {
      expect(art.page(n)).toMatchObject({ ok: false, fault: { code: 'art-page-missing' } });
      expect(art.leaf(n).ok).toBe(false);
    }
    expect(art.page(3)).toMatchObject({
      fault: { message: 'There is no page 3 in supper.pdf: it has only 2 pages.' },
    });
    const one = await opened(card(), { name: 'supper.pdf' });
    expect(one.page(2)).toMatchObject({
      fault: { message: 'There is no page 2 in supper.pdf: it has only one page.' },
    });
  });

  it('are found however the file is packed', async () => {
    const packed = throughQpdf(card(), '--object-streams=generate', '--linearize');
    const art = await opened(packed);
    expect(art.page(1)).toMatchObject({ ok: true, value: { size: { w: 378, h: 522 } } });
  });
});

it('never throws, whatever bytes follow the header', async () => {
  await fc.assert(
    fc.asyncProperty(fc.uint8Array({ maxLength: 300 }), async (bytes) => {
      const art = await openArt(Buffer.concat([text('%PDF-1.7\n'), bytes]));
      expect(art.ok).toBe(false);
    }),
    drawnCases(200),
  );
});
