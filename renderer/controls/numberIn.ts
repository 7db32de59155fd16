// Reading a number as a person types it into a field.

const DECIMAL = /^[-−]?(\d+([.,]\d+)?|[.,]\d+)$/;
/** `1,000` may mean one or a thousand. */
const EITHER = /^[-−]?[1-9]\d{0,2},\d{3}$/;

/** The number that was typed, or what was typed where it is none or could be two, so that it is complained of. */
export function numberIn(typed: string): number | string {
  const trimmed = typed.trim();
  if (!DECIMAL.test(trimmed) || EITHER.test(trimmed)) return typed;
  return Number(trimmed.replace(',', '.').replace('−', '-'));
}
