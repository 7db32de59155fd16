// Things that are costly to make and large to keep: the longest unused make room for new ones.

/** Keeps what was made under its key, as long as the sizes of all that is kept stay within `most`. */
export class RecentlyUsed<T> {
  private readonly kept = new Map<string, { readonly value: T; readonly size: number }>();
  private total = 0;

  constructor(private readonly most: number) {}

  /** What is kept under this key, else what is made now; the newest is kept, whatever its size. */
  get(key: string, size: number, make: () => T): T {
    const known = this.kept.get(key);
    const used = known ?? { value: make(), size };
    if (known === undefined) this.total += size;
    else this.kept.delete(key);
    this.kept.set(key, used);
    for (const [oldest, old] of this.kept) {
      if (this.total <= this.most || oldest === key) break;
      this.kept.delete(oldest);
      this.total -= old.size;
    }
    return used.value;
  }
}
