import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { startArtThread } from '../../../electron/art/artThread.ts';
import { examine } from '../../../electron/art/examine.ts';
import { beginInspection, inspectArt } from '../../../electron/art/inspectArt.ts';
import { openArtFile } from '../../../electron/art/openArtFile.ts';
import { SpareThread } from '../../../electron/thread/spareThread.ts';
import { testFolder } from '../../kit/folder.ts';
import { CARD, pack, signpost, writeObjects, writePages } from '../../kit/pdfs.ts';
import { throughQpdf } from '../../kit/qpdf.ts';
import { tangledCard } from '../../kit/troubledArt.ts';

const folder = testFolder();

const card = writePages([
  { media: CARD, trim: [9, 9, 369, 513], drawing: signpost(CARD) },
  { media: CARD, rotate: 90, drawing: signpost(CARD) },
]);

/** A card whose font is written so that only a more patient reader makes sense of it. */
const sloppy = writePages([{ media: CARD, drawing: signpost(CARD), resources: '/Font << /F1 3 0 R >>' }], {
  objects: { 3: '<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica /Widths [--3] >>' },
});

const locked = throughQpdf(card, '--encrypt', 'sesame', 'owner', '256', '--');

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

/** What the worker does, done here. */
async function examined(path: string) {
  const report = await examine({ path });
  if (!report.ok) throw new Error(report.fault.message);
  return report.value;
}

describe.concurrent('looking through a file of art', () => {
  it('gives its pages and the mark by which it is known again, from a thread of its own', async () => {
    const path = folder.save('supper.pdf', card);
    const report = await inspectArt(path);
    expect(report).toMatchObject({
      ok: true,
      value: { name: 'supper.pdf', sha256: sha256(card), pageCount: 2, notices: [] },
    });
    const { pages, mended } = report.ok ? report.value : { pages: [], mended: undefined };
    expect(mended).toBeUndefined();
    expect(pages.map((page) => [page.art, page.number, page.size.w, page.given.trim, page.rotate])).toEqual([
      ['supper.pdf', 1, 378, true, 0],
      ['supper.pdf', 2, 522, false, 90],
    ]);
    expect(report).toEqual(await examine({ path }));
  });

  it('tries only the pages out that are asked for', async () => {
    const path = folder.save('half.pdf', writePages([{ media: CARD }, {}]));
    const tryOut = (...pages: number[]) => examine({ path, pages });
    expect(await tryOut(1)).toMatchObject({ ok: true, value: { pageCount: 2, pages: [{ number: 1 }] } });
    expect(await tryOut(2)).toMatchObject({ ok: false, fault: { code: 'art-size-unclear' } });
    expect(await tryOut(1, 3)).toMatchObject({ ok: false, fault: { code: 'art-page-missing' } });
    expect(await examine({ path })).toMatchObject({ ok: false, fault: { code: 'art-size-unclear' } });
  });

  it('says in words what stands in the way', async () => {
    const note = folder.save('note.txt', 'Dear printer,');
    expect(await examine({ path: note })).toMatchObject({ ok: false, fault: { code: 'art-not-pdf' } });
    const gone = await examine({ path: join(folder.path, 'gone.pdf') });
    expect(gone).toMatchObject({ ok: false, fault: { code: 'art-missing' } });
  });

  it('hands a password on to the thread, and asks for one', async () => {
    const path = folder.save('locked.pdf', locked);
    const [without, given] = await Promise.all([inspectArt(path), inspectArt(path, { password: 'sesame' })]);
    expect(without).toMatchObject({ ok: false, fault: { code: 'art-locked' } });
    expect(given).toMatchObject({ ok: true, value: { pageCount: 2 } });
  });

  it('mends a damaged file in memory, says so, and leaves it alone', async () => {
    const path = folder.save('sloppy.pdf', sloppy);
    const report = await inspectArt(path);
    if (!report.ok) throw new Error(report.fault.message);
    const notice =
      'sloppy.pdf could not be read as it is, so a copy was mended in memory and the file left alone. Look closely at the proof.';
    expect(report.value.notices).toEqual([notice]);
    expect(report.value.sha256).toBe(sha256(sloppy));
    expect(new Uint8Array(readFileSync(path))).toEqual(sloppy);

    const opened = await openArtFile(path, report.value);
    expect(opened).toMatchObject({
      ok: true,
      value: { name: 'sloppy.pdf', sha256: sha256(sloppy), notices: [notice], bytes: report.value.mended },
    });
    expect(opened.ok && opened.value.art.page(1)).toMatchObject({ ok: true, value: { size: { w: 378 } } });
  });

  it('refuses what cannot be mended as it would without trying', async () => {
    const path = folder.save('ruin.pdf', '%PDF-1.7\n1 0 obj\n<<');
    expect(await inspectArt(path)).toMatchObject({
      ok: false,
      fault: { message: 'ruin.pdf is damaged: it begins as a PDF but cannot be read.' },
    });
  });

  it('opens without a password what its owner locked with an empty one', async () => {
    const bytes = throughQpdf(card, '--encrypt', 'sesame', '', '256', '--allow-insecure', '--');
    const report = await inspectArt(folder.save('owned.pdf', bytes));
    expect(report).toMatchObject({ ok: true, value: { pageCount: 2 } });
  });
});

describe('what the pages are', () => {
  it('is told before they are tried out, and what comes of that afterwards', async () => {
    const path = folder.save('tangled.pdf', tangledCard());
    const heard: string[] = [];
    const answer = await examine({ path }, ({ pages }) => heard.push(`${pages.length} pages`));
    expect(heard).toEqual(['2 pages']);
    expect(answer).toMatchObject({ ok: false, fault: { code: 'art-too-large' } });

    const { pages, whole } = beginInspection(path);
    expect(await pages).toMatchObject({ ok: true, value: { name: 'tangled.pdf', pageCount: 2 } });
    expect(await whole).toEqual(answer);
  });

  it('is the refusal itself where a file gives none', async () => {
    const { pages, whole } = beginInspection(folder.save('none.pdf', 'Dear printer,'));
    expect(await pages).toMatchObject({ ok: false, fault: { code: 'art-not-pdf' } });
    expect(await pages).toEqual(await whole);
  });

  it('is known of a file whose hash came with it without working that out again', async () => {
    const path = folder.save('hashed.pdf', card);
    expect(await examine({ path, sha256: 'as it came' })).toMatchObject({ value: { sha256: 'as it came' } });
  });
});

describe('a thread that waits for a file', () => {
  it('answers as one that is started for it, and each file gets one of its own', async () => {
    const path = folder.save('waited.pdf', card);
    const spare = new SpareThread(startArtThread);
    spare.prepare();
    spare.prepare();
    const [waiting, fresh] = [spare.take(), spare.take()];
    expect(waiting).not.toBe(fresh);
    const [first, second] = [beginInspection(path, {}, waiting), beginInspection(path, {}, fresh)];
    expect(await first.whole).toEqual(await examine({ path }));
    expect(await second.whole).toEqual(await first.whole);
  });

  it('that was ended is not asked any more', async () => {
    const path = folder.save('late.pdf', card);
    const spare = new SpareThread(startArtThread);
    spare.prepare();
    await spare.end();
    const late = beginInspection(path, {}, spare.take());
    expect(await late.whole).toMatchObject({ ok: true, value: { pageCount: 2 } });
  });
});

describe('a file made to do harm', () => {
  it('that takes too long is given up, however busy the thread is', async () => {
    const path = folder.save('endless.pdf', `%PDF-1.7\n${'junk'.repeat(20_000_000)}`);
    const begun = Date.now();
    expect(await inspectArt(path, { limits: { seconds: 1 } })).toEqual({
      ok: false,
      fault: {
        code: 'art-took-too-long',
        message: 'endless.pdf could not be read within 1 seconds and was given up.',
        remedy:
          'Simplify the file or export it again; if its disk or share is slow, copy it to this machine first.',
        where: path,
      },
    });
    expect(Date.now() - begun).toBeGreaterThan(990);
  });

  it('that swells when it is unpacked is given up', async () => {
    // Packed twice: a few hundred bytes that are 200 megabytes of nothing.
    const bomb = deflateSync(deflateSync(new Uint8Array(200_000_000), { level: 1 }));
    const path = folder.save(
      'bomb.pdf',
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: '<< /Type /Pages /Count 0 /Kids [] >>',
        3: { dict: '/Type /ObjStm /N 1 /First 4 /Filter [/FlateDecode /FlateDecode]', data: bomb },
      }),
    );
    expect(await inspectArt(path, { limits: { megabytes: 150 } })).toEqual({
      ok: false,
      fault: {
        code: 'art-too-large',
        message: 'bomb.pdf unpacks to more than this program dares to hold, and was given up.',
        remedy: 'Export only the pages that this job prints, and turn very detailed drawings into pictures.',
        where: path,
      },
    });
  });

  it('that lists more objects than memory holds is given up', async () => {
    const path = folder.save(
      'list.pdf',
      writeObjects({
        1: '<< /Type /Catalog /Pages 2 0 R >>',
        2: '<< /Type /Pages /Count 0 /Kids [] >>',
        3: pack('', '/Type /XRef /Size 4000000000 /W [0 0 0] /Root 1 0 R'),
      }),
    );
    const report = await inspectArt(path, { limits: { megabytes: 100, seconds: 30 } });
    expect(report).toMatchObject({ ok: false, fault: { code: 'art-too-large' } });
  });
});

describe('opening a file of art to place it', () => {
  it('gives what was looked through', async () => {
    const path = folder.save('open.pdf', card);
    const opened = await openArtFile(path, await examined(path));
    expect(opened).toMatchObject({
      ok: true,
      value: { name: 'open.pdf', sha256: sha256(card), bytes: card, notices: [] },
    });
    expect(opened.ok && opened.value.art.pageCount).toBe(2);
  });

  it('looks it through first where that was not done, for the pages asked for', async () => {
    const half = folder.save('half.pdf', writePages([{ media: CARD }, {}]));
    expect(await openArtFile(half, undefined, { pages: [1] })).toMatchObject({ ok: true });
    expect(await openArtFile(half)).toMatchObject({ ok: false, fault: { code: 'art-size-unclear' } });
    const path = folder.save('locked.pdf', locked);
    const [without, given] = await Promise.all([
      openArtFile(path),
      openArtFile(path, undefined, { password: 'sesame' }),
    ]);
    expect(without).toMatchObject({ ok: false, fault: { code: 'art-locked' } });
    expect(given).toMatchObject({ ok: true, value: { name: 'locked.pdf' } });
  });

  it('refuses a file that has gone, or changed, since it was looked through', async () => {
    const path = folder.save('changing.pdf', card);
    const report = await examined(path);
    folder.save('changing.pdf', Buffer.concat([card, Buffer.from(' ')]));
    expect(await openArtFile(path, report)).toEqual({
      ok: false,
      fault: {
        code: 'art-changed',
        message: 'changing.pdf has changed since it was looked through.',
        remedy: 'Let the program that writes it finish, then take the file in again.',
        where: path,
      },
    });
    const gone = await openArtFile(join(folder.path, 'gone.pdf'), report);
    expect(gone).toMatchObject({ ok: false, fault: { code: 'art-missing' } });
  });
});
