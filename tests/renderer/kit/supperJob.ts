// A job for the tests of the window: four cards, laid by hand, two across and two along an 11 x 17 in sheet.
import type { Brief } from '../../../shared/job/brief.ts';
import { JOB_SCHEMA, type Job } from '../../../shared/job/job.ts';
import type { Position } from '../../../shared/layout/position.ts';
import { lengthOf } from '../../../shared/units/length.ts';

const inch = (amount: number) => lengthOf(amount, 'in');

const brief: Brief = {
  units: 'in',
  title: 'Harvest supper',
  sheet: {
    size: [inch(11), inch(17)],
    unprintable: { lead: inch(0.2), tail: inch(0.3), left: inch(0.125), right: inch(0.125) },
    hold: { across: 'left', along: 'lead' },
    sidesAlike: true,
  },
  work: { style: 'work-and-back', turn: 'side-to-side' },
  gutter: inch(0.25),
  centring: { across: 'centre', along: 'centre' },
  marks: true,
  overs: { percent: 5, least: 3 },
  fileNames: '{job} {form}',
  pieces: [
    {
      name: 'Supper',
      trim: [inch(5), inch(7)],
      bleed: inch(0.125),
      safe: inch(0.125),
      turned: 'head-to-head',
      lies: 'either',
      quantity: 120,
      front: { file: 'supper.pdf', page: 1, rotate: 0 },
      back: { file: 'supper.pdf', page: 2, rotate: 0 },
    },
  ],
};

const [w, h, gutter] = [5 * 72, 7 * 72, 18];
const [left, bottom] = [(11 * 72 - 2 * w - gutter) / 2, (17 * 72 - 2 * h - gutter) / 2];

const positionAt = (column: number, row: number): Position => ({
  piece: 'Supper',
  face: 'front',
  head: 0,
  trim: { x: left + column * (w + gutter), y: bottom + row * (h + gutter), w, h },
});

export const supperJob: Job = {
  schema: JOB_SCHEMA,
  brief,
  art: [],
  arrangement: [positionAt(0, 1), positionAt(1, 1), positionAt(0, 0), positionAt(1, 0)],
};
