// Letters that stand for stacks and for designs.

/** A for the first, Z for the 26th, AA for the next. `index` counts from 0. */
export function letterFor(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : letterFor(Math.floor(index / 26) - 1) + last;
}
