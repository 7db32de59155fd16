// The plain paper that run sheets are printed on.
import type { Size } from '../../geometry/space.ts';
import { POINTS_PER, type Unit } from '../../units/length.ts';

/**
 * Letter for those who read inches, A4 for everybody else, upright, in pt.
 *
 * @source ISO 216 (A4: 210 x 297 mm); ANSI/ASME Y14.1 (A: 8.5 x 11 in).
 */
export function plainPaper(unit: Unit): Size {
  const { mm, in: inch } = POINTS_PER;
  return unit === 'in' ? { w: 8.5 * inch, h: 11 * inch } : { w: 210 * mm, h: 297 * mm };
}
