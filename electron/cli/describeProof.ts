// The proof as the command line tells it.
import { resolve } from 'node:path';
import type { SidePage } from '../../shared/job/nameJobFiles.ts';
import type { SheetsProof } from '../proof/proveSheets.ts';

/** The proof as other programs read it. */
export function describeProof({ findings, notes, checked, positions }: SheetsProof): object {
  return { findings, notes, checked, positions };
}

/** Which page of which file prints each side; one form names the same file twice. */
export function describeForms(sides: readonly SidePage[], folder: string): readonly object[] {
  return sides.map(({ side, name, page }) => ({ side, file: resolve(folder, name), page }));
}

/** The proof in plain lines. */
export function sayProof({ findings, notes, checked }: SheetsProof): readonly string[] {
  const outcome =
    findings.length === 0
      ? `Proof: ${checked} faces compared with their art, all right.`
      : `Proof: ${findings.length} ${findings.length === 1 ? 'fault' : 'faults'} found.`;
  return [outcome, ...findings.map((f) => `- ${f.message}`), ...notes.map((n) => `Note: ${n.message}`)];
}
