// Packing slips: made for a delivery that stands in the log, and written beside the job.
import { basename, dirname, join } from 'node:path';
import type { FileEntry } from '../../shared/contract/handles.ts';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { type Job, trimOf } from '../../shared/job/job.ts';
import { setPackingSlip } from '../../shared/packingSlip/setPackingSlip.ts';
import { writeDocument } from '../../shared/pdf/document/writeDocument.ts';
import type { PrintRun } from '../../shared/run/run.ts';
import { slipOf } from '../../shared/run/slip.ts';
import { showSize } from '../../shared/units/show.ts';
import { JOB_ENDING } from '../disk/endings.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { saveWhole } from '../disk/saveWhole.ts';
import { officeFaces } from '../ticket/officeFaces.ts';
import type { Entries } from './entries.ts';

/**
 * Writes the slip of one delivery beside the job's file; one that was made before of the same delivery is replaced.
 *
 * @param path - of the job's file
 * @param delivery - the number of its entry in the log
 */
export async function writePackingSlip(
  entries: Entries,
  path: string,
  job: Job,
  run: PrintRun,
  delivery: number,
): Promise<Result<FileEntry>> {
  const slip = slipOf(run, delivery);
  if (!slip.ok) return slip;
  const { units, pieces } = job.brief;
  const faces = await officeFaces();
  const { paper, pages } = setPackingSlip({
    slip: slip.value,
    trims: Object.fromEntries(pieces.map((p) => [p.name, showSize(trimOf(p), units)])),
    units,
    day: dayOf(slip.value.at),
    measures: { plain: faces.plain.measure, strong: faces.strong.measure },
  });
  const title = `${slip.value.title}: packing slip ${slip.value.number}`;
  const { bytes } = await writeDocument({ title, created: slip.value.at, paper, pages, faces });
  const to = join(dirname(path), `${basename(path, JOB_ENDING)} packing slip ${slip.value.number}.pdf`);
  try {
    await saveWhole(to, bytes, true);
  } catch (error) {
    return refuse(writingFault(error, to));
  }
  return ok(entries.file(to));
}

/** The day here, where it may be another than in UTC: `2026-03-01`. */
function dayOf(at: string): string {
  const day = new Date(at);
  const two = (n: number) => String(n).padStart(2, '0');
  return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
}
