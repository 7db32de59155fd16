// The candidates side by side, best first, one of them chosen.
import type { Work } from '../../../shared/geometry/work.ts';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { showMoney, showTime } from '../../../shared/units/show.ts';
import { nameStyle, nameTurn, nameWork } from '../nameWork.ts';
import { CostBar } from './CostBar.tsx';
import { paperOf } from './inWords.ts';

interface Props {
  readonly candidates: readonly PlanCandidate[];
  readonly chosen: string | undefined;
  readonly currency: string;
  readonly choose: (id: string) => void;
}

export function CandidateTable({ candidates, chosen, currency, choose }: Props) {
  const most = Math.max(...candidates.map((c) => c.cost.total));
  return (
    <table className="candidates">
      <thead>
        <tr>
          <th scope="col">Printer and paper</th>
          <th scope="col" className="words">
            Way of working
          </th>
          <th scope="col">Up</th>
          <th scope="col">Sheets</th>
          <th scope="col">Total time</th>
          <th scope="col">Attended</th>
          <th scope="col">Waste</th>
          <th scope="col" colSpan={2}>
            Cost
          </th>
          <th scope="col">Cost per piece</th>
        </tr>
      </thead>
      <tbody>
        {candidates.map((c) => (
          <tr key={c.id} data-chosen={c.id === chosen || undefined}>
            <th scope="row">
              <label className="candidate">
                <input
                  type="radio"
                  name="candidate"
                  checked={c.id === chosen}
                  onChange={() => choose(c.id)}
                  aria-label={`${c.printer.name}, ${c.feed.name}, ${paperOf(c)}, ${nameWork(c.work)}, ${c.up} up`}
                />
                <span>
                  <strong>
                    {c.printer.name}, {c.feed.name}
                  </strong>
                  <span className="soft">{paperOf(c)}</span>
                </span>
              </label>
            </th>
            <td className="words">
              <Way work={c.work} />
            </td>
            <td>{c.up}</td>
            <td>{c.count.sheets}</td>
            <td>{showTime(c.time.total)}</td>
            <td>{showTime(c.time.attended)}</td>
            <td>{Math.round((c.area.waste / c.area.bought) * 100)} %</td>
            <td className="cost-drawn">
              <CostBar cost={c.cost} most={most} />
            </td>
            <td>{showMoney(c.cost.total, currency)}</td>
            <td>{showMoney(c.perPiece, currency)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The style, and below it the turn. */
function Way({ work }: { readonly work: Work }) {
  const turned = nameTurn(work);
  return (
    <>
      {nameStyle(work)}
      {turned !== undefined && <span className="soft">{turned}</span>}
    </>
  );
}
