// What to tell the person about crop marks and targets that found no room.
import type { SheetEdge } from '../geometry/sheet.ts';
import type { CropMarks } from './cropMarks.ts';
import type { RegisterTargets } from './registerTargets.ts';

/** The notices about the marks that both sides share; edges are named as side 1 is printed. */
export function registerNotices(crops: CropMarks, targets: RegisterTargets): string[] {
  const notices: string[] = [];
  if (crops.bare.length === 4) {
    notices.push('No room for crop marks: cut by measure, or leave wider margins.');
  } else {
    if (crops.bare.length > 0) {
      notices.push(`No room for crop marks at the ${edgeWords(crops.bare)}: set the knife by the others.`);
    }
    if (crops.unmarked > 0) {
      notices.push(`${crops.unmarked} of ${crops.cuts} cuts have no crop mark: set them by measure.`);
    }
  }
  if (targets.bare.length === 4) {
    notices.push('No room for register targets: judge the back-up by the crop marks.');
  } else if (targets.bare.length > 0) {
    notices.push(`No room for a register target at the ${edgeWords(targets.bare)}.`);
  }
  return notices;
}

function edgeWords(edges: readonly SheetEdge[]): string {
  const named = edges.map((e) => (e === 'lead' || e === 'tail' ? `${e} edge` : `${e} side`));
  const last = named.at(-1) ?? '';
  return named.length === 1 ? last : `${named.slice(0, -1).join(', ')} and ${last}`;
}
