import { execFileSync } from 'node:child_process';
import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { NODE_DISK } from '../../../electron/disk/disk.ts';
import {
  type FolderCheck,
  type Outgoing,
  type SendOptions,
  sendToFolder,
} from '../../../electron/send/sendToFolder.ts';
import { ok, refuse } from '../../../shared/fault/result.ts';
import { faultyDisk, systemError } from '../../kit/faultyDisk.ts';

const FIRST = 'supper_form-1_side-1_33-sheets.pdf';
const SECOND = 'supper_form-2_side-2_33-sheets.pdf';
const bytes = (text: string) => new TextEncoder().encode(text);

let root: string;
let folder: string;

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'rip-'));
  folder = join(root, 'hot folder');
  mkdirSync(folder);
  writeFileSync(join(folder, 'another job.pdf'), 'not ours');
});

afterEach(() => rmSync(root, { recursive: true, force: true }));

const outgoing = (name: string, text: string): Outgoing => ({ name, bytes: bytes(text) });

const bothSides = () => [outgoing(FIRST, 'the whole of side 1'), outgoing(SECOND, 'the whole of side 2')];

/** A check that finds nothing, and does this meanwhile. */
const meanwhile =
  (act: () => void): FolderCheck<string> =>
  async () => {
    act();
    return ok({ found: 'nothing', holds: false });
  };
const OPTIONS: SendOptions<string> = { overwrite: false, check: meanwhile(() => undefined) };

const send = (files: readonly Outgoing[], options: Partial<SendOptions<string>> = {}) =>
  sendToFolder(folder, files, { ...OPTIONS, ...options });

/** All that the folder holds, hidden files included. */
const held = (of = folder): Record<string, string> =>
  Object.fromEntries(readdirSync(of).map((name) => [name, readFileSync(join(of, name), 'utf8')]));

const BEFORE = { 'another job.pdf': 'not ours' };
const AFTER = { ...BEFORE, [FIRST]: 'the whole of side 1', [SECOND]: 'the whole of side 2' };

const faultIn = async (sending: ReturnType<typeof send>) => {
  const sent = await sending;
  if (sent.ok) throw new Error('it was sent');
  return sent.fault;
};

describe('sending to the RIP', () => {
  it('puts all files of a job into the folder, and nothing else', async () => {
    const sent = await send(bothSides());
    expect(sent).toEqual({
      ok: true,
      value: {
        is: 'sent',
        found: 'nothing',
        paths: [join(folder, FIRST), join(folder, SECOND)],
        notices: [],
      },
    });
    expect(held()).toEqual(AFTER);
  });

  it('shows the RIP no name that ends in .pdf, and no name that is not hidden, before all is checked', async () => {
    const seen: string[] = [];
    const check: FolderCheck<string> = async (files) => {
      seen.push(...readdirSync(folder).filter((name) => name !== 'another job.pdf'));
      expect([...files.keys()]).toEqual([FIRST, SECOND]);
      for (const read of files.values()) {
        expect(new TextDecoder().decode(read)).toMatch(/^the whole of side \d$/);
      }
      return ok({ found: 'nothing', holds: false });
    };
    await send(bothSides(), { check });
    expect(seen).toHaveLength(2);
    for (const name of seen) expect(name).toMatch(/^\.turnlay-[0-9a-f]{8}-[12]\.part$/);
  });

  it('flushes every file before it is read back, and the folder at the end', async () => {
    const disk = faultyDisk('EIO', () => false);
    await send(bothSides(), { disk });
    const written = ['open', 'writeFile', 'sync', 'close', 'readFile'];
    const looks = ['stat', 'lstat', 'lstat'];
    const named = ['link', 'unlink'];
    expect(disk.steps).toEqual([
      ...looks,
      ...written,
      ...written,
      ...named,
      ...named,
      'open',
      'sync',
      'close',
    ]);
  });

  it('sends nothing at all when there is nothing to send', async () => {
    expect(await send([])).toEqual({
      ok: true,
      value: { is: 'sent', found: 'nothing', paths: [], notices: [] },
    });
    expect(held()).toEqual(BEFORE);
  });

  it('never overwrites without being told to, and names what is in the way', async () => {
    writeFileSync(join(folder, FIRST), 'earlier side 1');
    writeFileSync(join(folder, SECOND), 'earlier side 2');
    expect(await faultIn(send(bothSides()))).toEqual({
      code: 'file-exists',
      message: `${folder} already holds ${FIRST} and ${SECOND}.`,
      remedy: 'Send again with overwriting allowed, or change the pattern for the file names.',
      where: FIRST,
    });
    expect(held()).toEqual({ ...BEFORE, [FIRST]: 'earlier side 1', [SECOND]: 'earlier side 2' });
  });

  it('replaces earlier files when told to, and leaves no trace of them', async () => {
    writeFileSync(join(folder, FIRST), 'earlier side 1');
    expect((await send(bothSides(), { overwrite: true })).ok).toBe(true);
    expect(held()).toEqual(AFTER);
  });

  it('does not overwrite a file that appears while it is sending', async () => {
    const check = meanwhile(() => writeFileSync(join(folder, SECOND), 'somebody else'));
    const fault = await faultIn(send(bothSides(), { check }));
    expect(fault).toMatchObject({
      code: 'file-exists',
      message: `Something called ${SECOND} has just appeared in ${folder}.`,
    });
    expect(held()).toEqual({ ...BEFORE, [SECOND]: 'somebody else' });
  });

  it('does not overwrite such a file with the earlier one either', async () => {
    writeFileSync(join(folder, FIRST), 'earlier side 1');
    const disk = {
      ...NODE_DISK,
      link: async (from: string, to: string) => {
        if (from.endsWith('.part')) writeFileSync(to, 'somebody else');
        return NODE_DISK.link(from, to);
      },
    };
    const fault = await faultIn(send(bothSides(), { overwrite: true, disk: disk as never }));
    const kept = readdirSync(folder).find((name) => name.endsWith('.kept')) ?? 'nothing';
    expect(fault.code).toBe('file-exists');
    expect(fault.message).toContain(
      `The earlier ${join(folder, FIRST)} could not be put back: it is now called ${join(folder, kept)}.`,
    );
    expect(held()).toEqual({ ...BEFORE, [FIRST]: 'somebody else', [kept]: 'earlier side 1' });
  });

  it('works on a disk that knows no second names for a file', async () => {
    const disk = faultyDisk('EPERM', (_, name) => name === 'link');
    expect((await send(bothSides(), { disk })).ok).toBe(true);
    expect(held()).toEqual(AFTER);
    const again = faultyDisk('EPERM', (_, name) => name === 'link');
    const check = meanwhile(() => writeFileSync(join(folder, 'third.pdf'), 'somebody else'));
    expect(await faultIn(send([outgoing('third.pdf', 'ours')], { check, disk: again }))).toMatchObject({
      code: 'file-exists',
    });
    expect(held()).toEqual({ ...AFTER, 'third.pdf': 'somebody else' });
  });

  it('works where folders cannot be flushed', async () => {
    for (const code of ['EISDIR', 'EPERM', 'EINVAL']) {
      let opened = 0;
      const disk = faultyDisk(code, (_, name) => name === 'open' && ++opened === 2);
      expect((await send([outgoing(`${code}.pdf`, 'whole')], { disk })).ok).toBe(true);
    }
    expect(Object.keys(held())).toHaveLength(4);
  });
});

describe('sending that is refused', () => {
  it.each([
    ['', '"" cannot be the name of a file in the folder.'],
    ['.hidden.pdf', '".hidden.pdf" cannot be the name of a file in the folder.'],
    ['../out.pdf', '"../out.pdf" cannot be the name of a file in the folder.'],
    ['in/side.pdf', '"in/side.pdf" cannot be the name of a file in the folder.'],
    ['in\\side.pdf', '"in\\side.pdf" cannot be the name of a file in the folder.'],
    ['nul\0.pdf', '"nul\0.pdf" cannot be the name of a file in the folder.'],
  ])('cannot be called %j', async (name, message) => {
    expect(await faultIn(send([outgoing(name, 'x')]))).toMatchObject({
      code: 'name-unusable',
      message,
      where: name,
    });
    expect(held()).toEqual(BEFORE);
  });

  it('cannot have two files of one name, whatever their case', async () => {
    expect(await faultIn(send([outgoing('a.pdf', '1'), outgoing('A.pdf', '2')]))).toMatchObject({
      code: 'name-unusable',
      message: 'Two files would be called A.pdf.',
    });
  });

  it('says when the name is longer than the disk takes', async () => {
    const name = `${'n'.repeat(300)}.pdf`;
    const fault = await faultIn(send([outgoing(name, 'x')]));
    expect(fault).toMatchObject({
      code: 'name-unusable',
      message: `${folder} takes no file of the name ${name}.`,
    });
    expect(held()).toEqual(BEFORE);
  });

  it('says when the folder is not there, is a file, or lies inside a file', async () => {
    const remedy = "Choose the RIP's folder anew, or connect the disk it is on.";
    const gone = join(root, 'gone');
    expect(await faultIn(sendToFolder(gone, bothSides(), OPTIONS))).toEqual({
      code: 'folder-missing',
      message: `The folder ${gone} is not there.`,
      remedy,
      where: gone,
    });
    const file = join(folder, 'another job.pdf');
    expect(await faultIn(sendToFolder(file, bothSides(), OPTIONS))).toMatchObject({
      code: 'folder-missing',
      message: `${file} is a file, not a folder.`,
    });
    const inside = join(file, 'inside');
    expect(await faultIn(sendToFolder(inside, bothSides(), OPTIONS))).toMatchObject({
      code: 'folder-missing',
      message: `The folder ${inside} cannot be there: part of its path is a file.`,
    });
  });

  it('says when a folder stands where the file should be, also when it may overwrite', async () => {
    mkdirSync(join(folder, SECOND));
    expect(await faultIn(send(bothSides(), { overwrite: true }))).toMatchObject({
      code: 'file-exists',
      message: `${folder} holds a folder called ${SECOND}.`,
    });
    expect(readdirSync(folder).sort()).toEqual(['another job.pdf', SECOND].sort());
  });

  it('says when the folder cannot be written to', async () => {
    chmodSync(root, 0o755);
    chmodSync(folder, 0o555);
    const fault = await asSomebodyElse(() => faultIn(send(bothSides())));
    chmodSync(folder, 0o755);
    expect(fault).toEqual({
      code: 'folder-read-only',
      message: `${folder} cannot be written to.`,
      remedy: 'Get the right to write there, or choose another folder.',
      where: FIRST,
    });
    expect(held()).toEqual(BEFORE);
  });

  it('says when the disk is full, and leaves the folder as it was', async () => {
    const files = [outgoing(FIRST, 'small'), outgoing(SECOND, 'x'.repeat(200_000))];
    const small = join(root, 'small');
    mkdirSync(small);
    const mounted = mountSmallDisk(small);
    try {
      const disk = mounted ? NODE_DISK : faultyDisk('ENOSPC', (_, name) => name === 'writeFile');
      const fault = await faultIn(sendToFolder(small, files, { ...OPTIONS, disk }));
      expect(fault).toMatchObject({ code: 'disk-full', remedy: 'Make room on it, then send again.' });
      expect(fault.message).toMatch(
        /^The disk of .*small is full: supper_form-\d_side-\d_33-sheets.pdf found no room\.$/,
      );
      expect(held(small)).toEqual({});
    } finally {
      if (mounted) execFileSync('umount', [small]);
    }
  });

  it('says when the folder goes away while it is sending', async () => {
    const check = meanwhile(() => rmSync(folder, { recursive: true }));
    expect(await faultIn(send([outgoing(FIRST, 'x')], { check }))).toEqual({
      code: 'folder-missing',
      message: `${folder} went away while ${FIRST} was being sent.`,
      remedy: 'Check the disk or the network connection, then send again.',
      where: FIRST,
    });
  });

  it('hands on why the check could not be made, with the folder as it was', async () => {
    const fault = {
      code: 'proof-failed',
      message: 'The renderer broke down.',
      remedy: 'Try again.',
    } as const;
    expect(await faultIn(send(bothSides(), { check: async () => refuse(fault) }))).toEqual(fault);
    expect(held()).toEqual(BEFORE);
  });

  it('lets our own mistakes through, with the folder as it was', async () => {
    const check = meanwhile(() => {
      throw new TypeError('a mistake');
    });
    await expect(send(bothSides(), { check })).rejects.toThrow('a mistake');
    expect(held()).toEqual(BEFORE);
  });

  it('does not trust a disk that gives back other bytes than were written', async () => {
    const disk = { ...NODE_DISK, readFile: async () => Buffer.from('the whole of side 7') };
    const fault = await faultIn(send(bothSides(), { disk: disk as never }));
    expect(fault).toMatchObject({
      code: 'write-failed',
      message: `What ${folder} gives back of ${FIRST} is not what was written.`,
      where: FIRST,
    });
    expect(held()).toEqual(BEFORE);
  });
});

describe('sending that is held back', () => {
  const check: FolderCheck<string> = async () => ok({ found: 'A back is upside down.', holds: true });

  it('tells what was found, with the folder as it was', async () => {
    writeFileSync(join(folder, SECOND), 'earlier side 2');
    expect(await send(bothSides(), { check, overwrite: true })).toEqual({
      ok: true,
      value: { is: 'held', found: 'A back is upside down.', notices: [] },
    });
    expect(held()).toEqual({ ...BEFORE, [SECOND]: 'earlier side 2' });
  });

  it('says what it could not put right', async () => {
    const disk = faultyDisk('EACCES', (_, name) => name === 'unlink');
    const sent = await send([outgoing(FIRST, 'whole')], { check, disk });
    const part = readdirSync(folder).find((name) => name.endsWith('.part')) ?? 'nothing';
    expect(sent).toMatchObject({
      ok: true,
      value: {
        is: 'held',
        notices: [`The unfinished file ${join(folder, part)} could not be removed.`],
      },
    });
  });
});

describe('sending that is cancelled', () => {
  const cancelled = {
    code: 'send-cancelled',
    message: 'Sending was cancelled.',
    remedy: 'Send again when you want the sheets printed.',
  };

  it('does nothing when it was cancelled before', async () => {
    const disk = faultyDisk('EIO', () => false);
    expect(await faultIn(send(bothSides(), { signal: AbortSignal.abort(), disk }))).toEqual(cancelled);
    expect(disk.steps).not.toContain('open');
  });

  it.each([0, 1])('leaves the folder as it was when cancelled while file %i is read back', async (which) => {
    const cancel = new AbortController();
    let read = 0;
    const disk = faultyDisk('EIO', (_, name) => {
      if (name === 'readFile' && read++ === which) cancel.abort();
      return false;
    });
    expect(await faultIn(send(bothSides(), { signal: cancel.signal, disk }))).toEqual(cancelled);
    expect(held()).toEqual(BEFORE);
  });

  it('leaves the folder as it was when cancelled while the files are checked', async () => {
    const cancel = new AbortController();
    const check = meanwhile(() => cancel.abort());
    expect(await faultIn(send(bothSides(), { check, signal: cancel.signal }))).toEqual(cancelled);
    expect(held()).toEqual(BEFORE);
  });

  it('stops in the middle of a large file', async () => {
    const cancel = new AbortController();
    const disk = faultyDisk('EIO', (_, name) => {
      if (name === 'writeFile') cancel.abort();
      return false;
    });
    expect(await faultIn(send(bothSides(), { signal: cancel.signal, disk }))).toEqual(cancelled);
    expect(held()).toEqual(BEFORE);
  });
});

describe('whatever step fails', () => {
  const prepare = () => {
    for (const name of readdirSync(folder)) rmSync(join(folder, name));
    writeFileSync(join(folder, 'another job.pdf'), 'not ours');
    writeFileSync(join(folder, SECOND), 'earlier side 2');
  };
  const before = { ...BEFORE, [SECOND]: 'earlier side 2' };
  const cleanRun = async () => {
    prepare();
    const disk = faultyDisk('EIO', () => false);
    await send(bothSides(), { overwrite: true, disk });
    return disk.steps;
  };

  it.each(['ENOSPC', 'EDQUOT', 'EIO', 'EROFS', 'ESTALE'])(
    'with %s, the folder holds exactly what it held before, or exactly what was sent',
    async (code) => {
      const steps = await cleanRun();
      expect(steps.length).toBeGreaterThan(20);
      for (const [failing, name] of steps.entries()) {
        prepare();
        const disk = faultyDisk(code, (step) => step === failing);
        const sent = await send(bothSides(), { overwrite: true, disk });
        if (!sent.ok) {
          expect([failing, name, held()]).toEqual([failing, name, before]);
          expect(sent.fault.message).toMatch(/^[^.]*(\.pdf[^.]*)*\.( |$)/);
        } else if (sent.value.notices.length === 0) {
          expect([failing, name, held()]).toEqual([failing, name, AFTER]);
        } else {
          const kept = readdirSync(folder).filter((n) => n.endsWith('.kept'));
          expect(kept).toHaveLength(1);
          expect(sent.value.notices).toEqual([
            `A replaced file could not be removed: it is now called ${join(folder, kept[0]!)}.`,
          ]);
          expect(held()).toEqual({ ...AFTER, [kept[0]!]: 'earlier side 2' });
        }
      }
    },
  );

  it('and all that follow fail too, what stays behind is named', async () => {
    const steps = await cleanRun();
    for (const failing of steps.keys()) {
      prepare();
      const disk = faultyDisk('EIO', (step) => step >= failing);
      const sent = await send(bothSides(), { overwrite: true, disk });
      const said = sent.ok ? sent.value.notices.join(' ') : sent.fault.message;
      const hidden = readdirSync(folder).filter((name) => name.startsWith('.'));
      for (const name of hidden) expect(said).toContain(name);
      const named = held()[FIRST] !== undefined;
      if (named && !sent.ok) expect(said).toContain(`${join(folder, FIRST)} could not be taken back.`);
    }
  });

  it('a file that the RIP has taken already is said to be gone', async () => {
    let links = 0;
    const disk = {
      ...NODE_DISK,
      link: async (from: string, to: string) => {
        if (++links === 1) return NODE_DISK.link(from, to);
        renameSync(join(folder, FIRST), join(root, 'taken.pdf'));
        throw systemError('EIO');
      },
      rename: async () => {
        throw systemError('EIO');
      },
    };
    const fault = await faultIn(send(bothSides(), { disk: disk as never }));
    expect(fault.message).toBe(
      `Sending ${SECOND} to ${folder} failed (EIO). ${FIRST} is no longer in the folder: the RIP may have taken it already.`,
    );
    expect(held()).toEqual(BEFORE);
  });
});

/** Runs as a user without rights of his own over the folder; root would be let through everywhere. */
async function asSomebodyElse<T>(act: () => Promise<T>): Promise<T> {
  const isRoot = process.geteuid?.() === 0;
  if (isRoot) process.seteuid?.(65534);
  try {
    return await act();
  } finally {
    if (isRoot) process.seteuid?.(0);
  }
}

/** Mounts a disk of 64 kB, where that is allowed. */
function mountSmallDisk(at: string): boolean {
  try {
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=64k', 'tmpfs', at], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
}
