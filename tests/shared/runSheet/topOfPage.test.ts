// The top of a run sheet and what stands beside the drawings: the order in words and figures that agree with the paper.
import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import type { Job } from '../../../shared/job/job.ts';
import { setSheetInHand } from '../../../shared/runSheet/sheetInHand.ts';
import { factsOf, setTitle } from '../../../shared/runSheet/titleAndFacts.ts';
import { runSheetInput } from '../../kit/setPapers.ts';
import { extentOf, pathsIn, roomOf, textIn, wordsIn } from '../../kit/shapes.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const WIDTH = 531;
const kind = (name: string): Job => KINDS.find(([of]) => of.startsWith(name))![1];
const called = (work: (typeof WORKS)[number]) => ('turn' in work ? `${work.style} ${work.turn}` : work.style);

describe('the title', () => {
  const titleOf = (job: Job, title = job.brief.title) => setTitle(runSheetInput(job), title, WIDTH);

  it('says what was ordered, and that the sheets give it', () => {
    // 250 ordered, 22 up: 12 sheets give 264.
    expect(textIn(titleOf(jobOf(CARDS)).shapes)).toBe(
      'Cards of the orchard Orchard, 85 × 55 mm: 250 ordered, the sheets needed give 264 Job file orchard.turnlay. The code beside names the job.',
    );
    // 48 menus and 96 tags.
    expect(textIn(titleOf(kind('menus')).shapes)).toContain('2 designs, 144 pieces ordered');
  });

  it('is set large where it has room for it, and smaller where it has not', () => {
    const sizeOf = (title: string) => wordsIn(titleOf(jobOf(CARDS), title).shapes)[0]!.size;
    expect(sizeOf('Supper')).toBe(19);
    expect(sizeOf('A supper for everybody who ever sang in the choir of the village')).toBe(12);
  });

  it('has the code at the right, beside all words', () => {
    const block = titleOf(jobOf(CARDS), 'Word '.repeat(60));
    const code = extentOf(pathsIn(block.shapes)[0]!);
    expect(block.w).toBeCloseTo(WIDTH);
    for (const words of wordsIn(block.shapes)) expect(roomOf(words).right).toBeLessThan(WIDTH - 70 - 11.9);
    expect(code.left).toBeGreaterThan(WIDTH - 70);
    expect(textIn(block.shapes)).toMatch(/…/);
  });

  it('counts nothing for a single design that has no place', () => {
    const job = { ...jobOf(CARDS), arrangement: [] };
    expect(textIn(titleOf(job).shapes)).toContain('250 ordered, the sheets needed give 0');
  });
});

describe('the facts', () => {
  it.each(WORKS.map((work) => [called(work), work] as const))('of %s', (_name, work) => {
    const facts = factsOf(runSheetInput(jobOf(CARDS, work)));
    const onePass = ['simplex', 'perfecting'].includes(work.style);
    const oneForm = ['work-and-turn', 'work-and-tumble'].includes(work.style);
    const turn = 'turn' in work ? work.turn : work.style === 'work-and-turn' ? 'side-to-side' : 'end-to-end';
    const how = `turned ${turn}, ${onePass ? 'one pass' : 'two passes'}, ${oneForm ? 'one form for both sides' : 'a form for each side'}`;
    const { arrangement } = jobOf(CARDS, work);
    const needed = Math.ceil(250 / arrangement.length);
    // Five in a hundred of so few are one; three is the least.
    expect(facts).toEqual([
      { label: 'Load', figure: `${needed + 3} sheets`, note: `${needed} needed and 3 overs` },
      { label: 'Sheet', figure: '320 × 450 mm', note: 'across the feed × along it' },
      {
        label: 'Way of working',
        figure: work.style,
        note: work.style === 'simplex' ? 'printed on one side' : how,
      },
      {
        label: 'On a sheet',
        figure: `${arrangement.length} up`,
        note: `proof sheet first, then the other ${needed + 2}`,
      },
    ]);
  });

  it('name the paper where it is known', () => {
    const facts = factsOf(runSheetInput(jobOf(CARDS), { stock: { name: 'Rough card', cutter: ANY_CUTTER } }));
    expect(facts[1]!.note).toBe('Rough card, across × along the feed');
  });

  it('know of no other sheets where there are none', () => {
    const none = { ...jobOf({ ...CARDS, overs: { percent: 0, least: 0 } }), arrangement: [] };
    expect(factsOf(runSheetInput(none))[3]).toMatchObject({
      figure: '0 up',
      note: 'proof sheet first, then the other 0',
    });
  });
});

describe('the sheet in hand', () => {
  const inHand = (job: Job, height = 400) => setSheetInHand(runSheetInput(job), WIDTH, height);
  const legendOf = (job: Job) => textIn(inHand(job).blocks.at(-1)!.shapes);
  const held = (across: string, work?: (typeof WORKS)[number]) =>
    jobOf({ ...CARDS, sheet: { ...CARDS.sheet, hold: { across, along: 'lead' } } }, work);

  it('says what is drawn: the guide that there is, and a pencil line where hands turn the pile', () => {
    const names =
      'F is a front, B (shaded, dashed) a back, and the triangle points to its head. A number names the same piece on both sides; ';
    const edges = ' Edges keep the names they have on side 1.';
    expect(legendOf(held('left'))).toBe(
      `${names}the black block is the side guide; three strokes are the pencil line of the pile.${edges}`,
    );
    expect(legendOf(held('centre', { style: 'perfecting', turn: 'end-to-end' }))).toBe(
      `${names}open blocks are guides on both sides.${edges}`,
    );
    expect(legendOf(kind('cards on one side'))).toBe(
      'F is a front, and the triangle points to its head; the black block is the side guide.',
    );
  });

  it('has the turn between the two sides, from margin to margin', () => {
    const { blocks } = inHand(jobOf(CARDS));
    expect(textIn(blocks[0]!.shapes)).toBe('The sheet in hand');
    const drawing = blocks[1]!;
    expect(drawing.w).toBeCloseTo(WIDTH);
    const at = (said: RegExp) => wordsIn(drawing.shapes).find(({ words }) => said.test(words))!.at.x;
    expect(at(/^PASS 1 · SIDE 1$/)).toBeLessThan(at(/^TURN$/));
    expect(at(/^TURN$/)).toBeLessThan(at(/^PASS 2 · SIDE 2$/));
  });

  it('is no higher than its room, and as large as that lets it be', () => {
    for (const [, job] of KINDS) {
      for (const height of [260, 330, 400]) {
        const { blocks, gap, above } = inHand(job, height);
        const high = blocks.reduce((sum, { h }) => sum + h, 0) + gap * (blocks.length - 1) + above;
        expect(high).toBeLessThanOrEqual(height + 1e-6);
        for (const { w } of blocks) expect(w).toBeLessThanOrEqual(WIDTH + 1e-6);
      }
      const of = (height: number) => inHand(job, height).blocks[1]!.h;
      expect(of(330)).toBeGreaterThan(of(260));
    }
  });

  it('tells what paper of a wrong size does, where the sheet is turned', () => {
    expect(textIn(inHand(held('left')).blocks[2]!.shapes)).toContain(
      'Pass 1 lays the sheet to its left edge',
    );
    expect(inHand(kind('cards on one side')).blocks).toHaveLength(3);
    expect(inHand(held('left')).blocks).toHaveLength(4);
  });

  it('stands in the middle where there is one side, and level with the turn where there are two', () => {
    const single = inHand(kind('cards on one side')).blocks[1]!;
    const sheet = pathsIn(single.shapes)
      .map(extentOf)
      .toSorted((a, b) => b.right - b.left - (a.right - a.left))[0]!;
    expect(sheet.left + sheet.right).toBeCloseTo(WIDTH);
    const drawing = inHand(jobOf(CARDS)).blocks[1]!;
    const title = wordsIn(drawing.shapes).find(({ words }) => words === 'TURN')!;
    const lowest = Math.min(
      ...wordsIn(drawing.shapes)
        .filter(({ words }) => /over|page/.test(words))
        .map((w) => roomOf(w).bottom),
    );
    expect((roomOf(title).top + lowest) / 2).toBeCloseTo(-drawing.h / 2, -1);
  });
});
