// The papers of a job as files in memory: run sheet, dummy, cutting order, open job ticket and tables.
import { basename } from 'node:path';
import { ok, type Result } from '../../shared/fault/result.ts';
import { hasOneForm } from '../../shared/geometry/work.ts';
import { nameFiles } from '../../shared/job/fileNames.ts';
import { facesOf, type Job } from '../../shared/job/job.ts';
import { nameJobFiles } from '../../shared/job/nameJobFiles.ts';
import { type DocumentInput, writeDocument } from '../../shared/pdf/document/writeDocument.ts';
import { cuttingOf } from '../../shared/runSheet/cuttingOf.ts';
import { setCuttingPages } from '../../shared/runSheet/cuttingPages.ts';
import { setDummyPages } from '../../shared/runSheet/dummyPages.ts';
import { type Pages, setRunSheet } from '../../shared/runSheet/runSheetPages.ts';
import type { Stock } from '../../shared/runSheet/stock.ts';
import { type PageSizes, pageKey, unplacedFace } from '../../shared/ticket/placeContent.ts';
import { writeCuts, writePlacements } from '../../shared/ticket/tables.ts';
import { writeXjdf } from '../../shared/ticket/xjdf.ts';
import { VERSION } from '../about/version.ts';
import { openArtFile } from '../art/openArtFile.ts';
import { fingerprintOf } from '../job/fingerprint.ts';
import { officeFaces } from './officeFaces.ts';

/** What a file of a ticket is. */
export type TicketPart = 'run-sheet' | 'dummy' | 'cutting-order' | 'ticket' | 'placements' | 'cuts';

/** How the name of each part ends, after the title of the job. */
const ENDINGS: Readonly<Record<TicketPart, string>> = {
  'run-sheet': '_run-sheet.pdf',
  dummy: '_dummy.pdf',
  'cutting-order': '_cutting-order.pdf',
  ticket: '.xjdf',
  placements: '_placements.csv',
  cuts: '_cuts.csv',
};

export interface TicketAsk {
  /** The faces name whole paths. */
  readonly job: Job;
  /** The job's own file, if it has one. */
  readonly file: string | undefined;
  readonly now: Date;
  readonly stock?: Stock | undefined;
  /** How the ticket calls a file of art, as a URL. */
  readonly urlOf: (file: string) => string;
}

export interface MadeTicket {
  readonly files: readonly { readonly part: TicketPart; readonly name: string; readonly bytes: Uint8Array }[];
  /** Files that cannot be made for this job. */
  readonly left: readonly string[];
  /** What the person should know, in words. */
  readonly notices: readonly string[];
}

/**
 * Makes every paper of a job. What cannot be cut by a guillotine has no cutting order, and art that is turned and cannot
 * be opened no open ticket; the notices say so. Refuses a pattern of file names that cannot be used (`name-unusable`).
 */
export async function makeTicket(ask: TicketAsk): Promise<Result<MadeTicket>> {
  const { job, file, now, stock } = ask;
  const created = `${now.toISOString().slice(0, 19)}Z`;
  const day = created.slice(0, 10);
  const sent = nameJobFiles(job, day);
  if (!sent.ok) return sent;
  const faces = await officeFaces();
  const measures = { plain: faces.plain.measure, strong: faces.strong.measure };
  const name = { file: file === undefined ? undefined : basename(file), fingerprint: fingerprintOf(job) };
  const bytes = new Map<TicketPart, Uint8Array>();
  const notices: string[] = [...unlikeSides(job, stock)];
  const setPdf = async (part: TicketPart, pages: Pages & Pick<DocumentInput, 'duplex'>) => {
    const written = await writeDocument({ ...pages, title: job.brief.title, created, faces });
    bytes.set(part, written.bytes);
    notices.push(...written.notices);
  };
  const setText = (part: TicketPart, text: string) => bytes.set(part, new TextEncoder().encode(text));

  await setPdf('run-sheet', setRunSheet({ job, sides: sent.value.sides, day, name, measures, stock }));
  await setPdf('dummy', setDummyPages(job, day, measures));
  setText(
    'placements',
    writePlacements(job, (art) => basename(art)),
  );
  const order = cuttingOf(job, stock);
  if (order.ok) {
    await setPdf('cutting-order', setCuttingPages(job, order.value, day, measures));
    setText('cuts', writeCuts(order.value, job.brief.units));
  } else {
    notices.push(`There is no cutting order. ${order.fault.message} ${order.fault.remedy}`);
  }
  const sizes = await sizesOfTurned(job);
  const unplaced = sizes.ok ? unplacedFace(job, sizes.value) : undefined;
  if (!sizes.ok) {
    notices.push(`There is no open job ticket. ${sizes.fault.message} ${sizes.fault.remedy}`);
  } else if (unplaced !== undefined) {
    notices.push(
      `There is no open job ticket. Nothing is known of the art for ${unplaced}. Lay the job out again.`,
    );
  } else {
    const { fingerprint } = name;
    const { urlOf } = ask;
    const input = { job, fingerprint, created, version: VERSION, urlOf, sizes: sizes.value, stock };
    setText('ticket', writeXjdf(input));
  }
  const named = namesFor(job.brief.title);
  const parts = Object.keys(ENDINGS) as readonly TicketPart[];
  return ok({
    files: parts.flatMap((part) => {
      const made = bytes.get(part);
      return made === undefined ? [] : [{ part, name: named(part), bytes: made }];
    }),
    left: parts.filter((part) => !bytes.has(part)).map(named),
    notices: [...new Set(notices)],
  });
}

/** What is wrong with printing one form on both sides of this paper. */
function unlikeSides({ brief }: Job, stock: Stock | undefined): readonly string[] {
  if (stock?.sidesAlike !== false || !hasOneForm(brief.work)) return [];
  return [
    `The two sides of ${stock.name ?? 'this paper'} are not alike, and ${brief.work.style} prints fronts and backs on either of them. Take another paper or work-and-back.`,
  ];
}

/** The names of the files of a job, made from its title as those of its sheets are. */
function namesFor(title: string): (part: TicketPart) => string {
  const file = { job: title, forms: [1], sides: [1 as const], quantity: 0, sheets: 0, date: '' };
  const named = nameFiles('{job}', [file]);
  if (!named.ok) throw new Error('A title alone is always a name');
  const [first = ''] = named.value;
  const stem = first.replace(/\.pdf$/, '');
  return (part) => `${stem}${ENDINGS[part]}`;
}

/** The sizes of the pages that the brief turns: only their files are opened. */
async function sizesOfTurned(job: Job): Promise<Result<PageSizes>> {
  const sizes = new Map<string, { readonly w: number; readonly h: number }>();
  for (const { face } of facesOf(job.brief)) {
    if (face.rotate === 0) continue;
    const opened = await openArtFile(face.file, undefined, { pages: [face.page] });
    if (!opened.ok) return opened;
    const page = opened.value.art.page(face.page);
    if (!page.ok) return page;
    sizes.set(pageKey(face.file, face.page), page.value.size);
  }
  return ok(sizes);
}
