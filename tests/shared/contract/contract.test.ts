// The contract: a host built from its list has every call by name, and the keys and menus of its actions are in order.
import { describe, expect, it } from 'vitest';
import { ACTION_NAMES, ACTIONS, type ActionEntry, MENUS } from '../../../shared/contract/actions.ts';
import { ASK_SCHEMAS } from '../../../shared/contract/askSchemas.ts';
import { CALLS, type Group } from '../../../shared/contract/calls.ts';
import { callChannel, eventChannel } from '../../../shared/contract/channels.ts';
import { EVENTS, type EventName } from '../../../shared/contract/events.ts';
import { type ArtHandle, artOf, artUrl } from '../../../shared/contract/handles.ts';
import { makeHost } from '../../../shared/contract/makeHost.ts';

const groups = Object.keys(CALLS) as Group[];
const all = groups.flatMap((group) => Object.keys(CALLS[group]).map((call) => [group, call] as const));

describe('the calls', () => {
  it('are each carried under their own name, with what they ask', async () => {
    const carried: unknown[] = [];
    const host = makeHost(
      async (group, call, ask) => {
        carried.push([group, call, ask]);
        return `${group}.${call}`;
      },
      {
        dropped: async () => ({ ok: false, fault: { code: 'art-not-pdf', message: '', remedy: '' } }),
        on: () => () => undefined,
      },
    );
    for (const [group, call] of all) {
      const asked = (host[group] as Record<string, (ask: unknown) => Promise<unknown>>)[call];
      expect(await asked?.({ of: call })).toBe(`${group}.${call}`);
    }
    expect(carried).toEqual(all.map(([group, call]) => [group, call, { of: call }]));
  });

  it('each have a schema for what they ask, and a channel of their own', () => {
    for (const group of groups) expect(Object.keys(ASK_SCHEMAS[group])).toEqual(Object.keys(CALLS[group]));
    const channels = [
      ...all.map(([group, call]) => callChannel(group, call)),
      ...(Object.keys(EVENTS) as EventName[]).map(eventChannel),
    ];
    expect(new Set(channels).size).toBe(channels.length);
  });
});

describe('the actions', () => {
  const entries = ACTION_NAMES.map((name): [string, ActionEntry] => [name, ACTIONS[name]]);

  it('each have a key that no other has', () => {
    const keys = entries.map(([, { key }]) => key);
    expect(keys.filter((key, i) => keys.indexOf(key) < i)).toEqual([]);
    for (const key of keys)
      expect(key).toMatch(/^(Mod\+)?(Alt\+)?(Shift\+)?([A-Z0-9]|[[\],.=-]|[A-Z][A-Za-z0-9]+)$/);
  });

  it('each have a label that no other in their menu has', () => {
    const labels = entries.map(([, { menu, label }]) => `${menu}: ${label}`);
    expect(new Set(labels).size).toBe(labels.length);
    expect(new Set(entries.map(([, { menu }]) => menu))).toEqual(new Set(MENUS));
  });
});

describe('art', () => {
  it('is named by its handle, and fetched under it', () => {
    const face = { file: 'a1', page: 1, rotate: 0 } as const;
    expect(artOf(face)).toBe('a1');
    expect(artUrl('a1' as ArtHandle)).toBe('/art/a1');
  });
});
