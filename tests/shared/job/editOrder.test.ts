// Changing what is ordered and how it is worked: the sheet follows, and what cannot be is refused.
import { describe, expect, it } from 'vitest';
import { nameOfEdit, type OrderCommand, type TakenArt } from '../../../shared/job/commands.ts';
import { edit } from '../../../shared/job/edit.ts';
import { type FoundArt, JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import { layOutJob } from '../../../shared/job/layOutJob.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { supperWith } from '../../kit/briefs.ts';

const found = (face: 'front' | 'back', sha256: string): FoundArt => ({
  piece: 'Supper',
  face,
  sha256: sha256.repeat(64),
  trim: { x: 9, y: 9, w: 360, h: 504 },
  said: 'The trim is the TrimBox.',
});

function laidOut(json: unknown): Job {
  const brief = readBrief(json);
  if (!brief.ok) throw new Error(brief.fault.message);
  const art = [found('front', 'a'), found('back', 'b')];
  const job = layOutJob({ schema: JOB_SCHEMA, brief: brief.value, art, arrangement: [] });
  if (!job.ok) throw new Error(job.fault.message);
  return job.value;
}

const job = laidOut(supperWith({ work: 'work-and-back', centring: { across: 'left' } }));

function jobAfter(command: OrderCommand): Job {
  const edited = edit(job, command);
  if (!edited.ok) throw new Error(edited.fault.message);
  return edited.value;
}

describe('another way of working', () => {
  it('lays the sheet out afresh, in the centre where one form needs equal margins', () => {
    const turned = jobAfter({ do: 'set-work', work: { style: 'work-and-turn' } });
    expect(turned.brief.work).toEqual({ style: 'work-and-turn' });
    expect(turned.brief.centring).toEqual({ across: 'centre', along: 'centre' });
    expect(turned.arrangement.map((p) => p.face).sort()).toEqual(['back', 'back', 'front', 'front']);
    expect(job.brief.centring.across).toBe('left');
  });

  it('that the job cannot be worked in is refused with the reason', () => {
    const refused = edit(job, { do: 'set-work', work: { style: 'simplex' } });
    expect(refused.ok || refused.fault).toMatchObject({
      code: 'edit-refused',
      message: 'One side only would leave the backs unprinted.',
      remedy: 'Take a way of working with two sides.',
    });
  });

  it('that does not fit the sheet is refused too', () => {
    const large = laidOut(supperWith({ work: 'work-and-back' }, { trim: [6, 9] }));
    expect(edit(large, { do: 'set-work', work: { style: 'work-and-turn' } }).ok).toBe(false);
  });
});

describe('the art of a face', () => {
  const fresh: TakenArt = { file: 'supper-2.pdf', page: 3, found: found('back', 'c') };

  it('can be taken from another file and page; the other face stays what it was', () => {
    const taken = jobAfter({ do: 'take-art', faces: [fresh] });
    expect(taken.brief.pieces[0]?.back).toEqual({ file: 'supper-2.pdf', page: 3, rotate: 0 });
    expect(taken.brief.pieces[0]?.front).toEqual(job.brief.pieces[0]?.front);
    expect(taken.art).toEqual([found('front', 'a'), found('back', 'c')]);
    expect(taken.arrangement).toBe(job.arrangement);
  });

  it('of a piece that the job does not have is refused', () => {
    const refused = edit(job, {
      do: 'take-art',
      faces: [{ ...fresh, found: { ...fresh.found, piece: 'Menu' } }],
    });
    expect(refused.ok || refused.fault.message).toBe('The job has no back of "Menu".');
  });
});

describe('how the sheets are written', () => {
  it('marks can be left out and put back', () => {
    expect(jobAfter({ do: 'set-marks', marks: false }).brief.marks).toBe(false);
    expect(jobAfter({ do: 'set-marks', marks: true }).brief.marks).toBe(true);
  });

  it('files are named by a pattern, which cannot be empty', () => {
    expect(jobAfter({ do: 'set-file-names', pattern: ' {job}-{side}.pdf ' }).brief.fileNames).toBe(
      '{job}-{side}.pdf',
    );
    const refused = edit(job, { do: 'set-file-names', pattern: '  ' });
    expect(refused.ok || refused.fault.message).toBe('The files need a pattern for their names.');
  });
});

describe('a changed brief', () => {
  it('puts the job that was laid out from it in place of the one before', () => {
    const laid = laidOut(supperWith({ work: 'work-and-turn' }));
    expect(jobAfter({ do: 'change-brief', laid })).toBe(laid);
  });
});

describe('the names of these edits', () => {
  it('say what was changed', () => {
    const faces = [{ file: 'a.pdf', page: 1, found: found('front', 'a') }];
    const names: readonly [OrderCommand, string][] = [
      [{ do: 'set-work', work: { style: 'work-and-turn' } }, 'Change to work-and-turn'],
      [{ do: 'set-marks', marks: true }, 'Print marks'],
      [{ do: 'set-marks', marks: false }, 'Leave out the marks'],
      [{ do: 'set-file-names', pattern: 'x' }, 'Change the file names'],
      [{ do: 'take-art', faces }, 'Take the art of Supper'],
      [{ do: 'take-art', faces: [...faces, ...faces] }, 'Take the art of 2 faces'],
      [{ do: 'change-brief', laid: job }, 'Change the brief'],
    ];
    for (const [command, name] of names) expect(nameOfEdit(command)).toBe(name);
  });
});
