import fc from 'fast-check';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { findTrim } from '../../../shared/pdf/art/findTrim.ts';
import { openArt } from '../../../shared/pdf/art/openArt.ts';
import { createFormMaker } from '../../../shared/pdf/form/formMaker.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { CARD, type Objects, pack, signpost, writePages } from '../../kit/pdfs.ts';
import { throughQpdf } from '../../kit/qpdf.ts';

// The library warns of numbers that are too large for some readers.
beforeAll(() => {
  vi.spyOn(console, 'warn').mockReturnValue();
});
afterAll(() => {
  vi.restoreAllMocks();
});

const OBJECTS: Objects = {
  3: pack('1 0 0 rg 0 0 40 60 re f', '/Type /XObject /Subtype /Form /BBox [0 0 40 60] /Matrix [1 0 0 1 0 0]'),
  4: '<< /Type /OCG /Name (Stamps) >>',
  5: '<< /Type /Annot /Subtype /Stamp /Rect [30 40 90 130] /F 4 /AP << /N 3 0 R >> /OC 4 0 R >>',
  6: pack('a profile', '/N 4'),
};

const sound = writePages(
  [90, 0].map((rotate) => ({
    media: CARD,
    trim: [9, 9, 369, 513] as const,
    rotate,
    drawing: [signpost(CARD), 'q /Stamp Do Q'],
    resources: '/XObject << /Stamp 3 0 R >> /Properties << /L 4 0 R >>',
    more: '/Annots [5 0 R] /Group << /S /Transparency >>',
  })),
  {
    objects: OBJECTS,
    catalog:
      '/OCProperties << /OCGs [4 0 R] /D << /OFF [4 0 R] >> >> /OutputIntents [<< /S /GTS_PDFX /DestOutputProfile 6 0 R >>]',
  },
);

const files = [
  sound,
  throughQpdf(sound, '--object-streams=generate'),
  throughQpdf(sound, '--encrypt', '', 'owner', '256', '--'),
];

interface Harm {
  readonly at: number;
  readonly kind: 'change' | 'cut' | 'repeat' | 'insert' | 'end';
  readonly bytes: Uint8Array;
}

function harm(file: Uint8Array, { at, kind, bytes }: Harm): Uint8Array {
  const from = Math.floor(at * file.length);
  const [before, after] = [file.subarray(0, from), file.subarray(from)];
  switch (kind) {
    case 'change':
      return Buffer.concat([before, bytes, after.subarray(bytes.length)]);
    case 'cut':
      return Buffer.concat([before, after.subarray(10 * bytes.length)]);
    case 'repeat':
      return Buffer.concat([before, after.subarray(0, 10 * bytes.length), after]);
    case 'insert':
      return Buffer.concat([before, bytes, after]);
    case 'end':
      return Buffer.from(before);
  }
}

const harms = fc.record({
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  kind: fc.constantFrom<Harm['kind'][]>('change', 'cut', 'repeat', 'insert', 'end'),
  bytes: fc.oneof(
    fc.uint8Array({ minLength: 1, maxLength: 8 }),
    fc
      .constantFrom(
        '<<',
        '>>',
        '[',
        ']',
        '(',
        ')',
        '/Type',
        '/Kids',
        ' 2 0 R',
        ' 0 ',
        '-',
        'null',
        'stream',
        'endobj',
      )
      .map((word) => new Uint8Array(Buffer.from(word))),
  ),
});

it('is either opened and placed, or refused in words, however a file is damaged', async () => {
  let opened = 0;
  let refused = 0;
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...files),
      fc.array(harms, { minLength: 1, maxLength: 3 }),
      async (file, all) => {
        const art = await openArt(all.reduce(harm, file), { name: 'supper.pdf' });
        if (!art.ok) {
          refused += 1;
          expect(art.fault.message).toContain('supper.pdf');
          return;
        }
        const target = await PDFDocument.create();
        const maker = createFormMaker(target);
        for (let n = 1; n <= art.value.pageCount; n += 1) {
          const page = art.value.page(n);
          const form = maker.formOf(art.value, n, 0, { x: 0, y: 0, w: 378, h: 522 });
          if (page.ok) findTrim(page.value, { trim: { w: 360, h: 504 }, bleed: 9 });
          if (form.ok) opened += 1;
          else expect(form.fault.message).toContain('supper.pdf');
        }
        maker.finish();
        expect((await target.save()).length).toBeGreaterThan(0);
      },
    ),
    drawnCases(600),
  );
  expect(opened).toBeGreaterThan(50);
  expect(refused).toBeGreaterThan(50);
});
