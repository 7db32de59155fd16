// The command line as a person or a script uses it: real processes, real files.
import { execFile, execFileSync } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PDFDocument } from 'pdf-lib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { supperBrief, supperWith } from '../../kit/briefs.ts';
import { drawOddCard } from '../../kit/oddArt.ts';

const HOUSE = join(import.meta.dirname, '../../..');

interface Ran {
  readonly code: number;
  readonly out: string;
  readonly said: string;
}

function turnlay(...args: readonly string[]): Promise<Ran> {
  return new Promise((resolve) => {
    execFile(
      'npm',
      ['run', '-s', 'turnlay', '--', ...args],
      { cwd: HOUSE, maxBuffer: 64e6 },
      (error, out, said) => {
        resolve({ code: error === null ? 0 : Number(error.code), out, said });
      },
    );
  });
}

let folder: string;
const at = (...names: readonly string[]) => join(folder, ...names);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'turnlay-cli-'));
  await writeFile(at('supper.pdf'), await drawOddCard('Supper', { w: 360, h: 504 }, 9));
  await writeFile(at('brief.json'), JSON.stringify(supperBrief));
});
afterAll(() => rm(folder, { recursive: true }));

describe('lay, send and prove', () => {
  it('run the main job from brief to proved sheets', async () => {
    await mkdir(at('rip'));
    const laid = await turnlay('lay', at('brief.json'), '--job', at('jobs', 'none.json'), '--json');
    expect([laid.code, JSON.parse(laid.out).error.code]).toEqual([1, 'folder-missing']);

    const lay = await turnlay('lay', at('brief.json'), '--job', at('supper.turnlay'), '--json');
    expect(lay.code).toBe(0);
    const layout = JSON.parse(lay.out);
    expect(layout).toMatchObject({
      sheet: { width: 792, height: 1224 },
      work: 'work-and-turn',
      turn: 'side-to-side',
      up: 4,
      needed: 30,
      overs: 3,
      sheets: 33,
    });
    expect(layout.positions).toEqual([
      { piece: 'Supper', face: 'front', trim: [27, 621, 360, 504], head: 0 },
      { piece: 'Supper', face: 'back', trim: [405, 621, 360, 504], head: 0 },
      { piece: 'Supper', face: 'front', trim: [27, 99, 360, 504], head: 0 },
      { piece: 'Supper', face: 'back', trim: [405, 99, 360, 504], head: 0 },
    ]);

    const send = await turnlay(
      'send',
      at('supper.turnlay'),
      '--to',
      at('rip'),
      '--json',
      '--pictures',
      at('pictures'),
    );
    expect(send.code).toBe(0);
    const sent = JSON.parse(send.out);
    const file = at('rip', 'harvest-supper_form-1_both-sides_33-sheets.pdf');
    expect(sent.forms).toEqual([
      { side: 1, file, page: 1 },
      { side: 2, file, page: 1 },
    ]);
    expect(sent.proof.findings).toEqual([]);
    expect(await readdir(at('pictures'))).toHaveLength(4);

    const again = await turnlay('send', at('supper.turnlay'), '--to', at('rip'), '--json');
    expect([again.code, JSON.parse(again.out).error.code]).toEqual([1, 'file-exists']);

    const proof = await turnlay('prove', at('supper.turnlay'), '--from', at('rip'), '--json');
    expect([proof.code, JSON.parse(proof.out).findings]).toEqual([0, []]);

    const pdf = await PDFDocument.load(await readFile(file));
    const page = pdf.getPage(0);
    page.translateContent(2, 0);
    await writeFile(file, await pdf.save());
    const spoiled = await turnlay('prove', at('supper.turnlay'), '--from', at('rip'), '--json');
    expect(spoiled.code).toBe(1);
    const findings = JSON.parse(spoiled.out).findings;
    expect(findings.some((f: { kind: string }) => f.kind === 'off-place')).toBe(true);
  });

  it('says in plain words what it did, and progress apart from it', async () => {
    const lay = await turnlay('lay', at('brief.json'), '--job', at('words.turnlay'));
    expect(lay.out).toContain('Harvest supper: 4 up on 11 × 17 in, work-and-turn, turned side-to-side.');
    expect(lay.out).toContain('Load 33 sheets: 30 needed and 3 overs.');
    expect(lay.out).toContain(
      'Margins from trim to edge: lead 1.375 in, tail 1.375 in, left 0.375 in, right 0.375 in.',
    );
    expect(lay.out).toContain('Trimming: a guillotine or rotary cutter can maim.');
    expect(lay.said).toContain('Looking through the art and laying out');
  });

  it('refuse what cannot be read, in a sentence', async () => {
    const none = await turnlay('lay', at('none.json'), '--job', at('x.turnlay'), '--json');
    expect([none.code, JSON.parse(none.out).error.code]).toEqual([1, 'file-missing']);
    await writeFile(at('broken.json'), '{ "units": ');
    const broken = await turnlay('lay', at('broken.json'), '--job', at('x.turnlay'));
    expect(broken.code).toBe(1);
    expect(broken.said).toContain('is not JSON');
    expect(broken.out).toBe('');
    const job = await turnlay('send', at('brief.json'), '--to', folder, '--json');
    expect([job.code, JSON.parse(job.out).error.code]).toEqual([1, 'job-invalid']);
  });
});

describe('art that cannot be used', () => {
  const BAD: readonly (readonly [string, string, () => Promise<Uint8Array | undefined>, RegExp])[] = [
    ['missing', 'art-missing', async () => undefined, /supper/],
    ['protected by a password', 'art-locked', async () => encrypted(await plain()), /password/],
    ['damaged', 'art-damaged', async () => (await plain()).slice(0, 60), /damaged/],
    ['without pages', 'art-empty', async () => noPages(), /no pages/],
    [
      'not a PDF',
      'art-not-pdf',
      async () => new TextEncoder().encode('Dear printer, see attached.'),
      /not a PDF/,
    ],
    ['of ten thousand pages', 'art-too-large', () => manyPages(10_000), /10,?000/],
    ['of a page 200 inches long', 'art-too-large', () => sized(378, 200 * 72), /200/],
    ['without bleed', 'art-bleed-short', () => sized(360, 504), /bleed/],
    ['of another size', 'art-size-wrong', () => sized(300, 300), /5 × 7 in/],
    ['that fits only when turned', 'art-size-unclear', () => sized(522, 378), /turned/],
    ['without the second page', 'art-page-missing', () => sized(378, 522), /page 2/],
  ];

  it.each(BAD)(
    'is refused in a clear sentence, and nothing is written: %s',
    async (what, code, make, says) => {
      const own = at(what.replaceAll(' ', '-'));
      await mkdir(own);
      const bytes = await make();
      if (bytes !== undefined) await writeFile(join(own, 'supper.pdf'), bytes);
      const piece = supperBrief.pieces[0];
      const brief =
        what === 'without the second page'
          ? supperBrief
          : supperWith({ work: 'simplex' }, { back: undefined, front: piece.front });
      await writeFile(join(own, 'brief.json'), JSON.stringify(brief));
      const before = await readdir(own);
      const ran = await turnlay('lay', join(own, 'brief.json'), '--job', join(own, 'job.turnlay'), '--json');
      const { error } = JSON.parse(ran.out);
      expect([ran.code, error.code]).toEqual([1, code]);
      expect(error.message).toMatch(says);
      expect(error.remedy.length).toBeGreaterThan(10);
      expect(await readdir(own)).toEqual(before);
    },
  );

  const plain = () => drawOddCard('Supper', { w: 360, h: 504 }, 9);

  async function sized(w: number, h: number): Promise<Uint8Array> {
    const pdf = await PDFDocument.create();
    pdf.addPage([w, h]).drawText('Supper');
    return pdf.save();
  }

  async function manyPages(pages: number): Promise<Uint8Array> {
    const pdf = await PDFDocument.create();
    for (let i = 0; i < pages; i++) pdf.addPage([378, 522]);
    return pdf.save();
  }

  function noPages(): Uint8Array {
    const objects = ['<< /Type /Catalog /Pages 2 0 R >>', '<< /Type /Pages /Kids [] /Count 0 >>'];
    let text = '%PDF-1.7\n';
    const starts = objects.map((object, i) => {
      const start = text.length;
      text += `${i + 1} 0 obj\n${object}\nendobj\n`;
      return start;
    });
    const table = starts.map((start) => `${String(start).padStart(10, '0')} 00000 n \n`).join('');
    text += `xref\n0 3\n0000000000 65535 f \n${table}trailer\n<< /Size 3 /Root 1 0 R >>\nstartxref\n${text.length}\n%%EOF\n`;
    return new TextEncoder().encode(text);
  }

  async function encrypted(bytes: Uint8Array): Promise<Uint8Array> {
    const [open, locked] = [at('open.pdf'), at('locked.pdf')];
    await writeFile(open, bytes);
    execFileSync('qpdf', ['--encrypt', 'harvest', 'harvest', '256', '--', open, locked]);
    return readFile(locked);
  }
});

describe('the demo', () => {
  it('draws its art and runs two jobs to proved sheets', async () => {
    const demo = await turnlay('demo', at('demo'));
    expect(demo.code).toBe(0);
    expect(demo.out.match(/all right/g)).toHaveLength(2);
    expect(await readdir(at('demo', 'rip'))).toHaveLength(3);
    expect(await readdir(at('demo', 'pictures', 'supper'))).toHaveLength(4);
    expect(await readdir(at('demo', 'papers'))).toHaveLength(12);
    // Made in a working copy, it leaves git nothing to tell.
    execFileSync('git', ['init', '-q', folder]);
    const told = execFileSync('git', ['status', '--short', '--untracked-files=all', 'demo'], { cwd: folder });
    expect(told.toString()).toBe('');
  });
});
