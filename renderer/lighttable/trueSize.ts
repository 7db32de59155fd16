// True size: how many px of this screen an inch takes, once the person has held a ruler against it.

/** A screen that keeps to the standard shows an inch on 96 px (CSS Values and Units 3, 5.2). */
const CSS_PX_PER_INCH = 96;
const KEPT_AS = 'turnlay-true-size';
/** A measure beyond these is a slip. */
const BELIEVABLE = { least: 0.5, most: 2 } as const;

/** Px of the window to the pt. */
export function trueZoom(): number {
  const kept = Number(localStorage.getItem(KEPT_AS));
  return (CSS_PX_PER_INCH / 72) * (isBelievable(kept) ? kept : 1);
}

/**
 * Takes what the person measured on the screen where a ruler says `shown` (one unit for both), and says whether that
 * can be.
 */
export function correctTrueSize(shown: number, measured: number): boolean {
  const corrected = ((trueZoom() * 72) / CSS_PX_PER_INCH) * (shown / measured);
  if (!isBelievable(corrected)) return false;
  localStorage.setItem(KEPT_AS, String(corrected));
  return true;
}

function isBelievable(factor: number): boolean {
  return factor >= BELIEVABLE.least && factor <= BELIEVABLE.most;
}
