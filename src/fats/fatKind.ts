/**
 * What a fat is chemically; it enters every formula. A triglyceride gives glycerol; a free fatty acid gives water; a
 * wax is one alcohol to one acid, and about half of it never becomes soap; rosin is an acid without glycerol.
 */
export type FatKind = 'triglyceride' | 'free-fatty-acid' | 'wax-ester' | 'rosin';

export const FAT_KINDS = ['triglyceride', 'free-fatty-acid', 'wax-ester', 'rosin'] as const;

/** Whether a kind has no esters, so that its acid value is its saponification value. */
export const isAllAcid = (kind: FatKind): boolean => kind === 'free-fatty-acid' || kind === 'rosin';

/** The kinds that a fatty-acid profile describes. */
export type ProfileKind = Exclude<FatKind, 'rosin'>;

export const PROFILE_KINDS = ['triglyceride', 'free-fatty-acid', 'wax-ester'] as const;
