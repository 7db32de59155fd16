// The briefs of the demo, as a person would write them: one for each way of working that the demo shows.

/** The invitation: four up on 11 x 17 in, one form for both sides. */
export const SUPPER_BRIEF = {
  units: 'in',
  title: 'Harvest supper',
  sheet: { size: [11, 17], unprintable: { lead: 0.2, tail: 0.3, left: 0.125, right: 0.125 } },
  work: 'work-and-turn',
  gutter: 0.25,
  marks: true,
  pieces: [
    {
      name: 'Supper',
      trim: [5, 7],
      bleed: 0.125,
      safe: 0.125,
      turned: 'head-to-head',
      quantity: 120,
      front: { file: 'supper.pdf', page: 1 },
      back: { file: 'supper.pdf', page: 2 },
    },
  ],
} as const;

/** The table: menus and place tags of different sizes share one sheet, a form for each side, turned end to end. */
export const TABLE_BRIEF = {
  units: 'in',
  title: 'Harvest table',
  sheet: {
    size: '13 x 19 in',
    unprintable: { lead: '6 mm', tail: '6 mm', left: '5 mm', right: '5 mm' },
  },
  work: 'work-and-back',
  turn: 'end-to-end',
  gutter: '1/4',
  pieces: [
    {
      name: 'Menu',
      trim: '3.5 x 7.5 in',
      bleed: '1/8',
      turned: 'head-to-toe',
      quantity: 48,
      front: { file: 'menu.pdf', page: 1 },
      back: { file: 'menu.pdf', page: 2 },
    },
    {
      name: 'Place tag',
      trim: '2 x 3.5 in',
      bleed: '1/8',
      turned: 'head-to-head',
      quantity: 96,
      front: { file: 'tag.pdf', page: 1 },
      back: { file: 'tag.pdf', page: 2 },
    },
  ],
} as const;
