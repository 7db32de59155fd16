// Sheets that a guillotine can cut, made from the cuts backwards: parts laid beside and above one another, with gaps.
import fc from 'fast-check';

export interface UnitBox {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Pieces on a sheet, all in whole units. */
export interface UnitLayout {
  readonly w: number;
  readonly h: number;
  readonly pieces: readonly UnitBox[];
}

interface Split {
  readonly way: 'beside' | 'above';
  readonly parts: readonly Tree[];
  readonly gap: number;
  /** Where a smaller part stands in the room of the larger one: 0 at its start, 1 at its end. */
  readonly aligned: 0 | 1;
}

type Tree = { readonly w: number; readonly h: number } | Split;

function lay(tree: Tree): UnitLayout {
  if (!('way' in tree)) return { w: tree.w, h: tree.h, pieces: [{ x: 0, y: 0, w: tree.w, h: tree.h }] };
  const parts = tree.parts.map(lay);
  const isBeside = tree.way === 'beside';
  const broad = Math.max(...parts.map((p) => (isBeside ? p.h : p.w)));
  let at = 0;
  const pieces = parts.flatMap((part) => {
    const aside = tree.aligned * (broad - (isBeside ? part.h : part.w));
    const [dx, dy] = isBeside ? [at, aside] : [aside, at];
    at += (isBeside ? part.w : part.h) + tree.gap;
    return part.pieces.map((p) => ({ ...p, x: p.x + dx, y: p.y + dy }));
  });
  const long = at - tree.gap;
  return isBeside ? { w: long, h: broad, pieces } : { w: broad, h: long, pieces };
}

/** Layouts of at most this depth, sides from `min` to `max` units, with margins of 0 to 2. */
export function unitLayouts(depth: number, min: number, max: number): fc.Arbitrary<UnitLayout> {
  const side = fc.integer({ min, max });
  const leaf = fc.record({ w: side, h: side });
  const trees = (left: number): fc.Arbitrary<Tree> =>
    left === 0
      ? leaf
      : fc.oneof(
          { weight: 1, arbitrary: leaf },
          {
            weight: 4,
            arbitrary: fc.record({
              way: fc.constantFrom('beside' as const, 'above' as const),
              parts: fc.array(trees(left - 1), { minLength: 2, maxLength: 3 }),
              gap: fc.integer({ min: 0, max: 1 }),
              aligned: fc.constantFrom(0 as const, 1 as const),
            }),
          },
        );
  const margin = fc.integer({ min: 0, max: 2 });
  return fc.tuple(trees(depth), margin, margin, margin, margin).map(([tree, left, right, tail, lead]) => {
    const { w, h, pieces } = lay(tree);
    return {
      w: w + left + right,
      h: h + tail + lead,
      pieces: pieces.map((p) => ({ ...p, x: p.x + left, y: p.y + tail })),
    };
  });
}
