import { describe, expect, it } from 'vitest';
import type { Repeat } from '../../../shared/bench/repeat.ts';
import type { Command } from '../../../shared/job/commands.ts';
import { nameOfEdit } from '../../../shared/job/commands.ts';
import { edit } from '../../../shared/job/edit.ts';
import { JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { supperWith } from '../../kit/briefs.ts';

// 5 x 7 in cards on 11 x 17 in (792 x 1224 pt), 1/8 in bleed; 9 pt cannot be printed at the sides, nor these:
const [LEAD, TAIL] = [14.4, 21.6];

function jobOf(work: object, arrangement: readonly Position[]): Job {
  const brief = readBrief(supperWith(work));
  if (!brief.ok) throw new Error(brief.fault.message);
  return { schema: JOB_SCHEMA, brief: brief.value, art: [], arrangement };
}

const lay = (x: number, y: number, rest: Partial<Position> = {}): Position => ({
  piece: 'Supper',
  face: 'front',
  head: 0,
  trim: { x, y, w: 360, h: 504 },
  ...rest,
});
const twoForms = { work: 'work-and-back', turn: 'side-to-side' };
const oneForm = { work: 'work-and-turn' };
/** A front and its partner behind it, low on the sheet, and another pair above them. */
const pairs = [lay(27, 60), lay(405, 60, { face: 'back' }), lay(27, 600), lay(405, 600, { face: 'back' })];

function done(job: Job, command: Command): readonly Position[] {
  const result = edit(job, command);
  if (!result.ok) throw new Error(result.fault.message);
  return result.value.arrangement;
}
const places = (arrangement: readonly Position[]) => arrangement.map((p) => [p.trim.x, p.trim.y]);
const refusal = (job: Job, command: Command) => {
  const result = edit(job, command);
  return result.ok ? undefined : result.fault;
};

describe('moving', () => {
  const job = jobOf(twoForms, [lay(100, 100), lay(300, 650)]);

  it('carries the chosen pieces and no others', () => {
    expect(places(done(job, { do: 'move', positions: [1], dx: 5, dy: -7 }))).toEqual([
      [100, 100],
      [305, 643],
    ]);
  });

  it('is refused where a piece would leave the sheet, and the remedy says that nothing changed', () => {
    expect(refusal(job, { do: 'move', positions: [1], dx: 133, dy: 0 })).toEqual({
      code: 'edit-refused',
      message: 'Position 2 would run off the sheet.',
      remedy: 'Nothing has been changed; try it another way.',
    });
    expect(refusal(job, { do: 'move', positions: [1], dx: 132, dy: 0 })).toBeUndefined();
  });

  it('is refused for a piece that is not there, and for none', () => {
    expect(refusal(job, { do: 'move', positions: [2], dx: 0, dy: 0 })?.message).toBe(
      'There is no position 3 on this sheet.',
    );
    expect(refusal(job, { do: 'move', positions: [], dx: 0, dy: 0 })?.message).toBe('No piece is selected.');
  });

  it('lets the partner follow as the mirror where one form serves both sides', () => {
    const moved = done(jobOf(oneForm, pairs), { do: 'move', positions: [0], dx: -7, dy: 11 });
    expect(places(moved)).toEqual([
      [20, 71],
      [412, 71],
      [27, 600],
      [405, 600],
    ]);
  });

  it('goes by the piece that is named first when its partner is chosen too', () => {
    const job1 = jobOf(oneForm, pairs);
    expect(places(done(job1, { do: 'move', positions: [0, 1], dx: -7, dy: 0 })).slice(0, 2)).toEqual([
      [20, 60],
      [412, 60],
    ]);
    expect(places(done(job1, { do: 'move', positions: [1, 0], dx: -7, dy: 0 })).slice(0, 2)).toEqual([
      [34, 60],
      [398, 60],
    ]);
  });
});

describe('placing', () => {
  it('puts the lower left corner of the trim where it is typed', () => {
    const job = jobOf(twoForms, [lay(100, 100), lay(300, 650)]);
    expect(places(done(job, { do: 'place', position: 0, x: 18, y: 36 }))).toEqual([
      [18, 36],
      [300, 650],
    ]);
    expect(refusal(job, { do: 'place', position: 0, x: Number.NaN, y: 0 })?.message).toMatch(/off the sheet/);
    expect(refusal(job, { do: 'place', position: 9, x: 0, y: 0 })?.message).toMatch(/no position 10/);
  });
});

describe('turning heads and swapping faces', () => {
  it('turns a piece about its own middle', () => {
    const [turned] = done(jobOf(twoForms, [lay(100, 100)]), {
      do: 'turn-heads',
      positions: [0],
      quarters: 1,
    });
    expect(turned).toEqual(lay(28, 172, { head: 90, trim: { x: 28, y: 172, w: 504, h: 360 } }));
    const [half] = done(jobOf(twoForms, [lay(100, 100)]), { do: 'turn-heads', positions: [0], quarters: -2 });
    expect(half).toEqual(lay(100, 100, { head: 180 }));
  });

  it('draws a piece that turned beyond what prints back to where its bleed does', () => {
    const turned = (x: number, y: number) =>
      done(jobOf(twoForms, [lay(x, y)]), { do: 'turn-heads', positions: [0], quarters: 1 })[0]?.trim;
    // 9 pt are not printed at the sides, and the bleed takes 9 more.
    expect(turned(27, 600)).toEqual({ x: 18, y: 672, w: 504, h: 360 });
    expect(turned(405, 600)).toEqual({ x: 792 - 18 - 504, y: 672, w: 504, h: 360 });
    const long = lay(300, 0, { head: 90, trim: { x: 280, y: 2, w: 504, h: 360 } });
    const up = done(jobOf(twoForms, [long]), { do: 'turn-heads', positions: [0], quarters: -1 })[0]?.trim;
    expect(up).toMatchObject({ x: 352, y: expect.closeTo(TAIL + 9), w: 360, h: 504 });
    const atLead = lay(300, 0, { head: 90, trim: { x: 100, y: 864, w: 504, h: 360 } });
    expect(
      done(jobOf(twoForms, [atLead]), { do: 'turn-heads', positions: [0], quarters: -1 })[0]?.trim.y,
    ).toBe(1224 - LEAD - 9 - 504);
  });

  it('leaves a piece on the sheet that does not fit what prints', () => {
    const banner = lay(0, 0, { head: 90, trim: { x: 10, y: 0, w: 20, h: 790 } });
    expect(
      done(jobOf(twoForms, [banner]), { do: 'turn-heads', positions: [0], quarters: 1 })[0]?.trim,
    ).toMatchObject({ x: 0, w: 790 });
  });

  it('keeps a pair half a gutter clear of the axis, else as clear as there is room', () => {
    const pair = (w: number, h: number) => {
      const trim = { x: 396 - 9 - w, y: 60, w, h };
      const job = jobOf(oneForm, [
        lay(0, 0, { trim }),
        lay(0, 0, { face: 'back', trim: { ...trim, x: 405 } }),
      ]);
      return edit(job, { do: 'turn-heads', positions: [0], quarters: 1 });
    };
    const lies = (w: number, h: number) => {
      const turned = pair(w, h);
      return turned.ok && turned.value.arrangement.map((p) => [p.trim.x, p.trim.x + p.trim.w]);
    };
    // Half the sheet is 396 wide; 18 pt at its side do not take the trim.
    expect(lies(200, 300)).toEqual([
      [396 - 9 - 300, 387],
      [405, 405 + 300],
    ]);
    expect(lies(200, 374)).toEqual([
      [18, 392],
      [400, 774],
    ]);
    expect(lies(200, 390)).toEqual([
      [0, 390],
      [402, 792],
    ]);
    const over = pair(360, 504);
    expect(over.ok ? undefined : over.fault.message).toBe(
      'Position 1 would lie over its own partner: half the sheet is too small for it.',
    );
  });

  it('refuses to turn a piece that does not fit the sheet then', () => {
    const banner = lay(0, 0, { head: 90, trim: { x: 10, y: 0, w: 20, h: 800 } });
    expect(
      refusal(jobOf(twoForms, [banner]), { do: 'turn-heads', positions: [0], quarters: 1 })?.message,
    ).toMatch(/off the sheet/);
  });

  it('turns the partner so that it stays behind its piece', () => {
    const turned = done(jobOf(oneForm, pairs), { do: 'turn-heads', positions: [0], quarters: 2 });
    expect(turned.map((p) => p.head)).toEqual([180, 180, 0, 0]);
  });

  it('swaps front and back, the partner with them', () => {
    const swapped = done(jobOf(oneForm, pairs), { do: 'swap-faces', positions: [0] });
    expect(swapped.map((p) => p.face)).toEqual(['back', 'front', 'front', 'back']);
  });
});

describe('copies', () => {
  it('are added after the others, each with a partner of its own', () => {
    const copied = done(jobOf(oneForm, pairs), { do: 'duplicate', positions: [0], dx: -9, dy: 18 });
    expect(copied.slice(4)).toEqual([lay(18, 78), lay(414, 78, { face: 'back' })]);
    const alone = done(jobOf(oneForm, [lay(27, 60)]), { do: 'duplicate', positions: [0], dx: -9, dy: 18 });
    expect(alone.slice(1)).toEqual([lay(18, 78)]);
  });

  it('are repeated a gutter apart', () => {
    const job = jobOf(twoForms, [lay(27, 90)]);
    const how: Repeat = { across: 2, along: 2, gapAcross: 18, gapAlong: 20, towards: ['right', 'lead'] };
    expect(places(done(job, { do: 'repeat', positions: [0], repeat: how }))).toEqual([
      [27, 90],
      [405, 90],
      [27, 614],
      [405, 614],
    ]);
    expect(refusal(job, { do: 'repeat', positions: [0], repeat: { ...how, across: 0 } })?.message).toBe(
      'How often a piece is repeated is a whole number of at least 1 in each direction.',
    );
    for (const counts of [{ along: 0 }, { along: 1.5 }, { across: 1.5 }]) {
      expect(refusal(job, { do: 'repeat', positions: [0], repeat: { ...how, ...counts } })).toBeDefined();
    }
    expect(refusal(job, { do: 'repeat', positions: [0], repeat: { ...how, across: 3 } })?.message).toMatch(
      /off the sheet/,
    );
  });

  it('of a group keep the group together', () => {
    const job = jobOf(twoForms, [
      lay(0, 0, { trim: { x: 0, y: 0, w: 100, h: 50 } }),
      lay(0, 0, { trim: { x: 120, y: 60, w: 30, h: 40 } }),
    ]);
    const how: Repeat = { across: 2, along: 1, gapAcross: 10, gapAlong: 0, towards: ['right', 'lead'] };
    expect(places(done(job, { do: 'repeat', positions: [0, 1], repeat: how })).slice(2)).toEqual([
      [160, 0],
      [280, 60],
    ]);
  });

  it('of a piece of the brief can be added where they are wanted, with their partners', () => {
    const added = done(jobOf(oneForm, []), {
      do: 'add',
      piece: 'Supper',
      face: 'front',
      x: 9,
      y: 30,
      head: 180,
    });
    expect(added).toEqual([lay(9, 30, { head: 180 }), lay(423, 30, { face: 'back', head: 180 })]);
    const onItsSide = done(jobOf(twoForms, []), {
      do: 'add',
      piece: 'Supper',
      face: 'back',
      x: 9,
      y: 30,
      head: 90,
    });
    expect(onItsSide).toEqual([lay(0, 0, { face: 'back', head: 90, trim: { x: 9, y: 30, w: 504, h: 360 } })]);
    expect(
      refusal(jobOf(oneForm, []), { do: 'add', piece: 'Lunch', face: 'front', x: 0, y: 0, head: 0 })?.message,
    ).toBe('The job has no piece "Lunch".');
  });
});

describe('removing', () => {
  it('takes the partner away too', () => {
    expect(done(jobOf(oneForm, pairs), { do: 'remove', positions: [1] })).toEqual([pairs[2], pairs[3]]);
    expect(done(jobOf(twoForms, pairs), { do: 'remove', positions: [1] })).toEqual([
      pairs[0],
      pairs[2],
      pairs[3],
    ]);
  });
});

describe('aligning and distributing', () => {
  const three = jobOf(twoForms, [lay(20, 10), lay(100, 300), lay(200, 700)]);

  it('brings pieces in line with one another', () => {
    expect(places(done(three, { do: 'align', positions: [0, 2], by: 'right', to: 'one-another' }))).toEqual([
      [200, 10],
      [100, 300],
      [200, 700],
    ]);
  });

  it('brings a piece to the middle of the sheet, or as near its edge as its bleed can be printed', () => {
    const at = (by: 'left' | 'lead' | 'middle-across') =>
      places(done(three, { do: 'align', positions: [1], by, to: 'sheet' }))[1];
    expect(at('middle-across')).toEqual([216, 300]);
    expect(at('left')).toEqual([18, 300]);
    // The lead edge cannot be printed for 0.2 in: 1224 - 14.4 - 9 - 504.
    expect(at('lead')?.[1]).toBeCloseTo(696.6, 9);
  });

  it('shares the room between the outermost equally, or sets a gutter', () => {
    const small = (y: number) => lay(0, 0, { trim: { x: 50, y, w: 60, h: 80 } });
    const job = jobOf(twoForms, [small(100), small(500), small(210)]);
    expect(places(done(job, { do: 'distribute', positions: [0, 1, 2], axis: 'y' })).map((p) => p[1])).toEqual(
      [100, 500, 300],
    );
    expect(
      places(done(job, { do: 'distribute', positions: [0, 1, 2], axis: 'y', gap: 18 })).map((p) => p[1]),
    ).toEqual([100, 296, 198]);
  });

  it('counts a piece and its partner as one', () => {
    const job = jobOf(oneForm, [
      lay(20, 60),
      lay(412, 60, { face: 'back' }),
      lay(27, 600),
      lay(405, 600, { face: 'back' }),
    ]);
    const inLine = done(job, { do: 'align', positions: [0, 1, 2, 3], by: 'left', to: 'one-another' });
    expect(places(inLine)).toEqual([
      [20, 60],
      [412, 60],
      [20, 600],
      [412, 600],
    ]);
  });
});

describe('the name of an edit', () => {
  const many = [0, 1, 2];
  it.each<[Command, string]>([
    [{ do: 'move', positions: [0], dx: 1, dy: 1 }, 'Move piece'],
    [{ do: 'move', positions: many, dx: 1, dy: 1 }, 'Move 3 pieces'],
    [{ do: 'place', position: 0, x: 0, y: 0 }, 'Place piece'],
    [{ do: 'turn-heads', positions: many, quarters: 1 }, 'Turn 3 pieces'],
    [{ do: 'swap-faces', positions: [0] }, 'Swap front and back of piece'],
    [{ do: 'duplicate', positions: [0], dx: 0, dy: 0 }, 'Duplicate piece'],
    [{ do: 'remove', positions: many }, 'Remove 3 pieces'],
    [{ do: 'align', positions: many, by: 'left', to: 'sheet' }, 'Align 3 pieces'],
    [{ do: 'distribute', positions: many, axis: 'x' }, 'Distribute 3 pieces'],
    [
      {
        do: 'repeat',
        positions: [0],
        repeat: { across: 2, along: 1, gapAcross: 0, gapAlong: 0, towards: ['left', 'tail'] },
      },
      'Repeat piece',
    ],
    [{ do: 'add', piece: 'Supper', face: 'front', x: 0, y: 0, head: 0 }, 'Add Supper'],
    [{ do: 'lay-out' }, 'Lay out the sheet'],
    [{ do: 'retitle', title: 'x' }, 'Rename the job'],
    [{ do: 'set-quantity', piece: 'Supper', quantity: 5 }, 'Change the quantity of Supper'],
    [{ do: 'set-overs', overs: { percent: 5, least: 3 } }, 'Change the overs'],
    [
      {
        do: 'turn-art',
        piece: 'Supper',
        face: 'back',
        found: { trim: { x: 0, y: 0, w: 1, h: 1 }, said: '' },
      },
      'Turn the back art of Supper',
    ],
    [{ do: 'set-reader-turn', piece: 'Supper', turned: 'head-to-toe' }, 'Change how Supper is turned'],
  ])('of %o says what undo would undo', (command, name) => {
    expect(nameOfEdit(command)).toBe(name);
  });
});
