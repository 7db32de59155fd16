// What was ordered, printed, counted and delivered of each design, and the next delivery.
import { againstOrder, deliveryOf } from '../../../shared/run/delivery.ts';
import type { PrintRun } from '../../../shared/run/run.ts';
import { DeliverForm } from './DeliverForm.tsx';

export function DeliveryPanel({ run }: { readonly run: PrintRun }) {
  const lines = deliveryOf(run);
  return (
    <section className="read-panel run-panel" aria-label="Delivery">
      <h3>Good pieces against the order</h3>
      <table className="delivery-table">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">Ordered</th>
            <th scope="col">Printed</th>
            <th scope="col">Spoiled in trimming</th>
            <th scope="col">Counted good</th>
            <th scope="col">Delivered</th>
            <th scope="col">Against the order</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) => (
            <tr key={line.piece}>
              <th scope="row">{line.piece}</th>
              <td>{line.wanted}</td>
              <td>{line.printed}</td>
              <td>{line.spoiled}</td>
              <td>{line.good}</td>
              <td>{line.delivered}</td>
              <td>{againstOrder(line.delivered, line.wanted)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <DeliverForm key={lines.map((l) => l.delivered + l.good).join()} lines={lines} />
    </section>
  );
}
