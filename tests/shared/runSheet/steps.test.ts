// The steps, done by somebody who does just what they say, make the cards that were ordered.
import { describe, expect, it } from 'vitest';
import { hasOneForm } from '../../../shared/geometry/work.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import type { Job } from '../../../shared/job/job.ts';
import { nameJobFiles } from '../../../shared/job/nameJobFiles.ts';
import { runSteps } from '../../../shared/runSheet/steps.ts';
import { granted } from '../../kit/granted.ts';
import { cutOut, hold } from '../../kit/paper.ts';
import { followSteps } from '../../kit/printerByTheSteps.ts';
import type { Hands } from '../../kit/printerHands.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const [CARD] = CARDS.pieces;
const SHEETS = { upright: [320, 450], lying: [450, 320] } as const;
const HOLDS = (['left', 'right', 'centre'] as const).flatMap((across) =>
  (['lead', 'centre'] as const).map((along) => ({ across, along })),
);

/** Cards in every way of working, on sheets that lie either way, held in every way, read either way. */
const CASES: readonly (readonly [string, Job])[] = WORKS.flatMap((work) =>
  HOLDS.flatMap((hold) =>
    (['upright', 'lying'] as const).map((lie) => {
      const turned = hold.along === 'lead' ? 'head-to-head' : 'head-to-toe';
      const brief = {
        ...CARDS,
        ...(work.style === 'simplex' ? { work: 'simplex' } : {}),
        marks: hold.along === 'lead',
        sheet: { ...CARDS.sheet, size: SHEETS[lie], hold },
        pieces: [work.style === 'simplex' ? { ...CARD, back: undefined } : { ...CARD, turned }],
      };
      const how = 'turn' in work ? `${work.style} ${work.turn}` : work.style;
      return [`${how}, ${lie}, held ${hold.across} and ${hold.along}`, jobOf(brief, work)] as const;
    }),
  ),
);

/** A card or two for somebody who wants no more: one sheet loaded, or two, in every way of working. */
const FEW: readonly (readonly [string, Job])[] = WORKS.flatMap((work) =>
  (
    [
      ['one sheet', 12, 0],
      ['one sheet and an over', 12, 1],
      ['two sheets', 30, 0],
    ] as const
  ).map(([count, quantity, least]) => {
    const card = work.style === 'simplex' ? { ...CARD, back: undefined } : CARD;
    const brief = {
      ...CARDS,
      ...(work.style === 'simplex' ? { work: 'simplex' } : {}),
      overs: { percent: 0, least },
      pieces: [{ ...card, quantity }],
    };
    const how = 'turn' in work ? `${work.style} ${work.turn}` : work.style;
    return [`${count}, ${how}`, jobOf(brief, work)] as const;
  }),
);

const DAY = '2026-03-01';
const follow = (job: Job, sides = granted(nameJobFiles(job, DAY)).sides): Hands =>
  followSteps(job, sides, runSteps(job, sides));

const backed = (job: Job) => job.brief.pieces.filter(({ back }) => back !== undefined);
const isTurned = (job: Job) => job.brief.work.style !== 'simplex' && backed(job).length > 0;
const isByHand = (job: Job) => isTurned(job) && job.brief.work.style !== 'perfecting';

describe('whoever does what the steps say', () => {
  it.each([...CASES, ...FEW, ...KINDS])(
    'has every card with its own back, upright as it is read: %s',
    (_name, job) => {
      const { ink } = follow(job);
      for (const { piece, face, trim, head } of job.arrangement) {
        const { back, turned } = job.brief.pieces.find(({ name }) => name === piece)!;
        const { front: up, turnedLikeAPage, turnedLikeACalendar } = hold(cutOut(ink, trim), head);
        const behind = turned === 'head-to-head' ? turnedLikeAPage : turnedLikeACalendar;
        const other = face === 'front' ? 'back' : 'front';
        const shown = (of: string) => ({ [`${piece} ${of} head`]: 'up', [`${piece} ${of} foot`]: 'down' });
        expect(up).toEqual({ ...shown(face), [`${piece} ${face} left`]: 'left' });
        expect(behind).toEqual(
          back === undefined || job.brief.work.style === 'simplex'
            ? {}
            : { ...shown(other), [`${piece} ${other} left`]: 'left' },
        );
      }
    },
  );

  it.each([...CASES, ...FEW, ...KINDS])(
    'does the same where the files have no names yet: %s',
    (_name, job) => {
      const sides = granted(nameJobFiles(job, DAY)).sides;
      expect(follow(job, []).ink).toEqual(follow(job, sides).ink);
    },
  );

  it.each([...CASES, ...FEW, ...KINDS])(
    'holds the sheet as was laid out, and marks the pile there: %s',
    (_name, job) => {
      const { across } = job.brief.sheet.hold;
      const { guide, pencil, flips } = follow(job);
      expect(guide).toBe(across);
      // Beside the guide, where the edge is that both passes ask for; at the left where there is none. Common practice.
      expect(pencil).toBe(isByHand(job) ? (across === 'right' ? 'right' : 'left') : undefined);
      expect(flips !== undefined).toBe(isTurned(job) && !isByHand(job));
    },
  );

  it.each([...CASES, ...FEW, ...KINDS])(
    'takes paper that is alike on both sides where one page prints both: %s',
    (_n, job) => {
      const pages = new Set(granted(nameJobFiles(job, DAY)).sides.map(({ name, page }) => `${name} ${page}`));
      const alike = job.brief.sheet.sidesAlike ? 'are said to be' : 'are not';
      expect(follow(job).alike).toBe(isTurned(job) ? (pages.size === 1 ? 'must be' : alike) : undefined);
    },
  );

  it.each([...CASES, ...FEW, ...KINDS])(
    'prints as many sheets as the order needs and its overs: %s',
    (_name, job) => {
      const { pieces, overs: more } = job.brief;
      const onSheet = (name: string) => job.arrangement.filter(({ piece }) => piece === name).length;
      const needed = Math.max(...pieces.map(({ name, quantity }) => Math.ceil(quantity / onSheet(name))));
      const extra = Math.max(more.least, Math.ceil((needed * more.percent) / 100));
      const { loaded, others, overs } = follow(job);
      expect([loaded, overs, 1 + others]).toEqual([needed + extra, extra, loaded]);
    },
  );

  it('prints 14 sheets after the first of 250 cards, 22 on a sheet, with three overs', () => {
    // 250 / 22 = 11.4.
    const job = jobOf({ ...CARDS, overs: { percent: 0, least: 3 } });
    expect(job.arrangement).toHaveLength(22);
    expect(follow(job)).toMatchObject({ loaded: 15, others: 14, overs: 3 });
  });

  it.each([
    [12, 0, { loaded: 1, others: 0, overs: 0 }],
    [12, 1, { loaded: 2, others: 1, overs: 1 }],
    [30, 0, { loaded: 2, others: 1, overs: 0 }],
  ])('is told of one sheet as of one: %i cards, 22 on a sheet, and %i overs', (quantity, least, wanted) => {
    const job = jobOf({ ...CARDS, overs: { percent: 0, least }, pieces: [{ ...CARD, quantity }] });
    expect(job.arrangement).toHaveLength(22);
    expect(follow(job)).toMatchObject(wanted);
  });

  it.each([...CASES, ...FEW, ...KINDS])(
    'is cautioned before the hands do what can hurt them: %s',
    (_name, job) => {
      const cautioned = new Set<string>();
      for (const { did, warned } of follow(job).handled) {
        for (const caution of warned) cautioned.add(caution);
        expect([...did].filter((what) => !cautioned.has(what))).toEqual([]);
        // The knife is worth a caution each time.
        expect(warned.includes('trim')).toBe(did.has('trim'));
      }
      expect([...cautioned].toSorted()).toEqual(['feed', 'lift', 'trim']);
    },
  );

  // Common practice, no source: what must not be forgotten, and in which order.
  it.each([...CASES, ...FEW, ...KINDS])(
    'is told everything, and in the order of the hands: %s',
    (_name, job) => {
      const { marks, pieces } = job.brief;
      const readBy = new Set(pieces.filter(({ back }) => back !== undefined).map(({ turned }) => turned));
      const byHand = ['pass 1', 'dry', 'turn', 'leading', 'guide', 'pass 2'];
      const once = [isTurned(job) ? 'print both' : 'print'];
      expect(follow(job).done).toEqual([
        ...(isTurned(job) ? ['sides alike'] : []),
        'load',
        'which side',
        ...(isByHand(job) ? ['pencil'] : []),
        'settings',
        ...(isByHand(job) ? byHand : once),
        ...(marks ? ['measure'] : []),
        ...(isTurned(job) ? ['light'] : []),
        'cut one',
        ...(isTurned(job) ? [...readBy].map(() => 'back') : []),
        'others',
        'overs',
        'trim',
      ]);
    },
  );

  it.each([...CASES, ...FEW, ...KINDS])(
    'looks at the back of every design as its reader does: %s',
    (_name, job) => {
      const { looked, notNamed } = follow(job);
      const wanted = isTurned(job) ? backed(job) : [];
      for (const [name, how] of looked) {
        const piece = wanted.find((p) => p.name === name)!;
        expect(how).toBe(piece.turned === 'head-to-head' ? 'like a page' : 'like a calendar');
      }
      expect(looked.size + notNamed.reduce((a, b) => a + b, 0)).toBe(wanted.length);
    },
  );
});

describe('the steps of a job without backs', () => {
  it('leave the two-sided printing of the printer off, whatever the way of working', () => {
    for (const work of WORKS.filter((of) => !hasOneForm(of))) {
      const job = jobOf({ ...CARDS, work: 'simplex', pieces: [{ ...CARD, back: undefined }] }, work);
      const { ink, flips, turned } = follow(job);
      expect([flips, turned]).toEqual([undefined, undefined]);
      expect(ink.every(({ at }) => at[2] > 0)).toBe(true);
    }
  });
});
