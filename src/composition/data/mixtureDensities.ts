import type { SourceId } from '../../sources/index.js';

/** Densities of mixtures with water by share, at one or at several temperatures. */
export interface MixtureGrid {
  readonly source: SourceId;
  readonly obtained: 'read' | 'memory' | 'derived';
  /** °C. */
  readonly celsius: readonly string[];
  /** Share in percent by mass, then a figure at each temperature. */
  readonly rows: readonly (readonly [percent: string, ...figures: string[]])[];
}

/** Glycerol at 20 °C, specific gravity 20/20, weighed in air. */
export const glycerolAt20: MixtureGrid = {
  source: 'lange-15',
  obtained: 'read',
  celsius: ['20'],
  rows: [
    ['10', '1.02395'],
    ['20', '1.0488'],
    ['30', '1.0747'],
    ['40', '1.10135'],
    ['50', '1.12845'],
    ['70', '1.18355'],
    ['80', '1.2109'],
    ['90', '1.23755'],
    ['100', '1.26362'],
  ],
};

/** Glycerol by temperature, g/mL, evaluated; used for differences between temperatures only. */
export const glycerolByTemperature: MixtureGrid = {
  source: 'melinder-2010',
  obtained: 'derived',
  celsius: ['0', '10', '20', '25', '40'],
  rows: [
    ['10', '1.0253', '1.0241', '1.0220', '1.0207', '1.0160'],
    ['20', '1.0515', '1.0496', '1.0468', '1.0452', '1.0397'],
    ['30', '1.0787', '1.0759', '1.0724', '1.0705', '1.0642'],
    ['40', '1.1068', '1.1031', '1.0989', '1.0967', '1.0896'],
    ['50', '1.1355', '1.1309', '1.1261', '1.1236', '1.1158'],
  ],
};

/** Propylene glycol, g/mL, evaluated. */
export const propyleneGlycolByTemperature: MixtureGrid = {
  source: 'melinder-2010',
  obtained: 'derived',
  celsius: ['0', '20', '25', '40', '60'],
  rows: [
    ['10', '1.0093', '1.0062', '1.0048', '0.9994', '0.9898'],
    ['20', '1.0201', '1.0148', '1.0129', '1.0064', '0.9956'],
    ['30', '1.0316', '1.0238', '1.0214', '1.0134', '1.0012'],
    ['40', '1.0424', '1.0323', '1.0294', '1.0201', '1.0063'],
    ['50', '1.0509', '1.0391', '1.0358', '1.0254', '1.0105'],
    ['60', '1.0560', '1.0430', '1.0395', '1.0284', '1.0128'],
  ],
};

/** Sucrose at 20 °C, g/mL: of forty printed rows every tenth percent and the last; the others are check values. */
export const sucroseAt20: MixtureGrid = {
  source: 'crc-102-2021',
  obtained: 'read',
  celsius: ['20'],
  rows: [
    ['10', '1.0381'],
    ['20', '1.0810'],
    ['30', '1.1270'],
    ['40', '1.1765'],
    ['50', '1.2295'],
    ['60', '1.2864'],
    ['70', '1.3472'],
    ['80', '1.4117'],
    ['84', '1.4383'],
  ],
};
