// All benchmarks. Times are of one run on one machine: read the ratios.
import { benchCli } from './cli.ts';
import { benchCutting } from './cutting.ts';
import { benchDrag } from './drag.ts';
import { benchGang } from './gang.ts';
import { benchLayout } from './layout.ts';
import { benchPictures } from './pictures.ts';
import { benchPlan } from './plan.ts';
import { benchSending } from './send.ts';

benchCli();
benchLayout();
benchCutting();
benchPlan();
benchSending();
await benchDrag();
await benchPictures();
await benchGang();
