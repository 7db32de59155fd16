// What is cut out of the sheet, in the open job ticket: a block for each position, and the pieces that come of it.
import { countJob } from '../job/counts.ts';
import { type Job, sheetOf, trimOf } from '../job/job.ts';
import { numbersOf, pressBox } from './pressFrame.ts';
import { type Element, element } from './xml.ts';

/** The name of the block that frees a position, counted from 0: B1 for the first. */
function blockName(index: number): string {
  return `B${index + 1}`;
}

/** A block for each position, at its trim on the front of the sheet. */
export function cutBlocks({ brief, arrangement }: Job): Element {
  const sheet = sheetOf(brief).size;
  const blocks = arrangement.map(({ piece, trim }, i) =>
    element('CutBlock', { BlockName: blockName(i), Box: pressBox(trim, sheet), DescriptiveName: piece }),
  );
  return element('CuttingParams', {}, blocks);
}

/** The pieces of each design: how many are wanted, and the blocks that they come from. */
export function cutComponents(job: Job): readonly Element[] {
  const { brief, arrangement } = job;
  const { yields } = countJob(job);
  return brief.pieces.map((piece, i) => {
    const { w, h } = trimOf(piece);
    const parts = arrangement.flatMap((position, n) =>
      position.piece === piece.name
        ? [element('Part', { BlockName: blockName(n), Product: `P${i + 1}` })]
        : [],
    );
    const amounts = {
      Amount: piece.quantity,
      MaxAmount: Math.max(piece.quantity, yields[i]?.fromNeeded ?? 0),
    };
    return element('Resource', { DescriptiveName: piece.name }, [
      element('AmountPool', {}, [element('PartAmount', amounts)]),
      ...parts,
      element('Component', { Dimensions: numbersOf(w, h, 0), MediaRef: 'Paper' }),
    ]);
  });
}
