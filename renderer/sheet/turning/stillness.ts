// Whether the person wants no motion: what would move is then shown where it comes to lie.

export const wantsStillness = (): boolean => matchMedia('(prefers-reduced-motion: reduce)').matches;
