// Boxes: partial layouts of a sheet, each with the copies it uses, kept in columns of numbers for speed.
import type { CutWay } from './cutTree.ts';
import type { Builder, OfferedWay } from './unlimitedSearch.ts';

/** A box before it is kept, in ticks: what it needs, what it is worth, and what it can still become. */
export interface NewBox {
  readonly w: number;
  readonly h: number;
  readonly value: number;
  /** Its value less the prices of its copies. */
  readonly worth: number;
  /** No layout that holds this box is worth more. */
  readonly hope: number;
  /** What it wastes, in worth, against the best that fits in its size. */
  readonly loss: number;
}

/**
 * All boxes made so far, by number. The copies a box uses are packed into words, a few bits for each kind with one to
 * spare, so that two boxes are added and checked against the copies there are in a few steps.
 */
export class Boxes {
  size = 0;
  w = new Float64Array(CAPACITY);
  h = new Float64Array(CAPACITY);
  value = new Float64Array(CAPACITY);
  worth = new Float64Array(CAPACITY);
  hope = new Float64Array(CAPACITY);
  loss = new Float64Array(CAPACITY);
  private used: Int32Array;
  /** For a piece: -1 - way. For two boxes joined: the first of them, doubled, and 1 more if stacked. */
  private made = new Int32Array(CAPACITY);
  private other = new Int32Array(CAPACITY);
  /** The copies of the box being made, packed. */
  private readonly sum: Int32Array;
  private readonly word: number[] = [];
  private readonly one: number[] = [];
  private readonly guard: Int32Array;
  private readonly headroom: Int32Array;
  /** Boxes that use the same copies, by a sum over their copies; different copies with the same sum share a list. */
  private readonly alike = new Map<number, number[]>();

  constructor(copies: readonly number[]) {
    let word = 0;
    let bit = 0;
    const guards: number[] = [];
    const rooms: number[] = [];
    for (const n of copies) {
      const bits = Math.floor(Math.log2(n)) + 2;
      if (bit + bits > 31) {
        word++;
        bit = 0;
      }
      this.word.push(word);
      this.one.push(1 << bit);
      const top = 1 << (bits - 1);
      guards[word] = (guards[word] ?? 0) | (top << bit);
      rooms[word] = (rooms[word] ?? 0) | ((top - 1 - n) << bit);
      bit += bits;
    }
    this.guard = Int32Array.from(guards);
    this.headroom = Int32Array.from(rooms);
    this.sum = new Int32Array(word + 1);
    this.used = new Int32Array(CAPACITY * (word + 1));
  }

  /** Keeps a box that holds one piece of this kind. Answers as {@link keep}. */
  keepPiece(way: number, kind: number, box: NewBox): number | undefined {
    this.sum.fill(0);
    this.sum[this.word[kind] as number] = this.one[kind] as number;
    return this.keep(box, -1 - way, 0);
  }

  /** Whether there are copies enough for two boxes on one sheet. To be asked before {@link keepJoin}. */
  canJoin(a: number, b: number): boolean {
    const words = this.sum.length;
    for (let k = 0; k < words; k++) {
      const sum = (this.used[a * words + k] as number) + (this.used[b * words + k] as number);
      if (((sum + (this.headroom[k] as number)) & (this.guard[k] as number)) !== 0) return false;
      this.sum[k] = sum;
    }
    return true;
  }

  /** Keeps the two boxes last asked about, joined. Answers as {@link keep}. */
  keepJoin(way: CutWay, a: number, b: number, box: NewBox): number | undefined {
    return this.keep(box, 2 * a + (way === 'stacked' ? 1 : 0), b);
  }

  /** How a box is laid. */
  layoutOf<T>(box: number, ways: readonly OfferedWay[], builder: Builder<T>): T {
    const made = this.made[box] as number;
    if (made < 0) return builder.block(ways[-1 - made] as OfferedWay, 1, 1);
    const parts = [made >> 1, this.other[box] as number] as const;
    return builder.join(made % 2 === 1 ? 'stacked' : 'side-by-side', [
      this.layoutOf(parts[0], ways, builder),
      this.layoutOf(parts[1], ways, builder),
    ]);
  }

  /** The number of the box, or `undefined` where a box no larger already uses the same copies. */
  private keep(box: NewBox, made: number, other: number): number | undefined {
    const mark = this.markOfSum();
    const alike = this.alike.get(mark) ?? [];
    if (alike.some((k) => this.isNoLarger(k, box) && this.usesSum(k))) return undefined;
    if (alike.length === 0) this.alike.set(mark, alike);
    if (this.size === this.w.length) this.grow();
    const k = this.size++;
    alike.push(k);
    this.w[k] = box.w;
    this.h[k] = box.h;
    this.value[k] = box.value;
    this.worth[k] = box.worth;
    this.hope[k] = box.hope;
    this.loss[k] = box.loss;
    this.made[k] = made;
    this.other[k] = other;
    this.used.set(this.sum, k * this.sum.length);
    return k;
  }

  private isNoLarger(k: number, box: NewBox): boolean {
    return (this.w[k] as number) <= box.w && (this.h[k] as number) <= box.h;
  }

  private usesSum(k: number): boolean {
    const words = this.sum.length;
    return this.sum.every((word, n) => this.used[k * words + n] === word);
  }

  private markOfSum(): number {
    let mark = 0;
    for (const word of this.sum) mark = (mark * MIX + word) % LARGEST_MARK;
    return mark;
  }

  private grow(): void {
    this.w = doubled(this.w);
    this.h = doubled(this.h);
    this.value = doubled(this.value);
    this.worth = doubled(this.worth);
    this.hope = doubled(this.hope);
    this.loss = doubled(this.loss);
    this.made = doubled(this.made);
    this.other = doubled(this.other);
    this.used = doubled(this.used);
  }
}

const CAPACITY = 1024;

/** Two primes that keep the marks apart and exact. */
const MIX = 1_000_003;
const LARGEST_MARK = 4_294_967_291;

function doubled<A extends Float64Array | Int32Array>(column: A): A {
  const larger = new (column.constructor as new (length: number) => A)(column.length * 2);
  larger.set(column);
  return larger;
}
