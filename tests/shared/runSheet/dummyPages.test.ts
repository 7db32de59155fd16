// The dummy to hold: both of its sides meet when the paper is turned as the sheet is.
import { describe, expect, it } from 'vitest';
import { turnOf } from '../../../shared/geometry/work.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { setDummyPages } from '../../../shared/runSheet/dummyPages.ts';
import { onPaper } from '../../kit/paperInPasses.ts';
import { type ReadPage, readPages } from '../../kit/readPages.ts';
import { DAY, MEASURES, pdfOf } from '../../kit/setPapers.ts';
import { extentOf, liesIn, pathsIn, roomOf, textIn, wordsIn } from '../../kit/shapes.ts';
import { KINDS } from '../../kit/ticketJobs.ts';

const dummyOf = (job: Job) => setDummyPages(job, DAY, MEASURES);

function drawnSheet({ paths }: ReadPage, job: Job) {
  const { w, h } = sheetOf(job.brief).size;
  const alike = paths.filter((b) => b.h > 0 && Math.abs(b.w / b.h - w / h) < 0.002);
  return alike.toSorted((a, b) => b.w - a.w)[0]!;
}

describe('the dummy', () => {
  it.each(KINDS)(
    'has the sheet in the middle of each page, so that front and back meet: %s',
    async (_n, job) => {
      const pages = await readPages(await pdfOf(dummyOf(job)));
      expect(pages).toHaveLength(turnOf(job.brief.work) === undefined ? 1 : 2);
      for (const page of pages) {
        const { x, y, w, h } = drawnSheet(page, job);
        expect(x + w / 2).toBeCloseTo(page.size.w / 2, 2);
        expect(y + h / 2).toBeCloseTo(page.size.h / 2, 2);
        for (const { at } of page.words) {
          expect(at.x > 20 && at.x < page.size.w - 20 && at.y > 20 && at.y < page.size.h - 20).toBe(true);
        }
      }
    },
  );

  it('lies as the sheet lies and asks the printer for the same turn', () => {
    const of = (name: string) => {
      const { paper, duplex } = dummyOf(KINDS.find(([kind]) => kind.startsWith(name))![1]);
      return [paper.w < paper.h ? 'upright' : 'lying', duplex];
    };
    expect(of('invitations')).toEqual(['upright', 'DuplexFlipLongEdge']);
    expect(of('menus')).toEqual(['upright', 'DuplexFlipShortEdge']);
    expect(of('a wide sheet')).toEqual(['lying', 'DuplexFlipShortEdge']);
    expect(of('cards on one side')).toEqual(['upright', 'Simplex']);
  });

  it('says how it is to be printed and turned', async () => {
    const [page] = await readPages(await pdfOf(dummyOf(KINDS[1]![1])));
    expect(page!.text).toContain('Print it on both sides, flipped on the short edge');
    expect(page!.text).toContain('turn it end-to-end as the sheet is turned.');
  });

  it.each(KINDS)(
    'meets side 1 with side 2 when its paper is flipped on the edge it names: %s',
    (_name, job) => {
      const { paper, pages, duplex } = dummyOf(job);
      const turn = turnOf(job.brief.work);
      if (turn === undefined) {
        expect([duplex, pages.length]).toEqual(['Simplex', 1]);
        expect(textIn(pages[0]!)).toContain('The sheet in small.');
        expect(textIn(pages[0]!)).not.toContain('Print it on both sides');
        return;
      }
      // Flipped on the long edge the paper turns about the axis that its long edge runs along.
      const upright = paper.h >= paper.w;
      const flipped = (duplex === 'DuplexFlipLongEdge') === upright ? 'side-to-side' : 'end-to-end';
      expect(flipped).toBe(turn);
      expect(pages).toHaveLength(2);
      const edge = duplex === 'DuplexFlipLongEdge' ? 'long' : 'short';
      for (const shapes of pages) {
        expect(textIn(shapes).replace(/\s+/g, ' ')).toContain(
          `The sheet in small. Print it on both sides, flipped on the ${edge} edge, or lay two prints back to back; then turn it ${turn} as the sheet is turned.`,
        );
      }
      // What lies on side 2 comes through the paper where side 1 has the same number.
      const number = (page: number, said: string) => {
        const [found] = wordsIn(pages[page]!).filter(
          ({ words, weight }) => weight === 'plain' && words === said,
        );
        return found;
      };
      const [one, two] = [number(0, '1'), number(1, '1')];
      if (one === undefined || two === undefined) return;
      const at = onPaper(turn, paper, two.at.x, two.at.y);
      expect(Math.hypot(at.x - one.at.x, at.y - one.at.y)).toBeLessThan(paper.w / 4);
    },
  );

  it('is as large as the page lets it be, its words clear of the margins and of the drawing', () => {
    for (const [, job] of KINDS) {
      const { paper, pages } = dummyOf(job);
      const { w, h } = sheetOf(job.brief).size;
      for (const [i, shapes] of pages.entries()) {
        const sheet = pathsIn(shapes)
          .map(extentOf)
          .filter((box) => Math.abs((box.right - box.left) / (box.top - box.bottom) - w / h) < 1e-6)
          .toSorted((a, b) => b.right - b.left - (a.right - a.left))[0]!;
        const margins = { left: 32, right: paper.w - 32, bottom: 32, top: paper.h - 32 };
        for (const words of wordsIn(shapes).filter(({ head }) => head === 0)) {
          expect(liesIn(roomOf(words), margins)).toBe(true);
        }
        const head = wordsIn(shapes).filter(({ words }) => words.startsWith('Dummy ·'));
        expect(roomOf(head[0]!).top).toBeCloseTo(paper.h - 32);
        expect(textIn(shapes)).toContain(`${DAY} · page ${i + 1} of ${pages.length}`);
        const note = wordsIn(shapes).filter(({ size, at }) => size === 8.5 && at.y < sheet.bottom);
        expect(Math.min(...note.map((said) => roomOf(said).bottom))).toBeCloseTo(32);
        // Side to side but for guides and pencil, or top to bottom but for what is said above it.
        const beside = sheet.left - 32;
        const above = paper.h - sheet.top;
        expect(beside < 16.5 || above < 32 + 16 + 20 + 15 + 40).toBe(true);
      }
    }
  });

  it('has a pencil line only where hands turn the pile', () => {
    const strokes = (name: string) =>
      pathsIn(dummyOf(KINDS.find(([kind]) => kind.startsWith(name))![1]).pages[0]!)
        .map(extentOf)
        .filter(({ left, right, top, bottom }) => top === bottom && Math.abs(right - left - 10) < 1e-9)
        .length;
    expect(['invitations', 'cards turned by the printer, end', 'cards on one side'].map(strokes)).toEqual([
      3, 0, 0,
    ]);
  });
});
