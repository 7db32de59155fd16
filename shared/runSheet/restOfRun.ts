// What is printed when one sheet is right: the others, if there are any, and what takes the place of a spoiled one.

/**
 * The steps after the first sheet of `sheets` loaded ones, `overs` of them overs; `byHand` where hands turn the paper.
 *
 * @source common practice, no source
 */
export function restOfRun(sheets: number, overs: number, byHand: boolean): readonly string[] {
  return [printOthers(Math.max(0, sheets - 1), byHand), replaceSpoiled(sheets, overs)];
}

function printOthers(others: number, byHand: boolean): string {
  if (others === 0) return 'When that sheet is right, all is printed: it is the only one of this run.';
  const [which, turned] = others === 1 ? ['the other one', 'it'] : [`the other ${others}`, 'the whole pile'];
  return byHand
    ? `When that sheet is right, print side 1 of ${which}, let the ink dry, turn ${turned} in the same way, and print side 2.`
    : `When that sheet is right, print ${which}.`;
}

function replaceSpoiled(sheets: number, overs: number): string {
  if (overs === 0) return 'There are no overs: for each sheet that is spoiled, load another.';
  const are = overs === 1 ? 'is an over' : 'are overs';
  return `Count the spoiled sheets of each pass: ${overs} of the ${sheets} ${are}.`;
}
