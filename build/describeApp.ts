// What the built app is called and where it starts: a package of its own, without any dependency.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { description, license, name, version } from '../package.json';

export async function describeApp(folder: string): Promise<void> {
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
