// Before a way of working is chosen, each says what it would hold, or why it cannot be.
import { describe, expect, it } from 'vitest';
import type { Brief } from '../../../shared/job/brief.ts';
import { compareWorks, sameWork, WORKS } from '../../../shared/job/compareWorks.ts';
import { readBrief } from '../../../shared/job/readBrief.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';

function briefOf(json: unknown): Brief {
  const read = readBrief(json);
  if (!read.ok) throw new Error(read.fault.message);
  return read.value;
}

/** Pieces on each sheet and sheets to print, or the reason against it, by the name of the way of working. */
const told = (brief: Brief) =>
  Object.fromEntries(
    compareWorks(brief).map(({ work, offer }) => [
      'turn' in work ? `${work.style} ${work.turn}` : work.style,
      offer.ok
        ? `${offer.value.up} up, ${offer.value.forms} form, ${offer.value.count.sheets} sheets`
        : offer.fault.message,
    ]),
  );

describe('the ways of working', () => {
  // 5.25 x 7.25 in with bleeds: two across and two along on 11 x 17 in, in one half as in both (worked out by hand).
  it('a card of 5 x 7 in comes four up on 11 x 17 in in all of them; one form halves the setting up', () => {
    expect(told(briefOf(supperBrief))).toEqual({
      simplex: 'One side only would leave the backs unprinted.',
      'work-and-back side-to-side': '4 up, 2 form, 33 sheets',
      'work-and-back end-to-end': '4 up, 2 form, 33 sheets',
      'perfecting side-to-side': '4 up, 2 form, 33 sheets',
      'perfecting end-to-end': '4 up, 2 form, 33 sheets',
      'work-and-turn': '4 up, 1 form, 33 sheets',
      'work-and-tumble': '4 up, 1 form, 33 sheets',
    });
  });

  // 9.25 x 6.25 in with bleeds: across the feed it fits once, and not into half of the width (worked out by hand).
  it('a card of 6 x 9 in comes two up, and cannot be worked and turned', () => {
    const offers = told(briefOf(supperWith({ work: 'work-and-back' }, { trim: [6, 9] })));
    expect(offers['work-and-back side-to-side']).toBe('2 up, 2 form, 63 sheets');
    expect(offers['work-and-tumble']).toBe('2 up, 1 form, 63 sheets');
    expect(offers['work-and-turn']).toContain('on one half of it, which work-and-turn needs');
  });

  it('one form is refused for a paper whose sides are not alike, whatever it would hold', () => {
    const offers = told(briefOf(supperWith({ work: 'work-and-back' }, {}, { sidesAlike: false })));
    expect(offers['work-and-turn']).toMatch(/^Work-and-turn prints one form on both sides.*not alike/);
    expect(offers['work-and-tumble']).toMatch(/^Work-and-tumble prints one form on both sides/);
    expect(offers['work-and-back end-to-end']).toBe('4 up, 2 form, 33 sheets');
  });

  it('pieces without backs are printed on one side only', () => {
    const brief = briefOf(supperWith({ work: 'simplex' }, { back: undefined }));
    const offers = told(brief);
    expect(offers.simplex).toBe('4 up, 1 form, 33 sheets');
    expect(offers['work-and-turn']).toBe('No piece has a back, so there is nothing to print on side 2.');
    expect(offers['perfecting end-to-end']).toBe(offers['work-and-turn']);
  });

  it('a block that was to lie at an edge is centred where one form needs it', () => {
    const brief = briefOf(supperWith({ work: 'work-and-back', centring: { across: 'left' } }));
    expect(told(brief)['work-and-turn']).toBe('4 up, 1 form, 33 sheets');
  });

  it('are seven, and each is only itself', () => {
    WORKS.forEach((a, i) => {
      WORKS.forEach((b, j) => {
        expect(sameWork(a, b)).toBe(i === j);
      });
    });
    expect(WORKS).toHaveLength(7);
  });
});
