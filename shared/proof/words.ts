// A finding as one plain sentence, said as one looks at the side with the lead edge up.

import { showNumber, showPercent, showShortNumber } from '../units/show.ts';
import type { FaceFault, FaceShift, PositionFinding, Recognised, SideNumber } from './finding.ts';
import type { FaceOf } from './job.ts';

/** The fault, said in one sentence. */
export function findingOf(
  at: FaceOf & { readonly position: number; readonly side: SideNumber },
  fault: FaceFault,
  recognised: Recognised | undefined,
): PositionFinding {
  const { position, side, piece, face } = at;
  const message = `Position ${position}, side ${side}: ${sentence(at, fault, recognised)}.`;
  return { position, side, piece, face, message, ...fault };
}

function sentence(at: FaceOf, fault: FaceFault, recognised: Recognised | undefined): string {
  const it = nameOf(at);
  switch (fault.kind) {
    case 'upside-down':
      return `${it} is upside down`;
    case 'quarter-turned':
      return `${it} lies a quarter turn to the ${recognised?.turned === 90 ? 'left' : 'right'}`;
    case 'mirrored':
      return `${it} is mirrored ${mirroring(recognised)}`;
    case 'wrong-face':
    case 'wrong-piece':
      return `${recognised === undefined ? 'something else' : `${nameOf(recognised)}${lying(recognised)}`} is printed where ${it} should be`;
    case 'nothing-printed':
      return `nothing is printed where ${it} should be`;
    case 'unexpected-print':
      return `something is printed where "${at.piece}" has no ${at.face} and the paper should be blank`;
    case 'off-place':
      return `${it} is printed ${ways(fault.measured)}`;
    case 'wrong-scale':
      return `${it} is printed at ${showNumber(fault.measured.across, 1)} % of its width and ${showNumber(fault.measured.up, 1)} % of its height`;
    case 'askew':
      return `${it} is printed askew by ${showNumber(Math.abs(fault.measured.degrees), 2)} degrees`;
    case 'art-differs':
      return recognised === undefined
        ? `what is printed there matches neither ${it} nor anything else of this job`
        : `${it} differs from its art file in ${percent(fault.measured.share)} of its area`;
    case 'bleed-short': {
      const { edge, reaches, wanted } = fault.measured;
      return `the bleed of ${it} does not reach on the ${edge} edge (${showNumber(reaches, 1)} of ${showNumber(wanted, 1)} mm)`;
    }
  }
}

function nameOf({ piece, face }: FaceOf): string {
  return `the ${face} of "${piece}"`;
}

function lying({ turned, mirrored }: Recognised): string {
  if (mirrored) return ', mirrored,';
  if (turned === 0) return '';
  return turned === 180 ? ', upside down,' : ', turned a quarter,';
}

function mirroring(recognised: Recognised | undefined): string {
  switch (recognised?.turned) {
    case 180:
      return 'top to bottom';
    case 90:
    case 270:
      return 'and turned a quarter';
    default:
      return 'left to right';
  }
}

function ways({ right, lead }: FaceShift): string {
  const across = `${millimetres(right)} too far to the ${right > 0 ? 'right' : 'left'}`;
  const along = `${millimetres(lead)} too far towards the ${lead > 0 ? 'lead edge' : 'tail'}`;
  const parts = [
    { way: across, by: right },
    { way: along, by: lead },
  ].filter(({ by }) => Math.abs(by) >= 0.05);
  return parts.map(({ way }) => way).join(' and ');
}

function millimetres(mm: number): string {
  return `${showShortNumber(Math.abs(mm), 2)} mm`;
}

function percent(share: number): string {
  return share < 0.001 ? 'less than 0.1 %' : showPercent(share, 1);
}
