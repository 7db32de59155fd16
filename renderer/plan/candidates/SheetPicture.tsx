// The picture of a candidate's sheet: its pieces where they would lie, fronts and backs told apart by their lines.
import type { LaidCandidate } from '../../../shared/plan/candidate.ts';

/** Room around the sheet for its lead edge, in parts of its longer side. */
const MARGIN_SHARE = 0.06;

export function SheetPicture({ candidate }: { readonly candidate: LaidCandidate }) {
  const { size, arrangement, up } = candidate;
  const longer = Math.max(size.w, size.h);
  const around = longer * MARGIN_SHARE;
  return (
    <svg
      className="sheet-picture"
      viewBox={`${-around} ${-around} ${size.w + 2 * around} ${size.h + 2 * around}`}
      role="img"
      aria-label={`${up} up, ${arrangement.filter((p) => p.face === 'back').length} of them with the back on side 1; the lead edge is at the top`}
    >
      <rect width={size.w} height={size.h} className="picture-paper" />
      <path d={`M0 ${-around / 2}H${size.w}`} className="picture-lead" />
      {arrangement.map(({ trim, face }) => (
        <rect
          key={`${trim.x} ${trim.y}`}
          x={trim.x}
          y={size.h - trim.y - trim.h}
          width={trim.w}
          height={trim.h}
          className={`picture-${face}`}
        />
      ))}
    </svg>
  );
}
