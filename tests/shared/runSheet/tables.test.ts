// The tables of a run sheet: files, designs, and the room to write in; each cell in its column, each figure from the order.
import { describe, expect, it } from 'vitest';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import type { Job } from '../../../shared/job/job.ts';
import type { PageBlock } from '../../../shared/pdf/document/block.ts';
import { setDesigns, setFiles } from '../../../shared/runSheet/listings.ts';
import { countTable, readingTable } from '../../../shared/runSheet/roomToWrite.ts';
import { edgeAt } from '../../kit/paperInPasses.ts';
import { MEASURES, runSheetInput } from '../../kit/setPapers.ts';
import { extentOf, liesIn, pathsIn, roomOf, textIn, wordsIn } from '../../kit/shapes.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';

const WIDTH = 531;
const kind = (name: string): Job => KINDS.find(([of]) => of.startsWith(name))![1];
const [CARD] = CARDS.pieces;

/** What stands in the cells of a ruled table, row by row; the columns meet and fill the width. */
function cellsOf(block: PageBlock): readonly (readonly string[])[] {
  const frames = pathsIn(block.shapes)
    .map(extentOf)
    .filter(({ bottom, top }) => top > bottom);
  const rows = new Map<number, (typeof frames)[number][]>();
  for (const frame of frames) {
    const top = Math.round(frame.top * 1000);
    rows.set(top, [...(rows.get(top) ?? []), frame]);
  }
  return [...rows.values()].map((row) => {
    expect(row[0]!.left).toBeCloseTo(0);
    expect(row.at(-1)!.right).toBeCloseTo(WIDTH);
    return row.map((frame, i) => {
      if (i > 0) expect(frame.left).toBeCloseTo(row[i - 1]!.right);
      return textIn(wordsIn(block.shapes).filter((words) => liesIn(roomOf(words), frame, 3)));
    });
  });
}

const stacked = (blocks: readonly PageBlock[]) => blocks.flatMap((block) => cellsOf(block));

describe('the files', () => {
  const told = (job: Job) => {
    const [heading, table, ...notes] = setFiles(runSheetInput(job), WIDTH);
    return {
      heading: textIn(heading!.shapes),
      rows: cellsOf(table!),
      note: notes.map((n) => textIn(n.shapes)),
    };
  };

  it('are told for each side, with the page', () => {
    const { heading, rows, note } = told(jobOf(CARDS, { style: 'perfecting', turn: 'side-to-side' }));
    expect(heading).toBe('Files');
    expect(rows.map(([side, , page]) => [side, page])).toEqual([
      ['Side 1', 'page 1'],
      ['Side 2', 'page 2'],
    ]);
    expect(new Set(rows.map(([, name]) => name)).size).toBe(1);
    expect(note).toEqual([]);
    const two = told(jobOf(CARDS, { style: 'work-and-back', turn: 'side-to-side' })).rows;
    expect(two.map(([side, , page]) => [side, page])).toEqual([
      ['Side 1', 'page 1'],
      ['Side 2', 'page 1'],
    ]);
    expect(new Set(two.map(([, name]) => name)).size).toBe(2);
  });

  it('are told once where one prints both sides, with what to do with it', () => {
    const job = jobOf(CARDS);
    const { rows, note } = told(job);
    expect(rows).toEqual([['Both sides', runSheetInput(job).sides[0]!.name, 'page 1']]);
    expect(note).toEqual(['Print this file once on each side of the sheet.']);
  });
});

describe('the designs', () => {
  it('are not told where there is one', () => {
    expect(setDesigns(runSheetInput(jobOf(CARDS)), WIDTH)).toEqual([]);
  });

  it('are told with their letter, size, order, and what the sheets give', () => {
    const job = kind('menus');
    const [heading, ...rows] = setDesigns(runSheetInput(job), WIDTH);
    expect(textIn(heading!.shapes)).toBe('What it prints');
    // 48 menus of 3.5 x 7.5 in and 96 tags of 2 x 3.5 in, on as many sheets as the scarcer of them needs.
    const onSheet = (name: string) => job.arrangement.filter(({ piece }) => piece === name).length;
    const sheets = Math.max(Math.ceil(48 / onSheet('Menu')), Math.ceil(96 / onSheet('Place tag')));
    const gives = (name: string) => [`${onSheet(name)}`, `${sheets * onSheet(name)}`];
    expect(stacked(rows)).toEqual([
      ['', 'Piece', 'Trim', 'Ordered', 'A sheet', 'Gives'],
      ['A', 'Menu', '3.5 × 7.5 in', '48', ...gives('Menu')],
      ['B', 'Place tag', '2 × 3.5 in', '96', ...gives('Place tag')],
    ]);
    const bold = wordsIn(rows[0]!.shapes).every(({ weight }) => weight === 'strong');
    expect([bold, wordsIn(rows[1]!.shapes).some(({ weight }) => weight === 'strong')]).toEqual([true, false]);
  });

  it('that found no place give nothing', () => {
    const job = kind('menus');
    const arrangement = job.arrangement.filter(({ piece }) => piece === 'Menu');
    const rows = stacked(setDesigns(runSheetInput({ ...job, arrangement }), WIDTH).slice(1));
    expect(rows[2]!.slice(3)).toEqual(['96', '0', '0']);
  });

  it('are cut short where a name has no end', () => {
    const pieces = [
      { ...CARD, name: 'Orchard\nin autumn' },
      { ...CARD, name: 'N'.repeat(300), quantity: 9 },
    ];
    const rows = stacked(setDesigns(runSheetInput(jobOf({ ...CARDS, pieces })), WIDTH).slice(1));
    expect(rows[1]![1]).toBe('Orchard in autumn');
    const [name] = [rows[2]![1]!.replaceAll(' ', '')];
    expect(name).toMatch(/^N+…$/);
    expect(name!.length).toBeLessThanOrEqual(90);
  });
});

describe('the room to write in', () => {
  it.each(WORKS)('has a line for each pass that a hand feeds, and one for the knife: %j', (work) => {
    const rows = cellsOf(countTable(jobOf(CARDS, work), WIDTH, MEASURES));
    const byHand = !['simplex', 'perfecting'].includes(work.style);
    expect(rows[0]).toEqual(['', 'Taken', 'Good', 'Spoiled', 'Why spoiled', 'Initials']);
    const named = byHand ? ['Pass 1', 'Pass 2', 'Trimmed'] : ['Printed', 'Trimmed'];
    expect(rows.slice(1)).toEqual(named.map((name) => [name, '', '', '', '', '']));
  });

  it('has one line where nothing has a back, whatever the way of working', () => {
    const job = jobOf({ ...CARDS, work: 'work-and-back', pieces: [{ ...CARD, back: undefined }] });
    expect(cellsOf(countTable(job, WIDTH, MEASURES)).map(([name]) => name)).toEqual([
      '',
      'Printed',
      'Trimmed',
    ]);
  });

  it('is high enough for a hand, 20 pt and more', () => {
    const rows = pathsIn(countTable(jobOf(CARDS), WIDTH, MEASURES).shapes).map(extentOf);
    for (const { top, bottom } of rows.slice(6)) expect(top - bottom).toBeGreaterThan(19.99);
    expect(rows[0]!.top - rows[0]!.bottom).toBeLessThan(20);
  });

  it.each(WORKS)('asks for the margins that the turn lays upon each other: %j', (work) => {
    const job = jobOf(CARDS, work);
    const blocks = readingTable(job, WIDTH, MEASURES);
    const lines = ['Proof sheet', 'Middle', 'Last'].map((name) => [name, '', '', '', '', '']);
    if (work.style === 'simplex') {
      expect(cellsOf(blocks[0]!)).toEqual([
        ['Sheet', 'Ruler reads', 'Lead margin', 'Left margin', 'Remarks', 'Initials'],
        ...lines,
      ]);
      expect(blocks).toHaveLength(1);
      return;
    }
    const turn = 'turn' in work ? work.turn : work.style === 'work-and-turn' ? 'side-to-side' : 'end-to-end';
    const size = { w: 320, h: 450 };
    const upon = (['left', 'lead'] as const).find((edge) => edgeAt(turn, size, edge) !== edge)!;
    expect(cellsOf(blocks[1]!)).toEqual([
      ['Sheet', 'Across', 'Along', `Margin ${upon}`, `Margin ${edgeAt(turn, size, upon)}`, 'Initials'],
      ...lines,
    ]);
    // Signs as in the frame of a side: x to the right, y towards the lead edge.
    expect(textIn(blocks[0]!.shapes)).toBe(
      'How far side 2 lies from side 1 at a crop mark, in mm: to the right and towards the lead edge is more (+).',
    );
  });
});
