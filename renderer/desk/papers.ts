// Writing the papers of the job into a folder that is asked for.
import type { Papers } from '../../shared/contract/papers.ts';
import type { Result } from '../../shared/fault/result.ts';
import type { Job } from '../../shared/job/job.ts';
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { chooseFolder } from './choose.ts';

/** What was written; nothing where no folder was chosen. `paper`: its name in the library, if it was said. */
export async function savePapers(job: Job, paper: string | undefined): Promise<Result<Papers> | undefined> {
  const folder = await chooseFolder('The folder for run sheet and ticket');
  if (folder === undefined) return undefined;
  const { file } = app.getState();
  return host.ticket.write({
    job,
    folder: folder.folder,
    ...(file === undefined ? {} : { file: file.file }),
    ...(paper === undefined ? {} : { paper }),
  });
}
