// Dropping files from the desktop onto the window, as the browser tells a page of it.
import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import type { Locator } from '@playwright/test';

/** Drags the files over the middle of the target and lets them go there. */
export async function dropFiles(target: Locator, paths: readonly string[]): Promise<void> {
  const files = paths.map((path) => ({
    name: basename(path),
    type: path.endsWith('.pdf') ? 'application/pdf' : '',
    base64: readFileSync(path).toString('base64'),
  }));
  await target.evaluate(async (element, dropped) => {
    const transfer = new DataTransfer();
    for (const { name, type, base64 } of dropped) {
      const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
      transfer.items.add(new File([bytes], name, { type }));
    }
    const box = element.getBoundingClientRect();
    const at = { clientX: box.x + box.width / 2, clientY: box.y + box.height / 2 };
    for (const kind of ['dragenter', 'dragover', 'drop']) {
      const event = new DragEvent(kind, { bubbles: true, cancelable: true, dataTransfer: transfer, ...at });
      element.dispatchEvent(event);
    }
  }, files);
}
