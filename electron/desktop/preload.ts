// The preload of the window: gives it the host, every call by its own name, and nothing of Node or Electron.
import { contextBridge, type IpcRendererEvent, ipcRenderer, webUtils } from 'electron';
import { callChannel, DROPPED_CHANNEL, eventChannel } from '../../shared/contract/channels.ts';
import { EVENTS } from '../../shared/contract/events.ts';
import { makeHost } from '../../shared/contract/makeHost.ts';

const host = makeHost((group, call, ask) => ipcRenderer.invoke(callChannel(group, call), ask), {
  // What is dropped on the window is a real file; of anything else the path is empty, and the host refuses that.
  dropped: (file) => ipcRenderer.invoke(DROPPED_CHANNEL, webUtils.getPathForFile(file as File)),
  on: (event, listener) => {
    if (!Object.hasOwn(EVENTS, event)) throw new Error(`There is no event ${event}.`);
    const hear = (_event: IpcRendererEvent, told: Parameters<typeof listener>[0]) => listener(told);
    ipcRenderer.on(eventChannel(event), hear);
    return () => {
      ipcRenderer.off(eventChannel(event), hear);
    };
  },
});

contextBridge.exposeInMainWorld('turnlay', host);
