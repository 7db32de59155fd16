// How the names of files end, by which their kind is known.

/** The ending of job files, and the ending of art. */
export const JOB_ENDING = '.turnlay';
export const ART_ENDING = '.pdf';
