// The drawing of the turn: the sheet in both passes, its lead edge, side guide and heads, and the movement between them.
import type { Size } from '../../shared/geometry/space.ts';
import type { Turn } from '../../shared/geometry/turn.ts';
import type { Job } from '../../shared/job/job.ts';
import { type DrawnPass, type DrawnPiece, sceneOf } from './turnScene.ts';

const LONGEST_SIDE_PX = 190;
const TOP_PX = 58;
const MARGIN_PX = 30;
const GAP_PX = 116;
/** So many pieces are drawn with their heads; more would only blur. */
const MAX_HEADS = 60;

export function TurnDrawing({ job, turn }: { readonly job: Job; readonly turn: Turn }) {
  const { size, passes } = sceneOf(job, turn, LONGEST_SIDE_PX);
  const width = 2 * (MARGIN_PX + size.w) + GAP_PX;
  const second = MARGIN_PX + size.w + GAP_PX;
  const itself = job.brief.work.style === 'perfecting';
  return (
    <figure className="turn-figure">
      <svg
        className="turn-drawing"
        viewBox={`0 0 ${width} ${TOP_PX + size.h + 62}`}
        role="img"
        aria-label={inWords(passes, turn)}
      >
        <Pass pass={passes[0]} size={size} x={MARGIN_PX} />
        <Movement turn={turn} x={MARGIN_PX + size.w + GAP_PX / 2} y={TOP_PX + size.h / 2} itself={itself} />
        <Pass pass={passes[1]} size={size} x={second} />
      </svg>
      <figcaption className="soft">
        The edge at the top enters the printer. A triangle points to the head of each piece; F is a front, B a
        back.{itself ? '' : ' The three short strokes are the pencil line down the side of the pile.'}
      </figcaption>
    </figure>
  );
}

function Pass({ pass, size, x }: { readonly pass: DrawnPass; readonly size: Size; readonly x: number }) {
  const { pieces, guide, meets, leads, pencil } = pass;
  const { w, h } = size;
  const guided = (side: 'left' | 'right') => (side === 'left' ? -9 : w + 3);
  return (
    <g transform={`translate(${x} ${TOP_PX})`}>
      <path d={`M${w / 2} -14V-32M${w / 2 - 5} -26 ${w / 2} -33 ${w / 2 + 5} -26`} className="turn-feed" />
      <text x={w / 2} y={-40} className="turn-strong">
        Pass {pass.side}: {leads === 'lead' ? 'lead edge' : 'tail leads'}
      </text>
      <rect width={w} height={h} className="turn-sheet" />
      <path d={`M0 -5H${w}`} className={leads === 'lead' ? 'turn-lead' : 'turn-lead tail'} />
      {pieces.map((piece) => (
        <Piece key={`${piece.x} ${piece.y}`} piece={piece} heads={pieces.length <= MAX_HEADS} />
      ))}
      {(guide === undefined ? (['left', 'right'] as const) : [guide]).map((side) => (
        <rect key={side} x={guided(side)} y={h * 0.3} width={6} height={h * 0.4} className="turn-guide" />
      ))}
      <Pencil x={pencil.side === 'left' ? 0 : w} y={pencil.at === 'lead' ? 14 : h - 22} />
      <text x={w / 2} y={h + 20}>
        side {pass.side}
      </text>
      <text x={w / 2} y={h + 38}>
        {meets === undefined ? 'centred by the guides' : `side guide: ${meets} edge`}
      </text>
    </g>
  );
}

function Pencil({ x, y }: { readonly x: number; readonly y: number }) {
  return <path d={`M${x - 4} ${y}h8M${x - 4} ${y + 4}h8M${x - 4} ${y + 8}h8`} className="turn-pencil" />;
}

function Piece({ piece, heads }: { readonly piece: DrawnPiece; readonly heads: boolean }) {
  const { x, y, w, h, head, face } = piece;
  const lies = head === 90 || head === 270;
  const up = (lies ? w : h) / 2;
  const tip = Math.min(5, Math.min(w, h) / 5);
  return (
    <g>
      <rect x={x} y={y} width={w} height={h} className={`turn-piece ${face}`} />
      {heads && (
        <g transform={`translate(${x + w / 2} ${y + h / 2}) rotate(${-head})`}>
          <path d={`M${-tip} ${-up + 2.4 * tip}H${tip}L0 ${-up + 0.8 * tip}Z`} className="turn-head" />
          {Math.min(w, h) > 20 && (
            <text y={5} className="turn-face">
              {face === 'front' ? 'F' : 'B'}
            </text>
          )}
        </g>
      )}
    </g>
  );
}

function Movement({
  turn,
  x,
  y,
  itself,
}: {
  readonly turn: Turn;
  readonly x: number;
  readonly y: number;
  readonly itself: boolean;
}) {
  const sideways = turn === 'side-to-side';
  return (
    <g transform={`translate(${x} ${y})`}>
      <path d={sideways ? 'M0 -44V34' : 'M-34 0H34'} className="turn-axis" />
      <path d={sideways ? 'M30 8C28 -34 -20 -34 -26 0' : 'M6 34C44 26 44 -20 4 -26'} className="turn-arrow" />
      <path d={sideways ? 'M-34 -3 -26 9 -17 -2Z' : 'M7 -35 -5 -26 7 -17Z'} className="turn-tip" />
      <text y={56}>{sideways ? 'like a page' : 'end to end'}</text>
      {itself && <text y={72}>by the printer</text>}
    </g>
  );
}

/** The drawing for those who hear it. */
function inWords([first, second]: readonly [DrawnPass, DrawnPass], turn: Turn): string {
  const how =
    turn === 'side-to-side'
      ? 'It is turned over like a page, and the same edge leads again.'
      : 'It is turned over end to end, and the tail leads.';
  const held = (pass: DrawnPass) => (pass.meets === undefined ? 'centred' : `at its ${pass.meets} edge`);
  return `Pass 1: the sheet is held ${held(first)}, side 1 printed, lead edge first. ${how} Pass 2: it is held ${held(second)}, and side 2 is printed.`;
}
