import fc from 'fast-check';
import { PDFDocument, PDFName } from 'pdf-lib';
import { describe, expect, it } from 'vitest';
import { type ProofOptions, proveSheets, type SheetsProof } from '../../../electron/proof/proveSheets.ts';
import { HEADS, type Head, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { FaceName, Position } from '../../../shared/layout/position.ts';
import type { ProofJob } from '../../../shared/proof/job.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import { drawOddCard, PLAIN } from '../../kit/oddArt.ts';
import {
  type Draw,
  lopsided,
  openShop,
  printSides,
  type Shop,
  type Spoil,
  type Spoils,
} from '../../kit/printShop.ts';
import { throughQpdf } from '../../kit/qpdf.ts';

const MM = 72 / 25.4;
const [W, H, BLEED] = [170.3, 110.7, 9];
const SHEET = { w: 700.3, h: 800.7 };

function at(piece: string, x: number, y: number, head: Head, face: FaceName = 'front'): Position {
  const lies = head === 90 || head === 270;
  return { piece, face, head, trim: { x, y, w: lies ? H : W, h: lies ? W : H } };
}

const card = (name: string, turned: ReaderTurn, front: Draw, back?: Draw) => {
  const piece = { name, w: W, h: H, bleed: BLEED, turned, front };
  return back === undefined ? piece : { ...piece, back };
};

const supper = (turned: ReaderTurn) =>
  card('Supper', turned, lopsided('Supper', [0.9, 0.8, 0.6]), lopsided('Programme', [0.6, 0.8, 0.9]));
const dance = (turned: ReaderTurn) =>
  card('Dance', turned, lopsided('Dance', [0.9, 0.9, 0.9]), lopsided('The band', [0.7, 0.9, 0.7]));

/** One of each head, fronts and backs, on a sheet that is not symmetric about any axis. */
const POSITIONS = [
  at('Supper', 30.2, 40.3, 0),
  at('Dance', 30.2, 220.9, 180, 'back'),
  at('Dance', 320, 40, 90),
  at('Supper', 460, 40, 270, 'back'),
];

const shopFor = (turn: Turn, turned: ReaderTurn, positions: readonly Position[] = POSITIONS) =>
  openShop(SHEET, turn, positions, [supper(turned), dance(turned)]);

async function prove(
  { job, art }: Shop,
  { side1, side2 }: { side1: Uint8Array; side2: Uint8Array },
  options?: ProofOptions,
): Promise<SheetsProof> {
  const result = await proveSheets(
    job,
    { side1: { bytes: side1, page: 1 }, side2: { bytes: side2, page: 1 } },
    art,
    options,
  );
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
}

const brief = ({ findings }: SheetsProof) =>
  findings.map((f) => ('position' in f ? `${f.kind} ${f.position}/${f.side}` : `${f.kind} ${f.side}`));

const only =
  (position: number, side: 1 | 2, spoil: Spoil): Spoils =>
  (p, s) =>
    p === position && s === side ? spoil : {};

describe('Sheets that were written right', () => {
  for (const turn of ['side-to-side', 'end-to-end'] as const) {
    for (const turned of ['head-to-head', 'head-to-toe'] as const) {
      it(`are proved without a finding: turned ${turn}, pieces ${turned}, all four heads`, async () => {
        const shop = await shopFor(turn, turned);
        const proof = await prove(shop, await printSides(shop));
        expect(brief(proof)).toEqual([]);
        expect(proof.notes).toEqual([]);
        expect(proof.checked).toBe(8);
        for (const { shift } of proof.positions)
          expect(Math.hypot(shift!.right, shift!.lead)).toBeLessThan(0.02);
      });
    }
  }

  it('may be one page that serves both sides', async () => {
    // Turned side to side, a card that lies with its head to the left has its back behind it with the head to the right.
    const front = at('Supper', 40, 60, 90);
    const mirrored: Position = {
      ...front,
      face: 'back',
      head: 270,
      trim: { ...front.trim, x: SHEET.w - front.trim.x - front.trim.w },
    };
    const shop = await shopFor('side-to-side', 'head-to-head', [front, mirrored]);
    const { side1 } = await printSides(shop);
    expect(brief(await prove(shop, { side1, side2: side1 }))).toEqual([]);
  });

  it('may be two pages of one file', async () => {
    const shop = await shopFor('end-to-end', 'head-to-toe', [at('Supper', 40, 60, 0)]);
    const { side1, side2 } = await printSides(shop);
    const both = await PDFDocument.create();
    for (const side of [side1, side2]) {
      const [page] = await both.copyPages(await PDFDocument.load(side), [0]);
      both.addPage(page);
    }
    const bytes = await both.save();
    const sheets = { side1: { bytes, page: 1, pages: 2 }, side2: { bytes, page: 2, pages: 2 } };
    const result = await proveSheets(shop.job, sheets, shop.art);
    expect(result.ok && brief(result.value)).toEqual([]);
  });

  it('on one side only need one file', async () => {
    const shop = await openShop(
      SHEET,
      undefined,
      [at('Supper', 40, 60, 180)],
      [card('Supper', 'head-to-head', lopsided('Supper', [1, 1, 1]))],
    );
    const { side1 } = await printSides(shop);
    const result = await proveSheets(shop.job, { side1: { bytes: side1, page: 1 } }, shop.art);
    expect(result.ok && [brief(result.value), result.value.checked]).toEqual([[], 1]);
  });

  it('tell how far the proof is', async () => {
    const shop = await shopFor('side-to-side', 'head-to-head', POSITIONS.slice(0, 2));
    const told: string[] = [];
    await prove(shop, await printSides(shop), { onCompared: (done, all) => told.push(`${done}/${all}`) });
    expect(told).toEqual(['1/4', '2/4', '3/4', '4/4']);
  });
});

describe('A sheet that was spoiled on purpose', () => {
  const spoils: readonly (readonly [string, string, Spoil])[] = [
    ['a back turned upside down', 'upside-down', { turned: 180 }],
    ['a back turned a quarter', 'quarter-turned', { turned: 90 }],
    ['a back shifted by 0.3 mm', 'off-place', { shift: [0.3 * MM, 0] }],
    ['a back shifted by 1 mm', 'off-place', { shift: [-0.6 * MM, 0.8 * MM] }],
    ['a back swapped with that of another piece', 'wrong-piece', { piece: 'Dance' }],
    ['a back mirrored', 'mirrored', { mirrored: true }],
    ['the front printed on the back', 'wrong-face', { face: 'front' }],
    ['a back left out', 'nothing-printed', { missing: true }],
    ['a back scaled to 98 percent', 'wrong-scale', { scale: 0.98 }],
    ['a back askew by half a degree', 'askew', { askew: 0.5 }],
    ['a back whose bleed was cut off', 'bleed-short', { bleed: 1.2 * MM }],
  ];
  for (const [what, kind, spoil] of spoils) {
    it(`is caught, and where it is: ${what}`, async () => {
      const shop = await shopFor('side-to-side', 'head-to-head');
      const both: Spoils = (position, side) => {
        return (position === 1 && side === 2) || (position === 4 && side === 1) ? spoil : {};
      };
      const proof = await prove(shop, await printSides(shop, both));
      // Turned a quarter, the fourth runs over the third; that has a test of its own.
      const there = brief(proof).filter((line) => !line.endsWith(' 3/1'));
      expect([...new Set(there)]).toEqual([`${kind} 1/2`, `${kind} 4/1`]);
    });
  }

  it('in a quarter turn that runs over its neighbour is caught at the neighbour too', async () => {
    const shop = await shopFor('side-to-side', 'head-to-head');
    const proof = await prove(shop, await printSides(shop, only(4, 1, { turned: 90 })));
    expect(brief(proof)).toEqual(['art-differs 3/1', 'bleed-short 3/1', 'quarter-turned 4/1']);
  });

  it('by a shift is measured to a tenth of a millimetre on either side', async () => {
    const length = fc.double({ min: -1.5, max: 1.5, noNaN: true });
    const position = fc.constantFrom(1, 2, 3, 4);
    const shop = await shopFor('end-to-end', 'head-to-head');
    await fc.assert(
      fc.asyncProperty(
        length,
        length,
        position,
        fc.constantFrom<1 | 2>(1, 2),
        async (right, lead, where, side) => {
          const sides = await printSides(shop, only(where, side, { shift: [right * MM, lead * MM] }));
          const proof = await prove(shop, sides);
          const seen = proof.positions.find((p) => p.position === where && p.side === side);
          expect(Math.abs(seen!.shift!.right - right)).toBeLessThan(0.1);
          expect(Math.abs(seen!.shift!.lead - lead)).toBeLessThan(0.1);
        },
      ),
      drawnCases(4),
    );
  });

  it('by the wrong turn is caught at every position of side 2', async () => {
    const meant = await shopFor('side-to-side', 'head-to-head');
    const wrong = await shopFor('end-to-end', 'head-to-head');
    const proof = await prove(meant, await printSides(wrong));
    expect(proof.findings.every((f) => f.side === 2)).toBe(true);
    const found = proof.findings.flatMap((f) => ('position' in f ? [f.position] : []));
    expect([...new Set(found)]).toEqual([1, 2, 3, 4]);
  });

  it('by a page of another size is caught with both sizes, and its side is not compared', async () => {
    const shop = await shopFor('side-to-side', 'head-to-head');
    const { side1, side2 } = await printSides(shop);
    const larger = await PDFDocument.load(side2);
    larger.getPage(0).setSize(SHEET.w + 1, SHEET.h);
    const proof = await prove(shop, { side1, side2: await larger.save() });
    expect(brief(proof)).toEqual(['sheet-size 2']);
    expect(proof.findings[0]!.message).toBe(
      'Side 2: the page is 247.4 × 282.47 mm (9.74 × 11.121 in), the sheet 247.05 × 282.47 mm (9.726 × 11.121 in). Its positions were not compared.',
    );
    expect(proof.checked).toBe(4);
  });

  it('by a crop or by pages too many is caught', async () => {
    const shop = await shopFor('side-to-side', 'head-to-head', POSITIONS.slice(0, 1));
    const { side1, side2 } = await printSides(shop);
    const cropped = await PDFDocument.load(side1);
    cropped.getPage(0).setCropBox(10, 10, 600, 700);
    const sheets = {
      side1: { bytes: await cropped.save(), page: 1, pages: 1 },
      side2: { bytes: side2, page: 1, pages: 2 },
    };
    const result = await proveSheets(shop.job, sheets, shop.art);
    expect(result.ok && brief(result.value)).toEqual(['sheet-cropped 1', 'page-count 2']);
    expect(result.ok && result.value.checked).toBe(2);
  });

  it('by a page that is turned is caught as a page of another size', async () => {
    const shop = await shopFor('side-to-side', 'head-to-head', POSITIONS.slice(0, 1));
    const { side1, side2 } = await printSides(shop);
    const turned = await PDFDocument.load(side1);
    turned.getPage(0).node.set(PDFName.of('Rotate'), turned.context.obj(90));
    expect(brief(await prove(shop, { side1: await turned.save(), side2 }))).toEqual(['sheet-size 1']);
  });
});

describe('Art is the same art however its page is written', () => {
  const trim = { w: W, h: H };
  const job = (userUnit: number): ProofJob => {
    const face = (page: number) => ({
      art: 'art.pdf',
      page,
      rotate: 0 as Head,
      trim: { x: BLEED, y: BLEED, ...trim },
      userUnit,
    });
    return {
      sheet: SHEET,
      turn: 'side-to-side',
      positions: [at('Odd', 40, 60, 0), at('Odd', 400, 300, 90)],
      pieces: [
        { name: 'Odd', trim, bleed: BLEED, turned: 'head-to-head', faces: { front: face(1), back: face(2) } },
      ],
    };
  };

  it('with any Rotate, any UserUnit, any origin and any crop box', async () => {
    const plain = await drawOddCard('Odd', trim, BLEED, PLAIN);
    const sides = await printSides({ job: job(1), art: new Map([['art.pdf', plain]]) });
    for (const rotate of HEADS) {
      const userUnit = rotate === 90 ? 1 : 2.5;
      const odd = await PDFDocument.load(
        await drawOddCard('Odd', trim, BLEED, { rotate, userUnit, origin: [-50, 33] }),
      );
      for (const page of odd.getPages()) {
        const { x, y, width, height } = page.getMediaBox();
        page.setCropBox(x + 12 / userUnit, y + 12 / userUnit, width - 30 / userUnit, height - 30 / userUnit);
      }
      const proof = await prove({ job: job(userUnit), art: new Map([['art.pdf', await odd.save()]]) }, sides);
      expect(brief(proof)).toEqual([]);
      expect(proof.checked).toBe(4);
    }
  });

  it('turned to bring its head up', async () => {
    // The page is written lying on its side, without a Rotate: a viewer shows the card with its head to the right.
    const lying = await PDFDocument.load(await drawOddCard('Odd', trim, BLEED, { ...PLAIN, rotate: 270 }));
    for (const page of lying.getPages()) page.node.delete(PDFName.of('Rotate'));
    const plain = await drawOddCard('Odd', trim, BLEED, PLAIN);
    const sides = await printSides({ job: job(1), art: new Map([['art.pdf', plain]]) });
    const { pieces, ...rest } = job(1);
    const turned = (rotate: Head): ProofJob => ({
      ...rest,
      pieces: pieces.map(({ faces: { front, back }, ...piece }) => ({
        ...piece,
        faces: { front: { ...front, rotate }, back: { ...back!, rotate } },
      })),
    });
    const art = new Map([['art.pdf', await lying.save()]]);
    expect(brief(await prove({ job: turned(90), art }, sides))).toEqual([]);
    expect(new Set(brief(await prove({ job: turned(270), art }, sides)))).toEqual(
      new Set(['upside-down 1/1', 'upside-down 1/2', 'upside-down 2/1', 'upside-down 2/2']),
    );
  });
});

describe('What cannot be opened', () => {
  const ready = (async () => {
    const shop = await shopFor('side-to-side', 'head-to-head', POSITIONS.slice(0, 1));
    return { shop, ...(await printSides(shop)) };
  })();
  const notPdf = new TextEncoder().encode('%PDF-1.7 but nothing more');

  async function refused(
    change: (all: Awaited<typeof ready>) => Parameters<typeof proveSheets>,
  ): Promise<unknown> {
    const result = await proveSheets(...change(await ready));
    return result.ok ? 'not refused' : result.fault;
  }

  it('as a sheet is refused, and told why', async () => {
    const remedy = 'Send the job again and prove the new files.';
    expect(
      await refused(({ shop, side2 }) => [
        shop.job,
        { side1: { bytes: notPdf, page: 1 }, side2: { bytes: side2, page: 1 } },
        shop.art,
      ]),
    ).toEqual({
      code: 'sheet-unreadable',
      message: 'The file for side 1 cannot be read as a PDF.',
      remedy,
      where: 'side 1',
    });
    expect(
      await refused(({ shop, side1 }) => [
        shop.job,
        { side1: { bytes: side1, page: 1 }, side2: { bytes: new Uint8Array(), page: 1 } },
        shop.art,
      ]),
    ).toEqual({
      code: 'sheet-unreadable',
      message: 'The file for side 2 cannot be read as a PDF.',
      remedy,
      where: 'side 2',
    });
    expect(
      await refused(({ shop, side1 }) => [
        shop.job,
        { side1: { bytes: side1, page: 1 }, side2: { bytes: side1, page: 2 } },
        shop.art,
      ]),
    ).toEqual({
      code: 'sheet-unreadable',
      message: 'The file for side 2 has 1 page; page 2 cannot be read.',
      remedy,
      where: 'side 2',
    });
    expect(
      await refused(({ shop, side1 }) => [shop.job, { side1: { bytes: side1, page: 1 } }, shop.art]),
    ).toEqual({ code: 'sheet-missing', message: 'There is no file for side 2.', remedy, where: 'side 2' });
    const locked = throughQpdf((await ready).side1, '--encrypt', 'reader', 'owner', '256', '--');
    expect(
      await refused(({ shop, side2 }) => [
        shop.job,
        { side1: { bytes: locked, page: 1 }, side2: { bytes: side2, page: 1 } },
        shop.art,
      ]),
    ).toMatchObject({ code: 'sheet-unreadable', message: 'The file for side 1 needs a password.' });
  });

  it('as art is refused, and told why', async () => {
    const withArt = async (art: ReadonlyMap<string, Uint8Array>, change = (job: ProofJob): ProofJob => job) =>
      refused(({ shop, side1, side2 }) => [
        change(shop.job),
        { side1: { bytes: side1, page: 1 }, side2: { bytes: side2, page: 1 } },
        art,
      ]);
    const { shop } = await ready;
    const art = shop.art.get('art.pdf')!;
    expect(await withArt(new Map())).toMatchObject({
      code: 'art-missing',
      message: 'The art file art.pdf is not there.',
      where: 'art.pdf',
    });
    expect(await withArt(new Map([['art.pdf', notPdf]]))).toMatchObject({
      code: 'art-damaged',
      message: 'The art file art.pdf cannot be read.',
    });
    const locked = throughQpdf(art, '--encrypt', 'reader', 'owner', '256', '--');
    expect(await withArt(new Map([['art.pdf', locked]]))).toMatchObject({
      code: 'art-locked',
      message: 'The art file art.pdf needs a password.',
    });
    const short = throughQpdf(art, '--pages', '.', '1-3', '--');
    expect(await withArt(new Map([['art.pdf', short]]))).toMatchObject({
      code: 'art-page-missing',
      message: 'art.pdf has no page 4.',
    });
  });

  it('is opened when it is only protected against changes', async () => {
    const { shop, side1, side2 } = await ready;
    const art = throughQpdf(shop.art.get('art.pdf')!, '--encrypt', '', 'owner', '256', '--');
    expect(brief(await prove({ ...shop, art: new Map([['art.pdf', art]]) }, { side1, side2 }))).toEqual([]);
  });
});
