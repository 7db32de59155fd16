// One case of the sending benchmark in a process of its own, so that its peak memory is its own. Prints one JSON line.
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { openJobArt } from '../../electron/job/jobArt.ts';
import { writeJobSheets } from '../../electron/job/jobSheets.ts';
import { layJob } from '../../electron/job/layJob.ts';
import { proveWritten } from '../../electron/job/proveWritten.ts';
import { Renderer } from '../../electron/proof/renderer.ts';
import type { Job } from '../../shared/job/job.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { readBrief } from '../../shared/job/readBrief.ts';
import { WORKING_DPI } from '../../shared/proof/grid.ts';
import { DRAWN_FINER } from '../../shared/proof/prove.ts';
import { MAX_SIDE_PIXELS } from '../../shared/proof/sideDrawing.ts';
import { BENCH_CARD, drawBenchArt } from './benchArt.ts';

/** What is measured: `faces` different pages of `strips` images, placed `up` times in all. */
const [faces = 1, up = 1, kilobytes = 2000, strips = 1] = process.argv.slice(2).map(Number);

/** A proof and a drawing are slow enough to be timed in few runs; the first warms the renderer up. */
const RUNS_OF_PROOF = 3;

const MARGIN = 30;
const { trim, bleed } = BENCH_CARD;
const columns = [20, 6, 4, 1].find((n) => up % n === 0) ?? up;
const rows = up / columns;
const cell = { w: trim.w + 2 * bleed, h: trim.h + 2 * bleed };
const sheet = [columns * cell.w + 2 * MARGIN, rows * cell.h + 2 * MARGIN];

const folder = await mkdtemp(join(tmpdir(), 'turnlay-bench-'));
try {
  console.log(JSON.stringify(await measure()));
} finally {
  await rm(folder, { recursive: true });
}

async function measure(): Promise<object> {
  const path = join(folder, 'art.pdf');
  const art = await drawBenchArt(faces, kilobytes, strips);
  await writeFile(path, art);
  const job = await layOut(path);

  const loadAndSave = await time(async () => (await PDFDocument.load(art, { updateMetadata: false })).save());
  const opened = await openJobArt(job.brief);
  if (!opened.ok) throw new Error(opened.fault.message);
  const opening = await time(() => openJobArt(job.brief));
  let bytes = 0;
  const writing = await time(async () => {
    const sheets = await writeJobSheets(job, opened.value, new Date(0));
    if (!sheets.ok) throw new Error(sheets.fault.message);
    bytes = sheets.value.files.reduce((sum, f) => sum + f.bytes.length, 0);
    return sheets.value;
  });
  const sheets = await writeJobSheets(job, opened.value, new Date(0));
  if (!sheets.ok) throw new Error(sheets.fault.message);
  const peakOfSending = peak();
  const files = new Map(sheets.value.files.map((f) => [f.name, f.bytes]));
  const side = files.get(sheets.value.sides[0]?.name ?? '');
  if (side === undefined) throw new Error('Nothing was written for side 1');
  const drawing = await time(() => drawOnce(side, art), RUNS_OF_PROOF);
  const proving = await time(
    () => proveWritten(job, opened.value, sheets.value.sides, files, {}),
    RUNS_OF_PROOF,
  );
  const layout = await time(async () => layOutBrief(job.brief));
  return {
    faces,
    up,
    art: art.length,
    bytes,
    loadAndSave,
    opening,
    writing,
    drawing,
    proving,
    layout,
    peakOfSending,
    peak: peak(),
  };
}

/** One drawing of the sheet and of each page of its art, as fine as the proof's, by the proof's renderer. */
async function drawOnce(side: Uint8Array, art: Uint8Array): Promise<void> {
  const renderer = await Renderer.start();
  for (const bytes of [side, art]) {
    const document = renderer.open(bytes);
    if (typeof document === 'string') throw new Error(`The renderer finds it ${document}`);
    for (let n = 1; n <= document.pages; n++) {
      const page = document.page(n);
      if (page === undefined) throw new Error(`Page ${n} cannot be read`);
      const { w, h } = page.source.size;
      const scale = Math.min((WORKING_DPI * DRAWN_FINER) / 72, Math.sqrt(MAX_SIDE_PIXELS / (w * h)));
      const matrix = { a: scale, b: 0, c: 0, d: -scale, e: 0, f: h * scale };
      page.source.rasterise(matrix, Math.ceil(w * scale), Math.ceil(h * scale));
    }
  }
  renderer.close();
}

async function layOut(path: string): Promise<Job> {
  const pieces = Array.from({ length: faces }, (_n, i) => ({
    name: `Card ${i + 1}`,
    trim: [trim.w, trim.h],
    bleed,
    lies: 'upright',
    quantity: Math.round((100 * up) / faces),
    front: { file: path, page: i + 1 },
  }));
  const edge = MARGIN - 1;
  const written = {
    units: 'pt',
    title: 'Benchmark',
    sheet: { size: sheet, unprintable: { lead: edge, tail: edge, left: edge, right: edge } },
    work: 'simplex',
    gutter: 2 * bleed,
    pieces,
  };
  const brief = readBrief(written);
  if (!brief.ok) throw new Error(brief.fault.message);
  const laid = await layJob(brief.value);
  if (!laid.ok) throw new Error(laid.fault.message);
  if (laid.value.job.arrangement.length !== up)
    throw new Error(`${laid.value.job.arrangement.length} up instead of ${up}`);
  return laid.value.job;
}

/** The median time of a few runs, in ms. */
async function time(run: () => Promise<unknown>, runs = 5): Promise<number> {
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const start = performance.now();
    await run();
    times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)] ?? 0;
}

/** The most memory this process has held, in MB. */
function peak(): number {
  return process.resourceUsage().maxRSS / 1024;
}
