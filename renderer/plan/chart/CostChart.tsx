// The chart of cost per piece against quantity: a line for each printer, where they cross, and the quantity ordered.
import { scaleLinear, scaleLog } from 'd3-scale';
import { curveStepAfter, line } from 'd3-shape';
import type { BreakEven } from '../../../shared/plan/cheapest.ts';
import { type CostLine, rangeOf } from './costLines.ts';
import { placeLabels } from './placeLabels.ts';

interface Props {
  readonly lines: readonly CostLine[];
  readonly crossings: readonly BreakEven[];
  /** The quantity that is ordered now. */
  readonly ordered: number;
  /** An amount of money in words. */
  readonly money: (amount: number) => string;
}

const SIZE = { w: 960, h: 340 };
/** Room for the names of the lines at the right, for the scales at the left and below, and for what stands above. */
const ROOM = { left: 64, right: 170, top: 48, bottom: 44 };
const LABEL_DISTANCE_PX = 16;
const TICK_COUNT = 5;

/** Lines are told apart by their dashes and by the name at their end, not by colour. */
const DASHES = ['', '9 4', '2 4', '12 4 2 4', '5 3'] as const;

export function CostChart({ lines, crossings, ordered, money }: Props) {
  const { quantity, cost } = rangeOf(lines);
  const right = SIZE.w - ROOM.right;
  const bottom = SIZE.h - ROOM.bottom;
  const x = scaleLog().domain(quantity).range([ROOM.left, right]);
  const y = scaleLinear().domain(cost).nice(TICK_COUNT).range([bottom, ROOM.top]);
  const draw = line<{ readonly quantity: number; readonly perPiece: number }>()
    .x((p) => x(p.quantity))
    .y((p) => y(p.perPiece))
    .curve(curveStepAfter);
  const labels = placeLabels(
    lines.map((l) => y(l.points.at(-1)?.perPiece ?? 0)),
    LABEL_DISTANCE_PX,
  );
  return (
    <svg
      className="cost-chart"
      viewBox={`0 0 ${SIZE.w} ${SIZE.h}`}
      role="img"
      aria-label={inWords(lines, crossings, ordered)}
    >
      {y.ticks(TICK_COUNT).map((tick) => (
        <g key={tick}>
          <path d={`M${ROOM.left} ${y(tick)}H${right}`} className="chart-grid" />
          <text x={ROOM.left - 8} y={y(tick) + 4} className="chart-figure at-end">
            {money(tick)}
          </text>
        </g>
      ))}
      {x.ticks(TICK_COUNT).map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${bottom}v5`} className="chart-axis" />
          <text x={x(tick)} y={bottom + 18} className="chart-figure">
            {showsFigure(tick) ? tick : ''}
          </text>
        </g>
      ))}
      <path d={`M${ROOM.left} ${bottom}H${right}`} className="chart-axis" />
      <text x={(ROOM.left + right) / 2} y={SIZE.h - 6} className="chart-name">
        pieces ordered
      </text>
      <text x={8} y={16} className="chart-name at-start">
        cost of one piece
      </text>
      {crossings.map((crossing) => (
        <g key={crossing.quantity}>
          <path d={`M${x(crossing.quantity)} ${ROOM.top - 4}V${bottom}`} className="chart-crossing" />
          <text x={x(crossing.quantity)} y={ROOM.top - 8} className="chart-figure strong">
            {crossing.quantity}
          </text>
        </g>
      ))}
      <path d={`M${x(ordered)} ${ROOM.top}V${bottom}`} className="chart-ordered" />
      <path d={`M${x(ordered) - 5} ${bottom}l5 -8 5 8z`} className="chart-ordered-foot" />
      {lines.map((l, index) => (
        <g key={l.name}>
          <path
            d={draw([...l.points]) ?? ''}
            className="chart-line"
            strokeDasharray={DASHES[index % DASHES.length]}
          />
          <text x={right + 8} y={(labels[index] ?? 0) + 4} className="chart-name at-start">
            {l.name}
          </text>
        </g>
      ))}
    </svg>
  );
}

/** Of the ticks of a decade, these have room for their figures. */
function showsFigure(tick: number): boolean {
  return /^[125]0*$/.test(String(tick));
}

function inWords(lines: readonly CostLine[], crossings: readonly BreakEven[], ordered: number): string {
  const said = crossings.map(
    (c) => `from ${c.quantity} pieces on ${c.cheaperFrom} is cheaper than ${c.cheaperBefore}`,
  );
  return `Cost of one piece against the quantity, for ${lines.map((l) => l.name).join(', ')}; ${ordered} are ordered${said.length > 0 ? `; ${said.join('; ')}` : ''}`;
}
