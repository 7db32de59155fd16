// Telling what the system refuses from our own mistakes.

/** The code of an error that the system reported, or `undefined` for a mistake of our own. */
export function systemCode(error: unknown): string | undefined {
  if (!(error instanceof Error) || !('code' in error)) return undefined;
  return typeof error.code === 'string' && /^E[A-Z0-9]+$/.test(error.code) ? error.code : undefined;
}
