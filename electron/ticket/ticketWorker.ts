// The thread in which the papers of a job are made and written: planning the cuts of a large sheet takes its time.
import { doTask } from '../thread/doTask.ts';
import { writeTicket } from './writeTicket.ts';

doTask(writeTicket);
