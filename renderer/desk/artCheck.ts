// Looking at the art of the job again: whether each file still is what the job was laid out with.
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';

/** Asks the host, and shows what it found. */
export async function checkArt(): Promise<void> {
  const { history, file, report, noteArt, say } = app.getState();
  if (history === undefined) return;
  const checked = await host.art.check({
    job: history.present,
    ...(file === undefined ? {} : { file: file.file }),
  });
  if (!checked.ok) return report(checked.fault);
  noteArt(checked.value);
  const other = checked.value.filter((a) => a.state !== 'as-laid-out').length;
  say(other === 0 ? 'All art is as it was laid out.' : `${other} of the art files are not as they were.`);
}
