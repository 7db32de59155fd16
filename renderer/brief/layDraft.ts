// Laying out what was written: a new job, or an edit of the job that is open.
import type { Fault } from '../../shared/fault/result.ts';
import type { Brief } from '../../shared/job/brief.ts';
import { show } from '../desk/opening.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';

/** Lays the brief out and shows the job, or says why it cannot be laid out. */
export async function layBrief(brief: Brief, changes: boolean): Promise<Fault | undefined> {
  const laid = await host.job.lay({ brief });
  if (!laid.ok) return laid.fault;
  const { perform, putDraftAway, nameArt, noteArt, showScreen, goTo } = app.getState();
  if (!changes) {
    putDraftAway();
    await show(laid, 'art');
    return undefined;
  }
  const changed = perform({ do: 'change-brief', laid: laid.value.job });
  if (!changed.ok) return changed.fault;
  nameArt(laid.value.artNames);
  noteArt(laid.value.art);
  app.setState({ notices: laid.value.notices });
  putDraftAway();
  showScreen('job');
  goTo('bench');
  return undefined;
}
