// Labels beside the ends of lines: each as near to its line as the others let it.

/**
 * Where labels stand so that none is nearer to the next than `apart`, in the order of their wishes. They part to both
 * sides, so that a cluster stays around where it wishes to be.
 */
export function placeLabels(wishes: readonly number[], apart: number): readonly number[] {
  const order = wishes.map((_w, i) => i).toSorted((a, b) => (wishes[a] ?? 0) - (wishes[b] ?? 0));
  const clusters: { members: number[]; middle: number }[] = [];
  for (const index of order) {
    let cluster = { members: [index], middle: wishes[index] ?? 0 };
    for (
      let last = clusters.at(-1);
      last !== undefined && touch(last, cluster, apart);
      last = clusters.at(-1)
    ) {
      clusters.pop();
      const members = [...last.members, ...cluster.members];
      const middle = members.reduce((sum, m) => sum + (wishes[m] ?? 0), 0) / members.length;
      cluster = { members, middle };
    }
    clusters.push(cluster);
  }
  const placed: number[] = [];
  for (const { members, middle } of clusters) {
    members.forEach((member, rank) => {
      placed[member] = middle + (rank - (members.length - 1) / 2) * apart;
    });
  }
  return placed;
}

interface Cluster {
  readonly members: readonly number[];
  readonly middle: number;
}

function touch(above: Cluster, below: Cluster, apart: number): boolean {
  const reach = ((above.members.length + below.members.length) / 2) * apart;
  return below.middle - above.middle < reach;
}
