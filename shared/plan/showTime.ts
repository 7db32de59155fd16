// Lengths of time as they are read.

/** `45 s`, `12 min`, `1 h 05 min`; from a minute on rounded up to whole minutes, since nobody plans in seconds. */
export function showTime(seconds: number): string {
  if (Math.round(seconds) < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.ceil(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  return `${Math.floor(minutes / 60)} h ${String(minutes % 60).padStart(2, '0')} min`;
}
