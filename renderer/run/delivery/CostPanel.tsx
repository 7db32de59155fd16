// What the run really cost against its plan, part by part, and why.

import { COST_PARTS } from '../../../shared/plan/costParts.ts';
import { compareCosts, type PartDifference } from '../../../shared/run/compareCosts.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { showMoney } from '../../../shared/units/show.ts';
import { Note } from '../../controls/Note.tsx';
import { MeasuredForm } from './MeasuredForm.tsx';

export function CostPanel({ run }: { readonly run: PrintRun }) {
  const compared = compareCosts(run);
  return (
    <section className="read-panel run-panel" aria-label="Cost against the plan">
      <h3>Cost against the plan</h3>
      <MeasuredForm run={run} />
      {compared === undefined ? (
        <Note tone="know">
          This run was begun without a plan for a printer of the library, so there is no cost to compare with.
          Choose where the job runs in the Plan stage before the next one is begun.
        </Note>
      ) : (
        <table className="delivery-table against-table">
          <thead>
            <tr>
              <th scope="col">Part</th>
              <th scope="col">Planned</th>
              <th scope="col">Actual</th>
              <th scope="col">Difference</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {compared.parts.map((part) => (
              <PartRow key={part.part} part={part} currency={compared.currency} />
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">Total</th>
              <td>{showMoney(compared.planned, compared.currency)}</td>
              <td>{showMoney(compared.actual, compared.currency)}</td>
              <td>{signed(compared.actual - compared.planned, compared.currency)}</td>
              <td />
            </tr>
          </tfoot>
        </table>
      )}
    </section>
  );
}

function PartRow({ part, currency }: { readonly part: PartDifference; readonly currency: string }) {
  const name = COST_PARTS.find((p) => p.part === part.part)?.name ?? part.part;
  return (
    <tr>
      <th scope="row">
        {name} <span className="soft">{part.known}</span>
      </th>
      <td>{showMoney(part.planned, currency)}</td>
      <td>{showMoney(part.actual, currency)}</td>
      <td>{signed(part.actual - part.planned, currency)}</td>
      <td>
        {part.because.length === 0 && <span className="soft">as planned</span>}
        {part.because.map(({ says, amount }) => (
          <p key={says}>
            {signed(amount, currency)}: {says}
          </p>
        ))}
      </td>
    </tr>
  );
}

function signed(amount: number, currency: string): string {
  return amount > 0.004 ? `+${showMoney(amount, currency)}` : showMoney(amount, currency);
}
