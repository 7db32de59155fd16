// Doing an edit: a job and a command give a new job, or a refusal that leaves the old one as it was.
import type { Result } from '../fault/result.ts';
import type { Command } from './commands.ts';
import { editArrangement } from './editArrangement.ts';
import { editBrief } from './editBrief.ts';
import { editOrder } from './editOrder.ts';
import type { Job } from './job.ts';

/** The job after the edit. In a one-form style the partner of every changed position follows as its mirror. */
export function edit(job: Job, command: Command): Result<Job> {
  switch (command.do) {
    case 'retitle':
    case 'set-quantity':
    case 'set-overs':
    case 'turn-art':
    case 'set-reader-turn':
      return editBrief(job, command);
    case 'set-work':
    case 'take-plan':
    case 'set-marks':
    case 'set-file-names':
    case 'take-art':
    case 'change-brief':
      return editOrder(job, command);
    default:
      return editArrangement(job, command);
  }
}
