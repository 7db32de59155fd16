// A costing worked out by hand, line by line, for the supper's cards on one printer and one paper.
import { describe, expect, it } from 'vitest';
import type { PlanCandidate } from '../../../shared/plan/candidate.ts';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { card, handPrinter, rates, trayPrinter } from '../../kit/libraries.ts';
import { only, planned } from '../../kit/plans.ts';

const [tray] = trayPrinter.feeds;
const [sheet] = card.forms;
const led = (style: string) => (one: PlanCandidate) =>
  one.work.style === style && one.lead === 'short' && one.lies === 'either';
const turned = (one: PlanCandidate) => 'turn' in one.work && one.work.turn === 'side-to-side';
const workAndTurn = (changes: object = {}, whatIf = {}) =>
  only(planned(supperBrief, changes, whatIf), led('work-and-turn'));

describe('120 cards of 5 x 7 in, four up on 11 x 17 in, work-and-turn', () => {
  it('take 35 sheets: 30 needed, 3 overs and 2 to set up the one form', () => {
    const { count, up, setUps, passes } = workAndTurn();
    expect({ up, setUps, passes }).toEqual({ up: 4, setUps: 1, passes: 2 });
    expect(count).toEqual({
      needed: 30,
      overs: 3, // 5 % of 30 is 1.5, but the brief wants 3 at least
      oversBy: { percent: 5, least: 3 },
      makeReady: 2,
      sheets: 35,
      bought: 35,
      pieces: 120,
      yields: [{ piece: 'Supper', wanted: 120, perSheet: 4, fromNeeded: 120, leftOver: 0 }],
    });
  });

  it('take 1544.5 s to print, 385 s to handle, 300 s to set up and 160 s to cut', () => {
    const { time, cuts } = workAndTurn();
    // 35 sheets x 2 sides x (10 s + 100 s x 187 in2 x 0.00064516 m2)
    const printing = 35 * 2 * (10 + 100 * 187 * 0.00064516);
    expect(printing).toBeCloseTo(1544.514, 3);
    expect(time.printing).toBeCloseTo(printing, 6);
    expect(time.handling).toBe(385); // 35 x (2 passes x (2 + 3) + 1 turn x 1)
    expect(time.makeReady).toBe(300);
    // Four margins; two cuts for the gutter up the sheet, two for the gutter across each half.
    expect(cuts).toBe(10);
    expect(time.cutting).toBe(160); // one pile of 33: 60 + 10 x 10
    expect(time.unattended).toBeCloseTo(printing, 6);
    expect(time.attended).toBe(385 + 300 + 160);
    expect(time.total).toBeCloseTo(printing + 845, 6);
  });

  it('take 85.9 ml of ink, give or take half of it', () => {
    const { ink, printed } = workAndTurn();
    // A face with its bleed is 5.25 x 7.25 in; of eight on both sides half are fronts.
    const face = 5.25 * 7.25 * 0.00064516;
    expect(printed.map(({ piece, face }) => `${piece} ${face}`).toSorted()).toEqual([
      'Supper back',
      'Supper front',
    ]);
    for (const { area } of printed) expect(area).toBeCloseTo(4 * face, 9);
    expect(ink.ml).toBeCloseTo(35 * 8 * face * (0.5 + 8 * 1.5), 6);
    expect(ink.ml).toBeCloseTo(85.947, 3);
    expect(ink.low).toBeCloseTo(ink.ml / 2, 6);
    expect(ink.high).toBeCloseTo(ink.ml * 1.5, 6);
  });

  it('cost 59.82 in all and just under 50 cents each', () => {
    const { cost, spread, perPiece } = workAndTurn();
    expect(cost).toEqual({
      paper: 7, // 35 sheets at 100 a ream
      ink: 42.97, // 85.947 ml at 0.50
      labour: 3.85, // 385 s at 0.01
      makeReady: 3,
      trimming: 1.6,
      wear: 1.4, // 35 x 2 sides x 0.02
      total: 59.82,
    });
    expect(spread).toEqual({ low: 38.34, high: 81.31 }); // ink of 21.49 and of 64.46
    expect(perPiece).toBeCloseTo(59.82 / 120, 12);
  });

  it('waste what is not cut out as wanted', () => {
    const { area } = workAndTurn();
    const in2 = 0.00064516;
    expect(area.bought).toBeCloseTo(35 * 187 * in2, 9);
    expect(area.pieces).toBeCloseTo(120 * 35 * in2, 9);
    expect(area.offcuts).toBeCloseTo(0, 9);
    expect(area.aroundPieces).toBeCloseTo(35 * (187 - 140) * in2, 9);
    expect(area.spare).toBeCloseTo(20 * 35 * in2, 9); // 35 x 4 less 120
    expect(area.waste).toBeCloseTo((35 * 47 + 20 * 35) * in2, 9);
  });
});

describe('what changes the price', () => {
  it('two forms are set up twice, and spoil twice as many sheets', () => {
    const one = only(planned(supperBrief), (c) => led('work-and-back')(c) && turned(c));
    expect(one.count).toMatchObject({ needed: 30, overs: 3, makeReady: 4, sheets: 37 });
    expect(one.time.makeReady).toBe(600);
    expect(one.cost).toMatchObject({ makeReady: 6, paper: 7.4, wear: 1.48 });
  });

  it('a printer that turns the sheet itself takes it in once, is set up once, and still prints two sides', () => {
    const printers = [{ ...trayPrinter, feeds: [{ ...tray, turnsItself: true }] }];
    const one = only(planned(supperBrief, { printers }), (c) => led('perfecting')(c) && turned(c));
    expect(one).toMatchObject({ passes: 1, sides: 2, setUps: 1 });
    expect(one.time.handling).toBe(35 * 5);
    expect(one.time.printing).toBeCloseTo(workAndTurn().time.printing, 9);
    expect(one.cost.wear).toBe(1.4);
  });

  it('somebody who feeds by hand stands there as long as it prints', () => {
    const one = workAndTurn({ printers: [handPrinter] });
    expect(one.time.unattended).toBe(0);
    expect(one.time.handling).toBe(35 * (2 * 40 + 5));
    expect(one.cost.labour).toBe(45.2); // (1544.514 + 2975) s at 0.01: 45.195
    expect(one.cost.ink).toBe(8.59); // 85.947 ml at 0.10: 8.595 rounds from 8.5947
  });

  it('one side only is one pass over half the faces', () => {
    const brief = supperWith({ work: 'simplex' }, { back: undefined });
    const one = only(planned(brief), led('simplex'));
    expect(one).toMatchObject({ passes: 1, sides: 1, setUps: 1 });
    expect(one.printed).toHaveLength(1);
    expect(one.cost).toMatchObject({ ink: 21.49, wear: 0.7 });
    expect(one.time.handling).toBe(35 * 5);
  });

  it('overs follow the length of the run as the library has them', () => {
    const overs = [
      { from: 0, percent: 10, least: 1 },
      { from: 30, percent: 20, least: 0 },
      { from: 31, percent: 50, least: 0 },
    ];
    const sheets = (pieces: number) => workAndTurn({ rates: { ...rates, overs } }, { pieces }).count;
    expect(sheets(116)).toMatchObject({ needed: 29, overs: 3, oversBy: { percent: 10, least: 1 } });
    expect(sheets(120)).toMatchObject({ needed: 30, overs: 6, oversBy: { percent: 20, least: 0 } });
    expect(sheets(121)).toMatchObject({ needed: 31, overs: 16 });
  });

  it('a pile more is knocked up and cut when the paper stands higher than the cutter takes', () => {
    // 2 in of 10 pt card are 200 sheets: 193 needed and 10 overs are two piles, 2 x (60 + 10 x 10) s.
    const piles = (pieces: number) => workAndTurn({}, { pieces });
    expect(piles(4 * 190)).toMatchObject({ count: { needed: 190, overs: 10 }, time: { cutting: 160 } });
    expect(piles(4 * 191)).toMatchObject({ count: { needed: 191, overs: 10 }, time: { cutting: 320 } });
    // Of 12 pt card it is 166 sheets and part of one.
    const thicker = (pieces: number) => workAndTurn({ papers: [{ ...card, caliper: '12 pt' }] }, { pieces });
    expect(thicker(4 * 158)).toMatchObject({ count: { needed: 158, overs: 8 }, time: { cutting: 160 } });
    expect(thicker(4 * 159)).toMatchObject({ count: { needed: 159, overs: 8 }, time: { cutting: 320 } });
    // A sheet that is thicker than the pile may be high is still cut, one by one.
    const lowPile = { ...rates, cutting: { ...rates.cutting, tallestPile: '0.2 mm' } };
    expect(workAndTurn({ rates: lowPile }).time.cutting).toBe(33 * 160);
  });

  it('paper is paid by the sheet, the ream or the weight', () => {
    const paid = (price: object) =>
      workAndTurn({ papers: [{ ...card, forms: [{ ...sheet, price }] }] }).cost.paper;
    expect(paid({ amount: 0.31, per: 'sheet' })).toBe(10.85);
    expect(paid({ amount: 155, per: 'ream' })).toBe(10.85);
    // 100 lb cover weighs 100 lb to 500 sheets of 20 x 26 in, so 35 sheets of 11 x 17 in weigh
    // 100 lb x 35 / 500 x 187 / 520 = 2.5173 lb = 1.14183 kg.
    expect(paid({ amount: 5, per: 'kg' })).toBe(5.71);
  });

  it('sheets out of a parent are paid by whole parents, and cut down before they are printed', () => {
    const form = {
      is: 'parent',
      size: '22 x 34 in',
      price: { amount: 0.9, per: 'sheet' },
      cutTo: ['11 x 17 in'],
    };
    const one = workAndTurn({ papers: [{ ...card, forms: [form] }] });
    expect(one.source).toMatchObject({ out: 4, cuts: 3 }); // once through the middle, and through each half
    expect(one.count).toMatchObject({ sheets: 35, bought: 9 });
    expect(one.cost.paper).toBe(8.1);
    expect(one.time.cutting).toBe(160 + 60 + 3 * 10);
    expect(one.cost.trimming).toBe(2.5);
    // One sheet of the nine parents is left over.
    expect(one.area.offcuts).toBeCloseTo(187 * 0.00064516, 9);
    // 202 parents are two piles to cut down; 803 sheets to trim are five.
    const many = workAndTurn({ papers: [{ ...card, forms: [form] }] }, { pieces: 4 * 764 });
    expect(many.count).toMatchObject({ needed: 764, overs: 39, sheets: 805, bought: 202 });
    expect(many.time.cutting).toBe(5 * 160 + 2 * 90);
  });

  it('a parent that is fed as it is takes no cutting down', () => {
    const form = {
      is: 'parent',
      size: '11 x 17 in',
      price: { amount: 1, per: 'sheet' },
      cutTo: ['11 x 17 in'],
    };
    const one = workAndTurn({ papers: [{ ...card, forms: [form] }] });
    expect(one.source).toMatchObject({ out: 1, cuts: 0 });
    expect(one.time.cutting).toBe(160);
  });

  it('sheets off a roll are cut one by one', () => {
    const form = { is: 'roll', width: '11 in', price: { amount: 2, per: 'metre' }, cutTo: ['17 in'] };
    const one = workAndTurn({ papers: [{ ...card, forms: [form] }] });
    expect(one.count.bought).toBeCloseTo(35 * 0.4318, 9);
    expect(one.cost.paper).toBe(30.23); // 15.113 m at 2
    expect(one.time.cutting).toBe(160 + 35 * 10);
  });

  it('runs shorter than the first entry of the overs count as that entry', () => {
    const overs = [{ from: 100, percent: 0, least: 7 }];
    expect(workAndTurn({ rates: { ...rates, overs } }).count).toMatchObject({ needed: 30, overs: 7 });
  });

  it('another quality takes longer, and what-if prices take the place of the library’s', () => {
    const fine = workAndTurn({}, { qualities: { 'Tray printer': 'Fine' } });
    expect(fine.quality).toBe('Fine');
    expect(fine.time.printing).toBeCloseTo(70 * (20 + 300 * 187 * 0.00064516), 6);
    expect(workAndTurn().quality).toBe('Usual');
    const cheap = workAndTurn({}, { labourPerHour: 72, inkPrices: { 'Tray printer': 0.25, Other: 9 } });
    expect(cheap.cost).toMatchObject({ labour: 7.7, makeReady: 6, trimming: 3.2, ink: 21.49 });
  });
});
