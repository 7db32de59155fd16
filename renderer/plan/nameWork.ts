// The ways of working as people say them.
import { turnOf, type Work } from '../../shared/geometry/work.ts';

const STYLES: Readonly<Record<Work['style'], string>> = {
  simplex: 'One side only',
  'work-and-back': 'Work-and-back',
  perfecting: 'Perfecting',
  'work-and-turn': 'Work-and-turn',
  'work-and-tumble': 'Work-and-tumble',
};

/** `Work-and-back, turned end to end`. */
export function nameWork(work: Work): string {
  const turn = turnOf(work);
  return turn === undefined
    ? STYLES[work.style]
    : `${STYLES[work.style]}, turned ${turn.replaceAll('-', ' ')}`;
}
