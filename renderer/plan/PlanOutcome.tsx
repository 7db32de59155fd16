// What the sheet on the bench comes to: sheets, what each design gets, the margins that register, what is worth knowing.
import { paperError, registerEdges } from '../../shared/geometry/register.ts';
import { hasOneForm, turnOf } from '../../shared/geometry/work.ts';
import type { WorkOffer } from '../../shared/job/compareWorks.ts';
import { countJob } from '../../shared/job/counts.ts';
import { type Job, sheetOf } from '../../shared/job/job.ts';
import { registerMargins } from '../../shared/layout/registerMargins.ts';
import { showLength } from '../../shared/units/show.ts';
import { Button } from '../controls/Button.tsx';
import { Note } from '../controls/Note.tsx';
import { app, useJob } from '../state/store.ts';

/** `offer`: what a fresh layout in the chosen way would hold; none where there is none. */
export function PlanOutcome({ offer }: { readonly offer: WorkOffer | undefined }) {
  const job = useJob();
  const count = countJob(job);
  const laid = job.arrangement.length;
  return (
    <section className="read-panel plan-panel" aria-label="Sheets">
      <h3>
        {count.sheets} sheets: {count.needed} needed and {count.overs} overs
      </h3>
      {offer !== undefined && offer.up !== laid && (
        <div className="plan-differs">
          <Note tone="ask">
            {laid === 1 ? 'One piece lies' : `${laid} pieces lie`} on the bench; a fresh layout would hold{' '}
            {offer.up} and take {offer.count.sheets} sheets.
          </Note>
          <Button onPress={() => app.getState().perform({ do: 'lay-out' })}>Lay out the sheet afresh</Button>
        </div>
      )}
      <table className="plan-table">
        <thead>
          <tr>
            <th scope="col">Piece</th>
            <th scope="col">On a sheet</th>
            <th scope="col">Wanted</th>
            <th scope="col">From the sheets needed</th>
            <th scope="col">Left over</th>
          </tr>
        </thead>
        <tbody>
          {count.yields.map((y) => (
            <tr key={y.piece}>
              <th scope="row">{y.piece}</th>
              <td>{y.perSheet}</td>
              <td>{y.wanted}</td>
              <td>{y.fromNeeded}</td>
              <td>{y.leftOver < 0 ? `${-y.leftOver} missing` : y.leftOver}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <Register job={job} />
      {offer?.notices.map((notice) => (
        <Note key={notice} tone="know">
          {notice}
        </Note>
      ))}
    </section>
  );
}

/** The margins that register the second pass, and what an error in the paper does to it. */
function Register({ job: { brief, arrangement } }: { readonly job: Job }) {
  const turn = turnOf(brief.work);
  if (turn === undefined) {
    return <Note tone="know">Only one side is printed, so nothing has to meet behind it.</Note>;
  }
  const [first, second] = registerEdges(turn);
  const measured = registerMargins(
    arrangement.map((p) => p.trim),
    turn,
    sheetOf(brief).size,
  );
  const margins = measured?.margins.map((m) => showLength(m, brief.units)) ?? [];
  const unlike = measured !== undefined && !measured.equal && hasOneForm(brief.work);
  return (
    <>
      <Note tone={unlike ? 'bad' : 'know'}>
        The {first} and {second} margins register the second pass
        {margins.length === 0 ? '.' : `: ${first} ${margins[0]}, ${second} ${margins[1]}.`}
        {unlike && ' One form for both passes needs them equal.'}
      </Note>
      <Note tone="know">{paperError(turn, brief.sheet.hold).words}</Note>
    </>
  );
}
