// The usual cautions wherever the program tells a person to do something that can hurt.

/** What the person is about to do. */
export type Handling = 'feed' | 'trim' | 'lift';

/**
 * The caution for each, in plain words. They defer to the machine's manual, local rules and trained operators.
 *
 * @source common practice, no source
 */
export const CAUTIONS: Readonly<Record<Handling, string>> = {
  feed: 'Feeding by hand: keep fingers, sleeves and hair away from moving rollers, and stop the printer before you reach in. The manual of the printer and local rules come first.',
  trim: 'Trimming: a guillotine or rotary cutter can maim. Use its guards, keep hands clear of clamp and knife, and let trained operators cut. The manual of the cutter and local rules come first.',
  lift: 'Lifting: paper is heavy. Take piles you can carry safely, from the knees, or use a truck; local rules come first.',
};
