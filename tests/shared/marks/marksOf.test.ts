import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { grow, holds, overlap } from '../../../shared/geometry/rect.ts';
import { printableArea } from '../../../shared/geometry/sheet.ts';
import type { Rect } from '../../../shared/geometry/space.ts';
import { applyToRect } from '../../../shared/geometry/transform.ts';
import { lookFromBehind } from '../../../shared/geometry/turn.ts';
import { hasOneForm, turnOf } from '../../../shared/geometry/work.ts';
import type { Form, Placement } from '../../../shared/layout/placement.ts';
import { boundsOf, type Mark, type WordsMark } from '../../../shared/marks/mark.ts';
import { type MarksInput, marksOf } from '../../../shared/marks/marksOf.ts';
import { formsOfBlock, markedJobs, measure } from '../../kit/markedJobs.ts';

const registerMarks = (marks: readonly Mark[]) => marks.filter((m) => m.ink === 'registration');
const words = (marks: readonly Mark[]) => marks.filter((m): m is WordsMark => m.kind === 'words');

/** Boxes as sorted text, so that two sets of marks can be compared, to a thousandth of a point. */
const written = (boxes: readonly Rect[]) =>
  boxes.map(({ x, y, w, h }) => [x, y, w, h].map((v) => (v + 1e-7).toFixed(3)).join(' ')).sort();

const seenFromBehind = (marks: readonly Mark[], { sheet, work }: MarksInput) =>
  marks.map((m) =>
    applyToRect(lookFromBehind(turnOf(work) ?? 'side-to-side', sheet), boundsOf(m) as Rect<'side1'>),
  );

/** The harvest supper: four cards of 5 x 7 in on 11 x 17 in. */
const supper = (work: MarksInput['work']): MarksInput => {
  const sheet = { w: 792, h: 1224 };
  const forms = formsOfBlock({
    sheet,
    trim: { w: 360, h: 504 },
    bleed: 9,
    gutter: 18,
    across: 2,
    along: 2,
    work,
  });
  return {
    sheet,
    unprintable: { lead: 14.4, tail: 21.6, left: 9, right: 9 },
    work,
    forms,
    form: forms[0]!,
    slug: { job: 'Harvest supper', sheets: 33, date: '2026-03-01' },
    measure,
  };
};

const isOneLineSlug = (m: Mark) => m.kind === 'words' && /form \d of .* print/.test(m.words);

describe('the marks of a form', () => {
  it('keep 2 pt away from every bleed of their side', () => {
    fc.assert(
      fc.property(markedJobs, (inputs) => {
        for (const input of inputs) {
          const bleeds = input.form.placements.flatMap((p) => p.bleed.map((r) => grow(r, 2)));
          const touching = marksOf(input).marks.filter((m) => bleeds.some((b) => overlap(b, boundsOf(m))));
          expect(touching).toEqual([]);
        }
      }),
    );
  });

  it('stay inside what the printer can print', () => {
    fc.assert(
      fc.property(markedJobs, (inputs) => {
        for (const input of inputs) {
          const printable = printableArea(input.sheet, input.unprintable);
          expect(marksOf(input).marks.filter((m) => !holds(printable, boundsOf(m)))).toEqual([]);
        }
      }),
    );
  });

  it('of both sides coincide when the sheet is held to the light, as far as they show register', () => {
    fc.assert(
      fc.property(markedJobs, (inputs) => {
        const [first, second] = inputs;
        fc.pre(first !== undefined && second !== undefined);
        const behind = registerMarks(marksOf(second!).marks);
        expect(written(seenFromBehind(behind, second!))).toEqual(
          written(registerMarks(marksOf(first!).marks).map(boundsOf)),
        );
      }),
    );
  });

  it('fall on themselves when one form serves both passes, as far as they show register', () => {
    fc.assert(
      fc.property(markedJobs, ([input]) => {
        fc.pre(input !== undefined && hasOneForm(input.work));
        const marks = registerMarks(marksOf(input!).marks);
        expect(written(seenFromBehind(marks, input!))).toEqual(written(marks.map(boundsOf)));
      }),
    );
  });

  it('are not printed over one another, but for the words and arrows in the lead-edge bar', () => {
    fc.assert(
      fc.property(markedJobs, (inputs) => {
        for (const input of inputs) {
          const marks = marksOf(input).marks.filter((m) => m.ink !== 'paper');
          const read = marks.filter((m) => m.kind === 'words' || m.kind === 'shape');
          const over = read.filter((m) => marks.some((o) => o !== m && overlap(boundsOf(m), boundsOf(o))));
          expect(over).toEqual([]);
        }
      }),
    );
  });

  it('leave nothing out without saying so', () => {
    fc.assert(
      fc.property(markedJobs, (inputs) => {
        for (const input of inputs) {
          const { marks, notices } = marksOf(input);
          const said = (what: string) => notices.some((n) => n.startsWith(`No room for ${what}`));
          const some = (begin: string) => words(marks).some((m) => m.words.startsWith(begin));
          expect(some('LEAD EDGE')).toBe(!said('the lead-edge bar'));
          expect(some('measure me')).toBe(!said('the ruler'));
          expect(some('print') || some('the printer') || marks.some(isOneLineSlug)).toBe(!said('the slug'));
        }
      }),
    );
  });
});

describe('the sheet of the harvest supper', () => {
  it('carries crop marks, two targets, the lead-edge bar, the ruler and the slug', () => {
    const { marks, notices } = marksOf(supper({ style: 'work-and-turn' }));
    expect(marks.filter((m) => m.kind === 'ring').map((m) => m.centre.x)).toEqual([396, 396]);
    expect(marks.filter((m) => m.kind === 'line' && m.ink === 'registration')).toHaveLength(16 + 4);
    expect(words(marks).map((m) => m.words)).toEqual([
      'LEAD EDGE · both sides',
      ...['0', '10', '20', '30', '40', '50', '0', '1', '2'],
      'measure me: 50 mm',
      'and 2 in',
      'Harvest supper',
      'form 1 of 1 · both sides · 33 sheets · 2026-03-01',
      'print, turn side to side (the lead edge stays),',
      'print the same form again',
    ]);
    expect(notices).toEqual(['No room for a register target at the left side and right side.']);
  });

  it('has its bar at the lead edge, in the middle, against the border that cannot be printed', () => {
    const bar = marksOf(supper({ style: 'work-and-turn' })).marks.find((m) => m.kind === 'shape')!;
    const { x, y, w, h } = boundsOf(bar);
    expect(y + h).toBeCloseTo(1224 - 14.4, 9);
    expect(h).toBe(16);
    expect(x + w / 2).toBeCloseTo(396, 9);
  });

  it('has the slug at the left of the tail and the ruler at its right', () => {
    const { marks } = marksOf(supper({ style: 'work-and-turn' }));
    const title = words(marks).find((m) => m.words === 'Harvest supper')!;
    expect(title.at.x).toBe(9);
    expect(boundsOf(words(marks).at(-1)!).y).toBeCloseTo(21.6, 9);
    const caption = boundsOf(words(marks).find((m) => m.words.startsWith('measure'))!);
    expect(caption.x + caption.w).toBeCloseTo(792 - 9, 9);
  });

  it('says on each side of a two-form job which side and form it is', () => {
    const input = supper({ style: 'work-and-back', turn: 'end-to-end' });
    const said = input.forms.map((form) => words(marksOf({ ...input, form }).marks).map((m) => m.words));
    expect(said[0]).toContain('LEAD EDGE · side 1');
    expect(said[0]).toContain('form 1 of 2 · side 1 · 33 sheets · 2026-03-01');
    expect(said[1]).toContain('LEAD EDGE · side 2');
    expect(said[1]).toContain('form 2 of 2 · side 2 · 33 sheets · 2026-03-01');
  });

  it('has registration marks on all plates and everything that is read in black or knocked out of it', () => {
    const { marks } = marksOf(supper({ style: 'simplex' }));
    for (const mark of marks) {
      if (mark.kind === 'ring') expect(mark.ink).toBe('registration');
      if (mark.kind === 'words') expect(['black', 'paper']).toContain(mark.ink);
    }
  });

  it('cuts a title that is too long for the margins, and says so', () => {
    const input = supper({ style: 'simplex' });
    const job = 'x'.repeat(300);
    const { marks, notices } = marksOf({ ...input, slug: { ...input.slug, job } });
    const short = `${'x'.repeat(95)}…`;
    expect(words(marks).map((m) => m.words)).toContain(short);
    expect(notices).toContain(`No room for the whole title in the slug: it says "${short}".`);
  });

  it('tells a second form nothing twice about the marks that both share', () => {
    const input = supper({ style: 'work-and-back', turn: 'side-to-side' });
    expect(marksOf({ ...input, form: input.forms[1]! }).notices).toEqual([]);
  });
});

describe('a sheet with room at one edge only', () => {
  /** One wide card with bleed, its sheet 100 pt larger at the edges that have room, 12 pt at the others. */
  const card = (edges: Partial<Record<'lead' | 'tail' | 'left' | 'right', number>>) => {
    const { lead = 12, tail = 12, left = 12, right = 12 } = edges;
    const trim = { x: left + 9, y: tail + 9, w: 604, h: 360 };
    const placement: Placement<'side1'> = {
      piece: 'Card',
      face: 'front',
      head: 0,
      trim,
      bleed: [grow<'side1'>(trim, 9)],
    };
    const form: Form = { number: 1, sides: [1], placements: [placement] };
    const sheet = { w: left + 622 + right, h: tail + 378 + lead };
    const { marks } = marksOf({
      ...supper({ style: 'simplex' }),
      unprintable: { lead: 6, tail: 6, left: 6, right: 6 },
      sheet,
      forms: [form],
      form,
      measure: (line) => 0.45 * line.length,
    });
    const find = (start: string) => words(marks).find((m) => m.words.startsWith(start))!;
    return { sheet, bar: find('LEAD'), ruler: find('measure'), slug: find('printed') };
  };

  it('has ruler and slug in the corners of the tail', () => {
    const { slug, ruler, sheet } = card({ tail: 100 });
    expect([slug.head, ruler.head]).toEqual([0, 0]);
    expect(boundsOf(slug)).toMatchObject({ x: 6, y: expect.closeTo(6, 9) });
    expect(boundsOf(ruler).x + boundsOf(ruler).w).toBeCloseTo(sheet.w - 6, 9);
    expect(boundsOf(ruler).y).toBeLessThan(30);
  });

  it('has them at the lead when the tail is full', () => {
    const { bar, slug, ruler, sheet } = card({ lead: 100 });
    expect(boundsOf(bar).y).toBeGreaterThan(sheet.h - 22);
    expect(boundsOf(slug).x).toBe(6);
    expect(boundsOf(slug).y).toBeGreaterThan(sheet.h - 50);
    expect(boundsOf(ruler).x + boundsOf(ruler).w).toBeCloseTo(sheet.w - 6, 9);
    expect(boundsOf(ruler).y).toBeGreaterThan(sheet.h - 25);
  });

  it('has them at a side, read from the right, when lead and tail are full', () => {
    const left = card({ left: 100 });
    expect([left.slug.head, left.ruler.head]).toEqual([90, 90]);
    expect(boundsOf(left.slug)).toMatchObject({ y: 6 });
    expect(boundsOf(left.slug).x).toBeLessThan(50);
    expect(boundsOf(left.ruler).y + boundsOf(left.ruler).h).toBeCloseTo(left.sheet.h - 6, 9);
    const right = card({ right: 100 });
    expect([right.slug.head, right.ruler.head]).toEqual([90, 90]);
    expect(boundsOf(right.slug).x + boundsOf(right.slug).w).toBeCloseTo(right.sheet.w - 6, 0);
  });
});

describe('a sheet without margins', () => {
  const input = (): MarksInput => {
    const whole = supper({ style: 'work-and-back', turn: 'side-to-side' });
    return { ...whole, unprintable: { lead: 106.5, tail: 106.5, left: 17, right: 17 } };
  };

  it('gets no marks and says what to do without them', () => {
    expect(marksOf(input())).toEqual({
      marks: [],
      notices: [
        'No room for crop marks: cut by measure, or leave wider margins.',
        'No room for register targets: judge the back-up by the crop marks.',
        'No room for the lead-edge bar: mark the lead edge of the pile by hand.',
        'No room for the ruler: check the size of the print by measuring between crop marks.',
        'No room for the slug: write job, form and side on the pile by hand.',
      ],
    });
  });

  it('gets none where nothing lies on it or nothing can be printed', () => {
    const { forms, ...rest } = input();
    const bare = forms.map((f) => ({ ...f, placements: [] }));
    expect(marksOf({ ...rest, forms: bare, form: bare[0]! })).toEqual({ marks: [], notices: [] });
    const shut = { lead: 700, tail: 700, left: 0, right: 0 };
    expect(marksOf({ ...rest, forms, unprintable: shut })).toEqual({ marks: [], notices: [] });
  });

  it('cannot have a second form without a turn', () => {
    const whole = input();
    expect(() => marksOf({ ...whole, work: { style: 'simplex' } })).toThrow('a sheet that is turned');
  });
});
