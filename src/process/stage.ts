/** The steps of the work that have a temperature of their own. */
export type WorkStage = 'lye' | 'saponification' | 'clearing' | 'pouring';

/** The same as a list, in the order of the work. */
export const WORK_STAGES: readonly WorkStage[] = ['lye', 'saponification', 'clearing', 'pouring'];
