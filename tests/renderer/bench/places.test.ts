import { describe, expect, it } from 'vitest';
import { copyPlace } from '../../../renderer/bench/gesture/copyPlace.ts';
import { newPlace } from '../../../renderer/bench/gesture/newPlace.ts';
import { edit } from '../../../shared/job/edit.ts';
import type { Job } from '../../../shared/job/job.ts';
import { lengthOf } from '../../../shared/units/length.ts';
import { supperJob } from '../kit/supperJob.ts';

const [first] = supperJob.arrangement;
const at = (x: number, y: number) => ({ ...first!, trim: { x, y, w: 360, h: 504 } });
const withPieces = (...arrangement: Job['arrangement']): Job => ({ ...supperJob, arrangement });
const oneForm = (job: Job): Job => ({ ...job, brief: { ...job.brief, work: { style: 'work-and-turn' } } });

describe('a copy', () => {
  it('lies a gutter to the right where there is room', () => {
    expect(copyPlace(withPieces(at(27, 99)), [0])).toEqual({ dx: 378, dy: 0 });
  });

  it('else towards the tail, the lead edge or the left', () => {
    expect(copyPlace(withPieces(at(27, 621), at(405, 621)), [0])).toEqual({ dx: 0, dy: -522 });
    expect(copyPlace(withPieces(at(27, 99), at(405, 99)), [0])).toEqual({ dx: 0, dy: 522 });
    expect(copyPlace(withPieces(at(405, 360)), [0])).toEqual({ dx: -378, dy: 0 });
  });

  it('lies a little aside where the sheet is full', () => {
    expect(copyPlace(supperJob, [0])).toEqual({ dx: 18, dy: -18 });
    const tight = withPieces(at(0, 3), at(378, 3), at(0, 525), at(378, 525));
    expect(copyPlace(tight, [1])).toEqual({ dx: 18, dy: 18 });
    expect(copyPlace(withPieces(at(27, 99), at(405, 99), at(27, 621), at(432, 621)), [3]).dx).toBe(-18);
  });

  it('does not lie on its own partner', () => {
    // A gutter to the right of the front lies its back.
    const pair = oneForm(withPieces(at(27, 99), { ...at(405, 99), face: 'back' }));
    expect(copyPlace(pair, [0])).toEqual({ dx: 0, dy: 522 });
  });

  it('of nothing goes nowhere', () => {
    expect(copyPlace(supperJob, [])).toEqual({ dx: 0, dy: 0 });
  });
});

describe('one more of a piece', () => {
  const piece = supperJob.brief.pieces[0]!;

  it('lies in the middle of the sheet', () => {
    expect(newPlace(supperJob, piece)).toEqual({
      do: 'add',
      piece: 'Supper',
      face: 'front',
      head: 0,
      x: 216,
      y: 360,
    });
  });

  it('lies half a gutter beside the axis where its partner comes with it', () => {
    expect(newPlace(oneForm(supperJob), piece)).toMatchObject({ x: 27, y: 360 });
    const tumble: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-tumble' } } };
    expect(newPlace(tumble, piece)).toMatchObject({ x: 216, y: 621 });
    const added = edit(oneForm(withPieces()), newPlace(oneForm(supperJob), piece));
    expect(added.ok && added.value.arrangement.map((p) => p.trim.x)).toEqual([27, 405]);
  });

  it('lies on its side where it must', () => {
    const onItsSide = newPlace(supperJob, { ...piece, lies: 'on-its-side' });
    expect(onItsSide).toMatchObject({ head: 90, x: 144, y: 432 });
    const wide = newPlace(supperJob, { ...piece, trim: [lengthOf(12, 'in'), lengthOf(4, 'in')] });
    expect(wide).toMatchObject({ head: 90, x: 252, y: 180 });
    const long = newPlace(supperJob, { ...piece, trim: [lengthOf(4, 'in'), lengthOf(18, 'in')] });
    expect(long).toMatchObject({ head: 90 });
  });
});
