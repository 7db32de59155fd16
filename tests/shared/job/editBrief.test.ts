import { describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/job/commands.ts';
import { edit } from '../../../shared/job/edit.ts';
import { designsOf, JOB_SCHEMA, type Job, sheetOf } from '../../../shared/job/job.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { checkArrangement } from '../../../shared/layout/check.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { supperWith } from '../../kit/briefs.ts';

const lay = (x: number, face: 'front' | 'back', head: 0 | 180 = 0): Position => ({
  piece: 'Supper',
  face,
  head,
  trim: { x, y: 60, w: 360, h: 504 },
});

function jobOf(
  onPiece: object = {},
  arrangement: readonly Position[] = [lay(27, 'front'), lay(405, 'back')],
): Job {
  const brief = readBrief(supperWith({}, onPiece));
  if (!brief.ok) throw new Error(brief.fault.message);
  return { schema: JOB_SCHEMA, brief: brief.value, art: [], arrangement };
}

function done(job: Job, command: Command): Job {
  const result = edit(job, command);
  if (!result.ok) throw new Error(result.fault.message);
  return result.value;
}
const refusal = (job: Job, command: Command) => {
  const result = edit(job, command);
  return result.ok ? undefined : result.fault.message;
};

describe('edits of the brief', () => {
  it('give the job another title, but never none', () => {
    expect(done(jobOf(), { do: 'retitle', title: '  Plum fair ' }).brief.title).toBe('Plum fair');
    expect(refusal(jobOf(), { do: 'retitle', title: '  ' })).toBe('A job needs a title.');
  });

  it('change how many are wanted', () => {
    expect(
      done(jobOf(), { do: 'set-quantity', piece: 'Supper', quantity: 1 }).brief.pieces[0]?.quantity,
    ).toBe(1);
    expect(refusal(jobOf(), { do: 'set-quantity', piece: 'Supper', quantity: 0 })).toBe(
      '0 is not a quantity: it must be a whole number of at least 1.',
    );
    expect(refusal(jobOf(), { do: 'set-quantity', piece: 'Supper', quantity: 1.5 })).toMatch(
      /not a quantity/,
    );
    expect(refusal(jobOf(), { do: 'set-quantity', piece: 'Lunch', quantity: 5 })).toBe(
      'The job has no piece "Lunch".',
    );
  });

  it('change the overs', () => {
    expect(done(jobOf(), { do: 'set-overs', overs: { percent: 0, least: 0 } }).brief.overs).toEqual({
      percent: 0,
      least: 0,
    });
    for (const overs of [
      { percent: -1, least: 0 },
      { percent: Number.NaN, least: 0 },
      { percent: 0, least: -1 },
      { percent: 0, least: 1.5 },
    ]) {
      expect(refusal(jobOf(), { do: 'set-overs', overs })).toBe(
        'Overs are a share of the run and a whole number of sheets, neither negative.',
      );
    }
  });
});

describe('art that stands on its head', () => {
  const found = { trim: { x: 20, y: 4, w: 360, h: 504 }, said: 'The trim is its TrimBox.' };

  it('is turned half round, and back again', () => {
    const once = done(jobOf(), { do: 'turn-art', piece: 'Supper', face: 'back', found });
    expect(once.brief.pieces[0]?.back?.rotate).toBe(180);
    expect(once.brief.pieces[0]?.front.rotate).toBe(0);
    const twice = done(once, { do: 'turn-art', piece: 'Supper', face: 'back', found });
    expect(twice.brief.pieces[0]?.back?.rotate).toBe(0);
  });

  it('has its trim where it was found on the turned page; that of the other faces stays', () => {
    const trim = { x: 4, y: 20, w: 360, h: 504 };
    const was = (piece: string, face: 'front' | 'back') => ({
      piece,
      face,
      sha256: 'a1',
      trim,
      said: 'before',
    });
    const art = [was('Supper', 'front'), was('Supper', 'back'), was('Tag', 'back')];
    const turned = done({ ...jobOf(), art }, { do: 'turn-art', piece: 'Supper', face: 'back', found });
    expect(turned.art).toEqual([art[0], { ...art[1], ...found }, art[2]]);
  });

  it('is not turned where there is none', () => {
    const job = jobOf();
    const oneSided: Job = {
      ...job,
      brief: { ...job.brief, pieces: job.brief.pieces.map((p) => ({ ...p, back: undefined })) },
    };
    expect(refusal(oneSided, { do: 'turn-art', piece: 'Supper', face: 'back', found })).toBe(
      '"Supper" has no back.',
    );
  });

  it('is not turned under a trim that was placed by hand on the page as it stood', () => {
    const placed = jobOf({ front: { file: 'supper.pdf', page: 1, trimAt: [0.125, 0.125] } });
    const result = edit(placed, { do: 'turn-art', piece: 'Supper', face: 'front', found });
    expect(result).toEqual({
      ok: false,
      fault: {
        code: 'edit-refused',
        message: 'The trim of the front of "Supper" was placed by hand on the page as it stands.',
        remedy: 'Take the art in again, turned, and say where its trim lies.',
      },
    });
  });
});

describe('another way of reading', () => {
  it('turns the partner of each piece on the one form, so that the form still falls on itself', () => {
    const arrangement = [lay(27, 'front'), lay(405, 'back')];
    const changed = done(jobOf({}, arrangement), {
      do: 'set-reader-turn',
      piece: 'Supper',
      turned: 'head-to-toe',
    });
    expect(changed.brief.pieces[0]?.turned).toBe('head-to-toe');
    expect(changed.arrangement).toEqual([lay(27, 'front'), lay(405, 'back', 180)]);
    const { size, unprintable } = sheetOf(changed.brief);
    const sheet = { size, unprintable, work: changed.brief.work };
    expect(checkArrangement(changed.arrangement, designsOf(changed.brief), sheet, 'in')).toEqual([]);
  });

  it('leaves a piece without a partner where it lies', () => {
    const lonely = jobOf({}, [lay(27, 'front')]);
    expect(
      done(lonely, { do: 'set-reader-turn', piece: 'Supper', turned: 'head-to-toe' }).arrangement,
    ).toEqual(lonely.arrangement);
  });
});
