// The proof of a job: every position of every side, looked at and judged one after another.
import type { Finding, ProofReport, Seen } from './finding.ts';
import { Album, type ArtFace, hangFaces } from './gallery.ts';
import { WORKING_DPI } from './grid.ts';
import type { Known } from './identify.ts';
import type { FaceArt, ProofJob } from './job.ts';
import { judge } from './judge.ts';
import { type Look, lookAt, type Sides } from './looks.ts';
import { notesOnAlikes, type Traits, traitsOf } from './notes.ts';
import type { Sight } from './sight.ts';
import { findingOf } from './words.ts';

/**
 * Proves the sides that are given. Each face in the hand is handed out once it is judged, so that the caller may keep
 * its picture, show how far the proof is or pause; the report comes at the end.
 *
 * Lengths of the job are in pt. Throws for a job whose positions do not fit its pieces, which the layout has checked.
 */
export function* prove(
  job: ProofJob,
  sides: Sides,
  pageOf: (art: FaceArt) => Sight,
  dpi: number = WORKING_DPI,
): Generator<Look, ProofReport> {
  const faces = hangFaces(job, pageOf, dpi);
  const album = new Album();
  const known: Known = { faces, album, mistakes: new Map() };
  const traits = new Map<ArtFace, Traits>();
  const findings: Finding[] = [];
  const positions: Seen[] = [];
  for (const look of lookAt(job, sides, dpi)) {
    const tellsPlace = (face: ArtFace) => {
      const known = traits.get(face) ?? traitsOf(face, look.lie, album);
      traits.set(face, known);
      return known.tellsPlace;
    };
    const { faults, ...seen } = judge(look, known, tellsPlace);
    const at = { position: look.position, side: look.side, piece: look.piece.name, face: look.face };
    positions.push({ ...at, ...seen });
    findings.push(...faults.map((fault) => findingOf(at, fault, seen.recognised)));
    yield look;
  }
  const notes = [...[...traits.values()].flatMap((t) => t.notes), ...notesOnAlikes(traits, album)];
  return { findings, notes, checked: positions.length, positions };
}
