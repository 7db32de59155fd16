// When something was done, as the person's own calendar has it.

const SHOWN = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** A time in UTC as it is written where the person is. */
export function whenInWords(utc: string): string {
  return SHOWN.format(new Date(utc));
}
