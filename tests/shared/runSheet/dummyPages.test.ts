// The dummy to hold: both of its sides meet when the paper is turned as the sheet is.
import { describe, expect, it } from 'vitest';
import { turnOf } from '../../../shared/geometry/work.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import { setDummyPages } from '../../../shared/runSheet/dummyPages.ts';
import { type ReadPage, readPages } from '../../kit/readPages.ts';
import { DAY, MEASURES, pdfOf } from '../../kit/setPapers.ts';
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
});
