// The job as an open job ticket: sheet, way of working, placements, cut blocks and amounts.
import { countJob } from '../job/counts.ts';
import { facesOf, type Job, sheetOf, trimOf } from '../job/job.ts';
import { formsOfJob } from '../job/nameJobFiles.ts';
import type { Stock } from '../runSheet/stock.ts';
import { turnOfRun } from '../runSheet/turnOfRun.ts';
import { points } from '../units/length.ts';
import { cutBlocks, cutComponents } from './cutBlocks.ts';
import { layoutResource } from './layoutResource.ts';
import type { PageSizes } from './placeContent.ts';
import { numbersOf } from './pressFrame.ts';
import { type Element, element, writeXml } from './xml.ts';

export interface TicketInput {
  readonly job: Job;
  /** What identifies the job, in hex. */
  readonly fingerprint: string;
  /** When the ticket is made, in UTC: `2026-03-01T14:30:00Z`. */
  readonly created: string;
  /** The version of this program. */
  readonly version: string;
  /** Where the file of a face is found, as a URL. */
  readonly urlOf: (file: string) => string;
  readonly sizes: PageSizes;
  readonly stock?: Stock | undefined;
}

const NAMESPACE = 'http://www.CIP4.org/JDFSchema_2_0';

/** The processes in their order; resources say by their number which of them they belong to. */
const PROCESSES = { Imposition: 0, DigitalPrinting: 1, Cutting: 2 } as const;

/**
 * The ticket of a job as XML. Lengths are in pt; positions are in the frame of the process, lead edge at y = 0.
 *
 * @source CIP4 XJDF 2.x, its public schema: names, order and values of what is written.
 */
export function writeXjdf(input: TicketInput): string {
  const { job, fingerprint, created, version } = input;
  const header = element('Header', {
    AgentName: 'Turnlay',
    AgentVersion: version,
    DeviceID: 'Turnlay',
    Time: created,
  });
  const root = element(
    'XJDF',
    {
      xmlns: NAMESPACE,
      Version: '2.2',
      JobID: `turnlay-${fingerprint.slice(0, 16)}`,
      DescriptiveName: job.brief.title,
      Types: Object.keys(PROCESSES).join(' '),
    },
    [
      element('AuditPool', {}, [element('AuditCreated', {}, [header])]),
      element('Comment', { Type: 'Instruction' }, instructionOf(job)),
      element('ProductList', {}, productsOf(job)),
      set('RunList', 'Input', 'Imposition', runListsOf(input)),
      set('Layout', 'Input', 'Imposition', layoutsOf(input)),
      set('Media', 'Input', 'DigitalPrinting', [mediaOf(input)]),
      set('DigitalPrintingParams', 'Input', 'DigitalPrinting', [printingOf(job)]),
      set('CuttingParams', 'Input', 'Cutting', [element('Resource', {}, [SHEET, cutBlocks(job)])]),
      set('Component', 'Output', 'Cutting', cutComponents(job)),
    ],
  );
  return writeXml(root);
}

/** The one sheet of a job. */
const SHEET = element('Part', { SheetName: 'Sheet1' });

function set(
  name: string,
  usage: 'Input' | 'Output',
  process: keyof typeof PROCESSES,
  resources: readonly Element[],
): Element {
  return element(
    'ResourceSet',
    { CombinedProcessIndex: PROCESSES[process], Name: name, Usage: usage },
    resources,
  );
}

/** What the values of the work style do not say: how the sheet is turned, and where its lead edge lies. */
function instructionOf(job: Job): string {
  const turn = turnOfRun(job);
  const turned =
    turn === undefined
      ? 'The sheet is printed on one side.'
      : `The sheet is turned ${turn}: ${turn === 'side-to-side' ? 'the lead edge stays' : 'the tail becomes the lead edge'}.`;
  return `${turned} Each surface is counted from its own lead edge: x along it, y away from it.`;
}

function productsOf({ brief }: Job): readonly Element[] {
  return brief.pieces.map((piece, i) => {
    const { w, h } = trimOf(piece);
    const layout = element('LayoutIntent', {
      Bleed: numbersOf(points(piece.bleed)),
      FinishedDimensions: numbersOf(w, h, 0),
      Pages: piece.back === undefined ? 1 : 2,
      Sides:
        piece.back === undefined
          ? 'OneSided'
          : piece.turned === 'head-to-head'
            ? 'TwoSidedHeadToHead'
            : 'TwoSidedHeadToFoot',
    });
    return element(
      'Product',
      { Amount: piece.quantity, DescriptiveName: piece.name, ID: `P${i + 1}`, IsRoot: true },
      [element('Intent', { Name: 'LayoutIntent' }, [layout])],
    );
  });
}

/** One page for each face, in the order that the placed objects count them in. */
function runListsOf({ job, urlOf }: TicketInput): readonly Element[] {
  return facesOf(job.brief).map(({ face, piece, name }, i) =>
    element('Resource', { DescriptiveName: `${piece.name}, ${name}` }, [
      element('Part', { Run: `R${i + 1}` }),
      element('RunList', { NPage: 1, Pages: `${face.page - 1} ${face.page - 1}` }, [
        element('FileSpec', { URL: urlOf(face.file) }),
      ]),
    ]),
  );
}

/** A resource for each side; one form printed on both is told for both. */
function layoutsOf({ job, sizes }: TicketInput): readonly Element[] {
  return formsOfJob(job).flatMap((form) => form.sides.map((side) => layoutResource(job, form, side, sizes)));
}

function mediaOf({ job, stock }: TicketInput): Element {
  const { size } = sheetOf(job.brief);
  const { needed, overs } = countJob(job);
  const { caliper } = stock ?? {};
  const media = element('Media', {
    ...coatingsOf(stock),
    Dimension: numbersOf(size.w, size.h),
    MediaType: 'Paper',
    MediaUnit: 'Sheet',
    Thickness: caliper === undefined ? undefined : numbersOf((caliper / 72) * 25_400),
    Weight: stock?.grammage === undefined ? undefined : numbersOf(stock.grammage),
  });
  return element('Resource', { DescriptiveName: stock?.name, ID: 'Paper' }, [
    element('AmountPool', {}, [element('PartAmount', { Amount: needed, Waste: overs })]),
    SHEET,
    media,
  ]);
}

function coatingsOf(stock: Stock | undefined): Element['attributes'] {
  switch (stock?.coated) {
    case undefined:
      return {};
    case 'none':
      return { BackCoating: 'None', Coating: 'None' };
    case 'one-side':
      return { BackCoating: 'None', Coating: 'Coated' };
    case 'both-sides':
      return { BackCoating: 'Coated', Coating: 'Coated' };
  }
}

/** Looked at with the lead edge below, what the program calls left lies at the right. */
const SHEET_LAYS = { left: 'Right', right: 'Left', centre: 'Center' } as const;

function printingOf(job: Job): Element {
  return element('Resource', {}, [
    SHEET,
    element('DigitalPrintingParams', {
      SheetLay: SHEET_LAYS[job.brief.sheet.hold.across],
      Sides: formsOfJob(job).some(({ sides }) => sides.includes(2)) ? 'TwoSided' : 'OneSidedFront',
    }),
  ]);
}
