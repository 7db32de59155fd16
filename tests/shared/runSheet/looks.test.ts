// How the papers of a job look: what is read is black on white or white on black, what is drawn is seen.
import { describe, expect, it } from 'vitest';
import type { Shape } from '../../../shared/pdf/document/shape.ts';
import { cuttingOf } from '../../../shared/runSheet/cuttingOf.ts';
import { setCuttingPages } from '../../../shared/runSheet/cuttingPages.ts';
import { setDummyPages } from '../../../shared/runSheet/dummyPages.ts';
import { granted } from '../../kit/granted.ts';
import { DAY, MEASURES, runSheetOf } from '../../kit/setPapers.ts';
import { extentOf, liesIn, pathsIn, roomOf, wordsIn } from '../../kit/shapes.ts';
import { KINDS } from '../../kit/ticketJobs.ts';

const [[, SUPPER]] = KINDS as readonly [(typeof KINDS)[number]];
type Pages = readonly (readonly Shape[])[];
/** Set within each test, so that what sets them is seen to be tried there. */
const PAPERS: readonly (readonly [string, () => Pages])[] = [
  ...KINDS.flatMap(([name, job]) => [
    [`run sheet of ${name}`, () => runSheetOf(job).pages] as const,
    [`dummy of ${name}`, () => setDummyPages(job, DAY, MEASURES).pages] as const,
  ]),
  [
    'cutting order',
    () => setCuttingPages(SUPPER, granted(cuttingOf(SUPPER, undefined)), DAY, MEASURES).pages,
  ],
];

describe('the papers of a job', () => {
  it.each(PAPERS)('are read in black on white, or in white on something black: %s', (_name, set) => {
    for (const shapes of set()) {
      const black = pathsIn(shapes)
        .filter(({ fill }) => fill === 'ink')
        .map(extentOf);
      for (const said of wordsIn(shapes)) {
        const onBlack = said.head === 0 && black.some((of) => liesIn(roomOf(said), of));
        if (said.tone === 'paper') expect(onBlack).toBe(true);
        // What is not printed stands back; so do waste and names in the drawings of cuts.
        else expect(said.tone === 'ink' || (said.tone === 'soft' && said.size <= 11)).toBe(true);
        expect(['plain', 'strong']).toContain(said.weight);
        expect(said.words).toBe(said.words.trim());
        expect(said.size).toBeGreaterThanOrEqual(5);
      }
    }
  });

  it.each(PAPERS)('are drawn with lines that are seen: %s', (_name, set) => {
    for (const { fill, stroke } of set().flatMap(pathsIn)) {
      expect(fill !== undefined || stroke !== undefined).toBe(true);
      if (fill !== undefined) expect(['ink', 'soft', 'pale', 'paper']).toContain(fill);
      if (stroke === undefined) continue;
      expect(['ink', 'soft']).toContain(stroke.tone);
      expect(stroke.width).toBeGreaterThan(0);
      if (stroke.dash !== undefined)
        expect(stroke.dash.length > 0 && stroke.dash.every((n) => n > 0)).toBe(true);
    }
  });

  it('have three sizes to read by: what hands do, what heads it, and what is only looked up', () => {
    const [, set] = PAPERS.find(([name]) => name.startsWith('run sheet of invitations'))!;
    const said = set().flatMap((shapes) => wordsIn(shapes));
    const look = (of: RegExp) => {
      const { size, weight } = said.find(({ words }) => of.test(words))!;
      return `${size} ${weight}`;
    };
    expect(look(/^Harvest supper$/)).toBe('19 strong');
    for (const heading of [
      /^Before printing$/,
      /^The rest$/,
      /^The sheet in hand$/,
      /^Files$/,
      /^Counts$/,
      /^Readings$/,
    ]) {
      expect(look(heading)).toBe('12 strong');
    }
    for (const step of [/^Load \d+ sheets of/, /^Trim when/, /^Pass 1: print/])
      expect(look(step)).toBe('10 plain');
    for (const name of [/^Both sides$/, /^Pass 1$/, /^Proof sheet$/]) expect(look(name)).toBe('10 strong');
    for (const note of [/^Print this file once/, /^Run sheet ·/, /^F is a front/, /needed and \d+ overs/]) {
      expect(look(note)).toBe('8.5 plain');
    }
    for (const head of [/^Taken$/, /^Margin left$/]) expect(look(head)).toBe('8.5 strong');
    expect(look(/^Trimming: a guillotine/)).toBe('8 plain');
    expect(look(/^4 up$/)).toBe('17 strong');
  });
});
