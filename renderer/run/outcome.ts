// How a sending or a proving has ended, in one sentence.
import type { SendState, SentSheets } from '../../shared/contract/sending.ts';
import type { NoteTone } from '../controls/Note.tsx';
import type { Sending } from '../state/sendingState.ts';

/** What is said of it, and how it is meant. */
export interface OutcomeNote {
  readonly tone: NoteTone;
  readonly says: string;
}

/** What came of it; nothing while it is under way, and where it failed the fault says it. */
export function outcomeOf({ what, job, state }: Sending): OutcomeNote | undefined {
  const { title } = job.brief;
  if (state.at === 'cancelled') {
    return what === 'send'
      ? { tone: 'know', says: `Sending ${title} was stopped. Nothing of it is in the folder.` }
      : { tone: 'know', says: `Proving ${title} was stopped.` };
  }
  if (state.at !== 'done') return undefined;
  return what === 'send' ? ofSending(title, state.sent) : ofProving(title, state.sent);
}

function ofSending(title: string, { is, folder, proof }: SentSheets): OutcomeNote {
  const faults = proof.findings.length;
  if (is === 'held') {
    return {
      tone: 'bad',
      says: `${title} was held back: the proof found ${faultsOf(faults)} in the written sheets. Nothing of it is in ${folder.place}, and the RIP has seen nothing. Mend what is named below, then send again.`,
    };
  }
  return faults === 0
    ? { tone: 'good', says: `${title} is in ${folder.place}, and its proof found nothing wrong.` }
    : { tone: 'ask', says: `${title} is in ${folder.place}, sent despite ${faultsOf(faults)}.` };
}

function ofProving(title: string, { folder, proof }: SentSheets): OutcomeNote {
  const faults = proof.findings.length;
  return faults === 0
    ? { tone: 'good', says: `The files of ${title} in ${folder.place} are right.` }
    : { tone: 'bad', says: `The files of ${title} in ${folder.place} have ${faultsOf(faults)}.` };
}

function faultsOf(count: number): string {
  return count === 1 ? 'one fault' : `${count} faults`;
}

/** Whether the sheets were held back, so that sending them all the same may be asked for. */
export function wasHeld(state: SendState | undefined): boolean {
  return state?.at === 'done' && state.sent.is === 'held';
}
