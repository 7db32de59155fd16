// The ticket of a job as a program would write it.
import type { Job } from '../../shared/job/job.ts';
import { type TicketInput, writeXjdf } from '../../shared/ticket/xjdf.ts';

export const ticketOf = (job: Job, changes: Partial<TicketInput> = {}): string =>
  writeXjdf({
    job,
    fingerprint: '0123456789abcdef'.repeat(4),
    created: '2026-03-01T14:30:00Z',
    version: '1.2.3',
    urlOf: (file) => `art/${encodeURIComponent(file)}`,
    sizes: new Map(),
    ...changes,
  });
