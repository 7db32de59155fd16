// `demo`: draws the art of an invented job, writes its briefs, and runs the whole way from art over the plan to proved sheets
// and the papers for the printer and the knife.
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { writeLibrary } from '../../shared/library/readLibrary.ts';
import { startingLibrary } from '../../shared/library/startingLibrary.ts';
import { drawMenu, drawSupper, drawTag } from '../demo/art.ts';
import { SUPPER_BRIEF, TABLE_BRIEF } from '../demo/briefs.ts';
import { writingFault } from '../disk/fileFaults.ts';
import { answer, answerFault } from './answer.ts';
import { lay } from './layCommand.ts';
import { plan } from './planCommand.ts';
import { send } from './sendCommand.ts';
import { ticket } from './ticketCommand.ts';

/** Makes everything below `folder`; what an earlier demo left there is written afresh. */
export async function demo(folder: string): Promise<void> {
  const rip = join(folder, 'rip');
  try {
    await drawAll(folder, rip);
  } catch (error) {
    return answerFault(false, writingFault(error, folder));
  }
  const library = join(folder, 'library.json');
  await plan(join(folder, 'supper.json'), { library, by: 'cost', json: false });
  if (process.exitCode) return;
  for (const name of ['supper', 'table']) {
    const job = join(folder, `${name}.turnlay`);
    await lay(join(folder, `${name}.json`), { job, json: false });
    if (process.exitCode) return;
    await send(job, {
      to: rip,
      json: false,
      pictures: join(folder, 'pictures', name),
      overwrite: true,
      despiteFindings: false,
    });
    if (process.exitCode) return;
    await ticket(job, { to: join(folder, 'papers'), library, json: false });
    if (process.exitCode) return;
  }
  answer(false, undefined, [
    `The sheets are in ${rip}, pictures of every piece in ${join(folder, 'pictures')}, run sheets and cutting orders in ${join(folder, 'papers')}.`,
  ]);
}

async function drawAll(folder: string, rip: string): Promise<void> {
  const now = new Date();
  const made = await mkdir(folder, { recursive: true });
  // A folder of the demo's own is no part of the working copy that it may lie in.
  if (made !== undefined) await writeFile(join(folder, '.gitignore'), '*\n');
  await mkdir(rip, { recursive: true });
  await mkdir(join(folder, 'papers'), { recursive: true });
  await writeFile(join(folder, 'library.json'), writeLibrary(startingLibrary()));
  await writeFile(join(folder, 'supper.pdf'), await drawSupper(now));
  await writeFile(join(folder, 'menu.pdf'), await drawMenu(now));
  await writeFile(join(folder, 'tag.pdf'), await drawTag(now));
  await writeFile(join(folder, 'supper.json'), `${JSON.stringify(SUPPER_BRIEF, undefined, 2)}\n`);
  await writeFile(join(folder, 'table.json'), `${JSON.stringify(TABLE_BRIEF, undefined, 2)}\n`);
}
