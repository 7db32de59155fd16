// Property tests draw the same cases for every mutant, so that two runs kill the same ones.
import fc from 'fast-check';

fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: 1 });
