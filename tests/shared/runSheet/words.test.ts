// The smaller parts of a run sheet: its steps, the letters of its designs, its code, and the paper from the library.
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { startingLibrary } from '../../../shared/library/startingLibrary.ts';
import type { PathShape } from '../../../shared/pdf/document/shape.ts';
import { drawCode, linkTo } from '../../../shared/runSheet/jobCode.ts';
import { lettersOf } from '../../../shared/runSheet/letters.ts';
import { seenPasses } from '../../../shared/runSheet/seenPasses.ts';
import { printsInWords, runSteps } from '../../../shared/runSheet/steps.ts';
import { stockFrom } from '../../../shared/runSheet/stock.ts';
import { lengthOf, POINTS_PER } from '../../../shared/units/length.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const said = (job: Parameters<typeof runSteps>[0]) =>
  runSteps(job, [])
    .flatMap(({ steps }) => steps)
    .join('\n');

describe('what a file prints', () => {
  const side = (of: 1 | 2, name: string, page: number) => ({ side: of, name, page });

  it('is the side of each file, where each side has one', () => {
    const sides = [side(1, 'front.pdf', 1), side(2, 'back.pdf', 1)];
    expect(printsInWords(sides, 'front.pdf')).toBe('prints side 1');
    expect(printsInWords(sides, 'back.pdf')).toBe('prints side 2');
  });

  it('is both sides of a file with a page for each, and of one page that is printed twice', () => {
    expect(printsInWords([side(1, 'both.pdf', 1), side(2, 'both.pdf', 2)], 'both.pdf')).toBe(
      'prints both sides: page 1 is side 1, page 2 is side 2',
    );
    expect(printsInWords([side(1, 'form.pdf', 1), side(2, 'form.pdf', 1)], 'form.pdf')).toBe(
      'prints both sides from one form: print it once, turn the sheet, print it again',
    );
  });
});

describe('the steps', () => {
  it('compare the two sides of the paper wherever one form prints both', () => {
    expect(said(jobOf(CARDS, { style: 'work-and-turn' }))).toContain(
      'Both sides of this paper must be alike.',
    );
    expect(said(jobOf(CARDS, { style: 'work-and-tumble' }))).toContain(
      'Both sides of this paper must be alike.',
    );
    expect(said(jobOf(CARDS, { style: 'work-and-back', turn: 'end-to-end' }))).toContain(
      'Look at both sides of the paper',
    );
    expect(said(KINDS.at(-1)![1])).not.toMatch(/sides? of (this|the) paper must|Look at both/);
  });

  it('print one form twice though its file is not known yet', () => {
    expect(said(jobOf(CARDS, { style: 'work-and-turn' }))).toContain('print the same file once more');
    expect(said(jobOf(CARDS, { style: 'work-and-back', turn: 'side-to-side' }))).toContain(
      'print side 2 on the same sheet',
    );
  });

  it('try the trim through the marks, or at the trim where there are none', () => {
    expect(said(jobOf(CARDS))).toContain(
      'Cut one piece out of it through its crop marks: no white on any edge',
    );
    expect(said(jobOf({ ...CARDS, marks: false }))).toContain('Cut one piece out of it at its trim:');
  });

  it('name four designs and count the others', () => {
    const many = KINDS.find(([name]) => name === 'eight designs')![1];
    expect(said(many)).toContain('Turn Month 1, Month 2, Month 3, Month 4 and 4 more over like a page');
  });

  it('tell of one pass where no piece has a back, whatever the way of working', () => {
    const job = jobOf({ ...CARDS, work: 'work-and-back', pieces: [{ ...CARDS.pieces[0], back: undefined }] });
    expect(seenPasses(job)).toHaveLength(1);
    expect(said(job)).toContain('Print one sheet.');
    expect(said(job)).not.toMatch(/Pass 2|Hold it to the light|pencil/);
  });
});

describe('the letters of designs', () => {
  it('are left out where there is one design', () => {
    expect([...lettersOf(KINDS[0]![1])]).toEqual([]);
    expect([...lettersOf(KINDS[1]![1])]).toEqual([
      ['Menu', 'A'],
      ['Place tag', 'B'],
    ]);
  });
});

describe('the code', () => {
  it('leaves out the name of a file that would make it too fine to be read', () => {
    const link = (file: string) => linkTo({ file, fingerprint: 'f'.repeat(64) });
    expect(link('a b&c.turnlay')).toBe('turnlay:job?file=a%20b%26c.turnlay&print=ffffffffffffffff');
    expect(link('a'.repeat(90))).toContain('file=aaa');
    expect(link('a'.repeat(91))).toBe('turnlay:job?print=ffffffffffffffff');
  });

  it('is read as the link, whatever the name of the file', () => {
    for (const file of ['a.turnlay', 'a name of a job that goes on.turnlay', undefined]) {
      const name = { file, fingerprint: '0123456789abcdef'.repeat(4) };
      const { w, h, shapes } = drawCode(name, 120);
      expect([w, h, shapes.length]).toEqual([120, 120, 1]);
      const [path] = shapes as [PathShape];
      // Painted four dots to a point, and read by a reader of QR codes.
      const side = 480;
      const dots = new Uint8ClampedArray(side * side * 4).fill(255);
      for (const { from, along } of path.contours) {
        const [, corner] = along as [{ x: number; y: number }, { x: number; y: number }];
        for (let y = Math.round(-corner.y * 4); y < Math.round(-from.y * 4); y += 1) {
          for (let x = Math.round(from.x * 4); x < Math.round(corner.x * 4); x += 1) {
            dots.fill(0, 4 * (y * side + x), 4 * (y * side + x) + 3);
          }
        }
      }
      expect(jsQR(dots, side, side)?.data).toBe(linkTo(name));
    }
  });

  it('keeps the four modules around it white that ISO/IEC 18004 asks for', () => {
    const { w, shapes } = drawCode({ file: 'a.turnlay', fingerprint: 'f'.repeat(64) }, 100);
    const [shape] = shapes;
    if (shape?.kind !== 'path') throw new Error('The code is one path');
    const corners = shape.contours.flatMap(({ from, along }) => [
      from,
      ...(along as { x: number; y: number }[]),
    ]);
    const left = Math.min(...corners.map((p) => p.x));
    const right = Math.max(...corners.map((p) => p.x));
    const dark = right - left;
    // The finder pattern at the upper left begins with seven dark modules.
    const first = shape.contours[0]!;
    const module = ((first.along[0] as { x: number }).x - first.from.x) / 7;
    expect(left / module).toBeCloseTo(4);
    expect((w - right) / module).toBeCloseTo(4);
    expect((dark / module) % 4).toBeCloseTo(1);
    expect(-Math.max(...corners.map((p) => p.y)) / module).toBeCloseTo(4);
    expect((w + Math.min(...corners.map((p) => p.y))) / module).toBeCloseTo(4);
  });
});

describe('the paper from the library', () => {
  const library = startingLibrary();

  it('brings the cutter of the studio, whose sizes are those of its rates', () => {
    const { cutting } = library.rates;
    const rates = {
      ...library.rates,
      cutting: {
        ...cutting,
        widest: lengthOf(20, 'in'),
        deepest: lengthOf(30, 'in'),
        leastGauge: lengthOf(1, 'in'),
      },
    };
    const found = stockFrom({ ...library, rates }, undefined);
    expect(found.ok && found.value.cutter).toMatchObject({ widest: 1440, deepest: 2160, leastGauge: 72 });
  });

  it('tells how heavy, how thick and how alike its sides are', () => {
    const [paper] = library.papers;
    const coated = { ...paper!, coated: 'one-side' as const, sidesAlike: false };
    const found = stockFrom({ ...library, papers: [coated] }, paper!.name);
    expect(found).toMatchObject({
      ok: true,
      value: { name: paper!.name, grammage: paper!.weight.grammage, coated: 'one-side', sidesAlike: false },
    });
    // A thousandth of a millimetre is 72 / 25.4 / 1000 pt.
    expect(found.ok && found.value.caliper! / paper!.caliper.micrometres).toBeCloseTo(72 / 25.4 / 1000);
  });

  it('is refused with all papers there are', () => {
    const papers = library.papers.slice(0, 2);
    const refused = stockFrom({ ...library, papers }, 'Vellum');
    expect(refused.ok ? '' : refused.fault.remedy).toBe(
      `Take one of these: ${papers[0]!.name}, ${papers[1]!.name}.`,
    );
  });

  it('tells its weight and caliper, and how high a pile is cut', () => {
    const found = stockFrom(library, 'uncoated CARD');
    // 13 pt caliper is 13 thousandths of an inch; piles of 2 in.
    expect(found).toMatchObject({
      ok: true,
      value: {
        name: 'Uncoated card',
        coated: 'none',
        cutter: { mostStack: 144, leastGauge: (35 * 72) / 25.4 },
      },
    });
    if (found.ok) expect(found.value.caliper).toBeCloseTo(0.013 * POINTS_PER.in, 6);
    const unnamed = stockFrom(library, undefined);
    expect(unnamed).toMatchObject({ ok: true, value: { cutter: { mostStack: 144 } } });
    expect(unnamed.ok && Object.keys(unnamed.value)).toEqual(['cutter']);
  });

  it('is cut in piles no higher than what goes under the clamp', () => {
    const { rates } = library;
    const low = { ...rates.cutting, opening: lengthOf(1, 'in') };
    const found = stockFrom({ ...library, rates: { ...rates, cutting: low } }, undefined);
    expect(found).toMatchObject({ ok: true, value: { cutter: { mostStack: 72, opening: 72 } } });
  });

  it('is refused with the papers there are, if there is none of its name', () => {
    const refused = stockFrom(library, 'Vellum');
    expect(
      refused.ok ? '' : `${refused.fault.code} ${refused.fault.message} ${refused.fault.remedy}`,
    ).toMatch(/^paper-unknown The library has no paper called "Vellum". Take one of these: Uncoated card, /);
    const none = stockFrom({ ...library, papers: [] }, 'Vellum');
    expect(none.ok ? '' : none.fault.remedy).toBe('Add the paper to the library.');
  });
});
