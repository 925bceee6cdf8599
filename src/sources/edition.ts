/** Edition of the figures: results of two editions may differ; results of one never do. */
export const EDITION = '2026.1';
