// The placements and the cuts of a job as tables.
import type { CutOutcome, CuttingOrder } from '../cutting/order.ts';
import type { Job } from '../job/job.ts';
import { formsOfJob } from '../job/nameJobFiles.ts';
import { boxWithin } from '../layout/bleedReach.ts';
import { designNamed } from '../layout/forms.ts';
import { POINTS_PER, type Unit } from '../units/length.ts';
import { type CsvCell, writeCsv } from './csv.ts';

/** A length in pt in the unit of the table, without the noise of float64. */
function inUnit(pt: number, unit: Unit): number {
  return Number((pt / POINTS_PER[unit]).toFixed(6));
}

/**
 * A row for each placed face: the side and form that print it, its trim and bleed from the lower left of the side
 * (lead edge at the top; of a bleed with steps the box without them), its head in degrees counter-clockwise, and the page it is printed from. `nameOf`: how the file of a
 * face is called.
 */
export function writePlacements(job: Job, nameOf: (file: string) => string): string {
  const { units, pieces } = job.brief;
  const lengths = ['x', 'y', 'width', 'height', 'bleed x', 'bleed y', 'bleed width', 'bleed height'];
  const heading = [
    'side',
    'form',
    'piece',
    'face',
    ...lengths.map((name) => `${name} (${units})`),
    'head (degrees)',
    'file',
    'page',
  ];
  const rows = formsOfJob(job)
    .flatMap((form) => form.sides.map((side) => ({ side, form })))
    .flatMap(({ side, form }) =>
      form.placements.map(({ piece, face, trim, bleed, head }): readonly CsvCell[] => {
        const art = designNamed(pieces, piece)[face];
        const boxes = [trim, boxWithin(trim, bleed)].flatMap(({ x, y, w, h }) => [x, y, w, h]);
        return [
          side,
          form.number,
          piece,
          face,
          ...boxes.map((pt) => inUnit(pt, units)),
          head,
          art === undefined ? undefined : nameOf(art.file),
          art?.page,
        ];
      }),
    );
  return writeCsv(heading, rows);
}

/**
 * A row for each stack under the knife: the step, how the stack was turned before, which edges lie at the gauge and the
 * guide, the distance, and what lies on either side of the knife afterwards.
 */
export function writeCuts(order: CuttingOrder, unit: Unit): string {
  const heading = [
    'step',
    'stack',
    'quarter turns clockwise',
    'edge at back gauge',
    'side guide',
    'edge at side guide',
    `back gauge (${unit})`,
    'kind',
    'behind the knife',
    'before the knife',
  ];
  const rows = order.steps.flatMap(({ number, turned, gauge, side, distance, kind, parts }) =>
    parts.map(({ stack, behind, inFront }): readonly CsvCell[] => [
      number,
      stack,
      turned,
      gauge,
      side.hand,
      side.edge,
      inUnit(distance, unit),
      kind,
      sayOutcome(behind),
      sayOutcome(inFront),
    ]),
  );
  return writeCsv(heading, rows);
}

function sayOutcome(outcome: CutOutcome): string {
  switch (outcome.becomes) {
    case 'waste':
      return 'waste';
    case 'piece':
      return `position ${outcome.position + 1}`;
    case 'stack':
      return `stack ${outcome.stack}`;
  }
}
