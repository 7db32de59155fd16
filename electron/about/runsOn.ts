// What the program runs on here, each part with its version, as a person would tell it to whoever helps them.

/** What of the versions is told, under the names that people know. */
const PARTS = { electron: 'Electron', chrome: 'Chromium', node: 'Node.js' } as const;

export function runsOn(versions: Readonly<Record<string, string | undefined>>): readonly string[] {
  return Object.entries(PARTS).flatMap(([part, name]) => {
    const version = versions[part];
    return version === undefined ? [] : [`${name} ${version}`];
  });
}
