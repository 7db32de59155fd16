// What the built app is called and where it starts: a package of its own, without any dependency.
import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';

/** What package.json says of the project. Read, since the runner of the end-to-end tests imports no JSON by name. */
type Told = Readonly<Record<'description' | 'license' | 'name' | 'version', string>>;

export async function describeApp(folder: string): Promise<void> {
  const told = await readFile(join(import.meta.dirname, '../package.json'), 'utf8');
  const { description, license, name, version } = JSON.parse(told) as Told;
  const described = {
    name,
    productName: 'Turnlay',
    version,
    description,
    license,
    author: 'The makers of Turnlay',
    homepage: 'http://localhost/',
    main: 'host/main.cjs',
  };
  await writeFile(join(folder, 'package.json'), `${JSON.stringify(described, null, 2)}\n`);
}
