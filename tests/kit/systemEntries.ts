// What electron-builder writes for the system about the files and links that the packed app opens, got without its tools.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { AfterPackContext } from 'electron-builder';

export interface SystemEntries {
  readonly linux: { readonly desktopEntry: string; readonly mimeTypes: string };
  /** The information property list of the app. */
  readonly mac: unknown;
}

type Packager = AfterPackContext['packager'];

/** The parts of electron-builder that make installers, which it runs by itself only on each system. */
interface Makers {
  readonly linux: {
    readonly LinuxTargetHelper: new (
      packager: Packager,
    ) => { computeDesktopEntry(options: object): Promise<string>; readonly mimeTypeFiles: Promise<string> };
  };
  readonly mac: { readonly MacPackager: new (info: unknown) => Packager };
  readonly macApp: {
    createMacApp(packager: Packager, folder: string, integrity: object, isMas: boolean): Promise<void>;
  };
}

const require = createRequire(createRequire(import.meta.url).resolve('electron-builder'));

const PLIST = `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE plist PUBLIC "-//Apple//DTD PLIST 1.0//EN" "http://www.apple.com/DTDs/PropertyList-1.0.dtd">
<plist version="1.0"><dict><key>CFBundleName</key><string>Electron</string>
<key>CFBundleIconFile</key><string>electron.icns</string></dict></plist>
`;

export async function systemEntries(packager: Packager, folder: string): Promise<SystemEntries> {
  const { LinuxTargetHelper }: Makers['linux'] = require('app-builder-lib/out/targets/LinuxTargetHelper');
  const { MacPackager }: Makers['mac'] = require('app-builder-lib/out/macPackager');
  const { createMacApp }: Makers['macApp'] = require('app-builder-lib/out/electron/electronMac');
  const helper = new LinuxTargetHelper(packager);
  const linux = {
    desktopEntry: await helper.computeDesktopEntry(packager.platformSpecificBuildOptions),
    mimeTypes: readFileSync(await helper.mimeTypeFiles, 'utf8'),
  };
  // Electron's own app for a Mac, as far as it is read: a property list for the app and one for each of its helpers.
  const contents = join(folder, 'Electron.app/Contents');
  const apps = ['', ...[' Helper', ' Helper (Renderer)', ' Helper (Plugin)', ' Helper (GPU)']];
  for (const name of apps) {
    const at = name === '' ? contents : join(contents, `Frameworks/Electron${name}.app/Contents`);
    mkdirSync(join(at, 'MacOS'), { recursive: true });
    writeFileSync(join(at, 'Info.plist'), PLIST);
    writeFileSync(join(at, 'MacOS', `Electron${name}`), '');
  }
  const forMac = new MacPackager(packager.info);
  // A Mac's own kind of icon is made by a tool that would have to be fetched.
  Object.assign(forMac, { getIconPath: async () => null, getOrConvertIcon: async () => null });
  await createMacApp(forMac, folder, {}, false);
  const { parsePlistFile } = require('app-builder-lib/out/util/plist');
  return { linux, mac: await parsePlistFile(join(folder, 'Turnlay.app/Contents/Info.plist')) };
}
