// The sending that is under way or has ended, and which job it was.
import type { StateCreator } from 'zustand';
import type { SendHandle } from '../../shared/contract/handles.ts';
import type { SendState } from '../../shared/contract/sending.ts';
import type { Job } from '../../shared/job/job.ts';

export interface Sending {
  readonly send: SendHandle;
  readonly what: 'send' | 'prove';
  /** The job as it was sent. */
  readonly job: Job;
  readonly state: SendState;
}

export interface SendingState {
  readonly sending: Sending | undefined;
  readonly beginSending: (sending: Omit<Sending, 'state'>) => void;
  /** What the host tells of a sending; of another than the last one it is not heard. */
  readonly noteSending: (send: SendHandle, state: SendState) => void;
  readonly endSending: () => void;
}

export const sendingState: StateCreator<SendingState> = (set, get) => ({
  sending: undefined,
  beginSending: (sending) =>
    set({ sending: { ...sending, state: { at: 'under-way', progress: { step: 'begin', done: 0, of: 1 } } } }),
  noteSending: (send, state) => {
    const { sending } = get();
    if (sending?.send === send) set({ sending: { ...sending, state } });
  },
  endSending: () => set({ sending: undefined }),
});
