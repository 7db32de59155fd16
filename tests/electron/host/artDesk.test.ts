// Taking art in: what its pages are is answered first, and what comes of trying them out when that is known.
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it } from 'vitest';
import { type Inspection, inspectArt } from '../../../electron/art/inspectArt.ts';
import { sha256Of } from '../../../electron/disk/hashes.ts';
import type { ArtHandle } from '../../../shared/contract/handles.ts';
import { granted } from '../../kit/granted.ts';
import { codeOf, drop, dropFolder, type HostRig, openRig, putSupper } from '../../kit/hostRig.ts';

let rig: HostRig;
afterEach(async () => {
  await rig.end();
  dropFolder(rig.folder);
});

/** A host that tries no page out before it is let go; `asked` are the files that it was to look through. */
async function heldUp() {
  let release: () => void = () => undefined;
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  const asked: { readonly path: string; readonly sha256: string | undefined }[] = [];
  const inspect = (path: string, sha256: string | undefined): Inspection => {
    asked.push({ path, sha256 });
    const pages = inspectArt(path);
    return { pages, whole: held.then(() => pages) };
  };
  rig = await openRig(undefined, 'browser', [], inspect);
  await putSupper(rig.at('supper.pdf'));
  return { release, asked };
}

const look = async (art: ArtHandle) => rig.host.handlers.art.look({ art });

describe('a file that is taken in', () => {
  it('is answered with its pages while they are still being tried out', async () => {
    const { release } = await heldUp();
    const art = await drop(rig, rig.at('supper.pdf'));
    expect(art).toMatchObject({ name: 'supper.pdf', checked: false, pages: [{ number: 1 }, { number: 2 }] });
    let looked = false;
    const looking = look(art.art).then((found) => {
      looked = true;
      return found;
    });
    expect(await drop(rig, rig.at('supper.pdf'))).toEqual(art);
    expect(looked).toBe(false);
    release();
    expect(granted(await looking)).toEqual({ ...art, checked: true });
  });

  it('is looked through once, however often it is asked for', async () => {
    const { release, asked } = await heldUp();
    const { art } = await drop(rig, rig.at('supper.pdf'));
    await drop(rig, rig.at('supper.pdf'));
    const looking = [look(art), look(art)];
    release();
    for (const found of await Promise.all(looking)) expect(found.ok).toBe(true);
    expect(await drop(rig, rig.at('supper.pdf'))).toMatchObject({ art, checked: true });
    expect(asked).toHaveLength(1);
  });

  it('as bytes is looked through with the hash that was worked out as they came', async () => {
    const { release, asked } = await heldUp();
    const bytes = readFileSync(rig.at('supper.pdf'));
    const inParts = async function* () {
      for (let at = 0; at < bytes.length; at += 1000) yield bytes.subarray(at, at + 1000);
    };
    granted(await rig.host.dropBytes('supper.pdf', inParts()));
    expect(asked.map(({ sha256 }) => sha256)).toEqual([sha256Of(bytes)]);
    release();
  });
});

describe('a file that cannot be placed after all', () => {
  it('is refused by the look that goes to its end', async () => {
    const fault = { code: 'art-too-large', message: 'Too much.', remedy: 'Less.' } as const;
    rig = await openRig(undefined, 'browser', [], (path) => {
      const pages = inspectArt(path);
      return { pages, whole: pages.then(() => ({ ok: false, fault })) };
    });
    await putSupper(rig.at('supper.pdf'));
    const { art, checked } = await drop(rig, rig.at('supper.pdf'));
    expect(checked).toBe(false);
    expect(codeOf(await look(art))).toBe('art-too-large');
    // Nothing is remembered of it: it may have been put right meanwhile.
    expect((await drop(rig, rig.at('supper.pdf'))).checked).toBe(false);
  });
});
