// Quantities are written for people in two files; whoever else turns a number into digits writes for a program.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const HOUSE = join(import.meta.dirname, '../..');

/** Who turns numbers or times into text, and for whom. */
const WRITERS: Readonly<Record<string, string>> = {
  'shared/units/show.ts': 'people: lengths, money, spans of time, numbers and shares',
  'renderer/desk/showDate.ts': 'people: dates and times, which need a clock',
  'renderer/library/draft/hundredth.ts': 'a field that is typed into',
  'shared/marks/marksOf.ts': 'a key in a map',
  'shared/pdf/form/pageForm.ts': 'PDF',
  'shared/pdf/plates/plateFunctions.ts': 'PDF',
  'shared/pdf/sheet/operators.ts': 'PDF',
  'shared/plan/costCurve.ts': 'a key in a map',
  'shared/plan/layouts.ts': 'a key in a map',
  'shared/proof/pixelComparison.ts': 'a key in a map',
  'shared/ticket/pressFrame.ts': 'XJDF',
  'shared/ticket/tables.ts': 'CSV',
};

const writes = (text: string) => /\.toFixed\(|\.toPrecision\(|\bIntl\.|\.toLocale\w*\(/.test(text);

function writersFound(): readonly string[] {
  return ['shared', 'electron', 'renderer'].flatMap((layer) =>
    readdirSync(join(HOUSE, layer), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.tsx?$/.test(name))
      .map((name) => join(layer, name))
      .filter((path) => writes(readFileSync(join(HOUSE, path), 'utf8'))),
  );
}

describe('Quantities', () => {
  it('are written for people by the files that are there for it', () => {
    expect([...writersFound()].sort()).toEqual(Object.keys(WRITERS).sort());
  });

  it.each(['amount.toFixed(2)', 'new Intl.NumberFormat()', 'date.toLocaleTimeString()', 'x.toPrecision(3)'])(
    'would be found elsewhere: %s',
    (text) => {
      expect(writes(text)).toBe(true);
    },
  );
});
