// Lists in a sentence, for positions and steps.

/** How many are named before the rest is only counted. */
const MAX_NAMED = 6;

/** `1`, `1 and 2`, `1, 2 and 3`, `1, 2, 3, 4, 5, 6 and 9 more`. */
export function sayList(names: readonly (string | number)[]): string {
  const isLong = names.length > MAX_NAMED + 1;
  const said = isLong ? names.slice(0, MAX_NAMED) : names.slice(0, -1);
  const last = isLong ? `${names.length - MAX_NAMED} more` : `${names.at(-1) ?? ''}`;
  return said.length === 0 ? last : `${said.join(', ')} and ${last}`;
}

/** `step 4`, `steps 4 and 5`: the word, with an s for more than one. */
export function sayMany(word: string, names: readonly (string | number)[]): string {
  return `${word}${names.length === 1 ? '' : 's'} ${sayList(names)}`;
}
