// What was ordered: the quantity of each piece and the overs, each changed by a named edit.
import { TakenField } from '../controls/Field.tsx';
import { app, useJob } from '../state/store.ts';

/** Does an edit from a typed number; says what is wrong with it, if anything. */
function take(typed: string, perform: (n: number) => ReturnType<ReturnType<typeof app.getState>['perform']>) {
  const done = perform(typed.trim() === '' ? Number.NaN : Number(typed));
  return done.ok ? undefined : done.fault.message;
}

export function Order() {
  const { pieces, overs } = useJob().brief;
  const { perform } = app.getState();
  return (
    <section className="read-panel plan-panel" aria-label="Order">
      <h3>Order</h3>
      <div className="plan-fields">
        {pieces.map((piece) => (
          <TakenField
            key={piece.name}
            label={piece.name}
            size="some"
            value={String(piece.quantity)}
            take={(typed) =>
              take(typed, (quantity) => perform({ do: 'set-quantity', piece: piece.name, quantity }))
            }
          />
        ))}
        <TakenField
          label="Overs, %"
          size="some"
          value={String(overs.percent)}
          take={(typed) =>
            take(typed, (percent) => perform({ do: 'set-overs', overs: { ...overs, percent } }))
          }
        />
        <TakenField
          label="Overs, at least"
          size="some"
          value={String(overs.least)}
          take={(typed) => take(typed, (least) => perform({ do: 'set-overs', overs: { ...overs, least } }))}
        />
      </div>
    </section>
  );
}
