import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { HEADS, type Head, type ReaderTurn } from '../../../shared/geometry/head.ts';
import type { Turn } from '../../../shared/geometry/turn.ts';
import type { FaceName, Position } from '../../../shared/layout/position.ts';
import type { FaceView } from '../../../shared/proof/faceViews.ts';
import type { ProofFinding, ProofReport } from '../../../shared/proof/finding.ts';
import type { ProofJob } from '../../../shared/proof/job.ts';
import { prove, type Sides } from '../../../shared/proof/prove.ts';
import { drawnCases } from '../../kit/drawnCases.ts';
import {
  backOnSide2,
  lopsidedPaint,
  PAPER,
  type Paint,
  type PaintedPiece,
  type Printed,
  pagesOf,
  paintedSource,
  printedSource,
  printJob,
  proofPieces,
} from '../../kit/painted.ts';

const MM = 72 / 25.4;
const TRIM = { w: 90, h: 60 };
const BLEED = 9;
const SHEET = { w: 330, h: 250 };
const DPI = 80;

const TURNS: readonly Turn[] = ['side-to-side', 'end-to-end'];
const READERS: readonly ReaderTurn[] = ['head-to-head', 'head-to-toe'];

const supper = (turned: ReaderTurn): PaintedPiece => ({
  name: 'Supper',
  trim: TRIM,
  bleed: BLEED,
  turned,
  front: lopsidedPaint(TRIM, [240, 225, 180]),
  back: lopsidedPaint(TRIM, [180, 225, 240], [90, 20, 30]),
});

const dance = (turned: ReaderTurn): PaintedPiece => ({
  ...supper(turned),
  name: 'Dance',
  front: lopsidedPaint(TRIM, [225, 240, 225], [20, 90, 40]),
  back: lopsidedPaint(TRIM, [250, 240, 250], [20, 90, 140]),
});

/** A position whose trim has its lower left at (x, y). */
function at(piece: string, x: number, y: number, head: Head, face: FaceName = 'front'): Position {
  const lies = head === 90 || head === 270;
  return { piece, face, head, trim: { x, y, w: lies ? TRIM.h : TRIM.w, h: lies ? TRIM.w : TRIM.h } };
}

function jobOf(
  turn: Turn | undefined,
  pieces: readonly PaintedPiece[],
  positions: readonly Position[],
): ProofJob {
  return { sheet: SHEET, turn, positions, pieces: proofPieces(pieces) };
}

function run(job: ProofJob, pieces: readonly PaintedPiece[], sides: Sides, dpi = DPI): ProofReport {
  const proof = prove(job, sides, pagesOf(pieces), { dpi });
  for (;;) {
    const next = proof.next();
    if (next.done) return next.value;
  }
}

const brief = (findings: readonly ProofFinding[]) =>
  findings.map((f) => ('position' in f ? `${f.kind} ${f.position}/${f.side}` : f.kind));

const anyJob = fc.record({
  turn: fc.constantFrom(...TURNS),
  reader: fc.constantFrom(...READERS),
  heads: fc.tuple(fc.constantFrom(...HEADS), fc.constantFrom(...HEADS)),
  faces: fc.tuple(fc.constantFrom<FaceName>('front', 'back'), fc.constantFrom<FaceName>('front', 'back')),
  off: fc.tuple(fc.double({ min: 0, max: 20, noNaN: true }), fc.double({ min: 0, max: 20, noNaN: true })),
});

/** Two pieces on a sheet that is not symmetric about any axis. */
function twoUp({ turn, reader, heads, faces, off }: typeof anyJob extends fc.Arbitrary<infer T> ? T : never) {
  const pieces = [supper(reader), dance(reader)];
  const positions = [
    at('Supper', 15 + off[0], 20 + off[1], heads[0], faces[0]),
    at('Dance', 190 + off[1], 90 + off[0], heads[1], faces[1]),
  ];
  return { pieces, job: jobOf(turn, pieces, positions) };
}

describe('A sheet that was printed right', () => {
  it('is proved without a finding, whatever the turn, the reader, the heads and the faces', () => {
    fc.assert(
      fc.property(anyJob, (any) => {
        const { pieces, job } = twoUp(any);
        const report = run(job, pieces, printJob(job, pieces));
        expect(brief(report.findings)).toEqual([]);
        expect(report.notes).toEqual([]);
        expect(report.checked).toBe(4);
        expect(report.positions.map(({ position, side, piece }) => [position, side, piece])).toEqual([
          [1, 1, 'Supper'],
          [1, 2, 'Supper'],
          [2, 1, 'Dance'],
          [2, 2, 'Dance'],
        ]);
        for (const { piece, face, recognised, shift, bleed } of report.positions) {
          expect(recognised).toEqual({ piece, face, turned: 0, mirrored: false });
          expect(Math.hypot(shift?.right ?? 9, shift?.lead ?? 9)).toBeLessThan(0.05);
          expect(bleed.map(({ edge }) => edge).toSorted()).toEqual(['lead', 'left', 'right', 'tail']);
          // An eighth of an inch is 3.175 mm, which is told to a hundredth: half of one lies either way.
          for (const { reaches, wanted } of bleed) {
            expect(Math.abs(wanted - 3.175)).toBeLessThan(0.006);
            expect(reaches).toBe(wanted);
          }
        }
      }),
      {
        ...drawnCases(6),
        examples: [
          [
            {
              turn: 'side-to-side',
              reader: 'head-to-head',
              heads: [0, 0],
              faces: ['front', 'front'],
              off: [17.00000000008181, 0],
            },
          ],
        ],
      },
    );
  });

  it('may be one form that serves both sides', () => {
    for (const turn of TURNS) {
      for (const reader of READERS) {
        const pieces = [supper(reader)];
        const front = at('Supper', 20, 25, turn === 'side-to-side' ? 90 : 0);
        const back = backOnSide2(front, turn, reader, SHEET);
        const { w, h } = front.trim;
        const behind: Position = {
          piece: 'Supper',
          face: 'back',
          head: back.head,
          trim: { x: back.middle.x - w / 2, y: back.middle.y - h / 2, w, h },
        };
        const job = jobOf(turn, pieces, [front, behind]);
        const { side1 } = printJob(job, pieces);
        const report = run(job, pieces, { side1, side2: side1 });
        expect(brief(report.findings)).toEqual([]);
        expect(report.checked).toBe(4);
      }
    }
  });

  it('on one side only has its one side compared', () => {
    const { back: _, ...card } = supper('head-to-head');
    const job = jobOf(undefined, [card], [at('Supper', 20, 25, 180)]);
    const report = run(job, [card], { side1: printJob(job, [card]).side1 });
    expect([report.findings, report.checked]).toEqual([[], 1]);
  });

  it('is proved on the one side that is given', () => {
    const pieces = [supper('head-to-toe')];
    const job = jobOf('end-to-end', pieces, [at('Supper', 20, 25, 90)]);
    const { side2 } = printJob(job, pieces);
    const report = run(job, pieces, { side2 });
    expect([report.findings, report.positions.map(({ side, face }) => [side, face])]).toEqual([
      [],
      [[2, 'back']],
    ]);
  });

  it('may have its bleeds cut off in the middle of a narrow gutter', () => {
    const pieces = [supper('head-to-head'), dance('head-to-head')];
    const job = jobOf('side-to-side', pieces, [at('Supper', 20, 25, 0), at('Dance', 118, 25, 0)]);
    const narrow = ({ paint, ...rest }: Printed): Printed => ({
      ...rest,
      paint,
      spoil: (x, y) => (Math.abs(x) > TRIM.w / 2 + 4 ? [999, y] : [x, y]),
    });
    const report = run(job, pieces, printJob(job, pieces, narrow));
    // Towards the neighbour 4 of 9 pt are enough, on the other edge they are not.
    expect(brief(report.findings)).toEqual([
      'bleed-short 1/1',
      'bleed-short 1/2',
      'bleed-short 2/1',
      'bleed-short 2/2',
    ]);
    expect(report.findings.map((f) => 'measured' in f && 'edge' in f.measured && f.measured.edge)).toEqual([
      'left',
      'right',
      'right',
      'left',
    ]);
  });

  it('hands out each face as its reader holds it', () => {
    const pieces = [supper('head-to-toe')];
    const job = jobOf('end-to-end', pieces, [at('Supper', 20, 25, 90)]);
    const looks: FaceView[] = [];
    for (const look of prove(job, printJob(job, pieces), pagesOf(pieces), { dpi: DPI })) looks.push(look);
    expect(looks.map(({ face }) => face)).toEqual(['front', 'back']);
    for (const { picture, grid, face } of looks) {
      const colourAt = (u: number, v: number) => {
        const x = Math.round(grid.margin + (0.5 + u) * grid.width);
        const y = Math.round(grid.margin + (0.5 - v) * grid.height);
        const i = (y * picture.width + x) * 3;
        return [...picture.pixels.subarray(i, i + 3)];
      };
      expect(colourAt(0, 0.3)).toEqual(face === 'front' ? [30, 30, 60] : [90, 20, 30]);
      expect(colourAt(0.25, -0.22)).toEqual([200, 40, 40]);
    }
  });
});

/** What can go wrong with one face, and how the proof calls it. */
const SPOILS: Readonly<
  Record<string, (printed: Printed, other: Paint, sibling: Paint) => Printed | undefined>
> = {
  'upside-down': (p) => ({ ...p, head: p.head + 180 }),
  'quarter-turned': (p) => ({ ...p, head: p.head + 90 }),
  mirrored: (p) => ({ ...p, spoil: (x, y) => [-x, y] }),
  'wrong-face': (p, _, sibling) => ({ ...p, paint: sibling }),
  'wrong-piece': (p, other) => ({ ...p, paint: other }),
  'nothing-printed': () => undefined,
  'off-place': (p) => ({ ...p, middle: { x: p.middle.x + MM, y: p.middle.y - 0.5 * MM } }),
  'wrong-scale': (p) => ({ ...p, spoil: (x, y) => [x / 0.98, y / 0.98] }),
  askew: (p) => ({ ...p, head: p.head + 1.5 }),
  'art-differs': (p) => ({
    ...p,
    paint: (x, y) => (x > 5 && x < 30 && y > 0 && y < 3 ? [0, 0, 0] : p.paint(x, y)),
  }),
  'bleed-short': (p) => ({ ...p, bleed: 1.2 * MM }),
};

describe('A sheet that was spoiled', () => {
  for (const [kind, spoilOne] of Object.entries(SPOILS)) {
    it(`is found out: ${kind}, at the position and on the side where it is`, () => {
      fc.assert(
        fc.property(anyJob, fc.constantFrom(1, 2), fc.constantFrom(1, 2), (any, position, side) => {
          const { pieces, job } = twoUp(any);
          const sides = printJob(job, pieces, (printed, p, s) => {
            if (p !== position || s !== side) return printed;
            const [own, other] = p === 1 ? pieces : pieces.toReversed();
            const front = printed.paint === own!.front;
            const [paint, sibling] = front ? [other!.front, own!.back!] : [other!.back!, own!.front];
            return spoilOne(printed, paint, sibling);
          });
          const kinds = new Set(brief(run(job, pieces, sides).findings));
          expect([...kinds]).toEqual([`${kind} ${position}/${side}`]);
        }),
        drawnCases(2),
      );
    });
  }

  it('by a shift is measured to a twentieth of a millimetre, seen on its side with the lead edge up', () => {
    const shift = fc.double({ min: -1.6, max: 1.6, noNaN: true });
    fc.assert(
      fc.property(anyJob, shift, shift, fc.constantFrom(1, 2), (any, right, lead, side) => {
        const { pieces, job } = twoUp(any);
        const sides = printJob(job, pieces, (printed, position, s) => {
          if (position !== 2 || s !== side) return printed;
          const { x, y } = printed.middle;
          return { ...printed, middle: { x: x + right * MM, y: y + lead * MM } };
        });
        const report = run(job, pieces, sides);
        const seen = report.positions.find((p) => p.position === 2 && p.side === side);
        expect(Math.abs((seen?.shift?.right ?? 9) - right)).toBeLessThan(0.05);
        expect(Math.abs((seen?.shift?.lead ?? 9) - lead)).toBeLessThan(0.05);
        const off = Math.hypot(right, lead);
        if (off < 0.22) expect(brief(report.findings)).toEqual([]);
        if (off > 0.28) expect(brief(report.findings)).toEqual([`off-place 2/${side}`]);
      }),
      drawnCases(10),
    );
  });

  it('by a shift farther than its bleed is off its place, and nothing else', () => {
    const pieces = [supper('head-to-head')];
    const job = jobOf('side-to-side', pieces, [at('Supper', 60, 70, 0)]);
    const sides = printJob(job, pieces, (p, _, side) =>
      side === 1 ? p : { ...p, middle: { x: p.middle.x - 4.5 * MM, y: p.middle.y } },
    );
    const { findings, positions } = run(job, pieces, sides);
    expect(brief(findings)).toEqual(['off-place 1/2']);
    expect(positions[1]?.shift?.right).toBeCloseTo(-4.5, 1);
    expect(findings[0]?.message).toMatch(/ the back of "Supper" is printed 4\.\d+ mm too far to the left\.$/);
  });

  it('by turning it the wrong way is found out at every position of side 2', () => {
    const pieces = [supper('head-to-head')];
    const middle = at('Supper', (SHEET.w - TRIM.w) / 2, (SHEET.h - TRIM.h) / 2, 0);
    const meant = jobOf('side-to-side', pieces, [middle]);
    const { side1, side2 } = printJob(jobOf('end-to-end', pieces, [middle]), pieces);
    expect(brief(run(meant, pieces, { side1, side2 }).findings)).toEqual(['upside-down 1/2']);
    const corner = at('Supper', 20, 25, 0);
    const elsewhere = printJob(jobOf('end-to-end', pieces, [corner]), pieces);
    const away = jobOf('side-to-side', pieces, [corner]);
    expect(brief(run(away, pieces, elsewhere).findings)).toEqual(['nothing-printed 1/2']);
  });

  it('by the wrong reader is found out on side 2', () => {
    const pieces = [supper('head-to-head')];
    const positions = [at('Supper', 20, 25, 90)];
    const printed = printJob(jobOf('side-to-side', [supper('head-to-toe')], positions), [
      supper('head-to-toe'),
    ]);
    const report = run(jobOf('side-to-side', pieces, positions), pieces, printed);
    expect(brief(report.findings)).toEqual(['upside-down 1/2']);
  });

  it('at every position alike is found out at each of them', () => {
    const pieces = [supper('head-to-head')];
    const positions = [at('Supper', 15, 20, 0), at('Supper', 15, 120, 0), at('Supper', 150, 20, 0)];
    const job = jobOf('side-to-side', pieces, positions);
    const sides = printJob(job, pieces, (p, _, side) => (side === 2 ? { ...p, head: p.head + 180 } : p));
    expect(brief(run(job, pieces, sides).findings)).toEqual([
      'upside-down 1/2',
      'upside-down 2/2',
      'upside-down 3/2',
    ]);
  });

  it('by print where a piece has no back is found out', () => {
    const { back: _, ...card } = supper('head-to-head');
    const job = jobOf('side-to-side', [card], [at('Supper', 20, 25, 0)]);
    const { side1, side2 } = printJob(job, [card]);
    expect(run(job, [card], { side1, side2 }).findings).toEqual([]);
    const { findings } = run(job, [card], { side1, side2: printJob(job, [card]).side1 });
    expect(findings).toEqual([]);
    const behind = backOnSide2(job.positions[0]!, 'side-to-side', 'head-to-head', SHEET);
    const speck: Printed = {
      paint: () => [0, 0, 0],
      size: { w: 4, h: 4 },
      bleed: 0,
      middle: { x: behind.middle.x + 40, y: behind.middle.y },
      head: 0,
    };
    const spoiled = run(job, [card], { side1, side2: printedSource(SHEET, [speck]) });
    expect(spoiled.findings).toEqual([
      {
        kind: 'unexpected-print',
        position: 1,
        side: 2,
        piece: 'Supper',
        face: 'back',
        message:
          'Position 1, side 2: something is printed where "Supper" has no back and the paper should be blank.',
      },
    ]);
  });

  it('is not by print that ends at the cut of a piece without a back', () => {
    const { back: _, ...card } = supper('head-to-head');
    const job = jobOf('side-to-side', [card], [at('Supper', 20.1, 25.2, 0)]);
    const { side1 } = printJob(job, [card]);
    const behind = backOnSide2(job.positions[0]!, 'side-to-side', 'head-to-head', SHEET);
    const beside: Printed = {
      paint: () => [0, 0, 0],
      size: TRIM,
      bleed: 0,
      middle: { x: behind.middle.x - TRIM.w, y: behind.middle.y },
      head: 0,
    };
    expect(run(job, [card], { side1, side2: printedSource(SHEET, [beside]) }).findings).toEqual([]);
  });

  it('by something that is not of this job is said not to match', () => {
    const pieces = [supper('head-to-head')];
    const job = jobOf('side-to-side', pieces, [at('Supper', 20, 25, 0)]);
    const chequered: Paint = (x, y) =>
      (Math.floor(x / 11) + Math.floor(y / 7)) % 2 === 0 ? [0, 0, 0] : PAPER;
    const sides = printJob(job, pieces, (p, _, side) => (side === 1 ? { ...p, paint: chequered } : p));
    const { findings, positions } = run(job, pieces, sides);
    expect(brief(findings)).toEqual(['art-differs 1/1']);
    expect(findings[0]?.message).toBe(
      'Position 1, side 1: what is printed there matches neither the front of "Supper" nor anything else of this job.',
    );
    expect(positions[0]).toMatchObject({ recognised: undefined, shift: undefined, bleed: [] });
  });
});

describe('Art that tells little', () => {
  const withFront = (front: Paint): PaintedPiece => ({ ...supper('head-to-head'), front });
  const proveFront = (front: Paint, spoil?: (printed: Printed) => Printed) => {
    const pieces = [withFront(front)];
    const job = jobOf('side-to-side', pieces, [at('Supper', 20, 25, 90)]);
    const sides = printJob(job, pieces, (p, _, side) => (side === 1 && spoil ? spoil(p) : p));
    return run(job, pieces, sides);
  };
  const kinds = ({ notes }: ProofReport) => notes.map(({ kind, face }) => `${kind} ${face}`);

  it('that is blank or of one colour is noted and its colour is proved', () => {
    const blank = proveFront(() => PAPER);
    expect([brief(blank.findings), kinds(blank)]).toEqual([[], ['flat front']]);
    expect(blank.positions[0]?.shift).toBeUndefined();
    const blue = proveFront(() => [40, 80, 200]);
    expect([brief(blue.findings), kinds(blue)]).toEqual([[], ['flat front']]);
    const other = proveFront(
      () => [40, 80, 200],
      (p) => ({ ...p, paint: () => [40, 90, 200] }),
    );
    expect(brief(other.findings)).toEqual(['art-differs 1/1']);
  });

  it('that looks the same upside down is no fault when it is upside down', () => {
    const twofold: Paint = (x, y) =>
      Math.abs(x - y) < 6 || (Math.abs(x + y) < 3 && Math.abs(x) < 20) ? [0, 0, 0] : PAPER;
    const right = proveFront(twofold);
    const turned = proveFront(twofold, (p) => ({ ...p, head: p.head + 180 }));
    for (const report of [right, turned]) {
      expect([brief(report.findings), kinds(report)]).toEqual([[], ['head-untold front']]);
    }
  });

  it('that looks the same in a mirror is noted, and still told upside down', () => {
    const tree: Paint = (x, y) => (Math.abs(x) < 20 - y && y > -15 && y < 20 ? [0, 90, 0] : PAPER);
    const mirrored = proveFront(tree, (p) => ({ ...p, spoil: (x, y) => [-x, y] }));
    expect([brief(mirrored.findings), kinds(mirrored)]).toEqual([[], ['mirror-untold front']]);
    const turned = proveFront(tree, (p) => ({ ...p, head: p.head + 180 }));
    expect(brief(turned.findings)).toEqual(['upside-down 1/1']);
  });

  it('of stripes has its place told across them only', () => {
    const stripes: Paint = (x) => (x > 3 && x < 9 ? [200, 0, 0] : x > -30 && x < -10 ? [0, 0, 200] : PAPER);
    const right = proveFront(stripes);
    expect([brief(right.findings), kinds(right)]).toEqual([
      [],
      ['place-untold front', 'mirror-untold front'],
    ]);
    // The piece lies with its head to the left, so that across it is along the sheet.
    const shifted = proveFront(stripes, (p) => ({
      ...p,
      middle: { x: p.middle.x + MM, y: p.middle.y + MM },
    }));
    // What cannot be told as a shift is still seen where the bleed ends.
    expect(brief(shifted.findings)).toEqual(['off-place 1/1', 'bleed-short 1/1']);
    expect(shifted.positions[0]?.shift?.right).toBe(0);
    expect(shifted.positions[0]?.shift?.lead).toBeCloseTo(1, 1);
  });

  it('that is very light on white is still proved', () => {
    const pale = lopsidedPaint(TRIM, PAPER, [247, 248, 246]);
    const only: Paint = (x, y) => {
      const colour = pale(x, y);
      return colour[0] > 240 ? colour : PAPER;
    };
    expect(brief(proveFront(only).findings)).toEqual([]);
    expect(brief(proveFront(only, (p) => ({ ...p, paint: () => PAPER })).findings)).toEqual([
      'nothing-printed 1/1',
    ]);
    const shifted = proveFront(only, (p) => ({ ...p, middle: { x: p.middle.x, y: p.middle.y + 0.5 * MM } }));
    expect(brief(shifted.findings)).toEqual(['off-place 1/1']);
    expect(brief(proveFront(only, (p) => ({ ...p, head: p.head + 180 })).findings)).toEqual([
      'upside-down 1/1',
    ]);
  });

  it('that repeats itself is found at the nearest place that fits', () => {
    const dots: Paint = (x, y) =>
      Math.hypot((((x % 12) + 12) % 12) - 6, (((y % 12) + 12) % 12) - 5) < 2.5 ? [0, 0, 120] : PAPER;
    const { findings, positions } = proveFront(dots, (p) => ({
      ...p,
      middle: { x: p.middle.x, y: p.middle.y + 0.7 * MM },
    }));
    expect(brief(findings)).toEqual(['off-place 1/1']);
    expect(positions[0]?.shift?.lead).toBeCloseTo(0.7, 1);
  });

  it('that is nearly the same on two cards is told apart by one thin line', () => {
    const plain = lopsidedPaint(TRIM, [240, 225, 180]);
    const lined: Paint = (x, y) => (x > 0 && x < 14 && Math.abs(y) < 0.3 ? [0, 0, 0] : plain(x, y));
    const pieces: readonly PaintedPiece[] = [
      { ...supper('head-to-head'), front: plain },
      { ...supper('head-to-head'), name: 'Supper late', front: lined },
    ];
    const positions = [at('Supper', 15, 20, 0), at('Supper late', 150, 20, 0)];
    const job = jobOf('side-to-side', pieces, positions);
    const right = run(job, pieces, printJob(job, pieces), 150);
    expect(brief(right.findings)).toEqual([]);
    expect(kinds(right)).toEqual(['alike back']);
    const swapped = printJob(job, pieces, (p, position, side) =>
      side === 2 ? p : { ...p, paint: position === 1 ? lined : plain },
    );
    const { findings } = run(job, pieces, swapped, 150);
    expect(brief(findings)).toEqual(['wrong-piece 1/1', 'wrong-piece 2/1']);
    expect(findings[0]?.message).toBe(
      'Position 1, side 1: the front of "Supper late" is printed where the front of "Supper" should be.',
    );
  });

  it('that shows the same on front and back is noted', () => {
    const twin = { ...supper('head-to-head'), back: supper('head-to-head').front };
    const job = jobOf('side-to-side', [twin], [at('Supper', 20, 25, 0)]);
    expect(run(job, [twin], printJob(job, [twin])).notes).toEqual([
      {
        kind: 'alike',
        piece: 'Supper',
        face: 'back',
        message: 'The back of "Supper" shows the same as the front of "Supper": they cannot be told apart.',
      },
    ]);
  });

  it('may be white at an edge, where no bleed can be seen', () => {
    const bar: Paint = (x, y) => (y < -20 ? [120, 40, 40] : lopsidedPaint(TRIM, PAPER)(x, y));
    const { findings } = proveFront(bar, (p) => ({ ...p, bleed: 3 }));
    // The bar runs off the foot and, low, off both sides; the head is white.
    expect(findings.map((f) => 'measured' in f && 'edge' in f.measured && f.measured.edge)).toEqual([
      'tail',
      'lead',
      'right',
    ]);
  });
});

describe('A job that contradicts itself', () => {
  const pieces = [supper('head-to-head')];
  const sides = { side1: paintedSource(SHEET, () => PAPER) };

  it('by a position of an unknown piece is a mistake of ours', () => {
    const job = jobOf('side-to-side', pieces, [at('Breakfast', 20, 25, 0)]);
    expect(() => run(job, pieces, sides)).toThrow('No piece is called "Breakfast"');
  });

  it('by a position of another size than its piece is a mistake of ours', () => {
    const job = jobOf('side-to-side', pieces, [{ ...at('Supper', 20, 25, 0), head: 90 }]);
    expect(() => run(job, pieces, sides)).toThrow(
      'A position of "Supper" is 90 x 60 pt, its trim 60 x 90 pt',
    );
  });
});
