/**
 * What a fat is chemically; it enters every formula. A triglyceride gives glycerol; a free fatty acid gives water; a
 * wax is one alcohol to one acid, and about half of it never becomes soap; rosin is an acid without glycerol.
 */
export type FatKind = 'triglyceride' | 'free-fatty-acid' | 'wax-ester' | 'rosin';

export const FAT_KINDS = ['triglyceride', 'free-fatty-acid', 'wax-ester', 'rosin'] as const;

/** The kinds that a fatty-acid profile describes. */
export type ProfileKind = Exclude<FatKind, 'rosin'>;

export const PROFILE_KINDS = ['triglyceride', 'free-fatty-acid', 'wax-ester'] as const;
