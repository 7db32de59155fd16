// All benchmarks. Times are of one run on one machine: read the ratios.
import { benchLayout } from './layout.ts';
import { benchSending } from './send.ts';

benchLayout();
benchSending();
