// Loading, turning and looking: what the hands do, in order, with the cautions that go with it.
import { registerEdges } from '../../shared/geometry/register.ts';
import { turnOf } from '../../shared/geometry/work.ts';
import { CAUTIONS } from '../../shared/job/cautions.ts';
import { countJob } from '../../shared/job/counts.ts';
import type { Job } from '../../shared/job/job.ts';
import { Note } from '../controls/Note.tsx';
import { useJob } from '../state/store.ts';
import { TurnDrawing } from './TurnDrawing.tsx';

export function RunSteps() {
  const job = useJob();
  const turn = turnOf(job.brief.work);
  return (
    <section className="run-panel" aria-label="Running the sheets">
      <h3>At the printer</h3>
      <div className="run-steps">
        <ol>
          {stepsOf(job).map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        {turn !== undefined && <TurnDrawing turn={turn} />}
      </div>
      <Note tone="ask">{CAUTIONS.feed}</Note>
      <Note tone="ask">{CAUTIONS.trim}</Note>
      <Note tone="ask">{CAUTIONS.lift}</Note>
    </section>
  );
}

/** The steps of this job. */
function stepsOf(job: Job): readonly string[] {
  const { work } = job.brief;
  const turn = turnOf(work);
  const { sheets } = countJob(job);
  const load = `Load ${sheets} sheets, square and with one edge marked, lead edge first.`;
  const printer =
    'Set the printer to 100 %, with no automatic rotation or centring and no borderless expansion; measure the printed ruler.';
  if (turn === undefined) return [load, printer, 'Print one sheet, measure it, then the rest.'];
  const edges = registerEdges(turn).join(' and ');
  const proof = `Hold the proof sheet to the light: front behind back, heads the right way, ${edges} margins equal, crop marks on each other.`;
  if (work.style === 'perfecting') {
    return [
      load,
      printer,
      'Print one sheet; the printer turns it itself.',
      proof,
      'Print the rest, and count the spoiled ones.',
    ];
  }
  const turned =
    turn === 'side-to-side'
      ? 'Turn the pile over like a page: the same edge leads, the side guide meets the other edge.'
      : 'Turn the pile over end to end: the tail leads now, the side guide meets the same edge.';
  const second =
    work.style === 'work-and-back' ? 'Print side 2 from its own file.' : 'Print the same file again.';
  return [
    load,
    printer,
    'Take one sheet through both passes before the others.',
    'Print side 1, and let it dry as its ink asks.',
    turned,
    second,
    proof,
    'Run the rest of the pile the same way, and count the spoiled sheets of each pass.',
  ];
}
