// The open job ticket: by what the published schema allows, and telling just what the job is.

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { lying } from '../../../shared/geometry/head.ts';
import { layInto } from '../../../shared/geometry/lie.ts';
import { lookFromBehind } from '../../../shared/geometry/turn.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import { countJob } from '../../../shared/job/counts.ts';
import { facesOf, sheetOf } from '../../../shared/job/job.ts';
import { formsOfJob } from '../../../shared/job/nameJobFiles.ts';
import { contentMatrix, pageKey, unplacedFace } from '../../../shared/ticket/placeContent.ts';
import { intoPress } from '../../../shared/ticket/pressFrame.ts';
import { allOf, faultsOfTicket, readXml } from '../../kit/readXml.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';
import { ticketOf } from '../../kit/ticketOf.ts';

type Matrix = readonly number[];

/** Orientation matrices as CIP4 JDF prints them (coordinate systems, table of orientations). */
const ORIENTATIONS: Readonly<Record<string, readonly (number | string)[]>> = JSON.parse(
  readFileSync(join(import.meta.dirname, '../../reference/turns.json'), 'utf8'),
).orientation_matrices;
const orientation = (name: string, w: number, h: number): Matrix =>
  ORIENTATIONS[name]!.map((n) => (n === 'w' ? w : n === 'h' ? h : Number(n)));
const apply = ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0]: Matrix, x: number, y: number) => [
  a * x + c * y + e,
  b * x + d * y + f,
];
const numbers = (text = '') => text.split(' ').map(Number);
const values = (m: { a: number; b: number; c: number; d: number; e: number; f: number }) =>
  [m.a, m.b, m.c, m.d, m.e, m.f].map((n) => n + 0);

describe('the matrices of the ticket', () => {
  it('are those of the published table', () => {
    const sheet = { w: 320, h: 450 };
    expect(values(lookFromBehind('side-to-side', sheet))).toEqual(orientation('Flip180', 320, 450));
    expect(values(lookFromBehind('end-to-end', sheet))).toEqual(orientation('Flip0', 320, 450));
    expect(values(intoPress(sheet))).toEqual(orientation('Rotate180', 320, 450));
    for (const head of [0, 90, 180, 270] as const) {
      const room = { x: 0, y: 0, ...lying(sheet, head) };
      expect(values(layInto(room, head))).toEqual(orientation(`Rotate${head}`, 320, 450));
    }
  });

  it.each(KINDS)(
    'put every page and every trim where its form prints them, lead edge at 0: %s',
    (_n, job) => {
      const root = readXml(ticketOf(job));
      const { w, h } = sheetOf(job.brief).size;
      const faces = facesOf(job.brief);
      const layouts = allOf(root, 'ResourceSet').find((s) => s.attributes.Name === 'Layout')!.inside;
      const sides = formsOfJob(job).flatMap((form) => form.sides);
      expect(layouts).toHaveLength(sides.length);
      layouts.forEach((resource, i) => {
        const side = allOf(resource, 'Part')[0]!.attributes.Side;
        expect(side).toBe(i === 0 ? 'Front' : 'Back');
        const form = formsOfJob(job).find((f) => f.sides.includes(i === 0 ? 1 : 2))!;
        const placed = allOf(resource, 'PlacedObject');
        expect(placed).toHaveLength(form.placements.length);
        form.placements.forEach(({ piece, face, trim, bleed, head }, n) => {
          const { attributes } = placed[n]!;
          expect(bleed).toHaveLength(1);
          const printed = bleed[0]!;
          const [pw = 0, ph = 0] = numbers(attributes.TrimSize);
          const trimMatrix = numbers(attributes.TrimCTM);
          // The trim in the frame of the process: from the lead edge away, and from the right as side 1 is looked at.
          const [ax = 0, ay = 0] = apply(trimMatrix, 0, 0);
          const [bx = 0, by = 0] = apply(trimMatrix, pw, ph);
          expect(Math.min(ax, bx)).toBeCloseTo(w - trim.x - trim.w, 3);
          expect(Math.min(ay, by)).toBeCloseTo(h - trim.y - trim.h, 3);
          expect(Math.abs(bx - ax)).toBeCloseTo(trim.w, 3);
          // The head of the piece, seen with the lead edge below, points half round from where it points above.
          const [hx = 0, hy = 0] = [apply(trimMatrix, 0, 1)[0]! - ax, apply(trimMatrix, 0, 1)[1]! - ay];
          const points = (Math.round((Math.atan2(-hx, hy) * 180) / Math.PI) + 360) % 360;
          expect(points).toBe((head + 180) % 360);
          // The page's own trim lies at (9, 12) of its media box.
          const content = numbers(attributes.CTM);
          expect(apply(content, 9, 12)[0]).toBeCloseTo(ax, 3);
          expect(apply(content, 9, 12)[1]).toBeCloseTo(ay, 3);
          const [left = 0, bottom = 0, right = 0, top = 0] = numbers(attributes.ClipBox);
          [w - right, h - top, right - left, top - bottom].forEach((value, edge) => {
            expect(value).toBeCloseTo([printed.x, printed.y, printed.w, printed.h][edge]!, 3);
          });
          const { piece: of, name } = faces[Number(attributes.Ord)]!;
          expect([of.name, name]).toEqual([piece, face]);
        });
      });
    },
  );
});

describe('the ticket', () => {
  it.each(KINDS)('holds nothing that the published schema does not allow: %s', (_name, job) => {
    const xml = ticketOf(job);
    expect(faultsOfTicket(xml)).toBe('');
    // libxml2 does not follow references from element to element.
    const ids = [...xml.matchAll(/ ID="([^"]+)"/g)].map(([, id]) => id);
    const named = [...xml.matchAll(/ (?:\w+Ref|Product)="([^"]+)"/g)].map(([, id]) => id);
    expect(named.length).toBeGreaterThan(1);
    expect(named.filter((id) => !ids.includes(id))).toEqual([]);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('would be found out if it did', () => {
    const good = ticketOf(KINDS[0]![1]);
    expect(faultsOfTicket(good.replace('WorkStyle="WorkAndTurn"', 'WorkStyle="WorkAndTwist"'))).toContain(
      'WorkStyle',
    );
    expect(faultsOfTicket(good.replace('<ContentObject/>', ''))).toContain('ContentObject');
    expect(faultsOfTicket(good.replace(' TrimCTM="-1 0 0 -1', ' TrimCTM="-1 0 0'))).toContain('TrimCTM');
  });

  it('calls every way of working by its published name, and says how the sheet is turned', () => {
    const names = WORKS.map((work) => {
      const root = readXml(ticketOf(jobOf(CARDS, work)));
      const layouts = allOf(root, 'Layout');
      expect(layouts).toHaveLength(turnOf(work) === undefined ? 1 : 2);
      const [comment] = allOf(root, 'Comment');
      return [layouts[0]!.attributes.WorkStyle, comment!.text.split(':')[0]];
    });
    expect(names).toEqual([
      ['Simplex', 'The sheet is printed on one side. Each surface is counted from its own lead edge'],
      ['WorkAndBack', 'The sheet is turned side-to-side'],
      ['WorkAndBack', 'The sheet is turned end-to-end'],
      ['Perfecting', 'The sheet is turned side-to-side'],
      ['Perfecting', 'The sheet is turned end-to-end'],
      ['WorkAndTurn', 'The sheet is turned side-to-side'],
      ['WorkAndTumble', 'The sheet is turned end-to-end'],
    ]);
  });

  it('orders what the customer ordered, and loads the overs as waste', () => {
    const job = KINDS[1]![1];
    const root = readXml(ticketOf(job));
    const products = allOf(root, 'Product').map(({ attributes }) => attributes);
    expect(products).toEqual([
      { Amount: '48', DescriptiveName: 'Menu', ID: 'P1', IsRoot: 'true' },
      { Amount: '96', DescriptiveName: 'Place tag', ID: 'P2', IsRoot: 'true' },
    ]);
    expect(allOf(root, 'LayoutIntent').map(({ attributes }) => attributes)).toEqual([
      { Bleed: '9', FinishedDimensions: '252 540 0', Pages: '2', Sides: 'TwoSidedHeadToFoot' },
      { Bleed: '9', FinishedDimensions: '144 252 0', Pages: '2', Sides: 'TwoSidedHeadToHead' },
    ]);
    const { needed, overs } = countJob(job);
    expect(allOf(root, 'PartAmount').map(({ attributes }) => attributes)).toEqual([
      { Amount: `${needed}`, Waste: `${overs}` },
      { Amount: '48', MaxAmount: '48' },
      { Amount: '96', MaxAmount: '96' },
    ]);
  });

  it('may deliver what the sheets needed give beyond the order', () => {
    // 250 ordered, 22 up: 12 sheets give 264.
    const amounts = allOf(readXml(ticketOf(jobOf(CARDS))), 'PartAmount').map(({ attributes }) => attributes);
    expect(amounts[1]).toEqual({ Amount: '250', MaxAmount: '264' });
  });

  it('cuts a block for each position, at its trim, and says which design comes of it', () => {
    const job = KINDS[1]![1];
    const { h } = sheetOf(job.brief).size;
    const root = readXml(ticketOf(job));
    const blocks = allOf(root, 'CutBlock').map(({ attributes }) => attributes);
    expect(blocks.map(({ BlockName }) => BlockName)).toEqual(job.arrangement.map((_p, i) => `B${i + 1}`));
    job.arrangement.forEach(({ trim, piece }, i) => {
      const [, bottom = 0, , top = 0] = numbers(blocks[i]!.Box);
      expect(top - bottom).toBeCloseTo(trim.h, 3);
      expect(bottom).toBeCloseTo(h - trim.y - trim.h, 3);
      expect(blocks[i]!.DescriptiveName).toBe(piece);
    });
    const output = allOf(root, 'ResourceSet').at(-1)!;
    const freed = output.inside.flatMap((resource) =>
      allOf(resource, 'Part').map(({ attributes }) => [
        resource.attributes.DescriptiveName,
        attributes.BlockName,
      ]),
    );
    expect(freed.toSorted()).toEqual(
      job.arrangement.map(({ piece }, i) => [piece, `B${i + 1}`] as const).toSorted(),
    );
  });

  it('turns the side guide with the frame: what is at our left is at its right', () => {
    const lay = (across: string) =>
      allOf(
        readXml(ticketOf(jobOf({ ...CARDS, sheet: { ...CARDS.sheet, hold: { across } } }))),
        'DigitalPrintingParams',
      )[0]!.attributes.SheetLay;
    expect(['left', 'right', 'centre'].map(lay)).toEqual(['Right', 'Left', 'Center']);
  });

  it('tells the paper where it is known', () => {
    // 13 thousandths of an inch are 330.2 micrometres.
    const stock = {
      name: 'Rough card',
      grammage: 270,
      caliper: 0.936,
      coated: 'one-side',
      cutter: { ...ANY_CUTTER, mostStack: 9 },
    } as const;
    const root = readXml(ticketOf(KINDS[0]![1], { stock }));
    expect(allOf(root, 'Media')[0]!.attributes).toEqual({
      BackCoating: 'None',
      Coating: 'Coated',
      Dimension: '792 1224',
      MediaType: 'Paper',
      MediaUnit: 'Sheet',
      Thickness: '330.2',
      Weight: '270',
    });
    expect(faultsOfTicket(ticketOf(KINDS[0]![1], { stock: { ...stock, coated: 'both-sides' } }))).toBe('');
  });

  it('survives names that XML has to write otherwise', () => {
    const odd = 'Salt & "pepper" <large> \u0007 ß 🌾';
    const job = jobOf({ ...CARDS, title: odd, pieces: [{ ...CARDS.pieces[0], name: odd }] });
    const xml = ticketOf(job);
    expect(faultsOfTicket(xml)).toBe('');
    expect(readXml(xml).attributes.DescriptiveName).toBe(odd.replace('\u0007', '\uFFFD'));
  });
});

describe('the pages of the art', () => {
  it('are told for each face, counted from 0 as the ticket counts them', () => {
    // CIP4 XJDF, RunList: Pages is a range of indices of which the first page of the file has 0.
    const [card] = CARDS.pieces;
    const pieces = [
      { ...card, name: 'Orchard', front: { file: 'book.pdf', page: 3 }, back: { file: 'book.pdf', page: 8 } },
      { ...card, name: 'Mill', front: { file: 'mill.pdf' }, back: { file: 'other.pdf', page: 2 } },
    ];
    const ticket = readXml(ticketOf(jobOf({ ...CARDS, work: 'work-and-back', pieces })));
    const told = allOf(ticket, 'Resource').flatMap((resource) => {
      const [list] = allOf(resource, 'RunList');
      if (list === undefined) return [];
      const url = allOf(list, 'FileSpec')[0]?.attributes.URL ?? '';
      return [[resource.attributes.DescriptiveName, url.split('/').at(-1), list.attributes.Pages]];
    });
    expect(told).toEqual([
      ['Orchard, front', 'book.pdf', '2 2'],
      ['Orchard, back', 'book.pdf', '7 7'],
      ['Mill, front', 'mill.pdf', '0 0'],
      ['Mill, back', 'other.pdf', '1 1'],
    ]);
  });
});

describe('a page that the brief turns', () => {
  const turnedFace = { ...CARDS.pieces[0]!, front: { file: 'orchard.pdf', rotate: 90 } };
  const job = jobOf({ ...CARDS, pieces: [turnedFace] });
  const front = formsOfJob(job)[0]!.placements.find(({ face }) => face === 'front')!;

  it('is placed by the size of the page as it is viewed', () => {
    const sizes = new Map([[pageKey('orchard.pdf', 1), { w: 200, h: 300 }]]);
    const matrix = values(contentMatrix(job, front, sizes)!);
    // A quarter counter-clockwise takes (x, y) of a page 300 high to (300 - y, x); the trim begins at (9, 12) there.
    const [x, y] = apply(matrix, 12, 291);
    const laid = values(layInto(front.trim, front.head));
    expect(x).toBeCloseTo(apply(laid, 0, 0)[0]!);
    expect(y).toBeCloseTo(apply(laid, 0, 0)[1]!);
    expect(unplacedFace(job, sizes)).toBeUndefined();
  });

  it('takes the size of that very page, and the trim of that very face', () => {
    const [card] = CARDS.pieces;
    const turnedBack = { file: 'b.pdf', page: 2, rotate: 180 };
    const mixed = jobOf({
      ...CARDS,
      pieces: [
        { ...card, name: 'One', front: { file: 'a.pdf', rotate: 90 }, back: { file: 'a.pdf', page: 2 } },
        { ...card, name: 'Two', front: { file: 'b.pdf', rotate: 180 }, back: turnedBack },
      ],
    });
    // Each face has a trim of its own on its page, and each turned page a size of its own.
    const trims = { 'One front': [3, 5], 'One back': [7, 11], 'Two front': [13, 17], 'Two back': [19, 23] };
    const art = mixed.art.map((face) => {
      const [x, y] = trims[`${face.piece} ${face.face}` as keyof typeof trims] as [number, number];
      return { ...face, trim: { ...face.trim, x, y } };
    });
    const pages = [
      ['a.pdf', 1, { w: 210, h: 310 }],
      ['b.pdf', 1, { w: 220, h: 320 }],
      ['b.pdf', 2, { w: 230, h: 330 }],
    ] as const;
    const sizes = new Map(pages.map(([file, page, size]) => [pageKey(file, page), size]));
    expect(sizes.size).toBe(3);
    // The corner of the page that is the lower left of the trim once the page is turned as the brief asks.
    const corners = {
      'One front': [5, 310 - 3],
      'One back': [7, 11],
      'Two front': [220 - 13, 320 - 17],
      'Two back': [230 - 19, 330 - 23],
    };
    for (const placement of formsOfJob(mixed)[0]!.placements) {
      const [px, py] = corners[`${placement.piece} ${placement.face}` as keyof typeof corners] as [
        number,
        number,
      ];
      const [x, y] = apply(values(contentMatrix({ ...mixed, art }, placement, sizes)!), px, py);
      const [left, bottom] = apply(values(layInto(placement.trim, placement.head)), 0, 0);
      expect(x).toBeCloseTo(left!);
      expect(y).toBeCloseTo(bottom!);
    }
  });

  it('has no place as long as that size is not known, and neither has a face without art', () => {
    expect(contentMatrix(job, front, new Map())).toBeUndefined();
    expect(unplacedFace(job, new Map())).toBe('the front of Orchard');
    expect(unplacedFace({ ...jobOf(CARDS), art: [] }, new Map())).toMatch(/^the (front|back) of Orchard$/);
    expect(() => ticketOf(job)).toThrow('The page of Orchard has no matrix');
  });
});
