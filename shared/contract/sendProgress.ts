// How far a sending or a proving is: a step, and how much of it is done. Words are made of it where a person reads them.

/** The steps, in the order in which they are taken. A proving has no sheets to write, a sending none to find. */
export type SendStep = 'begin' | 'read-art' | 'write-sheets' | 'write-files' | 'find-files' | 'prove';

export interface SendProgress {
  readonly step: SendStep;
  /** How much of the step is done, of `of`: faces where it proves. */
  readonly done: number;
  readonly of: number;
}

const STEP_WORDS: Readonly<Record<SendStep, string>> = {
  begin: 'Beginning',
  'read-art': 'Looking through the art',
  'write-sheets': 'Writing the sheets',
  'write-files': 'Writing into the folder',
  'find-files': 'Reading the sheets',
  prove: 'Proving what was written',
};

/** The step alone, in words. */
export function stepInWords(step: SendStep): string {
  return STEP_WORDS[step];
}

/** The step, and how far it is. */
export function progressInWords({ step, done, of }: SendProgress): string {
  return step === 'prove' ? `${STEP_WORDS[step]}: ${done} of ${of} faces` : STEP_WORDS[step];
}
