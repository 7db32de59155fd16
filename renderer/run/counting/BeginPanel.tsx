// Before the first count: what a run is, and how it is begun.
import { sheetsOf } from '../../../shared/run/events.ts';
import { planRun } from '../../../shared/run/plan.ts';
import { Button } from '../../controls/Button.tsx';
import { beginRun } from '../../desk/runs.ts';
import { isUnsaved } from '../../state/deskState.ts';
import { useApp, useJob } from '../../state/store.ts';

export function BeginPanel() {
  const job = useJob();
  const saved = !useApp(isUnsaved);
  const beginning = useApp((s) => s.beginningRun);
  const { sheets, needed, passes, designs } = planRun(job);
  const none = designs.every((d) => d.perSheet === 0);
  return (
    <section className="read-panel run-panel" aria-label="Beginning">
      <h3>Count the sheets as they are printed</h3>
      <p>
        {sheetsOf(sheets)} to load: {needed} needed and {sheets - needed} overs,{' '}
        {passes === 1 ? 'once through the printer' : 'twice through the printer'}. Every count is kept in a
        log beside the job at once, so that nothing is lost when the lid is closed or the power fails.
      </p>
      {!saved && (
        <p className="soft">
          The job as it is now is not saved yet; it is saved first, so that the log is of what its file holds.
        </p>
      )}
      <div className="run-does">
        <Button kind="main" disabled={none || beginning} onPress={() => void beginRun(false)}>
          {saved ? 'Begin the run' : 'Save the job and begin the run'}
        </Button>
        {beginning && <span role="status">The plan is reckoned once more, with the ink of the art…</span>}
      </div>
      {none && <p className="soft">Nothing lies on the sheet. Lay pieces out on the bench first.</p>}
    </section>
  );
}
