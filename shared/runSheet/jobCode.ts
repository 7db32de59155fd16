// The code on a run sheet that says which job it is of: a QR code that a telephone reads and a drawing holds.
import { encode } from 'uqr';
import type { PageBlock } from '../pdf/document/block.ts';
import { boxes } from '../pdf/document/shape.ts';

/** What names a job on paper. */
export interface JobName {
  /** The name of its file, without a folder; none where the job was never saved. */
  readonly file?: string | undefined;
  /** The SHA-256 in hex of what the job says, wherever its art lies. */
  readonly fingerprint: string;
}

/** How much of a fingerprint is written: enough that no two jobs of a studio have the same. */
const FINGERPRINT_FIGURES = 16;

/** A longer name of a file, in letters, is left out: it would make the code too fine to be read. */
const MAX_FILE_LETTERS = 90;

/** What the code holds: a link of the program's own, `turnlay:job?file=supper.turnlay&print=0123456789abcdef`. */
export function linkTo({ file, fingerprint }: JobName): string {
  const called = file === undefined ? '' : encodeURIComponent(file);
  const named = called === '' || called.length > MAX_FILE_LETTERS ? '' : `file=${called}&`;
  return `turnlay:job?${named}print=${fingerprint.slice(0, FINGERPRINT_FIGURES)}`;
}

/** White around the code, in modules. */
const QUIET_ZONE_MODULES = 4;

/**
 * The code of a job as a square of this size, its quiet zone included. A part of it is there to mend what is smudged or
 * creased: level M, or a better one where it costs no room.
 *
 * @source ISO/IEC 18004 (QR code; quiet zone of four modules, levels of error correction), by the library uqr.
 */
export function drawCode(job: JobName, size: number): PageBlock {
  const { data, size: modules } = encode(linkTo(job), { ecc: 'M', border: 0, boostEcc: true });
  const module = size / (modules + 2 * QUIET_ZONE_MODULES);
  const rows = data.flatMap((row, y) =>
    runsOf(row).map(({ from, length }) => ({
      x: (QUIET_ZONE_MODULES + from) * module,
      y: -(QUIET_ZONE_MODULES + y + 1) * module,
      w: length * module,
      h: module,
    })),
  );
  return { w: size, h: size, shapes: [boxes(rows, { fill: 'ink' })] };
}

/** The dark stretches of a row. */
function runsOf(row: readonly boolean[]): readonly { readonly from: number; readonly length: number }[] {
  const runs: { from: number; length: number }[] = [];
  row.forEach((dark, x) => {
    const last = runs.at(-1);
    if (dark && last !== undefined && last.from + last.length === x) last.length += 1;
    else if (dark) runs.push({ from: x, length: 1 });
  });
  return runs;
}
