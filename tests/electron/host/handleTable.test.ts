// Handles: each stands for one path, and none can be made up.
import { describe, expect, it } from 'vitest';
import { HandleTable } from '../../../electron/host/handleTable.ts';
import type { FileHandle } from '../../../shared/contract/handles.ts';

describe('handles', () => {
  it('stand for the path they were issued for, and the same path keeps its handle', () => {
    const table = new HandleTable<FileHandle>();
    const handle = table.issue('/jobs/a.turnlay');
    expect(handle).toMatch(/^[0-9a-f]{32}$/);
    expect(table.issue('/jobs/a.turnlay')).toBe(handle);
    expect(table.issue('/jobs/b.turnlay')).not.toBe(handle);
    expect(table.resolve(handle)).toEqual({ ok: true, value: '/jobs/a.turnlay' });
  });

  it('are refused when another host issued them, or when somebody made them up', () => {
    const table = new HandleTable<FileHandle>();
    const foreign = new HandleTable<FileHandle>().issue('/jobs/a.turnlay');
    for (const madeUp of [foreign, '/etc/hosts' as FileHandle, '' as FileHandle]) {
      expect(table.resolve(madeUp)).toMatchObject({ ok: false, fault: { code: 'handle-unknown' } });
    }
  });

  it('stand for a new place once what they name has moved there', () => {
    const table = new HandleTable<FileHandle>();
    const handle = table.issue('/inbox/a.pdf');
    table.move(handle, '/jobs/a.pdf');
    expect(table.resolve(handle)).toEqual({ ok: true, value: '/jobs/a.pdf' });
    expect(table.issue('/jobs/a.pdf')).toBe(handle);
    expect(table.issue('/inbox/a.pdf')).not.toBe(handle);
  });
});
