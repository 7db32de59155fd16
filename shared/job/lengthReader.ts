// Reads the lengths of a written brief one by one and remembers every field in which something is wrong.
import type { Fault } from '../fault/result.ts';
import { type Length, lengthOf, POINTS_PER, points, type Unit } from '../units/length.ts';
import { readLength, readSize } from '../units/read.ts';

export type WrittenLength = number | string;
export type WrittenSize = readonly [WrittenLength, WrittenLength] | string;

/** What a length may be. A `position` may be negative, the others may not. */
export type LengthKind = 'size' | 'margin' | 'position';

/** No sheet or piece of this trade is longer: 5 m, in pt. A longer one is a slip of the unit. */
const MAX_LENGTH_PT = 5000 * POINTS_PER.mm;

/** One complaint for each field, in the order of reading. */
export interface FieldFault {
  readonly field: string;
  readonly says: string;
}

/** Reads written lengths; `faults` holds what was wrong, and a field in `faults` came back as a length of zero. */
export class LengthReader {
  readonly faults: FieldFault[] = [];

  constructor(private readonly unit: Unit) {}

  length(written: WrittenLength, field: string, kind: LengthKind): Length {
    if (typeof written === 'number') return this.#checked(lengthOf(written, this.unit), field, kind);
    const read = readLength(written, this.unit);
    if (read.ok) return this.#checked(read.value, field, kind);
    return this.complain(field, read.fault);
  }

  size(written: WrittenSize, field: string, kind: LengthKind = 'size'): readonly [Length, Length] {
    if (typeof written !== 'string') {
      return [this.length(written[0], `${field}[0]`, kind), this.length(written[1], `${field}[1]`, kind)];
    }
    const read = readSize(written, this.unit);
    if (read.ok) {
      return [this.#checked(read.value[0], field, kind), this.#checked(read.value[1], field, kind)];
    }
    const none = this.complain(field, read.fault);
    return [none, none];
  }

  /** Remembers what was wrong with a field, and stands in for it with a length of zero. */
  complain(field: string, { message, remedy }: Pick<Fault, 'message' | 'remedy'>): Length {
    return this.#fault(field, `${message} ${remedy}`);
  }

  #checked(length: Length, field: string, kind: LengthKind): Length {
    const pt = points(length);
    if (!Number.isFinite(pt) || Math.abs(pt) > MAX_LENGTH_PT) {
      return this.#fault(field, `${length.typed} is longer than anything that is printed here (5 m)`);
    }
    if (kind === 'size' && pt <= 0)
      return this.#fault(field, `must be longer than nothing, not ${length.typed}`);
    if (kind === 'margin' && pt < 0) return this.#fault(field, `must not be negative, not ${length.typed}`);
    return length;
  }

  #fault(field: string, says: string): Length {
    this.faults.push({ field, says });
    return lengthOf(0, this.unit);
  }
}
