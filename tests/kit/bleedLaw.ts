// The law of bleeds for a single point, straight from its words: who prints it.
import { gapOf, type Placed } from './staggered.ts';

type Edge = 'left' | 'right' | 'bottom' | 'top';

/** How far a point, or the near edge of another card, lies outside of each edge of a card; less than 0 within. */
type Outside = Readonly<Record<Edge, number>>;

interface Faced {
  readonly edge: Edge;
  /** How far the bleed may go before that edge. */
  readonly limit: number;
  /** Whether the other lies straight before the edge there, and not around a corner. */
  readonly isBefore: (x: number, y: number) => boolean;
}

/** Lengths closer than this are the same, in pt: as in the program, a sixth of a dot of 1200 dpi. */
const SAME_PT = 0.01;

/** The law for a sheet. */
export class BleedLaw {
  private readonly rivals: readonly (readonly number[])[];
  private readonly faced: readonly (readonly Faced[])[];
  private readonly halfGaps: readonly number[];

  constructor(private readonly placed: readonly Placed[]) {
    this.rivals = placed.map((one, i) =>
      placed.flatMap((other, j) => (j !== i && wouldMeet(one, other) ? [j] : [])),
    );
    this.faced = placed.map((one, i) => this.rivals[i]!.map((j) => face(one, placed[j]!)));
    this.halfGaps = placed.map(({ trim, bleed }, i) =>
      Math.min(bleed, ...this.rivals[i]!.map((j) => gapOf(trim, placed[j]!.trim) / 2)),
    );
  }

  /** Whether a card prints a point: its right is better than that of each rival, or as good and it comes first. */
  prints(i: number, x: number, y: number): boolean {
    const own = this.rank(i, x, y);
    if (own === Number.POSITIVE_INFINITY) return false;
    return this.rivals[i]!.every((j) => {
      const theirs = this.rank(j, x, y);
      return own < theirs || (own === theirs && i < j);
    });
  }

  /** How good a card's right to a point is: 0 is the best. */
  private rank(i: number, x: number, y: number): number {
    const { trim, bleed } = this.placed[i]!;
    const off = outside(trim, { x, y, w: 0, h: 0 });
    const [across, up] = [Math.max(off.left, off.right, 0), Math.max(off.bottom, off.top, 0)];
    if (Math.max(across, up) >= bleed && across + up > 0) return Number.POSITIVE_INFINITY;
    const faced = this.faced[i]!;
    const isWithinLimits = faced.every(({ edge, limit }) => off[edge] < limit || off[edge] <= 0);
    const isStraight = across === 0 || up === 0;
    if (isWithinLimits && (isStraight || Math.max(across, up) < this.halfGaps[i]!)) return 0;
    const isPastNeighbour = faced.some(({ edge, limit, isBefore }) => off[edge] > limit && isBefore(x, y));
    if (isStraight && !isPastNeighbour) return up === 0 ? 1 : 2;
    return isWithinLimits ? 3 : 4;
  }

  /** Every upright and level line along which the law may change. */
  lines(): { readonly xs: readonly number[]; readonly ys: readonly number[] } {
    const xs: number[] = [];
    const ys: number[] = [];
    this.placed.forEach(({ trim: { x, y, w, h }, bleed }, i) => {
      for (const off of [0, bleed, this.halfGaps[i]!, ...this.faced[i]!.map(({ limit }) => limit)]) {
        xs.push(x - off, x + w + off);
        ys.push(y - off, y + h + off);
      }
    });
    return { xs, ys };
  }
}

type Box = Placed['trim'];

/** Added up as the program does, so that gaps which are the same on paper are found alike. */
function outside(of: Box, other: Box): Outside {
  return {
    left: of.x - (other.x + other.w),
    right: other.x - (of.x + of.w),
    bottom: of.y - (other.y + other.h),
    top: other.y - (of.y + of.h),
  };
}

/** Whether two bleeds would meet, of cards that do not lie over each other. */
function wouldMeet(one: Placed, other: Placed): boolean {
  const apart = Object.values(outside(one.trim, other.trim));
  return Math.max(...apart) < one.bleed + other.bleed - SAME_PT && Math.max(...apart) >= -SAME_PT;
}

function face(one: Placed, other: Placed): Faced {
  const apart = outside(one.trim, other.trim);
  const gap = Math.max(...Object.values(apart));
  const edge = (['left', 'right', 'bottom', 'top'] as const).find((e) => apart[e] === gap)!;
  const { x, y, w, h } = other.trim;
  const isAcrossCorner =
    Math.max(apart.left, apart.right) > -SAME_PT && Math.max(apart.bottom, apart.top) > -SAME_PT;
  const isLevel = edge === 'left' || edge === 'right';
  return {
    edge,
    limit: Math.max(0, gap / 2, gap - other.bleed),
    isBefore: (px, py) => !isAcrossCorner && (isLevel ? py > y && py < y + h : px > x && px < x + w),
  };
}
