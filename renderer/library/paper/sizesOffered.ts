// The sizes that sheets are sold in, those of the person's own unit first.
import { SHEET_SIZES } from '../../../shared/library/sheetSizes.ts';
import type { Unit } from '../../../shared/units/length.ts';
import { sizeTyped } from '../../draft/briefDraft.ts';

/** A size that is offered: as it would be typed, and as it is called. */
interface SizeOffered {
  readonly value: string;
  readonly label: string;
}

export function sizesOffered(units: Unit): readonly SizeOffered[] {
  const own = units === 'mm' ? 'mm' : 'in';
  const isOwn = ({ size }: (typeof SHEET_SIZES)[number]) => size[0].unit === own;
  const sizes = [...SHEET_SIZES.filter(isOwn), ...SHEET_SIZES.filter((size) => !isOwn(size))];
  return sizes.map(({ name, size }) => {
    const typed = sizeTyped(size);
    return { value: typed, label: size[0].unit === 'mm' ? `${name}, ${typed}` : name };
  });
}
