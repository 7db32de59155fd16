// What one piece costs on each printer, however many are ordered, and where another printer becomes the cheapest.
import { changesOfCheapest, lastChanges } from '../../../shared/plan/cheapest.ts';
import type { CostCurve } from '../../../shared/plan/costCurve.ts';
import { CostChart } from './CostChart.tsx';
import { linesOf } from './costLines.ts';
import './chart.css';
import { showMoney } from '../../../shared/units/show.ts';

interface Props {
  readonly curves: readonly CostCurve[];
  readonly ordered: number;
  readonly currency: string;
}

export function CostOfEach({ curves, ordered, currency }: Props) {
  if (curves.length === 0) return null;
  const changes = lastChanges(changesOfCheapest(curves));
  return (
    <section className="read-panel plan-panel" aria-label="Cost of one piece">
      <h3>Cost of one piece</h3>
      <CostChart
        lines={linesOf(curves)}
        crossings={changes}
        ordered={ordered}
        money={(amount) => showMoney(amount, currency)}
      />
      <ul className="changes">
        {changes.map(({ quantity, cheaperBefore, cheaperFrom }) => (
          <li key={quantity}>
            From <strong>{quantity}</strong> pieces on, {cheaperFrom} is cheaper than {cheaperBefore}.
          </li>
        ))}
        {changes.length === 0 && <li>At every quantity shown the same printer is the cheapest.</li>}
      </ul>
    </section>
  );
}
