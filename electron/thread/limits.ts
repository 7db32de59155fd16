// What threads may take that work on a whole job.

/**
 * What the program may grow by while a job is worked on.
 *
 * @source common practice, no source: twice what one file of art may take, which such a thread opens once more.
 */
export const MAX_JOB_MEGABYTES = 4096;
