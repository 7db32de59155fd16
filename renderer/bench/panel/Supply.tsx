// The pieces of the job, to put one more of each on the sheet.
import { hasOneForm } from '../../../shared/geometry/work.ts';
import { trimOf } from '../../../shared/job/job.ts';
import { leadersOf } from '../../../shared/job/partners.ts';
import { showSize } from '../../../shared/units/show.ts';
import { Button } from '../../controls/Button.tsx';
import { app } from '../../state/store.ts';
import { newPlace } from '../gesture/newPlace.ts';
import { useSettledJob } from '../useSettledJob.ts';

export function Supply() {
  const job = useSettledJob();
  const { pieces, units, work } = job.brief;
  const put = (index: number) => {
    const piece = pieces[index];
    if (piece === undefined) return;
    const done = app.getState().perform(newPlace(job, piece));
    if (done.ok) app.getState().select(leadersOf(done.value, [job.arrangement.length]));
  };
  return (
    <section className="block" aria-label="Pieces of the job">
      <h2>Pieces of the job</h2>
      <ul className="supply">
        {pieces.map((piece, i) => {
          const count = job.arrangement.filter((p) => p.piece === piece.name).length;
          return (
            <li key={piece.name}>
              <span className="named">
                <span className="piece-name" title={piece.name}>
                  {piece.name}
                </span>
                <span className="soft">
                  {showSize(trimOf(piece), units)}, {count} on the sheet
                </span>
              </span>
              <Button onPress={() => put(i)} label={`Put one more ${piece.name} on the sheet`}>
                Add
              </Button>
            </li>
          );
        })}
      </ul>
      {hasOneForm(work) && (
        <p className="soft">Each comes with its partner: one front and one back, mirrored.</p>
      )}
    </section>
  );
}
