// The weight and the caliper of a paper in the measures that they were not typed in.
import { readCaliper } from '../../../shared/library/caliper.ts';
import { basisWeightOf, readPaperWeight } from '../../../shared/library/paperWeight.ts';
import { showShortNumber } from '../../../shared/units/show.ts';

/** `= 271 g/m²` beside pounds, `= 111 lb cover, 203 lb text` beside grams; nothing where it cannot be read yet. */
export function otherWeight(typed: string): string | undefined {
  const read = readPaperWeight(typed);
  if (!read.ok) return undefined;
  const { grammage } = read.value;
  if (/lb|#/i.test(typed)) return `= ${Math.round(grammage)} g/m²`;
  const pounds = (grade: 'cover' | 'text') => `${Math.round(basisWeightOf(grammage, grade))} lb ${grade}`;
  return `= ${pounds('cover')}, ${pounds('text')}`;
}

/** `= 0.33 mm` beside points, `= 12 pt` beside metric; nothing where it cannot be read yet. */
export function otherCaliper(typed: string): string | undefined {
  const read = readCaliper(typed);
  if (!read.ok) return undefined;
  const { micrometres } = read.value;
  if (/m/i.test(typed) && !/mil/i.test(typed)) return `= ${showShortNumber(micrometres / 25.4, 1)} pt`;
  return `= ${showShortNumber(micrometres / 1000, 3)} mm`;
}
