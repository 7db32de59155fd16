// The ways of working as people say them.
import { turnOf, type Work } from '../../shared/geometry/work.ts';

const STYLES: Readonly<Record<Work['style'], string>> = {
  simplex: 'One side only',
  'work-and-back': 'Work-and-back (sheetwise)',
  perfecting: 'Perfecting',
  'work-and-turn': 'Work-and-turn',
  'work-and-tumble': 'Work-and-tumble',
};

/** `Work-and-back (sheetwise)`. */
export function nameStyle({ style }: Work): string {
  return STYLES[style];
}

/** `turned end to end`; nothing where the sheet is not turned. */
export function nameTurn(work: Work): string | undefined {
  const turn = turnOf(work);
  return turn && `turned ${turn.replaceAll('-', ' ')}`;
}

/** `Work-and-back (sheetwise), turned end to end`. */
export function nameWork(work: Work): string {
  return [nameStyle(work), nameTurn(work)].filter((part) => part !== undefined).join(', ');
}
