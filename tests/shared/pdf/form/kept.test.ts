import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import {
  CARD,
  type FileParts,
  type Objects,
  type PageParts,
  pack,
  signpost,
  writeObjects,
  writePages,
} from '../../../kit/pdfs.ts';
import { opened, placed } from '../../../kit/placed.ts';
import { colourAt, picturesByPoppler, unlikeness } from '../../../kit/poppler.ts';
import { formsOf, type ReadObjects, readObjects, unfold, type Value } from '../../../kit/qpdf.ts';

/** Everything a press-ready page may use. */
const PRESS: Objects = {
  3: '[/Separation /Harvest#20Gold /DeviceCMYK 4 0 R]',
  4: '<< /FunctionType 2 /Domain [0 1] /C0 [0 0 0 0] /C1 [0 0.3 0.9 0.05] /N 1 >>',
  5: '<< /Type /ExtGState /OP true /op true /OPM 1 >>',
  6: '<< /Type /ExtGState /SMask << /Type /Mask /S /Luminosity /G 7 0 R /BC [0] >> /ca 0.5 /BM /Multiply >>',
  7: {
    dict: '/Type /XObject /Subtype /Form /BBox [0 0 378 522] /Group << /S /Transparency /CS /DeviceGray >> /Resources << >>',
    data: '1 g 0 0 189 522 re f',
  },
  8: pack(
    '\x00\x40\x80\xff'.repeat(4),
    '/Type /XObject /Subtype /Image /Width 2 /Height 2 /BitsPerComponent 8 /ColorSpace /DeviceCMYK /SMask 9 0 R',
  ),
  9: pack(
    '\xff\x80\x40\x00',
    '/Type /XObject /Subtype /Image /Width 2 /Height 2 /BitsPerComponent 8 /ColorSpace /DeviceGray',
  ),
  10: '<< /Type /Font /Subtype /Type1 /BaseFont /Invented /FirstChar 65 /LastChar 65 /Widths [600] /FontDescriptor 11 0 R /ToUnicode 13 0 R >>',
  11: '<< /Type /FontDescriptor /FontName /Invented /Flags 32 /FontBBox [0 0 600 700] /ItalicAngle 0 /Ascent 700 /Descent 0 /CapHeight 700 /StemV 80 /FontFile3 12 0 R >>',
  12: pack('not really a font program', '/Subtype /Type1C'),
  13: pack('/CIDInit /ProcSet findresource begin'),
  14: '[/DeviceN [/Cyan /Harvest#20Gold] /DeviceCMYK << /FunctionType 4 /Domain [0 1 0 1] /Range [0 1 0 1 0 1 0 1] /Length 0 >>]',
  15: '[/ICCBased 16 0 R]',
  16: pack('an invented profile', '/N 4 /Alternate /DeviceCMYK'),
};

const PRESS_PAGE: PageParts = {
  media: CARD,
  resources: [
    '/ColorSpace << /Gold 3 0 R /Two 14 0 R /Press 15 0 R /DefaultCMYK 15 0 R >>',
    '/ExtGState << /Over 5 0 R /Soft 6 0 R >> /XObject << /Photo 8 0 R /Panel 7 0 R >> /Font << /F1 10 0 R >>',
    '/Properties << /Note << /Type /Anything /Said (kept) >> >> /ProcSet [/PDF]',
  ].join(' '),
  drawing:
    '/Over gs /Gold cs 0.8 scn 9 9 360 252 re f 0 0 0 1 k 9 261 360 252 re f q /Soft gs 100 0 0 100 50 50 cm /Photo Do Q',
  more: '/Group << /Type /Group /S /Transparency /CS /DeviceCMYK /K true >>',
};

async function place(page: PageParts, file: FileParts = {}) {
  const bytes = writePages([page], file);
  const { bytes: sheet, notices } = await placed({ art: await opened(bytes, { name: 'supper.pdf' }) });
  const original = readObjects(bytes);
  const kid = original.follow(original.follow(original.catalog['/Pages'])['/Kids'][0]);
  const made = readObjects(sheet);
  return { bytes, sheet, notices, original, page: kid as Value, made, form: formsOf(made)[0]! };
}

const drawn = (file: ReadObjects, value: Value) => unfold(file, value);

describe('what a page draws with', () => {
  it('is copied to the last byte: spot colours, overprint, soft masks, fonts, profiles', async () => {
    const { original, page, made, form } = await place(PRESS_PAGE, { objects: PRESS });
    expect(drawn(made, made.follow(form)['/Resources'])).toEqual(drawn(original, page['/Resources']));
    expect(made.packed(form)).toEqual(original.packed(page['/Contents']));
    expect(made.follow(form)).toMatchObject({
      '/Type': '/XObject',
      '/Subtype': '/Form',
      '/Filter': '/FlateDecode',
    });
  });

  it('keeps its transparency group, which is isolated as that of a page always is', async () => {
    const { made, form } = await place(PRESS_PAGE, { objects: PRESS });
    expect(made.follow(form)['/Group']).toEqual({
      '/CS': '/DeviceCMYK',
      '/I': true,
      '/K': true,
      '/S': '/Transparency',
      '/Type': '/Group',
    });
    const without = await place({ media: CARD, more: '/Group << /S /Other >>' });
    expect(without.made.follow(without.form)).not.toHaveProperty('/Group');
  });

  it('is its own resources where it inherits them, and none where it has none', async () => {
    const inherited = await place(
      { media: CARD, resources: null, drawing: '0 0 9 9 re f' },
      {
        root: '/Resources << /ColorSpace << /Gold 3 0 R >> >>',
        objects: PRESS,
      },
    );
    expect(drawn(inherited.made, inherited.made.follow(inherited.form)['/Resources'])).toHaveProperty(
      ['/ColorSpace', '/Gold', 1],
      '/Harvest Gold',
    );
    const none = await place({ media: CARD, resources: null, drawing: '0 0 9 9 re f' });
    expect(none.made.follow(none.form)['/Resources']).toEqual({});
  });

  it('may be a packing that the program itself does not undo', async () => {
    const rows = deflateSync(Buffer.from(`\x00${signpost(CARD)}`, 'latin1'));
    const columns = signpost(CARD).length;
    const bytes = writeObjects({
      1: '<< /Type /Catalog /Pages 2 0 R >>',
      2: '<< /Type /Pages /Count 1 /Kids [3 0 R] >>',
      3: `<< /Type /Page /MediaBox [${CARD.join(' ')}] /Contents 4 0 R /Resources << >> >>`,
      4: {
        dict: `/Filter [/FlateDecode] /DecodeParms [<< /Predictor 15 /Columns ${columns} >>]`,
        data: rows,
      },
    });
    const { bytes: sheet } = await placed({ art: await opened(bytes) });
    expect(unlikeness(picturesByPoppler(sheet)[0]!, picturesByPoppler(bytes)[0]!)).toBe(0);
    const made = readObjects(sheet);
    expect(made.follow(formsOf(made)[0]!)).toMatchObject({ '/DecodeParms': [{ '/Predictor': 15 }] });
  });
});

describe('what leads out of the page', () => {
  it('is left behind, but only where it means that', async () => {
    const objects: Objects = {
      3: {
        dict: '/Type /XObject /Subtype /Form /BBox [0 0 9 9] /Resources << >> /StructParents 4 /StructParent 5 /Metadata 4 0 R /PieceInfo << /A 5 0 R >> /AF [5 0 R] /LastModified (D:2026)',
        data: '0 0 9 9 re f',
      },
      4: { dict: '/Type /Metadata /Subtype /XML', data: '<x/>' },
      5: '<< /Big (document) /Page 6 0 R >>',
      6: '<< /Type /Pages >>',
      7: '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Parent 5 0 R /StructParent 6 >>',
    };
    const { made, form } = await place(
      {
        media: CARD,
        // The same words as names of resources.
        resources: '/XObject << /Parent 3 0 R /Metadata 3 0 R >> /Font << /StructParents 7 0 R >>',
        drawing: '/Parent Do',
        more: '/StructParents 1 /Metadata 4 0 R /PieceInfo << /A 5 0 R >> /AA << /O 5 0 R >> /B [5 0 R]',
      },
      { objects },
    );
    const resources = drawn(made, made.follow(form)['/Resources']);
    expect(Object.keys(resources['/XObject'])).toEqual(['/Metadata', '/Parent']);
    expect(Object.keys(resources['/XObject']['/Parent']).toSorted()).toEqual(
      ['/BBox', '/LastModified', '/Resources', '/Subtype', '/Type', 'packed'].toSorted(),
    );
    expect(resources['/Font']['/StructParents']).toEqual({
      '/BaseFont': '/Helvetica',
      '/Subtype': '/Type1',
      '/Type': '/Font',
    });
    expect(Object.keys(made.follow(form)).toSorted()).toEqual(
      ['/BBox', '/Filter', '/Matrix', '/Resources', '/Subtype', '/Type'].toSorted(),
    );
    expect(JSON.stringify(drawn(made, form))).not.toContain('document');
  });

  it('cannot drag in other pages, by whatever name it goes', async () => {
    const kinds = ['Page', 'Pages', 'Catalog', 'Annot', 'Outlines', 'StructElem', 'StructTreeRoot'];
    const objects = Object.fromEntries(
      kinds.map((kind, i) => [i + 3, `<< /Type /${kind} /Heavy (weight) >>`]),
    );
    const properties = kinds.map(
      (kind, i) => `/${kind}Ref ${i + 3} 0 R /${kind} << /Type /${kind} /Heavy (weight) >>`,
    );
    const { made, form } = await place(
      { media: CARD, resources: `/Properties << /P << ${properties.join(' ')} /Kept (yes) >> >>` },
      { objects },
    );
    const { '/P': kept } = drawn(made, made.follow(form)['/Resources'])['/Properties'];
    expect(JSON.stringify(kept)).not.toContain('weight');
    expect(kept['/Kept']).toBe('u:yes');
  });

  it('may be missing', async () => {
    const { made, form } = await place({
      media: CARD,
      resources: '/XObject << /Gone 99 0 R /None null >> /Font 98 0 R',
    });
    expect(drawn(made, made.follow(form)['/Resources'])).toEqual({ '/XObject': {} });
  });
});

describe('forms, patterns and glyphs without resources of their own', () => {
  const borrowers = (resources: string): Objects => ({
    3: {
      dict: `/Type /XObject /Subtype /Form /BBox [0 0 378 522] ${resources}`,
      data: '/Gold cs 1 scn 20 20 100 100 re f /Inner Do',
    },
    4: {
      dict: `/Type /XObject /Subtype /Form /BBox [0 0 378 522] ${resources}`,
      data: '/Gold cs 1 scn 200 20 100 100 re f',
    },
    5: {
      dict: `/PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 20 20] /XStep 20 /YStep 20 ${resources}`,
      data: '/Gold cs 1 scn 0 0 10 10 re f',
    },
    6: `<< /Type /Font /Subtype /Type3 /FontBBox [0 0 1 1] /FontMatrix [1 0 0 1 0 0] /FirstChar 65 /LastChar 65 /Widths [1] /Encoding << /Differences [65 /A] >> /CharProcs << /A 7 0 R >> ${resources} >>`,
    7: { data: '1 0 d0 /Gold cs 1 scn 0 0 1 1 re f' },
    8: '[/Separation /Gold /DeviceRGB << /FunctionType 2 /Domain [0 1] /C0 [1 1 1] /C1 [1 0.6 0] /N 1 >>]',
  });
  const objects = borrowers('');
  const page: PageParts = {
    media: CARD,
    resources:
      '/ColorSpace << /Gold 8 0 R >> /XObject << /Outer 3 0 R /Inner 4 0 R >> /Pattern << /Dots 5 0 R >> /Font << /Three 6 0 R >>',
    drawing: '/Outer Do q /Pattern cs /Dots scn 20 200 200 100 re f Q BT /Three 60 Tf 20 400 Td (A) Tj ET',
  };

  it('draw with those of their page, as they would if they named them', async () => {
    const named = writePages([page], {
      objects: borrowers('/Resources << /ColorSpace << /Gold 8 0 R >> /XObject << /Inner 4 0 R >> >>'),
    });
    const { sheet, made, form } = await place(page, { objects });
    const picture = picturesByPoppler(sheet)[0]!;
    expect(unlikeness(picture, picturesByPoppler(named)[0]!)).toBe(0);
    for (const [x, y] of [
      [70, 70],
      [250, 70],
      [25, 205],
      [50, 430],
    ] as const) {
      expect(colourAt(picture, x, y)).toEqual([255, 153, 0]);
    }
    const resources = made.follow(form)['/Resources'];
    const given = made.follow(resources);
    for (const borrower of [
      given['/XObject']['/Outer'],
      given['/XObject']['/Inner'],
      given['/Pattern']['/Dots'],
      given['/Font']['/Three'],
    ]) {
      expect(made.follow(borrower)['/Resources']).toBe(resources);
    }
  });

  it('draw on each page with those of that page', async () => {
    const other = { ...page, resources: page.resources!.replace('/Gold 8 0 R', '/Gold /Pattern') };
    const bytes = writePages([page, other], { objects });
    const art = await opened(bytes);
    const { bytes: sheet } = await placed({ art, page: 1 }, { art, page: 2 });
    const made = readObjects(sheet);
    const outers = formsOf(made).map(
      (form) => made.follow(made.follow(form)['/Resources'])['/XObject']['/Outer'],
    );
    expect(outers[0]).not.toBe(outers[1]);
    formsOf(made).forEach((form, i) => {
      expect(made.follow(outers[i])['/Resources']).toBe(made.follow(form)['/Resources']);
    });
  });
});

describe('a drawing in several parts', () => {
  it('is joined, though a word may not go on in the next part', async () => {
    const page: PageParts = {
      media: CARD,
      drawing: ['q 1 0 0 rg', '9 9 100 100 re f', 'Q 200 200 50 50 re f'],
    };
    const { bytes, sheet, notices } = await place(page);
    expect(unlikeness(picturesByPoppler(sheet)[0]!, picturesByPoppler(bytes)[0]!)).toBe(0);
    expect(notices).toEqual([]);
  });

  it('may be no part at all, or an empty one', async () => {
    for (const drawing of [[], '', ['', '']]) {
      const { sheet, notices } = await place({ media: CARD, drawing });
      expect(new Set(picturesByPoppler(sheet)[0]!.pixels)).toEqual(new Set([255]));
      expect(notices).toEqual([]);
    }
  });

  it('is set right where it does not close what it opens, and that is said', async () => {
    const said = [
      'The drawing of page 1 of supper.pdf did not close all that it opened, or closed what it had not; this was set right.',
    ];
    const sound = picturesByPoppler(writePages([{ media: CARD, drawing: signpost(CARD) }]))[0]!;
    for (const drawing of [
      `q\n${signpost(CARD)}`,
      [`Q ${signpost(CARD)}`, 'q'],
      `${signpost(CARD)} EMC /X BMC`,
    ]) {
      const { sheet, notices } = await place({ media: CARD, drawing });
      expect(notices).toEqual(said);
      expect(unlikeness(picturesByPoppler(sheet)[0]!, sound)).toBe(0);
    }
  });
});
