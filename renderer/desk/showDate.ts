// How dates and times are written for people: as their own system writes them, on their own clock.

const DAY_AND_TIME = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });
const TIME = new Intl.DateTimeFormat(undefined, { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });

/** The day and the time of a moment in UTC. */
export function showDayAndTime(utc: string): string {
  return DAY_AND_TIME.format(new Date(utc));
}

/** The time of day of a moment in UTC: `14:05`. */
export function showTimeOfDay(utc: string): string {
  return TIME.format(new Date(utc));
}
