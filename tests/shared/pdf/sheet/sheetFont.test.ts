import { describe, expect, it } from 'vitest';
import { runsOf } from '../../../../shared/pdf/sheet/readingOrder.ts';
import { openSheetFont } from '../../../../shared/pdf/sheet/sheetFont.ts';
import { sheetFont } from '../../../kit/fourColours.ts';

const words = (line: string) => runsOf(line).map((r) => r.words);

describe('words that mix reading directions', () => {
  it('stay one run when all are read from left to right', () => {
    expect(runsOf('Harvest supper 12')).toEqual([{ words: 'Harvest supper 12', read: 'left-to-right' }]);
    expect(runsOf('')).toEqual([]);
  });

  it('keep a right-to-left stretch together, spaces between its words included', () => {
    expect(runsOf('Supper חג קציר 2026')).toEqual([
      { words: 'Supper ', read: 'left-to-right' },
      { words: 'חג קציר', read: 'right-to-left' },
      { words: ' 2026', read: 'left-to-right' },
    ]);
  });

  it('put figures inside such a stretch the other way round, and its parts in reverse', () => {
    expect(words('חג, 2026-03-01 (קציר) x')).toEqual([' (קציר', '2026-03-01', 'חג, ', ') x']);
    expect(words('חג 12 קציר')).toEqual([' קציר', '12', 'חג ']);
    expect(runsOf('חג 12 קציר').map((r) => r.read)).toEqual([
      'right-to-left',
      'left-to-right',
      'right-to-left',
    ]);
  });
});

describe('the face of the marks', () => {
  it('measures a line as the sum of its advances', () => {
    // DejaVu Sans: H is 1540, i is 569 of 2048 units wide (its hmtx table).
    expect(sheetFont.measure('Hi')).toBeCloseTo((1540 + 569) / 2048, 9);
    expect(sheetFont.measure('')).toBe(0);
    expect(sheetFont.measure('חג 12')).toBeCloseTo(sheetFont.measure('חג ') + sheetFont.measure('12'), 9);
  });

  it('puts a box for what it lacks and drops what cannot be seen', () => {
    expect(sheetFont.settable('a収b収\u{1F33E}\u2060c\u00ad')).toEqual({
      runs: ['a□b□□c'],
      lacking: ['収', '\u{1F33E}'],
    });
    expect(sheetFont.settable('\u0645\u06cc\u200c\u062e').runs).toEqual(['\u0645\u06cc\u200c\u062e']);
    expect(sheetFont.settable('a\ud800')).toEqual({ runs: ['a□'], lacking: ['\ud800'] });
  });

  it('sets figures of a right-to-left script one by one', () => {
    expect(sheetFont.settable('١٢').runs).toEqual(['١', '٢']);
  });

  it('is one font, or our own mistake', () => {
    expect(() => openSheetFont(new Uint8Array(100))).toThrow();
  });
});
