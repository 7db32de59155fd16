// All benchmarks. Times are of one run on one machine: read the ratios.
import { benchSending } from './send.ts';

benchSending();
