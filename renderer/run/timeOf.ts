// Times of the log as the person's clock shows them.

/** `14:05`. */
export function timeOf(at: string): string {
  return new Date(at).toLocaleTimeString(undefined, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
}

/** The day, in the writing of the person's system, and the time. */
export function dayAndTimeOf(at: string): string {
  return `${new Date(at).toLocaleDateString()} ${timeOf(at)}`;
}
