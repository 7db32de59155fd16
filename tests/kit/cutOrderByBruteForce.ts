// The best order of cuts by trying every cut at every whole unit from every side: slow, plain, and made unlike the
// program's own search.

interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** Counted in whole units: the sheet, the pieces on it, and what the machine holds. */
export interface UnitSheet {
  readonly w: number;
  readonly h: number;
  readonly pieces: readonly Box[];
  /** The least that is held behind the knife. */
  readonly least: number;
  /** Whether a cut must run along a trim of a piece that it frees, as is the rule where the clamp does not reach all. */
  readonly onlyAlongTrims: boolean;
  /** Which side edge was at the guide. */
  readonly guide: 'left' | 'right';
}

/** Cuts, cuts with waste under the clamp, turns. */
export type Toll = readonly [number, number, number];

const EDGES = ['lead', 'left', 'tail', 'right'] as const;
type Edge = (typeof EDGES)[number];

/** The best toll there is; `undefined` where no order frees every piece. */
export function bestToll(sheet: UnitSheet): Toll | undefined {
  const known = new Map<string, Toll | undefined>();
  const inside = (part: Box) =>
    sheet.pieces.filter(
      (p) => p.x >= part.x && p.y >= part.y && p.x + p.w <= part.x + part.w && p.y + p.h <= part.y + part.h,
    );
  const place: Record<Edge, (part: Box) => number> = {
    lead: (part) => part.y + part.h,
    tail: (part) => part.y,
    left: (part) => part.x,
    right: (part) => part.x + part.w,
  };
  const whole: Box = { x: 0, y: 0, w: sheet.w, h: sheet.h };
  const isTrue = (part: Box, edge: Edge) => {
    const at = place[edge](part);
    if (at !== place[edge](whole)) return true;
    return edge === 'lead' || edge === sheet.guide || sheet.pieces.some((p) => place[edge](p) === at);
  };

  function best(part: Box, lay: Edge | undefined): Toll | undefined {
    const pieces = inside(part);
    if (pieces.length === 0) return [0, 0, 0];
    const [only] = pieces;
    if (pieces.length === 1 && only!.w === part.w && only!.h === part.h) return [0, 0, 0];
    const key = [part.x, part.y, part.w, part.h, lay].join();
    if (known.has(key)) return known.get(key);
    let found: Toll | undefined;
    for (const edge of EDGES) {
      if (!isTrue(part, edge)) continue;
      const deep = edge === 'lead' || edge === 'tail' ? part.h : part.w;
      for (let distance = sheet.least; distance < deep; distance++) {
        const [behind, inFront] = split(part, edge, distance);
        if (inside(behind).length + inside(inFront).length !== pieces.length) continue;
        if (sheet.onlyAlongTrims && !pieces.some((p) => touches(p, behind, edge))) continue;
        const [one, other] = [best(behind, edge), best(inFront, edge)];
        if (one === undefined || other === undefined) continue;
        const toll: Toll = [
          1 + one[0] + other[0],
          (inside(behind).length === 0 ? 1 : 0) + one[1] + other[1],
          (lay === undefined || lay === edge ? 0 : 1) + one[2] + other[2],
        ];
        if (found === undefined || isLess(toll, found)) found = toll;
      }
    }
    known.set(key, found);
    return found;
  }
  return best(whole, undefined);
}

/** Whether a piece has an edge on the line where what lies behind the knife ends. */
function touches(piece: Box, behind: Box, edge: Edge): boolean {
  switch (edge) {
    case 'lead':
      return piece.y === behind.y || piece.y + piece.h === behind.y;
    case 'tail':
      return piece.y === behind.y + behind.h || piece.y + piece.h === behind.y + behind.h;
    case 'left':
      return piece.x === behind.x + behind.w || piece.x + piece.w === behind.x + behind.w;
    case 'right':
      return piece.x === behind.x || piece.x + piece.w === behind.x;
  }
}

function split({ x, y, w, h }: Box, edge: Edge, d: number): readonly [Box, Box] {
  switch (edge) {
    case 'lead':
      return [
        { x, y: y + h - d, w, h: d },
        { x, y, w, h: h - d },
      ];
    case 'tail':
      return [
        { x, y, w, h: d },
        { x, y: y + d, w, h: h - d },
      ];
    case 'left':
      return [
        { x, y, w: d, h },
        { x: x + d, y, w: w - d, h },
      ];
    case 'right':
      return [
        { x: x + w - d, y, w: d, h },
        { x, y, w: w - d, h },
      ];
  }
}

function isLess(a: Toll, b: Toll): boolean {
  const at = a.findIndex((n, i) => n !== b[i]);
  return at >= 0 && a[at]! < b[at]!;
}
