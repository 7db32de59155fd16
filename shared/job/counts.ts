// How many sheets the job prints, and what each design gets out of them.
import { countSheets, type SheetCount } from '../layout/count.ts';
import type { Job } from './job.ts';

/** The sheets for the job's quantities. A piece that is not on the sheet is counted as none up, and needs no sheets. */
export function countJob(job: Job): SheetCount {
  const designs = job.brief.pieces.map((piece) => ({
    piece: piece.name,
    wanted: piece.quantity,
    perSheet: job.arrangement.filter((p) => p.piece === piece.name).length,
  }));
  const placed = countSheets(
    designs.filter((d) => d.perSheet > 0),
    job.brief.overs,
  );
  return {
    ...placed,
    yields: designs.map(
      (d) => placed.yields.find((y) => y.piece === d.piece) ?? { ...d, fromNeeded: 0, leftOver: -d.wanted },
    ),
  };
}
