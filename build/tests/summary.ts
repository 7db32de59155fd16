// What a test run tells at its end: a line for each part, and one for all.
import type { Counted } from './parts.ts';

export function summaryLine({
  name,
  passed,
  failed,
  seconds,
}: Counted & { readonly name: string; readonly seconds: number }): string {
  const [minutes, rest] = [Math.floor(seconds / 60), String(seconds % 60).padStart(2, '0')];
  return `${failed > 0 ? 'FAILED' : 'passed'}  ${minutes}:${rest}  ${name}: ${passed} passed, ${failed} failed`;
}

/** The last line, alone on it: `2596 passed, 0 failed`. */
export function closingLine(counted: readonly Counted[]): string {
  const sum = (of: keyof Counted) => counted.reduce((all, part) => all + part[of], 0);
  return `${sum('passed')} passed, ${sum('failed')} failed`;
}
