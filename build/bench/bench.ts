// All benchmarks. Times are of one run on one machine: read the ratios.
import { benchDrag } from './drag.ts';
import { benchLayout } from './layout.ts';
import { benchPictures } from './pictures.ts';
import { benchSending } from './send.ts';

benchLayout();
benchSending();
await benchDrag();
await benchPictures();
