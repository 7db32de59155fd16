// Something said in words, with a sign of how it is meant: good, worth knowing, to be settled, or wrong.
import type { ReactNode } from 'react';
import type { Fault } from '../../shared/fault/result.ts';
import './controls.css';

export type NoteTone = 'good' | 'know' | 'ask' | 'bad';

const SAID: Readonly<Record<NoteTone, string>> = {
  good: 'In order',
  know: 'Worth knowing',
  ask: 'To be settled',
  bad: 'Wrong',
};

/** The sign of a tone; each has a shape of its own, so that colour is not needed to tell them apart. */
export function Sign({ tone }: { readonly tone: NoteTone }) {
  return (
    <svg className={`sign ${tone}`} viewBox="0 0 16 16" role="img" aria-label={SAID[tone]}>
      {tone === 'good' && <path d="M3 8.5 6.5 12 13 4.5" />}
      {tone === 'know' && <path d="M8 7v5M8 3.6v.8" />}
      {tone === 'ask' && <path d="M8 1.8 14.6 14H1.4zM8 6.4v3.4M8 11.6v.6" />}
      {tone === 'bad' && <path d="M4 4l8 8M12 4l-8 8" />}
    </svg>
  );
}

export function Note({ tone, children }: { readonly tone: NoteTone; readonly children: ReactNode }) {
  return (
    <div className="note">
      <Sign tone={tone} />
      <div>{children}</div>
    </div>
  );
}

/** What is wrong, and what to do about it. */
export function FaultNote({ fault, tone = 'bad' }: { readonly fault: Fault; readonly tone?: NoteTone }) {
  return (
    <Note tone={tone}>
      {fault.message} <span className="soft">{fault.remedy}</span>
    </Note>
  );
}
