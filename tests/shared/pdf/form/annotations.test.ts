import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS } from '../../../../shared/geometry/head.ts';
import { drawnCases } from '../../../kit/drawnCases.ts';
import { CARD, type Objects, signpost, writePages } from '../../../kit/pdfs.ts';
import { opened, placed } from '../../../kit/placed.ts';
import { colourAt, picturesByPoppler, unlikeness } from '../../../kit/poppler.ts';
import { formsOf, readObjects } from '../../../kit/qpdf.ts';

/** @source ISO 32000-1, Table 165. */
const PRINT = 4;
const HIDDEN = 2;
const NO_ROTATE = 16;

/** A stamp: an F in a red field, 40 × 60 units in its own coordinates. */
const STAMP = '1 0 0 rg 0 0 40 60 re f 0 g 8 8 6 44 re f 8 46 24 6 re f 8 28 16 6 re f';

const look = (entries = '/BBox [0 0 40 60]', data = STAMP) => ({
  dict: `/Type /XObject /Subtype /Form /Resources << >> ${entries}`,
  data,
});

interface Note {
  readonly flags?: number;
  readonly rect?: string;
  readonly more?: string;
}

const note = ({ flags = PRINT, rect = '[30 40 90 130]', more = '/AP << /N 3 0 R >>' }: Note) =>
  `<< /Type /Annot /Subtype /Stamp /Rect ${rect} /F ${flags} ${more} >>`;

function pageWith(
  notes: readonly string[],
  objects: Objects = { 3: look() },
  rotate = 0,
  catalog = '',
): Uint8Array {
  const page = { media: CARD, drawing: signpost(CARD), rotate, more: `/Annots [${notes.join(' ')}]` };
  return writePages([page], { objects, catalog });
}

async function place(bytes: Uint8Array) {
  const { bytes: sheet, notices } = await placed({ art: await opened(bytes, { name: 'supper.pdf' }) });
  return { sheet, notices, picture: picturesByPoppler(sheet)[0]! };
}

const bare = () => picturesByPoppler(pageWith([]))[0]!;

describe('an annotation that prints', () => {
  it.each([
    ['as large as its rectangle', look()],
    ['with a box that begins elsewhere', look('/BBox [-10 20 70 80]', `q 2 0 0 1 -10 20 cm ${STAMP} Q`)],
    ['with a box from the other corners', look('/BBox [40 60 0 0]')],
    ['turned a quarter', look('/BBox [0 0 40 60] /Matrix [0 1 -1 0 0 0]')],
    ['turned half', look('/BBox [0 0 40 60] /Matrix [-1 0 0 -1 40 60]')],
    ['mirrored and stretched', look('/BBox [0 0 40 60] /Matrix [-3 0 0 0.5 7 -9]')],
    ['that does not say it is a form', { dict: '/BBox [0 0 40 60] /Resources << >>', data: STAMP }],
  ])('is drawn where and as its page shows it: %s', async (_, appearance) => {
    const bytes = pageWith([note({})], { 3: appearance });
    const { picture, notices } = await place(bytes);
    expect(unlikeness(picture, picturesByPoppler(bytes)[0]!)).toBe(0);
    expect(unlikeness(picture, bare())).toBeGreaterThan(0.01);
    expect(notices).toEqual([]);
  });

  it('is drawn on pages turned any way, and stays upright where it is to', async () => {
    for (const rotate of HEADS) {
      for (const flags of [PRINT, PRINT + NO_ROTATE]) {
        const bytes = pageWith([note({ flags, rect: '[150 300 210 390]' })], { 3: look() }, rotate);
        const { picture } = await place(bytes);
        expect(unlikeness(picture, picturesByPoppler(bytes)[0]!)).toBe(0);
      }
    }
  });

  it('is drawn by poppler as it is placed, whatever its rectangle, box and quarter turn', async () => {
    const corner = fc.integer({ min: 0, max: 200 });
    const length = fc.integer({ min: 10, max: 100 });
    const matrices = fc.constantFrom('[1 0 0 1 0 0]', '[0 1 -1 0 5 5]', '[-1 0 0 -1 0 0]', '[0 -2 2 0 0 9]');
    await fc.assert(
      fc.asyncProperty(corner, corner, length, length, matrices, async (x, y, w, h, matrix) => {
        const bytes = pageWith([note({ rect: `[${x} ${y} ${x + w} ${y + h}]` })], {
          3: look(`/BBox [0 0 40 60] /Matrix ${matrix}`),
        });
        const { picture } = await place(bytes);
        expect(unlikeness(picture, picturesByPoppler(bytes)[0]!, 60)).toBeLessThan(0.0005);
      }),
      drawnCases(8),
    );
  });

  it('lies over the page and over those before it', async () => {
    const blue = look('/BBox [0 0 40 60]', '0 0 1 rg 0 0 40 60 re f');
    const bytes = pageWith([note({}), note({ rect: '[60 80 120 170]', more: '/AP << /N 4 0 R >>' })], {
      3: look(),
      4: blue,
    });
    const { picture, sheet } = await place(bytes);
    expect(unlikeness(picture, picturesByPoppler(bytes)[0]!)).toBe(0);
    expect(colourAt(picture, 80, 100)).toEqual([0, 0, 255]);
    // The page itself stays one form, as it was packed.
    const made = readObjects(sheet);
    const whole = made.follow(formsOf(made)[0]!);
    const page = made.follow(whole['/Resources'])['/XObject']['/Page'];
    expect(made.packed(page)).toEqual(packedDrawing(bytes));
    expect(made.follow(page)['/Matrix']).toEqual([1, 0, 0, 1, 0, 0]);
  });

  it('is shown in the state it is in', async () => {
    const states = '/AP << /N << /Yes 3 0 R /No null >> >>';
    const yes = await place(pageWith([note({ more: `${states} /AS /Yes` })]));
    expect(colourAt(yes.picture, 35, 125)).toEqual([255, 0, 0]);
    for (const state of ['/AS /No', '/AS /Off', '']) {
      const other = await place(pageWith([note({ more: `${states} ${state}` })]));
      expect(unlikeness(other.picture, bare())).toBe(0);
      expect(other.notices).toEqual([]);
    }
  });

  it('lies on its layer', async () => {
    const objects: Objects = { 3: look(), 4: '<< /Type /OCG /Name (Stamps) >>' };
    const onLayer = [note({ more: '/AP << /N 3 0 R >> /OC 4 0 R' })];
    const states = (off: string) => `/OCProperties << /OCGs [4 0 R] /D << ${off} >> >>`;
    const shown = await place(pageWith(onLayer, objects, 0, states('')));
    expect(colourAt(shown.picture, 35, 125)).toEqual([255, 0, 0]);
    const hidden = await place(pageWith(onLayer, objects, 0, states('/OFF [4 0 R]')));
    expect(unlikeness(hidden.picture, bare())).toBe(0);
    const layers = readObjects(hidden.sheet).catalog['/OCProperties'];
    expect(layers['/D']['/OFF']).toEqual(layers['/OCGs']);
  });

  it('is drawn with the resources of the page where it has none', async () => {
    const objects: Objects = {
      3: { dict: '/Subtype /Form /BBox [0 0 40 60]', data: '/Green cs 1 scn 0 0 40 60 re f' },
      4: '[/Separation /Green /DeviceRGB << /FunctionType 2 /Domain [0 1] /C0 [1 1 1] /C1 [0 1 0] /N 1 >>]',
    };
    const page = {
      media: CARD,
      resources: '/ColorSpace << /Green 4 0 R >>',
      more: `/Annots [${note({})}]`,
    };
    const { picture } = await place(writePages([page], { objects }));
    expect(colourAt(picture, 60, 80)).toEqual([0, 255, 0]);
  });

  it('shows nothing where it has no area, and is not counted', async () => {
    const flat = look('/BBox [0 0 0 60]');
    const narrow = look('/BBox [0 0 40 60] /Matrix [0 0 0 1 0 0]');
    const low = look('/BBox [0 0 40 60] /Matrix [1 0 0 0 0 0]');
    for (const [rect, appearance] of [
      ['[30 40 30 40]', look()],
      ['[30 40]', look()],
      ['[30 40 90 130]', flat],
      ['[30 40 90 130]', narrow],
      ['[30 40 90 130]', low],
    ] as const) {
      const { picture, notices, sheet } = await place(pageWith([note({ rect })], { 3: appearance }));
      expect(unlikeness(picture, bare())).toBe(0);
      const made = readObjects(sheet);
      expect(made.follow(made.follow(formsOf(made)[0]!)['/Resources'])).toEqual({});
      expect(notices).toEqual([]);
    }
  });
});

describe('an annotation that does not print', () => {
  const silent = (words: string) => [`${words} on page 1 of supper.pdf set not to print, and left out.`];

  it('is left out and counted', async () => {
    for (const flags of [0, HIDDEN, PRINT + HIDDEN, NO_ROTATE]) {
      const { picture, notices } = await place(pageWith([note({ flags })]));
      expect(unlikeness(picture, bare())).toBe(0);
      expect(notices).toEqual(silent('One note, stamp or form field is'));
    }
    const three = await place(
      pageWith([note({ flags: 0 }), note({ flags: 0 }), note({ flags: 0 }), note({})]),
    );
    expect(three.notices).toEqual(silent('3 notes, stamps or form fields are'));
  });

  it('is not counted when it is a link or the popup of a note', async () => {
    const notes = ['Link', 'Popup'].map((kind) =>
      note({ more: '/AP << /N 3 0 R >>' }).replace('Stamp', kind),
    );
    const { picture, notices } = await place(pageWith(notes));
    expect(unlikeness(picture, bare())).toBe(0);
    expect(notices).toEqual([]);
  });

  it('is counted apart when it would print but does not hold what it looks like', async () => {
    for (const more of ['', '/AP << >>', '/AP << /N null >>', '/AP << /N 99 0 R >>', '/AP << /D 3 0 R >>']) {
      const { picture, notices } = await place(pageWith([note({ more })]));
      expect(unlikeness(picture, bare())).toBe(0);
      expect(notices).toEqual([
        'One note, stamp or form field is on page 1 of supper.pdf set to print but without anything to show, and left out.',
      ]);
    }
  });

  it('may be no annotation at all', async () => {
    const { notices } = await place(pageWith(['null', '99 0 R', '(words)', '7']));
    expect(notices).toEqual([]);
  });
});

/** The packed drawing of a page, as qpdf reads it from its file. */
function packedDrawing(bytes: Uint8Array): Buffer {
  const file = readObjects(bytes);
  return file.packed(file.follow(file.follow(file.catalog['/Pages'])['/Kids'][0])['/Contents']);
}
