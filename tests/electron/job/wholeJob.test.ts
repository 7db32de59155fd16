// The whole way on real files: art read, laid out, sent, and proved from what was written.
import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument, type PDFPage, rgb } from 'pdf-lib';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { layJob } from '../../../electron/job/layJob.ts';
import { proveJob } from '../../../electron/job/proveJob.ts';
import { type SendJobOptions, type SentJob, sendJob } from '../../../electron/job/sendJob.ts';
import { progressInWords, type SendProgress } from '../../../shared/contract/sendProgress.ts';
import { turnOf, type Work } from '../../../shared/geometry/work.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import { designsOf, type Job, sheetOf } from '../../../shared/job/job.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { formsOf } from '../../../shared/layout/forms.ts';
import type { ProofFinding } from '../../../shared/proof/finding.ts';
import { drawOddCard, type Oddness } from '../../kit/oddArt.ts';
import { cutOut, hold, print, turned, unturned } from '../../kit/paper.ts';

let folder: string;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), 'turnlay-job-'));
});
afterEach(() => rm(folder, { recursive: true }));

const card = (name: string, changes: object = {}) => ({
  name,
  trim: [100, 150],
  bleed: 9,
  quantity: 40,
  front: { file: join(folder, `${name}.pdf`), page: 1 },
  back: { file: join(folder, `${name}.pdf`), page: 2 },
  ...changes,
});

const ofWork = (work: Work) => ({ work: work.style, ...('turn' in work ? { turn: work.turn } : {}) });

async function lay(work: Work, pieces: readonly object[], changes: object = {}): Promise<Job> {
  const brief = readBrief({
    units: 'pt',
    title: 'Odd cards',
    sheet: { size: [340, 440], unprintable: { lead: 12, tail: 18, left: 9, right: 9 } },
    ...ofWork(work),
    gutter: 18,
    marks: true,
    pieces,
    ...changes,
  });
  if (!brief.ok) throw new Error(brief.fault.message);
  const laid = await layJob(brief.value);
  if (!laid.ok) throw new Error(laid.fault.message);
  return laid.value.job;
}

const options = (changes: Partial<SendJobOptions> = {}): SendJobOptions => ({
  to: folder,
  overwrite: false,
  despiteFindings: false,
  pictures: false,
  now: new Date('2026-03-01T10:00:00Z'),
  ...changes,
});

async function send(job: Job, changes: Partial<SendJobOptions> = {}) {
  const sent = await sendJob(job, options(changes));
  if (!sent.ok) throw new Error(sent.fault.message);
  return sent.value;
}

function pathsOf(sent: SentJob): readonly string[] {
  if (sent.is !== 'sent') throw new Error('It was held back');
  return sent.paths;
}

/** What the simulation of paper says of a job: whether every piece reads right on both faces. */
function readsRight(job: Job): boolean {
  const { size } = sheetOf(job.brief);
  const turn = turnOf(job.brief.work);
  const forms = formsOf(job.arrangement, designsOf(job.brief), job.brief.work, size);
  const faces = (side: 1 | 2) =>
    forms
      .filter((f) => f.sides.includes(side))
      .flatMap((f) => f.placements.map((p) => ({ art: `${p.piece} ${p.face}`, trim: p.trim, head: p.head })));
  const ink = [
    ...print(faces(1), unturned),
    ...(turn === undefined ? [] : print(faces(2), turned(turn, size.w, size.h))),
  ];
  return job.arrangement.every((p) => {
    const piece = job.brief.pieces.find((d) => d.name === p.piece)!;
    const held = hold(cutOut(ink, p.trim), p.head);
    const behind = piece.turned === 'head-to-head' ? held.turnedLikeAPage : held.turnedLikeACalendar;
    return Object.values(held.front)[0] === 'up' && (turn === undefined || Object.values(behind)[0] === 'up');
  });
}

const ODD: readonly Oddness[] = [
  { rotate: 0, userUnit: 1, origin: [-30, 17] },
  { rotate: 90, userUnit: 2, origin: [0, 0] },
  { rotate: 180, userUnit: 1, origin: [12.5, -40] },
  { rotate: 270, userUnit: 0.5, origin: [100, 100] },
];
const CASES = WORKS.flatMap((work, w) =>
  (['head-to-head', 'head-to-toe'] as const).flatMap((reader, r) =>
    (['upright', 'on-its-side'] as const).map((lies, l) => ({
      work,
      reader,
      lies,
      odd: ODD[(w + r * 2 + l) % ODD.length]!,
    })),
  ),
);

describe('every style, turn, reader’s turn and lie', () => {
  it.each(
    CASES.map(
      (c) =>
        [`${c.work.style} ${turnOf(c.work) ?? ''} ${c.reader} ${c.lies}, Rotate ${c.odd.rotate}`, c] as const,
    ),
  )('is right in the simulation and in the proof: %s', async (_name, { work, reader, lies, odd }) => {
    await writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 100, h: 150 }, 9, odd));
    const job = await lay(work, [card('Menu', { turned: reader, lies })], {
      sheet: { size: lies === 'upright' ? [280, 420] : [420, 300] },
    });
    expect(job.arrangement.length).toBeGreaterThanOrEqual(2);
    expect(readsRight(job)).toBe(true);
    const sent = await send(job);
    expect(sent.proof.findings).toEqual([]);
    expect(sent.proof.checked).toBe(job.arrangement.length * (work.style === 'simplex' ? 1 : 2));
  });

  it('is right with several designs of different sizes', async () => {
    await writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 100, h: 150 }, 9, ODD[1]));
    await writeFile(join(folder, 'Tag.pdf'), await drawOddCard('Tag', { w: 70, h: 110 }, 9, ODD[3]));
    const pieces = [card('Menu', { turned: 'head-to-toe' }), card('Tag', { trim: [70, 110], quantity: 60 })];
    for (const work of WORKS.slice(1)) {
      const job = await lay(work, pieces, {
        sheet: { size: [500, 560] },
        title: `Odd cards ${work.style} ${turnOf(work)}`,
      });
      expect(new Set(job.arrangement.map((p) => p.piece))).toEqual(new Set(['Menu', 'Tag']));
      expect(readsRight(job)).toBe(true);
      expect((await send(job)).proof.findings).toEqual([]);
    }
  });

  it.each([0, 5.67])(
    'is right where bleeds have only some of their room, with a gutter of %d pt',
    async (gutter) => {
      await writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 90, h: 50 }, 9, ODD[0]));
      const layouts: Job[] = [];
      for (const work of [
        { style: 'work-and-back', turn: 'end-to-end' },
        { style: 'work-and-turn' },
      ] as const) {
        const job = await lay(work, [card('Menu', { trim: [90, 50] })], {
          sheet: { size: [380, 450] },
          gutter,
          title: `Odd cards ${work.style} ${gutter}`,
        });
        expect((await send(job)).proof.findings).toEqual([]);
        layouts.push(job);
      }
      // Cards that lie both ways do not stand in rows.
      const ways = layouts.map((job) => new Set(job.arrangement.map((p) => p.head % 180)).size);
      expect(ways).toContain(2);
    },
  );

  it('brings a page whose head is not up upright when the brief says how far to turn it', async () => {
    await writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 150, h: 100 }, 9));
    const file = join(folder, 'Menu.pdf');
    const piece = card('Menu', { front: { file, page: 1, rotate: 90 }, back: { file, page: 2, rotate: 90 } });
    const job = await lay({ style: 'work-and-turn' }, [piece]);
    expect((await send(job)).proof.findings).toEqual([]);
  });
});

describe('what is sent', () => {
  beforeEach(async () =>
    writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 100, h: 150 }, 9)),
  );

  it('is one file for one form, two for two, and one of two pages for a printer that turns the sheet', async () => {
    const names = async (work: Work) =>
      (await send(await lay(work, [card('Menu')]))).sides.map((s) => [s.side, s.name, s.page]);
    expect(await names({ style: 'work-and-turn' })).toEqual([
      [1, 'odd-cards_form-1_both-sides_13-sheets.pdf', 1],
      [2, 'odd-cards_form-1_both-sides_13-sheets.pdf', 1],
    ]);
    expect(await names({ style: 'work-and-back', turn: 'side-to-side' })).toEqual([
      [1, 'odd-cards_form-1_side-1_11-sheets.pdf', 1],
      [2, 'odd-cards_form-2_side-2_11-sheets.pdf', 1],
    ]);
    expect(await names({ style: 'perfecting', turn: 'end-to-end' })).toEqual([
      [1, 'odd-cards_form-1-2_both-sides_11-sheets.pdf', 1],
      [2, 'odd-cards_form-1-2_both-sides_11-sheets.pdf', 2],
    ]);
  });

  it('has the size of the sheet, lead edge up, and is proved again from the folder', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')]);
    const paths = pathsOf(await send(job));
    const page = (await PDFDocument.load(await readFile(paths[0]!))).getPage(0);
    expect(page.getSize()).toEqual({ width: 340, height: 440 });
    const proved = await proveJob(job, folder, {});
    expect(proved.ok && proved.value.proof.findings).toEqual([]);
  });

  it('is found again by a name that holds the day, the latest of several', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')], { fileNames: '{job}-{date}.pdf' });
    await send(job);
    await send(job, { now: new Date('2026-03-02T10:00:00Z') });
    const proved = await proveJob(job, folder, {});
    expect(proved.ok && proved.value.sides[0]?.name).toBe('odd-cards-2026-03-02.pdf');
  });

  it('is refused as missing where it was never sent', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')]);
    const proved = await proveJob(job, folder, {});
    expect(!proved.ok && proved.fault.code).toBe('sheet-missing');
    const dated = await lay({ style: 'work-and-turn' }, [card('Menu')], { fileNames: '{date}.pdf' });
    const nowhere = await proveJob(dated, join(folder, 'nowhere'), {});
    expect(!nowhere.ok && nowhere.fault.code).toBe('sheet-missing');
  });

  it('is refused when the art has changed since, and nothing is written', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')]);
    await writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Other', { w: 100, h: 150 }, 9));
    const sent = await sendJob(job, options());
    expect(!sent.ok && sent.fault.code).toBe('art-changed');
    const proved = await proveJob(job, folder, {});
    expect(!proved.ok && proved.fault.code).toBe('art-changed');
    expect(await readdir(folder)).toEqual(['Menu.pdf']);
  });

  it('is refused for a face that the job was laid out without', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')]);
    const sent = await sendJob({ ...job, art: job.art.slice(0, 1) }, options());
    expect(!sent.ok && sent.fault.message).toBe('The job was laid out without Menu.pdf.');
  });

  it('tells how far it is', async () => {
    const heard: SendProgress[] = [];
    await send(await lay({ style: 'work-and-turn' }, [card('Menu')]), {
      onProgress: (progress) => heard.push(progress),
    });
    expect(heard.map(progressInWords)).toEqual([
      'Looking through the art',
      'Writing the sheets',
      'Writing into the folder',
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((done) => `Proving what was written: ${done} of 8 faces`),
    ]);
  });
});

describe('a sheet spoiled on purpose', () => {
  beforeEach(async () =>
    writeFile(join(folder, 'Menu.pdf'), await drawOddCard('Menu', { w: 100, h: 150 }, 9)),
  );

  it('is held back by the proof, which names the position, unless the person insists', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')]);
    const spoiled: Job = {
      ...job,
      arrangement: job.arrangement.map((p, i) => (i === 1 ? { ...p, head: 180 } : p)),
    };
    const held = await send(spoiled);
    expect(held.is).toBe('held');
    expect(held.proof.findings.map((f) => f.kind)).toContain('upside-down');
    expect(await readdir(folder)).toEqual(['Menu.pdf']);
    const insisted = await send(spoiled, { despiteFindings: true });
    expect(insisted.is).toBe('sent');
    expect(insisted.proof.findings).toEqual(held.proof.findings);
    expect(await readdir(folder)).toHaveLength(2);
  });

  it('is caught in the folder: side 2 where side 1 should be', async () => {
    const job = await lay({ style: 'work-and-back', turn: 'side-to-side' }, [
      card('Menu', { lies: 'upright' }),
    ]);
    const paths = pathsOf(await send(job));
    const [first, second] = await Promise.all(paths.map((path) => readFile(path)));
    await writeFile(paths[0]!, second!);
    await writeFile(paths[1]!, first!);
    const proved = await proveJob(job, folder, {});
    const findings = proved.ok ? proved.value.proof.findings : [];
    const faces = findings.filter((f) => 'position' in f);
    expect(faces).toHaveLength(job.arrangement.length * 2);
    expect(new Set(faces.map((f) => f.kind))).toEqual(new Set(['wrong-face']));
    // The bar and the slug of the other side are not those of this one.
    const waste = findings.filter((f) => !('position' in f)).map((f) => f.kind);
    expect(new Set(waste)).toEqual(new Set(['mark-missing', 'stray-ink']));
  });

  it('is caught by its waste: a crop mark moved by 3 mm, and ink where none belongs', async () => {
    const job = await lay({ style: 'work-and-turn' }, [card('Menu')], { sheet: { size: [500, 600] } });
    const paths = pathsOf(await send(job));
    const first = job.arrangement.reduce((a, b) => (b.trim.x + b.trim.y < a.trim.x + a.trim.y ? b : a));
    const MM = 72 / 25.4;
    // Outside the bleed, 9 pt from the trim, down to 2 mm and 5 mm more: the crop mark below the lower left corner.
    const white = { x: first.trim.x - 1, y: first.trim.y - 40, width: 2, height: 30, color: rgb(1, 1, 1) };
    const spoil = async (draw: (page: PDFPage) => void): Promise<readonly ProofFinding[]> => {
      const clean = await readFile(paths[0]!);
      const document = await PDFDocument.load(clean);
      draw(document.getPage(0));
      await writeFile(paths[0]!, await document.save());
      const proved = await proveJob(job, folder, {});
      await writeFile(paths[0]!, clean);
      if (!proved.ok) throw new Error(proved.fault.message);
      return proved.value.proof.findings.filter((f) => f.side === 1);
    };
    const moved = await spoil((page) => {
      page.drawRectangle(white);
      const x = first.trim.x + 3 * MM;
      page.drawLine({
        start: { x, y: first.trim.y - 24 },
        end: { x, y: first.trim.y - 11 },
        thickness: 0.25,
      });
    });
    expect(moved.map((f) => f.kind).toSorted()).toEqual(['mark-missing', 'stray-ink']);
    const dot = await spoil((page) => page.drawCircle({ x: 2.5 * MM, y: 600 - 2.5 * MM, size: 0.5 * MM }));
    expect(dot.map((f) => f.kind)).toEqual(['stray-ink']);
    expect(dot[0]?.message).toMatch(/2\.[456] mm from the left edge and 209\.[0-3] mm from the tail/);
  });
});
