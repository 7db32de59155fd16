// The units of lengths as a person reads them.
import type { Unit } from '../../shared/units/length.ts';

export const UNIT_NAMES: Readonly<Record<Unit, string>> = { in: 'inches', mm: 'millimetres', pt: 'points' };
