// One surface of the sheet in the open job ticket: every placed page with its matrix, its trim and where it is cut off.
import { lying } from '../geometry/head.ts';
import { layInto } from '../geometry/lie.ts';
import { chain } from '../geometry/transform.ts';
import { facesOf, type Job, sheetOf } from '../job/job.ts';
import { boxWithin } from '../layout/bleedReach.ts';
import type { Form, Placement } from '../layout/placement.ts';
import { contentMatrix, type PageSizes } from './placeContent.ts';
import { intoPress, numbersOf, pressBox, xjdfMatrixOf } from './pressFrame.ts';
import { WORK_STYLE_NAMES } from './workStyles.ts';
import { type Element, element } from './xml.ts';

/** The layout of a side. Throws for a face whose page has no matrix: the ticket's maker has asked before. */
export function layoutResource(job: Job, form: Form, side: 1 | 2, sizes: PageSizes): Element {
  const sheet = sheetOf(job.brief).size;
  const faces = facesOf(job.brief);
  const place = (placement: Placement): Element => {
    const content = contentMatrix(job, placement, sizes);
    if (content === undefined) throw new Error(`The page of ${placement.piece} has no matrix`);
    const trim = layInto<'piece', 'side1' | 'side2'>(placement.trim, placement.head);
    const upright = lying(placement.trim, placement.head);
    return element(
      'PlacedObject',
      {
        // The ticket knows no clip but a box: of a bleed with steps the box without them, so that no neighbour is printed on.
        ClipBox: pressBox(boxWithin(placement.trim, placement.bleed), sheet),
        CTM: xjdfMatrixOf(chain(content, intoPress(sheet))),
        Ord: faces.findIndex((f) => f.piece.name === placement.piece && f.name === placement.face),
        TrimCTM: xjdfMatrixOf(chain(trim, intoPress(sheet))),
        TrimSize: numbersOf(upright.w, upright.h),
      },
      [element('ContentObject')],
    );
  };
  return element('Resource', {}, [
    element('Part', { SheetName: 'Sheet1', Side: side === 1 ? 'Front' : 'Back' }),
    element(
      'Layout',
      {
        PaperRef: 'Paper',
        SurfaceContentsBox: numbersOf(0, 0, sheet.w, sheet.h),
        WorkStyle: WORK_STYLE_NAMES[job.brief.work.style],
      },
      form.placements.map(place),
    ),
  ]);
}
