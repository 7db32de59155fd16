// What the built app is called and where it starts: a package of its own, without any dependency.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** What package.json says of the project. Read, since the runner of the end-to-end tests imports no JSON by name. */
type Told = Readonly<Record<'author' | 'description' | 'license' | 'name' | 'version', string>> & {
  readonly homepage?: string;
};

export async function describeApp(folder: string): Promise<void> {
  const told = await readFile(join(import.meta.dirname, '../package.json'), 'utf8');
  const { author, description, homepage, license, name, version } = JSON.parse(told) as Told;
  const described = {
    name,
    productName: 'Turnlay',
    version,
    description,
    license,
    author,
    homepage,
    main: 'host/main.cjs',
    // The name of the entry that the system has for the app, so that its windows are known to belong to it.
    desktopName: `${name}.desktop`,
  };
  await writeFile(join(folder, 'package.json'), `${JSON.stringify(described, null, 2)}\n`);
}
