// The proof of sheets that were really written: opened again, rendered, cut, turned and compared with the art.
import { setImmediate } from 'node:timers/promises';
import { ok, type Result, refuse } from '../../shared/fault/result.ts';
import { checkSide, sameSize } from '../../shared/proof/checkSide.ts';
import type { FaceView } from '../../shared/proof/faceViews.ts';
import type { ProofReport, SheetFinding, SideNumber } from '../../shared/proof/finding.ts';
import type { ProofJob } from '../../shared/proof/job.ts';
import { type Proving, prove, type Sides } from '../../shared/proof/prove.ts';
import { openArtPages, openSide } from './openFiles.ts';
import { type ProofPicture, pictureOf } from './pictures.ts';
import { Renderer, RendererBroke } from './renderer.ts';

/** A page that was written for a side. */
export interface WrittenSide {
  readonly bytes: Uint8Array;
  /** From 1. */
  readonly page: number;
  /** How many pages the file should have, where that is known. */
  readonly pages?: number;
}

/** The written pages of the sides; one file may hold both, and one page may serve both. */
interface WrittenSides {
  readonly side1: WrittenSide;
  readonly side2?: WrittenSide;
}

/** What a proof is done with. */
export interface ProofOptions extends Proving {
  /** Whether a picture of every position is wanted, front beside back. */
  readonly pictures?: boolean;
  /** Told after every face that was compared. */
  readonly onCompared?: (done: number, all: number) => void;
}

/** The report, and the pictures if they were wanted. */
export interface SheetsProof extends ProofReport {
  readonly pictures: readonly ProofPicture[];
}

/**
 * Proves written sheets against the art, with a renderer that had no part in writing them.
 *
 * A sheet that cannot be opened is refused as `sheet-unreadable`, a missing one as `sheet-missing`, art that cannot be
 * read with the fault of its own. A page that is not of the sheet's size is a finding, and its side is not compared.
 * Throws only for a job whose positions do not fit its pieces.
 */
export async function proveSheets(
  job: ProofJob,
  sheets: WrittenSides,
  art: ReadonlyMap<string, Uint8Array>,
  options: ProofOptions = {},
): Promise<Result<SheetsProof>> {
  const renderer = await Renderer.start();
  let broken = false;
  try {
    return await proveWith(renderer, job, sheets, art, options);
  } catch (error) {
    if (!(error instanceof RendererBroke)) throw error;
    broken = true;
    return refuse({
      code: 'proof-failed',
      message: `The renderer broke down on one of the files (${error.message}).`,
      remedy: 'Have the art exported again, as a plain PDF, and send the job again.',
    });
  } finally {
    if (!broken) renderer.close();
  }
}

async function proveWith(
  renderer: Renderer,
  job: ProofJob,
  sheets: WrittenSides,
  art: ReadonlyMap<string, Uint8Array>,
  options: ProofOptions,
): Promise<Result<SheetsProof>> {
  const sheetFindings: SheetFinding[] = [];
  const sides: { -readonly [side in keyof Sides]: Sides[side] } = {};
  const numbers: readonly SideNumber[] = job.turn === undefined ? [1] : [1, 2];
  for (const number of numbers) {
    const written = number === 1 ? sheets.side1 : sheets.side2;
    const opened = openSide(renderer, number, written?.bytes, written?.page ?? 1);
    if (!opened.ok) return opened;
    const { source, shown, pages } = opened.value;
    sheetFindings.push(...checkSide(number, { page: source.size, shown, pages }, job.sheet, written?.pages));
    if (!sameSize(source.size, job.sheet)) continue;
    sides[`side${number}`] = source;
  }
  const pageOf = openArtPages(renderer, job, art);
  if (!pageOf.ok) return pageOf;

  const all = job.positions.length * Object.keys(sides).length;
  const pictures: ProofPicture[] = [];
  const proof = prove(job, sides, pageOf.value, options);
  let inHand: FaceView[] = [];
  for (let done = 1; ; done++) {
    const next = proof.next();
    const turnedTo = next.done ? undefined : next.value.position;
    if (options.pictures === true && inHand[0] !== undefined && inHand[0].position !== turnedTo) {
      pictures.push(pictureOf(inHand, job.positions.length));
      inHand = [];
    }
    if (next.done) {
      return ok({ ...next.value, findings: [...sheetFindings, ...next.value.findings], pictures });
    }
    inHand.push(next.value);
    options.onCompared?.(done, all);
    await setImmediate();
  }
}
