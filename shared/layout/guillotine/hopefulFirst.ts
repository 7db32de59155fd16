// The boxes that wait to be joined with others, the most hopeful first.

/** A heap of box numbers, ordered by their hope, then by their value. */
export class HopefulFirst {
  private readonly heap: number[] = [];
  private readonly comesFirst: (a: number, b: number) => boolean;

  constructor(comesFirst: (a: number, b: number) => boolean) {
    this.comesFirst = comesFirst;
  }

  add(box: number): void {
    const { heap } = this;
    let at = heap.length;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!this.comesFirst(box, heap[above] as number)) break;
      heap[at] = heap[above] as number;
      at = above;
    }
    heap[at] = box;
  }

  /** Takes the first box out, or nothing where none waits. */
  take(): number | undefined {
    const { heap } = this;
    const first = heap[0];
    const last = heap.pop();
    if (last === undefined || heap.length === 0) return first;
    let at = 0;
    for (;;) {
      let below = 2 * at + 1;
      if (below >= heap.length) break;
      if (below + 1 < heap.length && this.comesFirst(heap[below + 1] as number, heap[below] as number))
        below++;
      if (!this.comesFirst(heap[below] as number, last)) break;
      heap[at] = heap[below] as number;
      at = below;
    }
    heap[at] = last;
    return first;
  }
}
