// Answering the calls of the desktop window: from our own page only, each on its own channel.
import { type IpcMainInvokeEvent, ipcMain, type WebContents } from 'electron';
import { CALLS, type Group } from '../../shared/contract/calls.ts';
import { callChannel, DROPPED_CHANNEL } from '../../shared/contract/channels.ts';
import { answerCall, BadCall } from '../host/answerCall.ts';
import type { OpenedHost } from '../host/openHost.ts';
import { HOME } from './appScheme.ts';

/** Answers whatever the page of the window asks. `contents` gives the window's, once there is one. */
export function answerWindow(host: OpenedHost, contents: () => WebContents | undefined): void {
  const checkSender = (event: IpcMainInvokeEvent) => {
    const frame = event.senderFrame;
    const isOurs =
      event.sender === contents() && frame !== null && frame.parent === null && frame.url === HOME;
    if (!isOurs) throw new BadCall('Only the window itself may ask.');
  };
  for (const group of Object.keys(CALLS) as Group[]) {
    for (const call of Object.keys(CALLS[group])) {
      ipcMain.handle(callChannel(group, call), (event, ask: unknown) => {
        checkSender(event);
        return answerCall(host.handlers, group, call, ask);
      });
    }
  }
  ipcMain.handle(DROPPED_CHANNEL, (event, path: unknown) => {
    checkSender(event);
    if (typeof path !== 'string' || path === '') throw new BadCall('Nothing was dropped that has a path.');
    return host.dropPath(path);
  });
}
