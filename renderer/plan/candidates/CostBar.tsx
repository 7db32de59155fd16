// The parts of a cost as a bar. Parts are told apart by their hatch, not by colour.
import type { CostParts } from '../../../shared/plan/candidate.ts';
import { COST_PARTS, type CostPart } from '../../../shared/plan/costParts.ts';
import { showPercent } from '../../../shared/units/show.ts';

const BAR_LENGTH_PX = 160;
const BAR_HEIGHT_PX = 14;

/** How each part is hatched, on a tile of 6 x 6; paper stays blank within its outline. */
const HATCHES: Readonly<Record<CostPart, string>> = {
  paper: '',
  ink: 'M0 0h6v6h-6z',
  labour: 'M-1 1l2 -2M0 6l6 -6M5 7l2 -2',
  makeReady: 'M0 1.5h6M0 4.5h6',
  trimming: 'M1.5 0v6',
  wear: 'M1.5 1.5h1.6v1.6h-1.6zM4.5 4.5h1.6v1.6h-1.6z',
};

const hatchOf = (part: CostPart) => `hatch-${part}`;

/** The hatches, once for all bars of a page. */
export function CostHatches() {
  return (
    <svg className="cost-hatches" aria-hidden="true">
      <defs>
        {COST_PARTS.map(({ part }) => (
          <pattern key={part} id={hatchOf(part)} width="6" height="6" patternUnits="userSpaceOnUse">
            <rect width="6" height="6" className="cost-ground" />
            <path
              d={HATCHES[part]}
              className={part === 'ink' || part === 'wear' ? 'cost-solid' : 'cost-hatch'}
            />
          </pattern>
        ))}
      </defs>
    </svg>
  );
}

/** A bar as long as its share of `most`. */
export function CostBar({ cost, most }: { readonly cost: CostParts; readonly most: number }) {
  let from = 0.5;
  return (
    <svg
      className="cost-bar"
      viewBox={`0 0 ${BAR_LENGTH_PX + 1} ${BAR_HEIGHT_PX + 1}`}
      role="img"
      aria-label={COST_PARTS.map(({ part, name }) => `${name} ${share(cost[part], cost.total)}`).join(', ')}
    >
      {COST_PARTS.map(({ part, name }) => {
        const length = most > 0 ? (cost[part] / most) * BAR_LENGTH_PX : 0;
        const x = from;
        from += length;
        return (
          <rect
            key={part}
            x={x}
            y={0.5}
            width={length}
            height={BAR_HEIGHT_PX}
            fill={`url(#${hatchOf(part)})`}
            className="cost-part"
          >
            <title>
              {name}: {share(cost[part], cost.total)}
            </title>
          </rect>
        );
      })}
    </svg>
  );
}

/** What the hatches mean. */
export function CostLegend() {
  return (
    <ul className="cost-legend" aria-label="Parts of the cost">
      {COST_PARTS.map(({ part, name }) => (
        <li key={part}>
          <CostSwatch part={part} />
          {name}
        </li>
      ))}
    </ul>
  );
}

export function CostSwatch({ part }: { readonly part: CostPart }) {
  return (
    <svg className="cost-swatch" viewBox="0 0 19 15" aria-hidden="true">
      <rect x={0.5} y={0.5} width={18} height={14} fill={`url(#${hatchOf(part)})`} className="cost-part" />
    </svg>
  );
}

function share(amount: number, total: number): string {
  return showPercent(total > 0 ? amount / total : 0, 0);
}
