// What went wrong when a person, a file or a folder caused it: a value with a code, a sentence and a remedy.

/** Every kind of fault a person can meet. One list, so that a switch over it can be exhaustive. */
export type FaultCode =
  // typing
  | 'length-unreadable'
  | 'brief-invalid'
  | 'job-invalid'
  | 'job-link-unknown'
  | 'job-too-new'
  | 'library-invalid'
  | 'library-too-new'
  // laying out
  | 'piece-too-large'
  | 'pieces-do-not-fit-together'
  | 'no-room-after-turning'
  | 'edit-refused'
  | 'gang-impossible'
  | 'ink-reading-invalid'
  // planning
  | 'plan-impossible'
  | 'paper-unknown'
  // cutting
  | 'no-guillotine-order'
  | 'cutter-refuses'
  // art
  | 'art-missing'
  | 'art-changed'
  | 'art-not-pdf'
  | 'art-locked'
  | 'art-damaged'
  | 'art-empty'
  | 'art-too-large'
  | 'art-page-missing'
  | 'art-size-unclear'
  | 'art-size-wrong'
  | 'art-bleed-short'
  | 'art-took-too-long'
  // files and folders
  | 'file-missing'
  | 'file-unreadable'
  | 'file-exists'
  | 'file-changed'
  | 'folder-missing'
  | 'folder-read-only'
  | 'disk-full'
  | 'name-unusable'
  | 'write-failed'
  | 'own-file-damaged'
  | 'own-file-too-new'
  | 'send-cancelled'
  // window and host
  | 'handle-unknown'
  | 'browsing-off'
  // run
  | 'count-refused'
  // proof
  | 'sheet-missing'
  | 'sheet-unreadable'
  | 'proof-failed';

/** One fault, said so that a printer knows what to do: `message` says what is wrong, `remedy` what to do next. */
export interface Fault {
  readonly code: FaultCode;
  readonly message: string;
  readonly remedy: string;
  /** Where it is, as a person would point at it: a field of the brief (`pieces[0].trim`) or a file. */
  readonly where?: string;
}

/** The outcome of anything a person can make go wrong. Exceptions are kept for our own mistakes. */
export type Result<T, F = Fault> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly fault: F };

export function ok<T>(value: T): { readonly ok: true; readonly value: T } {
  return { ok: true, value };
}

export function refuse<F = Fault>(fault: F): { readonly ok: false; readonly fault: F } {
  return { ok: false, fault };
}
