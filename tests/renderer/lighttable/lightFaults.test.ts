import { describe, expect, it } from 'vitest';
import {
  backsOf,
  lightFaults,
  nameOfMend,
  type TypeHeads,
} from '../../../renderer/lighttable/lightFaults.ts';
import type { Job } from '../../../shared/job/job.ts';
import { supperJob } from '../kit/supperJob.ts';

const unknown: TypeHeads = () => undefined;
const faults = (job: Job, types: TypeHeads = unknown) => lightFaults(job, backsOf(job), types);
const readLike = (turned: 'head-to-head' | 'head-to-toe', backRotate: 0 | 180 = 0): Job => ({
  ...supperJob,
  brief: {
    ...supperJob.brief,
    pieces: supperJob.brief.pieces.map((p) => ({
      ...p,
      turned,
      back: { file: 'supper.pdf', page: 2, rotate: backRotate },
    })),
  },
});
const backDown: TypeHeads = (_piece, face) => (face === 'back' ? 180 : 0);

describe('the light table', () => {
  it('finds nothing where every back lies behind its own front', () => {
    expect(faults(supperJob)).toEqual([]);
  });

  it('finds nothing on a sheet printed on one side', () => {
    const simplex: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'simplex' } } };
    expect(backsOf(simplex)).toEqual([]);
  });

  it('finds every piece with the wrong thing behind it, and leads to the bench', () => {
    const oneForm: Job = { ...supperJob, brief: { ...supperJob.brief, work: { style: 'work-and-turn' } } };
    const lonely = { ...oneForm, arrangement: [supperJob.arrangement[0]!] };
    expect(faults(lonely)).toEqual([
      {
        key: 'nothing-behind 0',
        certain: true,
        message: 'Position 1 ("Supper", front) has nothing printed behind it.',
        positions: [0],
        mends: [{ do: 'show-on-bench', positions: [0] }],
      },
    ]);
  });

  it('asks about a back whose type stands on its head, and offers to turn the art', () => {
    const [fault, ...more] = faults(readLike('head-to-head'), backDown);
    expect(more).toEqual([]);
    expect(fault).toMatchObject({
      certain: false,
      message: 'The type on the back of "Supper" stands on its head when the piece is turned like a page.',
      positions: [0, 1, 2, 3],
    });
    expect(fault?.mends.map(nameOfMend)).toEqual(['Turn the art of the back']);
    const [calendar] = faults(readLike('head-to-toe'), backDown);
    expect(calendar?.message).toMatch(/turned like a wall calendar\.$/);
  });

  it('is content once the art is turned', () => {
    expect(faults(readLike('head-to-head', 180), backDown)).toEqual([]);
    expect(faults(readLike('head-to-head', 180), () => 0)).toHaveLength(1);
  });

  it('asks about a front whose type stands on its head', () => {
    const [fault] = faults(supperJob, (_piece, face) => (face === 'front' ? 180 : 0));
    expect(fault?.message).toBe('The type on the front of "Supper" stands on its head.');
    expect(fault?.mends.map(nameOfMend)).toEqual(['Turn the art of the front']);
    expect(nameOfMend({ do: 'show-on-bench', positions: [0] })).toBe('Show it on the bench');
  });
});
