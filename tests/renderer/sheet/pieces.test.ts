import { describe, expect, it } from 'vitest';
import { benchInWords, gestureInWords } from '../../../renderer/bench/inWords.ts';
import { edgeAt, pieceAt, piecesIn } from '../../../renderer/sheet/pieces/picking.ts';
import { headInWords, nameInWords, placeInWords } from '../../../renderer/sheet/pieces/placeInWords.ts';
import { seenFaces } from '../../../renderer/sheet/pieces/seenFaces.ts';
import { moveShownPieces, ontoArrangement, shownPieces } from '../../../renderer/sheet/pieces/shownPieces.ts';
import { apply } from '../../../shared/geometry/transform.ts';
import type { Job } from '../../../shared/job/job.ts';
import { supperJob } from '../kit/supperJob.ts';

const oneForm: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-turn' } } };
const oneSided: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'simplex' } } };

describe('the side that lies up', () => {
  it('shows each piece with its bleed cut at the middle of a narrow gutter, and its safe margin', () => {
    const [first] = shownPieces(supperJob, 1);
    expect(first).toEqual({
      position: 0,
      piece: 'Supper',
      face: 'front',
      head: 0,
      trim: { x: 27, y: 621, w: 360, h: 504 },
      printed: [{ x: 18, y: 612, w: 378, h: 522 }],
      bleed: { x: 18, y: 612, w: 378, h: 522 },
      safe: { x: 36, y: 630, w: 342, h: 486 },
    });
    const near = {
      ...supperJob,
      arrangement: [
        supperJob.arrangement[0]!,
        { ...supperJob.arrangement[1]!, trim: { x: 395, y: 621, w: 360, h: 504 } },
      ],
    };
    expect(shownPieces(near, 1)[0]?.printed.map(({ w }) => w)).toEqual([9 + 360 + 4]);
    expect(shownPieces(near, 1)[0]?.bleed.w).toBe(378);
  });

  it('shows on side 2 what is printed behind, where it lies there', () => {
    const [first] = shownPieces(supperJob, 2);
    expect([first?.face, first?.trim.x, first?.position]).toEqual(['back', 405, 0]);
  });

  it('shows the same form on both sides where there is only one', () => {
    expect(shownPieces(oneForm, 2)).toEqual(shownPieces(oneForm, 1));
  });

  it('shows nothing on side 2 of a sheet that is printed on one side', () => {
    expect(shownPieces(oneSided, 2)).toEqual([]);
  });

  it('shows the place of a piece without a back as blank', () => {
    const leaflet: Job = {
      ...supperJob,
      brief: { ...supperJob.brief, pieces: supperJob.brief.pieces.map((p) => ({ ...p, back: undefined })) },
    };
    expect(shownPieces(leaflet, 2).map((p) => p.face)).toEqual([undefined, undefined, undefined, undefined]);
    expect(shownPieces(leaflet, 1)[0]?.face).toBe('front');
  });

  it('shows what a gesture has moved as if all had been worked out anew', () => {
    const near = supperJob.arrangement.map((p, i) =>
      i === 0 ? { ...p, trim: { ...p.trim, x: 35, y: 613 } } : p,
    );
    const job: Job = { ...supperJob, arrangement: near };
    for (const side of [1, 2] as const) {
      const before = shownPieces(supperJob, side);
      const moved = moveShownPieces(before, job, side, new Set([0]));
      expect(moved[0]).toEqual(shownPieces(job, side)[0]);
      expect(moved.slice(1)).toEqual(before.slice(1));
    }
    // 10 pt are left between it and the card below, where each keeps a bleed of 5; the right end of it stands out by 8 pt,
    // and the last 3 of them lie clear of the other's half.
    const [first] = moveShownPieces(shownPieces(supperJob, 1), job, 1, new Set([0]));
    const foot = (x: number) =>
      Math.min(...first!.printed.flatMap((r) => (r.x < x && x < r.x + r.w ? [r.y] : [])));
    expect([foot(100), foot(386), foot(391), foot(394)]).toEqual([608, 608, 608, 604]);
  });

  it('leads back to where the arrangement is edited', () => {
    expect(apply(ontoArrangement(supperJob, 2), { x: 10, y: 20 })).toEqual({ x: 782, y: 20 });
    expect(apply(ontoArrangement(supperJob, 1), { x: 10, y: 20 })).toEqual({ x: 10, y: 20 });
    expect(apply(ontoArrangement(oneForm, 2), { x: 10, y: 20 })).toEqual({ x: 10, y: 20 });
  });
});

describe('what the hand is over', () => {
  const pieces = shownPieces(supperJob, 1);

  it('is the piece under it, the uppermost where several lie over each other', () => {
    expect(pieceAt(pieces, { x: 27, y: 621 })?.position).toBe(0);
    expect(pieceAt(pieces, { x: 387, y: 1125 })?.position).toBe(0);
    expect(pieceAt(pieces, { x: 396, y: 700 })).toBeUndefined();
    const over = [pieces[0]!, { ...pieces[1]!, trim: pieces[0]!.trim }];
    expect(pieceAt(over, { x: 100, y: 700 })?.position).toBe(1);
  });

  it('is all the pieces that a frame touches', () => {
    expect(piecesIn(pieces, { x: 380, y: 610, w: 30, h: 30 })).toEqual([0, 1]);
    expect(piecesIn(pieces, { x: 387, y: 610, w: 10, h: 30 })).toEqual([]);
  });

  it('is an edge of the sheet just beyond it', () => {
    const sheet = { w: 792, h: 1224 };
    expect(edgeAt(sheet, { x: -10, y: 500 }, 20)).toBe('left');
    expect(edgeAt(sheet, { x: 802, y: 500 }, 20)).toBe('right');
    expect(edgeAt(sheet, { x: 400, y: 1230 }, 20)).toBe('lead');
    expect(edgeAt(sheet, { x: 400, y: -3 }, 20)).toBe('tail');
    expect(edgeAt(sheet, { x: 4, y: 500 }, 20)).toBe('left');
    expect(edgeAt(sheet, { x: 6, y: 500 }, 20)).toBeUndefined();
    expect(edgeAt(sheet, { x: -21, y: 500 }, 20)).toBeUndefined();
    expect(edgeAt(sheet, { x: -21, y: -5 }, 20)).toBeUndefined();
    expect(edgeAt(sheet, { x: -3, y: -9 }, 20)).toBe('tail');
  });
});

describe('the faces on the screen', () => {
  const art = (['front', 'back'] as const).map((face) => ({
    piece: 'Supper',
    face,
    sha256: 'a1',
    trim: { x: 9, y: 9, w: 360, h: 504 },
    said: '',
  }));
  const job: Job = { ...supperJob, art };
  const view = { x: 0, y: 1224, zoom: 1 };

  it('are asked for once, however often they are placed, as large as they are seen', () => {
    const [front, ...more] = seenFaces(job, shownPieces(job, 1), view, { w: 792, h: 1224 }, 2);
    expect(more).toEqual([]);
    expect(front?.face).toEqual({ art: 'supper.pdf', page: 1, rotate: 0, trim: art[0]?.trim, bleed: 9 });
    expect(front?.scale).toBe(2);
    expect(front?.seen).toEqual({ x: -9, y: -9, w: 378, h: 522 });
  });

  it('are seen as far as any of their places lies in the window', () => {
    // The window shows the lower left corner of the piece at the lower left: 100 x 150 of it.
    const low = { ...job, arrangement: [job.arrangement[2]!] };
    const [front] = seenFaces(
      low,
      shownPieces(low, 1),
      { x: -27, y: 150 + 99, zoom: 1 },
      { w: 100, h: 150 },
      1,
    );
    expect(front?.seen).toEqual({ x: 0, y: 0, w: 100, h: 150 });
    const [hidden] = seenFaces(low, shownPieces(low, 1), { x: 5000, y: 0, zoom: 1 }, { w: 100, h: 150 }, 1);
    expect(hidden?.seen).toBeUndefined();
  });

  it('are none while nobody knows where their trim lies', () => {
    expect(seenFaces(supperJob, shownPieces(supperJob, 1), view, { w: 10, h: 10 }, 1)).toEqual([]);
  });
});

describe('the bench in words', () => {
  it('says what lies there and what is wrong', () => {
    expect(benchInWords(supperJob, 1, 0, 0)).toBe(
      'Side 1 of a sheet of 11 × 17 in, lead edge at the top, turned side to side. 4 pieces lie on it, none is selected, nothing is wrong.',
    );
    expect(benchInWords(oneSided, 1, 2, 1)).toMatch(
      /at the top\. 4 pieces lie on it, 2 selected, 1 to look at\.$/,
    );
    expect(benchInWords(supperJob, 2, 4, 0)).toMatch(/all are selected/);
    const tumble: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-tumble' } } };
    const one = { ...tumble, arrangement: tumble.arrangement.slice(0, 1) };
    expect(benchInWords(one, 1, 0, 0)).toMatch(/turned end to end\. One piece lies on it/);
  });

  it('says what holds a dragged piece', () => {
    const guide = (name: string) => ({ name, axis: 'x' as const, lines: [], gaps: [] });
    const box = { x: 0, y: 0, w: 1, h: 1 };
    const drag = (...names: string[]) =>
      ({ does: 'drag', moving: new Set([0]), guides: names.map(guide), box, says: '' }) as const;
    expect(gestureInWords(drag('equal side margins', 'in line with position 2'))).toBe(
      'Held by equal side margins, in line with position 2.',
    );
    expect(gestureInWords(drag())).toBe('');
    expect(gestureInWords({ does: 'frame', frame: box })).toBe('');
    expect(gestureInWords(undefined)).toBe('');
  });

  it('names a position, its place and its head', () => {
    const [first] = supperJob.arrangement;
    expect(nameInWords(first!, 0)).toBe('1, Supper, front');
    expect(placeInWords(first!.trim, 'in')).toBe('0.375 in from the left, 8.625 in from the tail');
    expect(headInWords(0)).toBe('head up');
    expect(headInWords(270)).toBe('head to the right');
  });
});
