// The art of this window: read and drawn once for all stages that show it, and closed with the job.
import { host } from '../hostClient/host.ts';
import { app } from '../state/store.ts';
import { openArtPictures } from './artPictures.ts';
import { openArtReading } from './artReading.ts';

export const artReading = openArtReading((art) => host.art.look({ art }));

export const artPictures = openArtPictures(artReading);

host.on('art', ({ art }) => artPictures.forget(art));

app.subscribe((now, before) => {
  if (now.history === undefined && before.history !== undefined) artPictures.close();
});
