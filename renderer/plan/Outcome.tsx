// What the laid-out sheet comes to: sheets, what each design gets, the margins that register, and what is worth knowing.
import { paperError, registerEdges } from '../../shared/geometry/register.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { countJob } from '../../shared/job/counts.ts';
import { layOutBrief } from '../../shared/job/layOutJob.ts';
import { Note } from '../controls/Note.tsx';
import { useJob } from '../state/store.ts';

export function Outcome() {
  const job = useJob();
  const count = countJob(job);
  const turn = turnOf(job.brief.work);
  const laid = layOutBrief(job.brief);
  const notices = laid.ok ? laid.value.notices : [];
  return (
    <section className="plan-panel" aria-label="Sheets">
      <h3>
        {count.sheets} sheets: {count.needed} needed and {count.overs} overs
      </h3>
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
              <td>{y.leftOver}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {turn !== undefined && (
        <Note tone="know">
          The {registerEdges(turn).join(' and ')} margins register the second pass.{' '}
          {paperError(turn, job.brief.sheet.hold).words}
        </Note>
      )}
      {notices.map((notice) => (
        <Note key={notice} tone="know">
          {notice}
        </Note>
      ))}
    </section>
  );
}
