// Sheets cut from a roll: of its width, and as long as is named or as whole rows of the pieces need.
import type { Size } from '../geometry/space.ts';
import { same } from '../geometry/tolerance.ts';
import type { Lies } from '../layout/lies.ts';
import type { Feed, Roll } from '../library/library.ts';
import { type Length, points, type Unit } from '../units/length.ts';
import { type CutFor, type FedSheet, goesInto } from './feeding.ts';
import { metres, roundedUp } from './measures.ts';

/** The roll's width across the feed, or along it. */
type RollLies = 'across' | 'along';

/**
 * Every sheet that can be cut from the roll and goes into the feed. Where no length is named, the lengths are those that
 * hold one row, two rows and so on of one of the pieces, up to the longest sheet that the feed takes, and that one.
 */
export function sheetsFromRoll(roll: Roll, feed: Feed, wanted: CutFor): readonly FedSheet[] {
  return (['across', 'along'] as const).flatMap((lies) => {
    const longest = feed.most[lies === 'across' ? 1 : 0];
    const needed = [
      ...wanted.typed,
      ...lengthsForRows(lies, longest, feed, wanted, roll.width.unit),
      longest,
    ];
    const lengths = roll.cutTo.length > 0 ? roll.cutTo : needed;
    return lengths
      .filter((length, i) => lengths.findIndex((other) => same(points(length), points(other))) === i)
      .map(
        (length): FedSheet => ({
          source: { is: 'roll', form: roll, metres: metres(points(length)) },
          size: lies === 'across' ? [roll.width, length] : [length, roll.width],
          grain: lies === 'across' ? 'along-feed' : 'across-feed',
        }),
      )
      .filter((sheet) => goesInto(feed, sheet.size));
  });
}

/** The lengths that hold whole rows of one of the pieces, up to the longest. */
function lengthsForRows(
  lies: RollLies,
  longest: Length,
  { unprintable }: Feed,
  { cells, gutter, bleed, turned }: CutFor,
  unit: Unit,
): readonly Length[] {
  const [one, other] =
    lies === 'across' ? [unprintable.lead, unprintable.tail] : [unprintable.left, unprintable.right];
  const margins = turned ? 2 * Math.max(points(one), points(other)) : points(one) + points(other);
  const fixed = margins + 2 * bleed - gutter;
  return cells
    .flatMap((cell) => rowsOf(cell, lies))
    .flatMap((row) => {
      const most = Math.max(0, Math.floor((points(longest) - fixed) / row));
      return Array.from({ length: most }, (_, i) => roundedUp(fixed + (i + 1) * row, unit));
    });
}

/** How long one row of a piece is along the roll, for every lie that the piece may take. */
function rowsOf({ w, h, lies }: Size & { readonly lies: Lies }, roll: RollLies): readonly number[] {
  const upright = roll === 'across' ? h : w;
  const onItsSide = roll === 'across' ? w : h;
  if (lies === 'upright') return [upright];
  return lies === 'on-its-side' ? [onItsSide] : [upright, onItsSide];
}
