// The ways to make one design of a gang run out of runs of given lengths.

/** Copies of one design on every form, the last as few as do. */
export type CopiesOnForms = readonly number[];

/** Copies on every form that make so many pieces, none of them one too many. */
export function waysToMake(
  wanted: number,
  [run = 0, ...others]: readonly number[],
  slots: number,
): readonly CopiesOnForms[] {
  if (others.length === 0) {
    const copies = wanted <= 0 ? 0 : run === 0 ? Number.POSITIVE_INFINITY : Math.ceil(wanted / run);
    return copies > slots ? [] : [[copies]];
  }
  const ways: CopiesOnForms[] = [];
  for (let copies = 0; copies <= slots; copies++) {
    const rest = Math.max(0, wanted - copies * run);
    ways.push(...waysToMake(rest, others, slots).map((way) => [copies, ...way]));
    if (rest === 0 || run === 0) break;
  }
  return ways;
}
