// The caliper: how thick one sheet is, as it was typed. A "point" of caliper is a thousandth of an inch.
import { type Fault, ok, type Result, refuse } from '../fault/result.ts';

/** How thick one sheet is. `typed` is what is kept in files. */
export interface Caliper {
  readonly micrometres: number;
  readonly typed: string;
}

/**
 * Micrometres to the unit.
 *
 * @source 1 point of caliper = 0.001 in = 25.4 um, as paper glossaries have it (from memory: ISO 534 and TAPPI T 411
 * for how it is measured). It is not the point of typography.
 */
const MICROMETRES_PER: Readonly<Record<string, number>> = {
  um: 1,
  µm: 1,
  μm: 1,
  micron: 1,
  microns: 1,
  micrometre: 1,
  micrometres: 1,
  micrometer: 1,
  micrometers: 1,
  mm: 1000,
  in: 25_400,
  inch: 25_400,
  inches: 25_400,
  '"': 25_400,
  mil: 25.4,
  mils: 25.4,
  thou: 25.4,
  pt: 25.4,
  pts: 25.4,
  point: 25.4,
  points: 25.4,
};

const CALIPER = /^(?<amount>\d*\.?\d+)\s*(?<unit>\S+)$/;

/** Thicker is no paper that a printer takes; it is a slip of the unit. In um. */
const MAX_CALIPER_UM = 10_000;

/** Reads `300 um`, `0.3 mm`, `12 pt` or `0.012 in`. */
export function readCaliper(text: string): Result<Caliper> {
  const typed = text.trim();
  const parts = CALIPER.exec(typed.replace(/^(\d+),(\d+)/, '$1.$2'))?.groups;
  const unit = parts?.unit?.toLowerCase().replace(/(?<=\p{L})\.$/u, '') ?? '';
  const per = Object.hasOwn(MICROMETRES_PER, unit) ? MICROMETRES_PER[unit] : undefined;
  if (parts === undefined || per === undefined) return refuse(unreadable(text));
  const micrometres = Number(parts.amount) * per;
  if (micrometres <= 0 || micrometres > MAX_CALIPER_UM) return refuse(unlikely(text));
  return ok({ micrometres, typed });
}

const EXAMPLES =
  'Write it like 300 um, 0.3 mm, 12 pt or 0.012 in; a pt of caliper is a thousandth of an inch.';

function unreadable(text: string): Fault {
  return { code: 'length-unreadable', message: `"${text}" is not a caliper.`, remedy: EXAMPLES };
}

function unlikely(text: string): Fault {
  return {
    code: 'length-unreadable',
    message: `"${text}" is not the thickness of a paper that is printed here.`,
    remedy: EXAMPLES,
  };
}
