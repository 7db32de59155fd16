// How the sheet is turned between the passes: both lies of it, the lead edge marked, and the movement between them.
import type { Turn } from '../../shared/geometry/turn.ts';

const W = 110;
const H = 140;
const TOP = 40;

/** The corner of the sheet that is cut off in the drawing, so that the eye can follow it through the turn. */
function Sheet({
  x,
  side,
  lead,
  cut,
}: {
  x: number;
  side: 1 | 2;
  lead: string;
  cut: 'right' | 'left' | 'low';
}) {
  const c = 22;
  const right = x + W;
  const low = TOP + H;
  const outline = {
    right: `M${x} ${TOP}H${right - c}L${right} ${TOP + c}V${low}H${x}Z`,
    left: `M${x + c} ${TOP}H${right}V${low}H${x}V${TOP + c}Z`,
    low: `M${x} ${TOP}H${right}V${low - c}L${right - c} ${low}H${x}Z`,
  }[cut];
  return (
    <g>
      <path d={outline} className="turn-sheet" />
      <path d={`M${x} ${TOP - 6}H${right}`} className="turn-lead" />
      <text x={x + W / 2} y={TOP - 14}>
        {lead}
      </text>
      <text x={x + W / 2} y={TOP + H / 2}>
        side {side}
      </text>
    </g>
  );
}

export function TurnDrawing({ turn }: { readonly turn: Turn }) {
  const sideways = turn === 'side-to-side';
  const second = 260;
  return (
    <svg
      className="turn-drawing"
      viewBox="0 0 380 200"
      role="img"
      aria-label={
        sideways
          ? 'The sheet is turned over like a page, right edge to the left; the lead edge stays in front.'
          : 'The sheet is turned over end to end; the tail becomes the lead edge, the sides stay.'
      }
    >
      <Sheet x={10} side={1} lead="lead edge" cut="right" />
      <path
        d={sideways ? 'M150 110C170 70 210 70 230 104' : 'M172 150C210 130 210 90 178 72'}
        className="turn-arrow"
        markerEnd="url(#turn-tip)"
      />
      <defs>
        <marker
          id="turn-tip"
          viewBox="0 0 8 8"
          refX="6"
          refY="4"
          markerWidth="8"
          markerHeight="8"
          orient="auto"
        >
          <path d="M0 0 8 4 0 8Z" className="turn-tip" />
        </marker>
      </defs>
      <Sheet
        x={second}
        side={2}
        lead={sideways ? 'lead edge' : 'was the tail'}
        cut={sideways ? 'left' : 'low'}
      />
    </svg>
  );
}
