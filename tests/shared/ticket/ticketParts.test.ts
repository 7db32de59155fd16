// The parts of the open job ticket: its head, what each process takes, the paper, the sides and the pages.
import { describe, expect, it } from 'vitest';
import { ANY_CUTTER } from '../../../shared/cutting/cutter.ts';
import { turnOf } from '../../../shared/geometry/work.ts';
import { WORKS } from '../../../shared/job/compareWorks.ts';
import { type Job, sheetOf } from '../../../shared/job/job.ts';
import type { Stock } from '../../../shared/runSheet/stock.ts';
import { edgeAt } from '../../kit/paperInPasses.ts';
import { allOf, type ReadElement, readXml } from '../../kit/readXml.ts';
import { CARDS, jobOf, KINDS } from '../../kit/ticketJobs.ts';
import { ticketOf } from '../../kit/ticketOf.ts';

const [CARD] = CARDS.pieces;
const kind = (name: string): Job => KINDS.find(([of]) => of.startsWith(name))![1];
const attributesOf = (root: ReadElement, name: string) =>
  allOf(root, name).map(({ attributes }) => attributes);

describe('the head of the ticket', () => {
  const root = readXml(ticketOf(kind('invitations')));

  it('names the version of the format, the job and what is to be done', () => {
    expect(root.attributes).toEqual({
      Version: '2.2',
      JobID: 'turnlay-0123456789abcdef',
      DescriptiveName: 'Harvest supper',
      Types: 'Imposition DigitalPrinting Cutting',
    });
  });

  it('says who wrote it and when', () => {
    const [pool] = allOf(root, 'AuditPool');
    expect(attributesOf(pool!, 'AuditCreated')).toEqual([{}]);
    expect(attributesOf(pool!, 'Header')).toEqual([
      { AgentName: 'Turnlay', AgentVersion: '1.2.3', DeviceID: 'Turnlay', Time: '2026-03-01T14:30:00Z' },
    ]);
  });

  it.each(WORKS)('instructs in words what the way of working does not say: %j', (work) => {
    const job = jobOf(CARDS, work);
    const [comment] = allOf(readXml(ticketOf(job)), 'Comment');
    expect(comment!.attributes).toEqual({ Type: 'Instruction' });
    const turn = turnOf(work);
    const counted = 'Each surface is counted from its own lead edge: x along it, y away from it.';
    if (turn === undefined) {
      expect(comment!.text).toBe(`The sheet is printed on one side. ${counted}`);
      return;
    }
    const leads = edgeAt(turn, sheetOf(job.brief).size, 'lead');
    const said = { lead: 'the lead edge stays', tail: 'the tail becomes the lead edge' }[leads as string];
    expect(comment!.text).toBe(`The sheet is turned ${turn}: ${said}. ${counted}`);
  });
});

describe('what is to be done', () => {
  it('takes and gives what each process does in the specification', () => {
    // CIP4 XJDF 2.x, input and output resources of the processes Imposition, DigitalPrinting and Cutting; from memory.
    const root = readXml(ticketOf(kind('menus')));
    const processes = root.attributes.Types!.split(' ');
    const sets = attributesOf(root, 'ResourceSet').map(({ Name, Usage, CombinedProcessIndex }) => [
      processes[Number(CombinedProcessIndex)],
      Usage,
      Name,
    ]);
    expect(sets).toEqual([
      ['Imposition', 'Input', 'RunList'],
      ['Imposition', 'Input', 'Layout'],
      ['DigitalPrinting', 'Input', 'Media'],
      ['DigitalPrinting', 'Input', 'DigitalPrintingParams'],
      ['Cutting', 'Input', 'CuttingParams'],
      ['Cutting', 'Output', 'Component'],
    ]);
  });

  it('is all done to the one sheet', () => {
    const root = readXml(ticketOf(kind('menus')));
    const named = allOf(root, 'ResourceSet')
      .filter(({ attributes }) => !['RunList', 'Component'].includes(attributes.Name!))
      .flatMap(({ inside }) => inside.map((resource) => attributesOf(resource, 'Part')[0]!.SheetName));
    expect(named).toEqual(['Sheet1', 'Sheet1', 'Sheet1', 'Sheet1', 'Sheet1']);
  });

  it('begins with the pages, one run for each face', () => {
    const [lists] = allOf(readXml(ticketOf(kind('menus'))), 'ResourceSet');
    expect(lists!.inside.map(({ attributes }) => attributes.DescriptiveName)).toEqual([
      'Menu, front',
      'Menu, back',
      'Place tag, front',
      'Place tag, back',
    ]);
    expect(attributesOf(lists!, 'Part').map(({ Run }) => Run)).toEqual(['R1', 'R2', 'R3', 'R4']);
    expect(attributesOf(lists!, 'RunList').map(({ NPage }) => NPage)).toEqual(['1', '1', '1', '1']);
  });

  it('gives pieces of the size that was ordered, cut from the paper that was loaded', () => {
    const root = readXml(ticketOf(jobOf(CARDS)));
    const [component] = attributesOf(root, 'Component');
    const size = component!.Dimensions!.split(' ').map((n) => (Number(n) * 25.4) / 72);
    expect(size.map((mm) => Number(mm.toFixed(3)))).toEqual([85, 55, 0]);
    const paper = allOf(root, 'Resource').find((resource) => allOf(resource, 'Media').length > 0)!;
    expect(component!.MediaRef).toBe(paper.attributes.ID);
  });
});

describe('the sides', () => {
  it.each(WORKS)('are printed as the work has them, one or both: %j', (work) => {
    const [printing] = attributesOf(readXml(ticketOf(jobOf(CARDS, work))), 'DigitalPrintingParams');
    expect(printing!.Sides).toBe(work.style === 'simplex' ? 'OneSidedFront' : 'TwoSided');
  });

  it('of a piece are one where it has no back', () => {
    const intents = attributesOf(readXml(ticketOf(kind('pieces that are blank'))), 'LayoutIntent');
    expect(intents.map(({ Pages, Sides }) => [Pages, Sides])).toEqual([
      ['2', 'TwoSidedHeadToHead'],
      ['1', 'OneSided'],
    ]);
    const none = jobOf({ ...CARDS, work: 'simplex', pieces: [{ ...CARD, back: undefined }] });
    const root = readXml(
      ticketOf({ ...none, brief: { ...none.brief, work: { style: 'perfecting', turn: 'end-to-end' } } }),
    );
    expect(attributesOf(root, 'DigitalPrintingParams')[0]!.Sides).toBe('OneSidedFront');
    expect(allOf(root, 'Comment')[0]!.text).toContain('The sheet is printed on one side.');
  });
});

describe('the paper', () => {
  const mediaWith = (stock: Stock | undefined) =>
    attributesOf(readXml(ticketOf(kind('invitations'), { stock })), 'Media')[0]!;

  it('is said to be coated where it is', () => {
    const coatings = ([undefined, 'none', 'one-side', 'both-sides'] as const).map((coated) => {
      const stock = { cutter: ANY_CUTTER, ...(coated === undefined ? {} : { coated }) };
      const { Coating, BackCoating } = mediaWith(stock);
      return [Coating, BackCoating];
    });
    expect(coatings).toEqual([
      [undefined, undefined],
      ['None', 'None'],
      ['Coated', 'None'],
      ['Coated', 'Coated'],
    ]);
  });

  it('has no weight, thickness or name where they are not known', () => {
    // 11 x 17 in.
    const bare = { Dimension: '792 1224', MediaType: 'Paper', MediaUnit: 'Sheet' };
    expect(mediaWith(undefined)).toEqual(bare);
    expect(mediaWith({ cutter: ANY_CUTTER })).toEqual(bare);
  });
});
