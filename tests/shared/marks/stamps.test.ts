import { describe, expect, it } from 'vitest';
import type { Work } from '../../../shared/geometry/work.ts';
import type { Form } from '../../../shared/layout/placement.ts';
import { leadBars } from '../../../shared/marks/leadBar.ts';
import { boundsOf, type Mark, type Stamp, type WordsMark } from '../../../shared/marks/mark.ts';
import { drawRulers } from '../../../shared/marks/ruler.ts';
import { oneLine, shorten, slugs, turnWords } from '../../../shared/marks/slug.ts';
import { measure } from '../../kit/markedJobs.ts';

const first: Form = { number: 1, sides: [1], placements: [] };
const second: Form = { number: 2, sides: [2], placements: [] };
const both: Form = { number: 1, sides: [1, 2], placements: [] };
const sheet = { w: 792, h: 1224 };

const isWords = (m: Mark): m is WordsMark => m.kind === 'words';
const linesOf = (stamp: Stamp) => stamp.marks.filter(isWords).map((m) => m.words);

/** A stamp's ink must lie in the room it asks for. */
const expectInside = (stamp: Stamp) => {
  for (const mark of stamp.marks) {
    const { x, y, w, h } = boundsOf(mark);
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1e-9);
    expect(x + w).toBeLessThanOrEqual(stamp.size.w + 1e-9);
    expect(y + h).toBeLessThanOrEqual(stamp.size.h + 1e-9);
  }
};

describe('the ruler', () => {
  const [ruler, low] = drawRulers(measure) as [Stamp, Stamp];
  const ticks = ruler.marks.flatMap((m) => (m.kind === 'line' && m.from.x === m.to.x ? [m] : []));
  const up = ticks.filter((t) => t.to.y > t.from.y);
  const down = ticks.filter((t) => t.to.y < t.from.y);

  it('measures 50 mm in single millimetres, exactly', () => {
    expect(up).toHaveLength(51);
    expect(up.at(-1)!.from.x - up[0]!.from.x).toBeCloseTo((50 * 72) / 25.4, 9);
    expect(up[7]!.from.x - up[6]!.from.x).toBeCloseTo(72 / 25.4, 9);
  });

  it('measures 2 in in eighths, exactly, from the same zero', () => {
    expect(down).toHaveLength(17);
    expect(down.at(-1)!.from.x - down[0]!.from.x).toBe(144);
    expect(down[0]!.from.x).toBe(up[0]!.from.x);
  });

  it('has longer ticks at whole centimetres and inches, and numbers over their middle', () => {
    expect([0, 1, 5, 10].map((n) => up[n]!.to.y - up[n]!.from.y)).toEqual(
      [5, 2.2, 3.6, 5].map((v) => expect.closeTo(v, 9)),
    );
    expect([0, 1, 4, 8].map((n) => down[n]!.from.y - down[n]!.to.y)).toEqual(
      [5, 2.2, 3.6, 5].map((v) => expect.closeTo(v, 9)),
    );
    for (const [label, x] of [
      ['30', up[30]!.from.x],
      ['2', down[16]!.from.x],
    ] as const) {
      const words = ruler.marks.filter(isWords).find((m) => m.words === label)!;
      expect(words.at.x + words.width / 2).toBeCloseTo(x, 9);
    }
  });

  it('says what to do beside it, or above it where a margin is short', () => {
    expect(linesOf(ruler).slice(-2)).toEqual(['measure me: 50 mm', 'and 2 in']);
    expect(linesOf(low).slice(-1)).toEqual(['measure me: 50 mm and 2 in']);
    expect(low.size).toEqual({ w: 150, h: expect.closeTo(24 + 1.17 * 6, 9) });
    expect(ruler.size).toEqual({ w: expect.closeTo(153 + 17 * 0.6 * 6, 9), h: 24 });
    expect(low.marks.slice(0, -1)).toEqual(ruler.marks.slice(0, -2));
  });

  it('keeps to its own room', () => {
    expectInside(ruler);
    expectInside(low);
  });
});

describe('the lead-edge bar', () => {
  it.each([
    [first, 'LEAD EDGE · side 1'],
    [second, 'LEAD EDGE · side 2'],
    [both, 'LEAD EDGE · both sides'],
  ])('says which edge enters first, and on which side', (form, words) => {
    expect(linesOf(leadBars(form, measure)[0]!)).toEqual([words]);
  });

  it('is as wide as its words, its arrows and the air around them', () => {
    const [bar] = leadBars(first, measure);
    const text = measure('LEAD EDGE · side 1') * 9.6;
    expect(bar!.size.w).toBeCloseTo(text + 2 * 9.6 + 4 * 8, 9);
    const line = bar!.marks.find(isWords)!;
    expect(line).toMatchObject({ size: 9.6, width: text, at: { x: 2 * 8 + 9.6 } });
    expect(line.at.y).toBeCloseTo((16 - (0.93 - 0.24) * 9.6) / 2, 9);
  });

  it('comes in three heights, each with a solid bar and two arrows that point to the edge', () => {
    const bars = leadBars(first, measure);
    expect(bars.map((b) => b.size.h)).toEqual([16, 12, 9]);
    for (const bar of bars) {
      expectInside(bar);
      const [solid, ...arrows] = bar.marks.flatMap((m) => (m.kind === 'shape' ? [m] : []));
      expect(boundsOf(solid!)).toEqual({ x: 0, y: 0, ...bar.size });
      expect(arrows.map((a) => a.ink)).toEqual(['paper', 'paper']);
      for (const arrow of arrows) {
        const box = boundsOf(arrow);
        const tip = arrow.corners.filter((c) => c.y > box.y + box.h - 1e-9);
        expect(tip.map((c) => c.x)).toEqual([expect.closeTo(box.x + box.w / 2, 9)]);
      }
      const [left, right] = arrows.map(boundsOf);
      expect(left!.x).toBeCloseTo(bar.size.w - right!.x - right!.w, 9);
      expect(left!.y).toBeCloseTo(bar.size.h - left!.y - left!.h, 9);
    }
  });
});

describe('the slug', () => {
  const facts = { job: 'Harvest supper', sheets: 33, date: '2026-03-01' };

  it('is a column, or wider and lower, in 7 pt and then in 6 pt', () => {
    const stamps = slugs(facts, first, 2, 'print', measure);
    const run = 'form 1 of 2 · side 1 · 33 sheets · 2026-03-01';
    const shapes = [
      ['Harvest supper', run, 'print'],
      ['Harvest supper', run, 'print'],
      [`Harvest supper · ${run}`, 'print'],
      [`Harvest supper · ${run} · print`],
    ];
    expect(stamps.map(linesOf)).toEqual([...shapes, ...shapes]);
    expect(stamps.map((s) => (s.marks[0] as WordsMark).size)).toEqual([7, 7, 7, 7, 6, 6, 6, 6]);
    for (const stamp of stamps) expectInside(stamp);
    expect(stamps[0]!.size.h).toBeCloseTo((2 * 1.25 + 0.93 + 0.24) * 7, 9);
  });

  it('breaks a long title between words so that the column stays narrow', () => {
    const job = 'one two three four five six seven eight nine ten eleven twelve';
    const [column, wide] = slugs({ ...facts, job }, first, 1, 'print', measure);
    expect(linesOf(column!).slice(0, -2)).toEqual([
      'one two three four five six seven eight nine',
      'ten eleven twelve',
    ]);
    expect(linesOf(wide!)[0]).toBe(job);
  });

  it('breaks nothing that is just as long as the column', () => {
    const run = 'form 1 of 1 · side 1 · 33 sheets · 2026-03-01';
    const job = 'a title that is just as long as the column xx';
    expect(job).toHaveLength(run.length);
    const [whole] = slugs({ ...facts, job }, first, 1, 'print', measure);
    expect(linesOf(whole!)).toEqual([job, run, 'print']);
    const [broken] = slugs({ ...facts, job: `${job}y` }, first, 1, `${job}y`, measure);
    const lines = ['a title that is just as long as the column', 'xxy'];
    expect(linesOf(broken!)).toEqual([...lines, run, ...lines]);
  });

  it('leaves out a title that says nothing', () => {
    const stamps = slugs({ ...facts, job: '' }, first, 1, 'print', measure);
    expect(linesOf(stamps[0]!)).toEqual(['form 1 of 1 · side 1 · 33 sheets · 2026-03-01', 'print']);
    expect(linesOf(stamps[2]!)).toEqual(['form 1 of 1 · side 1 · 33 sheets · 2026-03-01', 'print']);
  });

  it('counts one sheet as one', () => {
    const stamps = slugs({ ...facts, sheets: 1 }, first, 1, 'print', measure);
    expect(linesOf(stamps[0]!)[1]).toBe('form 1 of 1 · side 1 · 1 sheet · 2026-03-01');
  });

  it('puts a title on one line', () => {
    expect(oneLine('  Harvest\r\nsupper\u2028 \tof\u0000 the valley ')).toBe('Harvest supper of the valley');
    expect(oneLine('cafe\u0301')).toBe('caf\u00e9');
  });

  it('cuts whole characters off a title', () => {
    expect(shorten('supper', 6)).toBe('supper');
    expect(shorten('supper', 5)).toBe('supp…');
    expect(shorten('a 😀😀😀', 3)).toBe('a…');
    expect(shorten('😀😀😀😀', 3)).toBe('😀😀…');
  });

  it.each<[Work, Form, string]>([
    [{ style: 'simplex' }, first, 'printed on one side only'],
    [
      { style: 'work-and-turn' },
      both,
      'print, turn side to side (the lead edge stays), print the same form again',
    ],
    [
      { style: 'work-and-tumble' },
      both,
      'print, turn end to end (the tail becomes the lead edge), print the same form again',
    ],
    [
      { style: 'work-and-back', turn: 'side-to-side' },
      first,
      'print, then turn side to side (the lead edge stays)',
    ],
    [
      { style: 'work-and-back', turn: 'side-to-side' },
      second,
      'print on the sheet turned side to side (the lead edge stays)',
    ],
    [
      { style: 'work-and-back', turn: 'end-to-end' },
      first,
      'print, then turn end to end (the tail becomes the lead edge)',
    ],
    [
      { style: 'work-and-back', turn: 'end-to-end' },
      second,
      'print on the sheet turned end to end (the tail becomes the lead edge)',
    ],
    [
      { style: 'perfecting', turn: 'side-to-side' },
      first,
      'the printer turns the sheet side to side, about its long edge',
    ],
    [
      { style: 'perfecting', turn: 'end-to-end' },
      second,
      'the printer turns the sheet end to end, about its short edge',
    ],
  ])('tells the hands what to do: %o', (work, form, words) => {
    expect(turnWords(work, form, sheet)).toBe(words);
  });
});
