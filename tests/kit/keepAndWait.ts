// A host in a process of its own: opens the job in a folder, keeps a change of it, says so, and waits to be killed.
import { join } from 'node:path';
import { edit } from '../../shared/job/edit.ts';
import { granted } from './granted.ts';
import { chosen, openRig } from './hostRig.ts';

const [, , folder = ''] = process.argv;
const rig = await openRig(folder);
const { open, keep } = rig.host.handlers.job;
const { job, file } = granted(await open({ file: await chosen(rig, join(folder, 'start.turnlay')) }));
const changed = granted(edit(job, { do: 'retitle', title: 'Kept before the blow' }));
granted(await keep({ job: changed, ...(file === undefined ? {} : { file: file.file }) }));
console.log('kept');
setInterval(() => undefined, 1000);
