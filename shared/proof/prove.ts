// The proof of a job: every side drawn once, its waste looked at, and every position judged one after another.
import type { Mark } from '../marks/mark.ts';
import { type ArtFace, artFacesOf, FacePictures } from './artFaces.ts';
import { type DrawnSides, type FaceView, faceViews } from './faceViews.ts';
import type { ProofFinding, ProofReport, Seen, SideNumber } from './finding.ts';
import { WORKING_DPI } from './grid.ts';
import type { ProofKnowledge } from './identify.ts';
import type { FaceArt, ProofJob } from './job.ts';
import { judge } from './judge.ts';
import { notesOnAlikes, type Traits, traitsOf } from './notes.ts';
import type { PageSource } from './pageSource.ts';
import { PixelComparison } from './pixelComparison.ts';
import { drawSide } from './sideDrawing.ts';
import { trimsOn, wantedSide } from './wantedSide.ts';
import { checkWaste } from './waste.ts';
import { findingOf } from './words.ts';

/** The sides that are proved, each as it was written: its lead edge up. One page may serve both. */
export interface Sides {
  readonly side1?: PageSource;
  readonly side2?: PageSource;
}

/** How a proof is made. */
export interface Proving {
  /** Pixels to the inch of the renderings that are measured; sides are drawn twice as fine. */
  readonly dpi?: number;
  /** The marks that belong on each side, in pt; the waste is looked at where they are given, be it that there are none. */
  readonly marks?: Readonly<Record<SideNumber, readonly Mark[]>>;
}

/** Drawn so many times as fine as the renderings, type of 6 pt shows every stroke. */
export const DRAWN_FINER = 2;

/**
 * Proves the sides that are given. Each face in the hand is handed out once it is judged, so that the caller may keep
 * its picture, show how far the proof is or pause; the report comes at the end.
 *
 * Lengths of the job are in pt. Throws for a job whose positions do not fit its pieces, which the layout has checked.
 */
export function* prove(
  job: ProofJob,
  sides: Sides,
  pageOf: (art: FaceArt) => PageSource,
  { dpi = WORKING_DPI, marks }: Proving = {},
): Generator<FaceView, ProofReport> {
  const drawn = drawSides(job, sides, (dpi * DRAWN_FINER) / 72);
  const faces = artFacesOf(job, pageOf, dpi);
  const facePictures = new FacePictures();
  const known: ProofKnowledge = { faces, facePictures, mistakes: new Map() };
  const comparison = new PixelComparison();
  const traits = new Map<ArtFace, Traits>();
  const findings: ProofFinding[] = marks === undefined ? [] : [...lookAtWaste(job, drawn, marks)];
  const positions: Seen[] = [];
  for (const look of faceViews(job, drawn, dpi)) {
    const hasStructure = (face: ArtFace) => {
      const known = traits.get(face) ?? traitsOf(face, comparison.artTrim(look, face));
      traits.set(face, known);
      return known.hasStructure;
    };
    const { faults, ...seen } = judge(look, { known, comparison: comparison, hasStructure: hasStructure });
    const at = { position: look.position, side: look.side, piece: look.piece.name, face: look.face };
    positions.push({ ...at, ...seen });
    findings.push(...faults.map((fault) => findingOf(at, fault, seen.recognised)));
    yield look;
  }
  const notes = [...[...traits.values()].flatMap((t) => t.notes), ...notesOnAlikes(traits, facePictures)];
  return { findings, notes, checked: positions.length, positions };
}

function drawSides(job: ProofJob, { side1, side2 }: Sides, scale: number): DrawnSides {
  const drawn1 = side1 === undefined ? undefined : drawSide(side1, trimsOn(job, 1), scale, undefined);
  const drawn2 = side2 === undefined ? undefined : drawSide(side2, trimsOn(job, 2), scale, drawn1);
  return { ...(drawn1 && { side1: drawn1 }), ...(drawn2 && { side2: drawn2 }) };
}

function* lookAtWaste(
  job: ProofJob,
  { side1, side2 }: DrawnSides,
  marks: Readonly<Record<SideNumber, readonly Mark[]>>,
): Generator<ProofFinding> {
  if (side1 !== undefined) yield* checkWaste(1, side1, wantedSide(job, 1, marks[1]));
  if (side2 !== undefined) yield* checkWaste(2, side2, wantedSide(job, 2, marks[2]));
}
