// The forms of a gang run: what lies on each, and what every piece gets out of all of them.
import type { GangProposal, ProposedForm } from '../../../shared/gang/gangJob.ts';
import { showMoney } from '../../../shared/units/show.ts';
import { Button } from '../../controls/Button.tsx';

interface Props {
  readonly proposal: GangProposal;
  readonly currency: string;
  /** Opens one form, counted from 0, as a job of its own. */
  readonly lay: (form: number) => void;
}

export function GangForms({ proposal: { forms, pieces, sheets, leftOverCost }, currency, lay }: Props) {
  const upOf = (form: ProposedForm, name: string) => form.pieces.find(({ piece }) => piece === name)?.up ?? 0;
  const leftOver = pieces.reduce((sum, piece) => sum + piece.leftOver, 0);
  return (
    <div className="gang-scroll">
      <table className="plan-table gang-table">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            {forms.map((form, f) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a form is its place among the forms.
              <th key={f} scope="col">
                Form {f + 1}
                <span className="soft">{form.sheets} sheets</span>
              </th>
            ))}
            <th scope="col">Wanted</th>
            <th scope="col">Printed</th>
            <th scope="col">Left over</th>
          </tr>
        </thead>
        <tbody>
          {pieces.map(({ piece, wanted, printed, leftOver: over }) => (
            <tr key={piece}>
              <th scope="row">{piece}</th>
              {forms.map((form, f) => (
                // biome-ignore lint/suspicious/noArrayIndexKey: a form is its place among the forms.
                <td key={f}>{upOf(form, piece) === 0 ? '–' : `${upOf(form, piece)} up`}</td>
              ))}
              <td>{wanted}</td>
              <td>{printed}</td>
              <td>{over}</td>
            </tr>
          ))}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">As a job of its own</th>
            {forms.map((_form, f) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a form is its place among the forms.
              <td key={f}>
                <Button kind="quiet" label={`Lay out form ${f + 1}`} onPress={() => lay(f)}>
                  Lay out
                </Button>
              </td>
            ))}
            <td colSpan={3} />
          </tr>
        </tfoot>
      </table>
      <p className="soft">
        {sheets} good sheets in all, overs not counted. {leftOver} pieces are printed beyond the order; they
        take {showMoney(leftOverCost, currency)} of the cost.
      </p>
    </div>
  );
}
