import type { FattyAcid } from '../../chemistry/index.js';
import type { SourceId } from '../../sources/index.js';
import type { PublishedFatId } from './fatNames.js';

/**
 * How a figure came into the table: read in the publication or in a restatement of it, recalled from memory and not
 * seen again, or worked out from figures that were read.
 */
export type Obtained = 'read' | 'memory' | 'derived';

/** The quantities of `publishedFats` that carry limits. */
export type LimitedQuantity =
  'saponificationValue' | 'observedSaponificationValue' | 'acidValue' | 'iodineValue' | 'unsaponifiable';

/** The quantities of which samples and handbooks are quoted. */
export type ObservedQuantity = 'saponificationValue' | 'acidValue' | 'iodineValue' | 'unsaponifiable' | 'titre';

/** A characteristic that no calculation needs, with its conditions as printed; one figure twice where one is printed. */
export interface Characteristic {
  readonly low: number;
  readonly high: number;
  readonly conditions?: string;
  readonly source: SourceId;
  readonly obtained: Obtained;
}

/** Where the cells of a profile are from. */
export interface ProfileProvenance {
  /** Of every cell not listed among the exceptions. */
  readonly source: SourceId;
  readonly obtained: Obtained;
  /** Acids the publication looks for and limits to not detected, at most 0.05 %: cells of 0 to 0. */
  readonly notDetected?: readonly FattyAcid[];
  readonly exceptions?: readonly {
    readonly acids: readonly FattyAcid[];
    readonly source: SourceId;
    readonly obtained: Obtained;
  }[];
}

/** Figures seen in samples or handbooks: nobody's limits, so no calculation uses them. */
export type Observation = readonly [low: number | null, high: number, source: SourceId, obtained: Obtained];

/** Everything known of a published fat besides the figures the calculations use, and where each of those is from. */
export interface PublishedFatRecord {
  /** The plant or animal, and the part of it. */
  readonly origin: string;
  /** Ingredient names of the fat and of its sodium soap; see `inciProvenance`. */
  readonly inciNames?: { readonly fat: string; readonly sodiumSoap?: string };
  readonly profile?: ProfileProvenance;
  /** How each row of `publishedFats` was obtained, by the publication it names there. */
  readonly limits: Readonly<Partial<Record<LimitedQuantity, Readonly<Partial<Record<SourceId, Obtained>>>>>>;
  /** Relative density, against water. */
  readonly relativeDensity?: Characteristic;
  readonly refractiveIndex?: Characteristic;
  /** Solidifying point of the fatty acids, °C (of the acid itself for free acids). */
  readonly titre?: Characteristic;
  /** Units as in `publishedFats`; titre in °C. */
  readonly observed?: Readonly<Partial<Record<ObservedQuantity, readonly Observation[]>>>;
  readonly notes: readonly string[];
}

/** Every ingredient name of the table is recalled, none was read. */
export const inciProvenance: { readonly source: SourceId; readonly obtained: Obtained } = {
  source: 'inci',
  obtained: 'memory',
};

/**
 * The record behind each published fat. The figures of the profile and of the limits stand in `publishedFats` only;
 * here is said, cell by cell, where they are from. For reports and documentation.
 */
// prettier-ignore
export const publishedFatRecords: Readonly<Record<PublishedFatId, PublishedFatRecord>> = {
  // Vegetable oils
  'coconut-oil': {
    origin: 'Cocos nucifera L. kernel',
    inciNames: { fat: 'Cocos Nucifera (Coconut) Oil', sodiumSoap: 'Sodium Cocoate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C16:1', 'C17:0', 'C17:1', 'C20:2', 'C22:0', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read', 'coconut-community-standard-undated': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read', 'coconut-community-standard-undated': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.908, high: 0.921, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.448, high: 1.45, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'Reichert value 6 to 8.5, Polenske value 13 to 18 (read with the row).',
      'The limits of the coconut-growing countries are for crude oil.',
      'A pharmacopoeial profile (USP 35, read) is wider: C8:0 5-11, C10:0 4-9, C12:0 40-50, C14:0 15-20, C16:0 7-12, C18:0 1.5-5, C18:1 4-10, C18:2 1-3.',
    ],
  },
  'palm-oil': {
    origin: 'Elaeis guineensis mesocarp',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Oil', sodiumSoap: 'Sodium Palmate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C17:1', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.891, high: 0.899, conditions: '50 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.454, high: 1.456, conditions: 'nD at 50 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'Apparent density 0.889 to 0.895 g/mL at 50 °C (read with the row).',
      'The fatty acids were read a second time, the same, in a quotation of the text to 2015.',
    ],
  },
  'palm-oil-high-oleic': {
    origin: 'Elaeis oleifera x Elaeis guineensis mesocarp',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Oil', sodiumSoap: 'Sodium Palmate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C17:1', 'C22:1', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.896, high: 0.91, conditions: '50 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.459, high: 1.462, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [],
  },
  'palm-kernel-oil': {
    origin: 'Elaeis guineensis kernel',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Kernel Oil', sodiumSoap: 'Sodium Palm Kernelate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C17:0', 'C17:1', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.899, high: 0.914, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.448, high: 1.452, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    observed: {
      saponificationValue: [
        [241, 250, 'applied-analytical-chemistry-undated', 'read'], [247.1, 249.3, 'simmons-appleton-1908', 'derived'],
      ],
      iodineValue: [[10, 13, 'simmons-appleton-1908', 'read'], [16.5, 18.75, 'oil-palm-research-2013', 'read']],
      titre: [[20.5, 25.5, 'applied-analytical-chemistry-undated', 'read']],
    },
    notes: [
      'The limits are recalled. No observed saponification value that was read lies below 241, so the lower limit 230 looks loose; an ingredient sheet (read) has 245-255, iodine value 14-22, unsaponifiable below 0.8 %.',
      'The 1908 value is worked out from saponification equivalents 227 and 225.',
      'The Indian fatty-acid table (read) is wider: C12:0 39.7-55, C14:0 11.5-19, C16:0 6-14, C18:1 10.5-24.6.',
    ],
  },
  'babassu-oil': {
    origin: 'Orbignya spp. (Attalea) kernel',
    inciNames: { fat: 'Orbignya Oleifera Seed Oil', sodiumSoap: 'Sodium Babassuate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: [
        'C6:0', 'C16:1', 'C17:0', 'C17:1', 'C18:3', 'C20:0', 'C20:1', 'C20:2', 'C22:0', 'C22:1', 'C22:2', 'C24:0',
        'C24:1',
      ],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row. They were cross-checked in a paper that quotes the standard.',
    ],
  },
  'olive-oil': {
    origin: 'Olea europaea L. fruit',
    inciNames: { fat: 'Olea Europaea (Olive) Fruit Oil', sodiumSoap: 'Sodium Olivate' },
    profile: {
      source: 'codex-cxs-33-2013', obtained: 'read',
      exceptions: [
        { acids: ['C18:3', 'C22:0', 'C24:0'], source: 'codex-cxs-33-2017', obtained: 'memory' },
      ],
    },
    limits: {
      saponificationValue: { 'codex-cxs-33-2017': 'read' },
      iodineValue: { 'codex-cxs-33-2017': 'read' },
      unsaponifiable: { 'codex-cxs-33-2017': 'memory' },
    },
    relativeDensity: {
      low: 0.91, high: 0.916, conditions: '20 °C, water at 20 °C', source: 'canada-b-09-003-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.4677, high: 1.4705, conditions: 'nD at 20 °C', source: 'codex-cxs-33-2017', obtained: 'read',
    },
    notes: [
      'The fatty acids were read in the text amended to 2013, which leaves C18:3 to national limits; 1.0 is recalled from later texts. Later revisions (recalled) have C14:0 0.03, C17:0 0.4, C17:1 0.6.',
      'Saponification value, iodine value and refractive index were read in a restatement of the standard that does not say its edition.',
      'Older limits live on in the Canadian regulation (read): C18:0 0.5-3.5, C18:1 56.0-83.0, C18:2 3.5-20.0.',
    ],
  },
  'olive-pomace-oil': {
    origin: 'Olea europaea L. pomace, solvent extracted',
    inciNames: { fat: 'Olea Europaea (Olive) Fruit Oil', sodiumSoap: 'Sodium Olivate' },
    profile: {
      source: 'codex-cxs-33-2013', obtained: 'read',
      exceptions: [
        { acids: ['C18:3', 'C20:1', 'C22:0', 'C24:0'], source: 'codex-cxs-33-2017', obtained: 'memory' },
      ],
    },
    limits: {
      saponificationValue: { 'codex-cxs-33-2017': 'read' },
      iodineValue: { 'codex-cxs-33-2017': 'read' },
      unsaponifiable: { 'codex-cxs-33-2017': 'memory' },
    },
    relativeDensity: {
      low: 0.91, high: 0.916, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-33-2017', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.468, high: 1.4707, conditions: 'nD at 20 °C', source: 'codex-cxs-33-2017', obtained: 'read',
    },
    notes: [
      'Refined oil. The same remarks as for olive oil: fatty acids from the text amended to 2013, C18:3 recalled from later texts, C14:0 0.03, C17:0 0.4 and C17:1 0.6 in later revisions (recalled); saponification value, iodine value and refractive index from a restatement without edition.',
    ],
  },
  'sunflower-oil': {
    origin: 'Helianthus annuus L. seed',
    inciNames: { fat: 'Helianthus Annuus (Sunflower) Seed Oil', sodiumSoap: 'Sodium Sunflowerseedate' },
    profile: {
      source: 'codex-cxs-210-2013', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C24:1'],
      exceptions: [
        { acids: ['C18:1', 'C18:2'], source: 'codex-cxs-210-2022', obtained: 'read' },
      ],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2022': 'read', 'codex-cxs-210-2019': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.916, high: 0.923, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2022', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.461, high: 1.475, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2022', obtained: 'read',
    },
    notes: [
      'Five cells carry the amendment of December 2022: saponification value, relative density, refractive index, C18:1, C18:2. Before it (read): relative density 0.918-0.923, refractive index 1.461-1.468, C18:1 14.0-39.4, C18:2 48.3-74.0.',
      'Iodine value and unsaponifiable matter are not among the amended cells. They and the older saponification value were read in a specification that restates the standard.',
      'An older national text that was not named where it was read has iodine value 110-143 and refractive index 1.467-1.469 at 40 °C; it is not counted among the limits.',
    ],
  },
  'sunflower-oil-mid-oleic': {
    origin: 'Helianthus annuus L. seed, mid-oleic varieties',
    inciNames: { fat: 'Helianthus Annuus (Sunflower) Seed Oil', sodiumSoap: 'Sodium Sunflowerseedate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'memory',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:1', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.914, high: 0.916, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.461, high: 1.471, conditions: 'nD at 25 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'Nothing of this row could be read. The saponification range 190-191 is far narrower than any other row; kept as recalled.',
    ],
  },
  'sunflower-oil-high-oleic': {
    origin: 'Helianthus annuus L. seed, high-oleic varieties',
    inciNames: { fat: 'Helianthus Annuus (Sunflower) Seed Oil', sodiumSoap: 'Sodium Sunflowerseedate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.909, high: 0.915, conditions: '25 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.467, high: 1.471, conditions: 'nD at 25 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [],
  },
  'safflower-oil': {
    origin: 'Carthamus tinctorius L. seed',
    inciNames: { fat: 'Carthamus Tinctorius (Safflower) Seed Oil', sodiumSoap: 'Sodium Safflowerate' },
    profile: {
      source: 'codex-cxs-210-2013', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:2'],
    },
    limits: {
      saponificationValue: { 'india-grading-rules-1955': 'read', 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'india-grading-rules-1955': 'read', 'usp-32-nf-27-2009': 'read', 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: {
        'usp-32-nf-27-2009': 'read', 'india-grading-rules-1955': 'read', 'codex-cxs-210-2024': 'memory',
      },
    },
    relativeDensity: {
      low: 0.922, high: 0.927, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.4674, high: 1.4689, conditions: 'nD at 40 °C', source: 'india-grading-rules-1955', obtained: 'read',
    },
    notes: [
      'Density by the Indian grading rules 0.915-0.920 at 30/30 °C (read); refractive index of the Codex row 1.467-1.470 (recalled).',
      'British Pharmacopoeia 2025, refined oil type I (read): C16:0 4.0-10.0, C18:0 1.0-5.0, C18:1 8.0-21.0, C18:2 68.0-83.0.',
    ],
  },
  'safflower-oil-high-oleic': {
    origin: 'Carthamus tinctorius L. seed, high-oleic varieties',
    inciNames: { fat: 'Carthamus Tinctorius (Safflower) Seed Oil', sodiumSoap: 'Sodium Safflowerate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C22:2'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.913, high: 0.919, conditions: '20 °C, water at 20 °C (0.910-0.916 at 25 °C)', source: 'codex-cxs-210-2024',
      obtained: 'read',
    },
    refractiveIndex: {
      low: 1.46, high: 1.464, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'Refractive index also 1.466-1.470 at 25 °C (read with the row).',
    ],
  },
  'soybean-oil': {
    origin: 'Glycine max (L.) Merr. seed',
    inciNames: { fat: 'Glycine Soja (Soybean) Oil', sodiumSoap: 'Sodium Soyate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.919, high: 0.925, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.466, high: 1.47, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'The copy of this row also lists a positive Baudouin test, which belongs to sesame oil: a suspected slip of the copyist. The figures are kept as shown.',
    ],
  },
  'corn-oil': {
    origin: 'Zea mays L. germ',
    inciNames: { fat: 'Zea Mays (Corn) Oil', sodiumSoap: 'Sodium Cornate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C22:2', 'C24:1'],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row.',
    ],
  },
  'cottonseed-oil': {
    origin: 'Gossypium spp. seed',
    inciNames: { fat: 'Gossypium Herbaceum (Cotton) Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C24:1'],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row.',
    ],
  },
  'canola-oil': {
    origin: 'Brassica napus, B. rapa, B. juncea seed, low-erucic varieties',
    inciNames: { fat: 'Canola Oil', sodiumSoap: 'Sodium Canolate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0'],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row.',
    ],
  },
  'rapeseed-oil-high-erucic': {
    origin: 'Brassica napus, B. rapa (campestris), B. juncea, B. tournefortii seed',
    inciNames: { fat: 'Brassica Campestris (Rapeseed) Seed Oil', sodiumSoap: 'Sodium Rapeseedate' },
    profile: {
      source: 'codex-cxs-210-2013', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.91, high: 0.92, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.465, high: 1.469, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    observed: {
      saponificationValue: [[170, 178, 'thomssen-1922', 'read']],
      iodineValue: [[95, 105, 'thomssen-1922', 'read']],
    },
    notes: [
      "The lower limit of C22:1 is printed 'more than 2.0'.",
      'The characteristics are recalled. The nearest limits that were read are those of mustard oil, a similar erucic oil.',
    ],
  },
  'mustardseed-oil': {
    origin: 'Sinapis alba, Brassica juncea, Brassica nigra seed',
    inciNames: { fat: 'Brassica Alba Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C17:0', 'C17:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
    },
    relativeDensity: {
      low: 0.91, high: 0.921, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.461, high: 1.469, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'Indian grading rules (read): refractive index 1.4646-1.4662 at 40 °C. The Indian fatty-acid table (read) differs in C22:1 40-58, C16:0 0.5-5.0, C24:0 0-0.8.',
    ],
  },
  'peanut-oil': {
    origin: 'Arachis hypogaea L. seed',
    inciNames: { fat: 'Arachis Hypogaea (Peanut) Oil', sodiumSoap: 'Sodium Peanutate' },
    profile: {
      source: 'codex-cxs-210-2013', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C22:2'],
      exceptions: [
        {
          acids: ['C16:0', 'C18:1', 'C18:2', 'C18:3', 'C20:0', 'C20:1', 'C22:1'], source: 'codex-cxs-210-2024',
          obtained: 'memory',
        },
      ],
    },
    limits: {
      saponificationValue: {
        'india-groundnut-2017': 'read', 'codex-cxs-210-2024': 'memory', 'international-pharmacopoeia-undated': 'read',
      },
      iodineValue: {
        'india-groundnut-2017': 'read', 'codex-cxs-210-2024': 'memory', 'codex-cxs-210-1999': 'memory',
        'international-pharmacopoeia-undated': 'read',
      },
      unsaponifiable: {
        'india-groundnut-2017': 'read', 'codex-cxs-210-2024': 'memory', 'international-pharmacopoeia-undated': 'read',
      },
    },
    relativeDensity: {
      low: 0.909, high: 0.92, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.46, high: 1.465, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    observed: {
      saponificationValue: [[190, 197, 'thomssen-1922', 'read']],
      iodineValue: [[85, 98, 'thomssen-1922', 'read']],
    },
    notes: [
      'The recalled cells are those the recent revision widened so as to cover high-oleic nuts; the Indian iodine value 85-99 fits ordinary oil and not the high-oleic corner of the profile.',
      'Text of 1999 (recalled): C16:0 8.0-14.0, C18:1 35.0-67.0 (later 69), C18:2 13.0-43.0 (later 12.0), relative density 0.914-0.917. Wording of 2005 to 2013 (read): C16:0 8-14, C18:1 35-69, C18:2 12-43, C18:3 0-0.3, C20:0 1-2, C20:1 0.7-1.7, C22:1 0-0.3.',
      'NF 30 (read): C16:0 7.0-16.0, C18:0 1.3-6.5, C18:1 35.0-72.0, C18:2 13.0-43.0, C20:0 0.5-3.0, C20:1 0.5-2.1, C22:0 1.0-5.0, C24:0 0.5-3.0.',
    ],
  },
  'rice-bran-oil': {
    origin: 'Oryza sativa L. bran',
    inciNames: { fat: 'Oryza Sativa (Rice) Bran Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C17:0', 'C17:1', 'C20:2', 'C22:1', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read', 'india-grading-rules-1955': 'read' },
    },
    relativeDensity: {
      low: 0.91, high: 0.929, conditions: 'not stated', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.46, high: 1.473, conditions: 'not stated', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    observed: {
      saponificationValue: [[181, 189, 'chemical-index-undated', 'read']],
      iodineValue: [[99, 108, 'chemical-index-undated', 'read']],
      unsaponifiable: [[3, 5, 'chemical-index-undated', 'read']],
      titre: [[24, 28, 'chemical-index-undated', 'read']],
    },
    notes: [
      'With so much unsaponifiable matter allowed, the saponification value can lie several per cent below that of the pure triglycerides. The Indian limits are for refined oil.',
      'The Indian fatty-acid table (read) differs in C18:0 0.9-5.2, C20:1 0-1.1.',
    ],
  },
  'sesame-oil': {
    origin: 'Sesamum indicum L. seed',
    inciNames: { fat: 'Sesamum Indicum (Sesame) Seed Oil', sodiumSoap: 'Sodium Sesameseedate' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:1', 'C22:2', 'C24:1'],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row.',
    ],
  },
  'grapeseed-oil': {
    origin: 'Vitis vinifera L. seed',
    inciNames: { fat: 'Vitis Vinifera (Grape) Seed Oil', sodiumSoap: 'Sodium Grapeseedate' },
    profile: {
      source: 'codex-cxs-210-2013', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: {
        'italy-grapeseed-data-sheet-undated': 'read', 'codex-cxs-210-2024': 'memory', 'codex-cxs-210-1999': 'memory',
      },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.92, high: 0.926, conditions: '20 °C, water at 20 °C', source: 'italy-grapeseed-data-sheet-undated',
      obtained: 'read',
    },
    refractiveIndex: {
      low: 1.467, high: 1.477, conditions: 'nD at 40 °C', source: 'italy-grapeseed-data-sheet-undated',
      obtained: 'read',
    },
    notes: [
      'The fatty acids, recalled at first, were read with the same figures in the wording of 2005 to 2013 and in the Indian table.',
    ],
  },
  'linseed-oil': {
    origin: 'Linum usitatissimum L. seed',
    inciNames: { fat: 'Linum Usitatissimum (Linseed) Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C22:2', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.925, high: 0.935, conditions: '25 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.472, high: 1.475, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'A drying oil. Refractive index also 1.472-1.487 at 20 °C (read with the row).',
    ],
  },
  'walnut-oil': {
    origin: 'Juglans regia L. kernel',
    inciNames: { fat: 'Juglans Regia (Walnut) Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C14:0', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'read' },
      iodineValue: { 'codex-cxs-210-2024': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'read' },
    },
    relativeDensity: {
      low: 0.923, high: 0.925, conditions: '25 °C, water at 25 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.469, high: 1.471, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'read',
    },
    notes: [
      'Refractive index also 1.472-1.475 at 25 °C (read with the row).',
    ],
  },
  'almond-oil': {
    origin: 'Prunus amygdalus / Prunus dulcis kernel',
    inciNames: { fat: 'Prunus Amygdalus Dulcis (Sweet Almond) Oil', sodiumSoap: 'Sodium Sweet Almondate' },
    profile: {
      source: 'ph-eur-undated', obtained: 'read',
      exceptions: [
        { acids: ['C18:1'], source: 'bp-2025', obtained: 'read' },
      ],
    },
    limits: {
      saponificationValue: {
        'usp-nf-undated': 'read', 'codex-cxs-210-2024': 'memory', 'bp-undated': 'read', 'ph-eur-undated': 'read',
      },
      iodineValue: { 'usp-nf-undated': 'read', 'codex-cxs-210-2024': 'memory', 'ph-eur-undated': 'read' },
      unsaponifiable: { 'bp-2025': 'read', 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.91, high: 0.915, conditions: 'specific gravity at 25 °C', source: 'usp-29-nf-24-2006', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.468, high: 1.475, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'The two iodine ranges of the United States text come from two restatements without edition. One of them has the same saponification value 190-200.',
      'C18:1 62.0-86.0 was read in the British Pharmacopoeia 2025; restatements of the older text have 76.0, 82 or 86.0 at the top.',
      'The Codex row of 2019 is recalled with moderate confidence; its relative density is 0.911-0.929 (25 °C, water at 20 °C). Refractive index 1.471-1.472 at 20 °C (read).',
    ],
  },
  'hazelnut-oil': {
    origin: 'Corylus avellana L. kernel',
    inciNames: { fat: 'Corylus Avellana (Hazel) Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'memory',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.898, high: 0.915, conditions: '20 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.456, high: 1.463, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'The whole row is recalled with moderate confidence (added to the standard in 2019).',
      'Observed (read): saponification value 188-195 and density 0.906-0.919 at 20 °C in a list of oils; iodine value 90.6-97.4 for hybrid hazels in an abstract of 2007.',
    ],
  },
  'pistachio-oil': {
    origin: 'Pistacia vera L. kernel',
    inciNames: { fat: 'Pistacia Vera Seed Oil' },
    profile: {
      source: 'codex-cxs-210-2024', obtained: 'memory',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C12:0', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
      exceptions: [
        { acids: ['C16:1'], source: 'codex-cxs-210-2022', obtained: 'read' },
      ],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.915, high: 0.92, conditions: '25 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.467, high: 1.47, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'Recalled with moderate confidence (added to the standard in 2019), but for C16:1 0-2.0, read in the corrigendum of 2023; the first print had 0.2.',
      'By European comments on the draft of 2019 (read), the relative density of this row refers to water at 15.5 °C.',
    ],
  },
  'avocado-oil': {
    origin: 'Persea americana Mill. fruit flesh',
    inciNames: { fat: 'Persea Gratissima (Avocado) Oil', sodiumSoap: 'Sodium Avocadoate' },
    profile: {
      source: 'india-food-standards-undated', obtained: 'read',
    },
    limits: {
      saponificationValue: { 'india-food-standards-draft-2017': 'read', 'codex-cxs-210-avocado-draft': 'memory' },
      acidValue: { 'india-food-standards-draft-2017': 'read' },
      iodineValue: { 'india-food-standards-draft-2017': 'read', 'codex-cxs-210-avocado-draft': 'memory' },
      unsaponifiable: { 'india-food-standards-draft-2017': 'read' },
    },
    refractiveIndex: {
      low: 1.461, high: 1.465, conditions: 'not stated', source: 'museum-materials-encyclopaedia-undated',
      obtained: 'read',
    },
    observed: {
      saponificationValue: [[177, 198, 'museum-materials-encyclopaedia-undated', 'read']],
      acidValue: [[1, 7, 'museum-materials-encyclopaedia-undated', 'read']],
      iodineValue: [[71, 95, 'museum-materials-encyclopaedia-undated', 'read']],
    },
    notes: [
      'The fatty acids are those of the Indian table, which are wide. The Codex row adopted in November 2024 is recalled with low confidence: C16:0 11.0-26.0, C16:1 4.0-17.1, C17:0 0-0.3, C17:1 0-0.1, C18:0 0.1-1.3, C18:1 42.0-75.0, C18:2 7.8-19.0, C18:3 0.5-2.1, C20:0 0-0.7, C20:1 0-0.3. The proposal of 2019 had C16:0 4.6-35.2 and C18:1 31.8-80.0 (read).',
      'The limits are of drafts; unsaponifiable 12.0 % is a very loose one. The Indian draft has refractive index 1.4650-1.4740 at 40 °C. The encyclopaedia gives density 0.91 g/mL without a temperature.',
    ],
  },
  'castor-oil': {
    origin: 'Ricinus communis L. seed',
    inciNames: { fat: 'Ricinus Communis (Castor) Seed Oil', sodiumSoap: 'Sodium Castorate' },
    profile: {
      source: 'ph-eur-8-to-11', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'bp-1993': 'read', 'trade-specification-castor': 'read' },
      acidValue: { 'bp-2025': 'read' },
      iodineValue: { 'bp-1993': 'read', 'trade-specification-castor': 'read' },
      unsaponifiable: { 'bp-2025': 'read' },
    },
    relativeDensity: {
      low: 0.957, high: 0.961, conditions: 'specific gravity at 25 °C', source: 'usp-29-nf-24-2006', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.477, high: 1.481, conditions: 'temperature not stated (20 °C usual)', source: 'bp-1993', obtained: 'read',
    },
    observed: {
      saponificationValue: [[178, 186, 'thomssen-1922', 'read']],
      iodineValue: [[83.4, 85.9, 'thomssen-1922', 'read']],
    },
    notes: [
      'C18:1-OH is ricinoleic acid. Hydroxyl value at least 160 (British Pharmacopoeia 2025, read).',
      'The fatty acids are recalled. A specification of a carrier oil (read) has C16:0 0.5-1.0, C18:0 0.5-1.0, C18:1 2-6, C18:2 1-5, C18:3 0.5-1.0, ricinoleic 85-95, dihydroxystearic 0.3-0.5.',
      'The sodium soap is also listed as Sodium Ricinoleate, the name of the pure acid.',
    ],
  },
  'hempseed-oil': {
    origin: 'Cannabis sativa L. seed',
    inciNames: { fat: 'Cannabis Sativa Seed Oil', sodiumSoap: 'Sodium Hempseedate' },
    profile: {
      source: 'hempseed-composition-undated', obtained: 'read',
      exceptions: [
        { acids: ['C18:1', 'C18:2', 'C18:4'], source: 'kiralan-2010', obtained: 'read' },
        { acids: ['C18:3'], source: 'kiralan-2010', obtained: 'derived' },
      ],
    },
    limits: {},
    titre: { low: 15, high: 16.6, source: 'jamieson-1943', obtained: 'read' },
    observed: {
      saponificationValue: [[190, 193, 'jamieson-1943', 'read'], [190, 193, 'thomssen-1922', 'read']],
      iodineValue: [
        [153.6, 169.1, 'chen-2010', 'read'], [150, 166, 'jamieson-1943', 'read'],
        [145, 167, 'encyclopaedia-articles-undated', 'read'],
      ],
      unsaponifiable: [[1, 1.3, 'jamieson-1943', 'read']],
    },
    notes: [
      'No standard sets limits for this oil: what is here was observed, and nobody is held to it. The saponification value was read in two handbooks (190-195 had been recalled).',
      'C18:3 is the sum of the alpha (16.5-20.4) and gamma (0.6-1.1) acids of 21 Turkish samples; the spread of C18:2 is that of the samples, narrower than trade material.',
      'The compilation also has C18:1 8.5-16, C18:2 53-60, alpha C18:3 15-25, gamma C18:3 1-5, C18:4 0.4-2. Recalled before: C16:0 5.0-8.0, C18:0 2.0-3.5, C20:0 0.5-1.0, C20:1 0.2-0.5. An encyclopaedia (read): C16:0 5.8-9.9, C18:0 1.7-5.6, C18:1 6-16, C18:2 36-50, C18:3 15-28.',
      'Jamieson has refractive index 1.4723 at 40 °C and density 0.9285 at 15.5 °C.',
    ],
  },
  'neem-oil': {
    origin: 'Azadirachta indica kernel',
    inciNames: { fat: 'Melia Azadirachta Seed Oil' },
    profile: {
      source: 'encyclopaedia-articles-undated', obtained: 'read',
    },
    limits: {
      saponificationValue: { 'is-4765-1975': 'memory' },
      iodineValue: { 'is-4765-1975': 'memory' },
      unsaponifiable: { 'is-4765-1975': 'memory' },
    },
    observed: {
      saponificationValue: [[196.9, 196.9, 'simmons-appleton-1908', 'derived']],
      iodineValue: [[69.6, 69.6, 'simmons-appleton-1908', 'read']],
      titre: [[42, 42, 'simmons-appleton-1908', 'read']],
    },
    notes: [
      'The limits are recalled with moderate confidence. Single samples lie inside them: margosa oil of the 1908 handbook (after Lewkowitsch 1903; saponification equivalent 284.9) and one of a thesis (read): saponification value 192, iodine value 67.4.',
      'Profile and iodine value do not agree well (57.9 from the middle of the profile, against 65-80): both are weak.',
    ],
  },
  'tung-oil': {
    origin: 'Aleurites (Vernicia) fordii seed',
    inciNames: { fat: 'Aleurites Fordi Oil' },
    profile: {
      source: 'oil-technology-handbooks', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'astm-d12-1998': 'read' },
      acidValue: { 'astm-d12-1998': 'read' },
      iodineValue: { 'astm-d12-1998': 'read' },
      unsaponifiable: { 'astm-d12-1998': 'read' },
    },
    relativeDensity: { low: 0.933, high: 0.938, conditions: '25/25 °C', source: 'astm-d12-1998', obtained: 'read' },
    notes: [
      'A drying oil; C18:3-conj is eleostearic acid. The Wijs method under-reads conjugated bonds: by a second method of the same standard the total iodine value is at least 220 (read).',
    ],
  },
  // Butters
  'cocoa-butter': {
    origin: 'Theobroma cacao L. seed',
    inciNames: { fat: 'Theobroma Cacao (Cocoa) Seed Butter', sodiumSoap: 'Sodium Cocoa Butterate' },
    profile: {
      source: 'usp-28-nf-23-2005', obtained: 'memory',
    },
    limits: {
      saponificationValue: {
        'malaysia-cocoa-butter-undated': 'read', 'trade-specification-cocoa-butter': 'read',
        'codex-stan-86-1981': 'memory',
      },
      acidValue: { 'usp-28-nf-23-2005': 'derived' },
      iodineValue: {
        'trade-specification-cocoa-butter': 'read', 'malaysia-cocoa-butter-undated': 'read',
        'codex-stan-86-1981': 'memory',
      },
      unsaponifiable: { 'codex-stan-86-2001': 'read' },
    },
    refractiveIndex: {
      low: 1.454, high: 1.459, conditions: 'nD at 40 °C', source: 'usp-28-nf-23-2005', obtained: 'read',
    },
    titre: { low: 49, high: 50, source: 'knapp-1920', obtained: 'read' },
    observed: {
      saponificationValue: [[192, 198, 'knapp-1920', 'read'], [192.2, 193.5, 'thomssen-1922', 'read']],
      iodineValue: [[34, 38, 'knapp-1920', 'read'], [32, 41, 'thomssen-1922', 'read']],
      unsaponifiable: [[0.3, 0.8, 'knapp-1920', 'read']],
    },
    notes: [
      'The acid value is worked out from the free-fatty-acid limit of NF 23: 10.0 g needs at most 5.0 mL of 0.10 N alkali. CODEX STAN 86 (read): free fatty acids at most 1.75 % as oleic; unsaponifiable of press cocoa butter at most 0.35 %.',
      'The recalled saponification and iodine values are of the Codex text of 1981 or of an older pharmacopoeia: which of the two is unsure. The fatty acids are recalled, the minor ones with low confidence.',
    ],
  },
  'shea-butter': {
    origin: 'Vitellaria paradoxa C.F. Gaertn. kernel',
    inciNames: { fat: 'Butyrospermum Parkii (Shea) Butter', sodiumSoap: 'Sodium Shea Butterate' },
    profile: {
      source: 'codex-cxs-325r-2017', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'codex-cxs-325r-2017': 'read' },
      iodineValue: { 'codex-cxs-325r-2017': 'read' },
      unsaponifiable: { 'codex-cxs-325r-2017': 'read' },
    },
    relativeDensity: { low: 0.91, high: 0.98, conditions: '20 °C', source: 'codex-cxs-325r-2017', obtained: 'read' },
    refractiveIndex: {
      low: 1.462, high: 1.465, conditions: 'nD at 44 °C', source: 'codex-cxs-325r-2017', obtained: 'read',
    },
    notes: [
      'Unrefined. Free fatty acids at most 1 % (grade 1) or 3 % (grade 2); melting point 35-40 °C; density 0.89-0.93 at 40 °C (read with the row).',
    ],
  },
  'sheanut-oil-refined': {
    origin: 'Butyrospermum parkii kernel',
    inciNames: { fat: 'Butyrospermum Parkii (Shea) Butter', sodiumSoap: 'Sodium Shea Butterate' },
    limits: {
      saponificationValue: { 'cfr-21-184-1702': 'read' },
      iodineValue: { 'cfr-21-184-1702': 'read' },
      unsaponifiable: { 'cfr-21-184-1702': 'read' },
    },
    notes: [
      'Food grade. Free fatty acids at most 0.1 % as oleic.',
    ],
  },
  // Fractions
  'palm-olein': {
    origin: 'Elaeis guineensis palm oil, liquid fraction',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Oil', sodiumSoap: 'Sodium Palmate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'india-grading-rules-1955': 'read', 'codex-cxs-210-2024': 'memory' },
      iodineValue: {
        'trade-specification-palm': 'read', 'codex-cxs-210-2024': 'memory', 'india-grading-rules-1955': 'read',
      },
      unsaponifiable: { 'india-grading-rules-1955': 'read', 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.899, high: 0.92, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.455, high: 1.461, conditions: 'nD at 40 °C', source: 'india-grading-rules-1955', obtained: 'read',
    },
    notes: [
      'The Indian table has a raw grade (unsaponifiable 1.2 %) and a refined one (1.0 %); saponification value and refractive index are of the raw grade.',
      'Codex row (recalled): refractive index 1.458-1.460, slip point not above 24 °C.',
    ],
  },
  'palm-superolein': {
    origin: 'Elaeis guineensis palm oil, twice-fractionated liquid fraction',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Oil', sodiumSoap: 'Sodium Palmate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C17:1', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2015': 'read' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.9, high: 0.925, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.463, high: 1.465, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'The iodine value, 60 or higher, is part of the definition of the product.',
    ],
  },
  'palm-stearin': {
    origin: 'Elaeis guineensis palm oil, high-melting fraction',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Oil', sodiumSoap: 'Sodium Palmate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C6:0', 'C8:0', 'C10:0', 'C20:2', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {},
    notes: [
      'No limits but the fatty acids were found for this row.',
    ],
  },
  'palm-kernel-olein': {
    origin: 'Elaeis guineensis kernel oil, liquid fraction',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Kernel Oil', sodiumSoap: 'Sodium Palm Kernelate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C17:0', 'C17:1', 'C20:2', 'C22:0', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.906, high: 0.909, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.451, high: 1.453, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'The fatty acids were read a second time, the same, in the Indian table. The characteristics are recalled; a Malaysian survey of 2013 (read) has iodine value at least 20.6.',
    ],
  },
  'palm-kernel-stearin': {
    origin: 'Elaeis guineensis kernel oil, solid fraction',
    inciNames: { fat: 'Elaeis Guineensis (Palm) Kernel Oil', sodiumSoap: 'Sodium Palm Kernelate' },
    profile: {
      source: 'codex-cxs-210-2015', obtained: 'read',
      notDetected: ['C16:1', 'C17:0', 'C17:1', 'C20:2', 'C22:0', 'C22:1', 'C22:2', 'C24:0', 'C24:1'],
    },
    limits: {
      saponificationValue: { 'codex-cxs-210-2024': 'memory' },
      iodineValue: { 'codex-cxs-210-2024': 'memory' },
      unsaponifiable: { 'codex-cxs-210-2024': 'memory' },
    },
    relativeDensity: {
      low: 0.902, high: 0.908, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.449, high: 1.451, conditions: 'nD at 40 °C', source: 'codex-cxs-210-2024', obtained: 'memory',
    },
    notes: [
      'The fatty acids were read a second time, the same, in the Indian table. The characteristics are recalled; a Malaysian survey of 2013 (read) has iodine value at most 8.0.',
    ],
  },
  // Animal fats
  lard: {
    origin: 'Sus scrofa fatty tissue, rendered',
    inciNames: { fat: 'Lard', sodiumSoap: 'Sodium Lardate' },
    profile: {
      source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'canada-b-09-013-2022': 'read', 'codex-cxs-211-2021': 'memory', 'bpc-1911': 'read' },
      acidValue: { 'canada-b-09-013-2022': 'read', 'codex-cxs-211-2021': 'memory' },
      iodineValue: { 'canada-b-09-013-2022': 'read', 'codex-cxs-211-2021': 'memory', 'bpc-1911': 'read' },
      unsaponifiable: { 'canada-b-09-013-2022': 'read', 'codex-cxs-211-2021': 'memory' },
    },
    relativeDensity: {
      low: 0.894, high: 0.906, conditions: '40 °C, water at 20 °C', source: 'canada-b-09-013-2022', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.448, high: 1.461, conditions: 'nD at 40 °C', source: 'canada-b-09-013-2022', obtained: 'read',
    },
    titre: { low: 32, high: 45, source: 'canada-b-09-013-2022', obtained: 'read' },
    observed: {
      saponificationValue: [
        [190, 205, 'encyclopaedia-articles-undated', 'read'], [195.3, 196.6, 'thomssen-1922', 'read'],
        [196.2, 196.2, 'simmons-appleton-1908', 'derived'],
      ],
      iodineValue: [
        [45, 75, 'encyclopaedia-articles-undated', 'read'], [57, 70, 'thomssen-1922', 'read'],
        [59, 63, 'simmons-appleton-1908', 'read'],
      ],
      titre: [[37.5, 37.5, 'simmons-appleton-1908', 'read']],
    },
    notes: [
      'C12:0 stands for the single limit on C6:0 to C12:0 together (below 0.5). Codex row (recalled): titre the same, relative density 0.896-0.904, refractive index 1.448-1.460.',
      'The fatty acids are recalled. Typical figures that were read lie inside them: C16:0 25-28, C18:0 12-14, C18:1 44-47, C18:2 6-10 (encyclopaedia, which also has unsaponifiable 0.8 %); 23.8, 13.5, 41.2, 10.2 (feed table).',
      'The 1908 saponification value is worked out from the equivalent. Mean of 33 Canadian samples (abstract, read): saponification value 193.9, iodine value 58.7, unsaponifiable 0.43 %.',
    ],
  },
  'rendered-pork-fat': {
    origin: 'Sus scrofa tissues and bones, rendered',
    inciNames: { fat: 'Lard', sodiumSoap: 'Sodium Lardate' },
    profile: {
      source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'codex-cxs-211-2021': 'memory' },
      acidValue: { 'codex-cxs-211-2021': 'memory' },
      iodineValue: { 'codex-cxs-211-2021': 'memory' },
      unsaponifiable: { 'codex-cxs-211-2021': 'memory' },
    },
    relativeDensity: {
      low: 0.894, high: 0.906, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.448, high: 1.461, conditions: 'nD at 40 °C', source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    titre: { low: 32, high: 45, source: 'codex-cxs-211-2021', obtained: 'memory' },
    notes: [
      'C12:0 stands for the single limit on C6:0 to C12:0 together (below 0.5). Nothing of this row could be read. It shares the fatty acids of lard, so its iodine value (59.4 from the middle of the profile) misses 60-72 by a little.',
    ],
  },
  tallow: {
    origin: 'Bos taurus and/or Ovis aries tissues, rendered',
    inciNames: { fat: 'Tallow', sodiumSoap: 'Sodium Tallowate' },
    profile: {
      source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'fats-and-oils-handbook-1998': 'read', 'codex-cxs-211-2021': 'memory' },
      acidValue: { 'codex-cxs-211-2021': 'memory' },
      iodineValue: { 'codex-cxs-211-2021': 'memory' },
      unsaponifiable: { 'codex-cxs-211-2021': 'memory' },
    },
    relativeDensity: {
      low: 0.894, high: 0.904, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.448, high: 1.46, conditions: 'nD at 40 °C', source: 'fats-and-oils-handbook-1998', obtained: 'read',
    },
    titre: { low: 40, high: 49, source: 'codex-cxs-211-2021', obtained: 'memory' },
    observed: {
      saponificationValue: [
        [195, 198, 'thomssen-1922', 'read'], [196.2, 197.8, 'simmons-appleton-1908', 'derived'],
        [195, 200, 'applied-analytical-chemistry-undated', 'read'],
      ],
      iodineValue: [
        [32, 50, 'fats-and-oils-handbook-1998', 'read'], [36, 47, 'thomssen-1922', 'read'],
        [39, 44, 'simmons-appleton-1908', 'read'], [49.5, 49.5, 'museum-materials-encyclopaedia-undated', 'read'],
        [40, 40, 'museum-materials-encyclopaedia-undated', 'read'],
      ],
      titre: [
        [41.2, 48.3, 'simmons-appleton-1908', 'read'], [44, 44, 'applied-analytical-chemistry-undated', 'read'],
        [40, 46, 'chemical-index-undated', 'read'],
      ],
    },
    notes: [
      'C12:0 stands for the single limit on C6:0 to C12:0 together (below 0.5); C15:0-iso and C17:0-iso stand for iso and anteiso together (below 1.5 each).',
      'Saponification value and refractive index were read, equal to the recalled ones, in the fact file of a handbook for mutton tallow (a weak copy: the words around the figures are paraphrased); relative density there 0.893-0.904. This row covers cattle and sheep.',
      'The 1908 saponification values are worked out from the equivalents 286 to 283.6 of 20 bulk samples; one equivalent is printed 85, a misprint for 285. The museum figures are iodine values 49.5 (beef) and 40 (mutton).',
      'Compositions (read): C14:0 3-6, C16:0 24-32, C18:0 20-25, C18:1 37-43, C18:2 2-3 (chemical index); C14:0 3.7, C16:0 24.9, C16:1 4.2, C18:0 18.9, C18:1 36.0, C18:2 3.1, iodine value 44 (feed table). Only palmitic acid above 30 lies outside the recalled limits.',
    ],
  },
  'premier-jus': {
    origin: 'Bos taurus internal fat, low-heat rendered',
    inciNames: { fat: 'Tallow', sodiumSoap: 'Sodium Tallowate' },
    profile: {
      source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'codex-cxs-211-2021': 'memory' },
      acidValue: { 'codex-cxs-211-2021': 'memory' },
      iodineValue: { 'codex-cxs-211-2021': 'memory' },
      unsaponifiable: { 'codex-cxs-211-2021': 'memory' },
    },
    relativeDensity: {
      low: 0.893, high: 0.904, conditions: '40 °C, water at 20 °C', source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    refractiveIndex: {
      low: 1.448, high: 1.46, conditions: 'nD at 40 °C', source: 'codex-cxs-211-2021', obtained: 'memory',
    },
    titre: { low: 42.5, high: 47, source: 'codex-cxs-211-2021', obtained: 'memory' },
    notes: [
      'C12:0 stands for the single limit on C6:0 to C12:0 together (below 0.5); C15:0-iso and C17:0-iso stand for iso and anteiso together (below 1.5 each). The fatty acids are those of tallow.',
      'Nothing could be read under this name. The Malaysian limits for suet (read; see suet) have the same saponification value, refractive index, unsaponifiable matter and acid value, with iodine value 32-47.',
    ],
  },
  suet: {
    origin: 'Kidney, loin or caul fat',
    inciNames: { fat: 'Tallow', sodiumSoap: 'Sodium Tallowate' },
    limits: {
      saponificationValue: { 'malaysia-regulation-181-1985': 'read' },
      acidValue: { 'malaysia-regulation-181-1985': 'read' },
      iodineValue: { 'malaysia-regulation-181-1985': 'read' },
      unsaponifiable: { 'malaysia-regulation-181-1985': 'read' },
    },
    relativeDensity: {
      low: 0.893, high: 0.898, conditions: '40 °C, water at 20 °C', source: 'malaysia-regulation-181-1985',
      obtained: 'read',
    },
    refractiveIndex: {
      low: 1.448, high: 1.46, conditions: 'nD at 40 °C', source: 'malaysia-regulation-181-1985', obtained: 'read',
    },
    observed: {
      saponificationValue: [[192, 195, 'chemical-index-undated', 'read']],
      iodineValue: [[33, 46, 'chemical-index-undated', 'read']],
    },
    notes: [
      'Of cattle, sheep or goat. The observed figures are of mutton suet; refractive index there 1.449-1.451 at 60 °C (read).',
    ],
  },
  butterfat: {
    origin: 'Bos taurus milk',
    inciNames: { fat: 'Butyris Lac' },
    profile: {
      source: 'dairy-chemistry-handbooks', obtained: 'memory',
      exceptions: [
        { acids: ['C4:0', 'C6:0', 'C16:0', 'C18:0', 'C18:1'], source: 'india-food-standards-2019', obtained: 'read' },
      ],
    },
    limits: {
      saponificationValue: { 'india-food-standards-2019': 'read' },
      iodineValue: { 'india-food-standards-2019': 'read' },
    },
    refractiveIndex: {
      low: 1.454, high: 1.454, conditions: 'nD at 40 °C (assumed; printed without temperature)',
      source: 'quantitative-agricultural-analysis-1920s', obtained: 'read',
    },
    observed: {
      saponificationValue: [[220, 233, 'quantitative-agricultural-analysis-1920s', 'read']],
      iodineValue: [[26, 38, 'quantitative-agricultural-analysis-1920s', 'read']],
    },
    notes: [
      'The limits are those of Indian ghee, cow and buffalo; CXS 280-1973 (milk fat products) sets 99.8 % fat but neither value (recalled). The textbook has Reichert-Meissl value 24-32 and Polenske value 1.5-3.0 (read).',
      'The C18:1 of the Indian table is the cis-9 acid. Its five cells replace recalled handbook ranges: C4:0 2.8-4.4, C6:0 1.8-2.9, C16:0 23.6-33.3, C18:0 6.2-14.6, C18:1 15.0-31.2. The other cells are recalled with moderate confidence.',
    ],
  },
  // Hardened fats
  'castor-oil-hydrogenated': {
    origin: 'Ricinus communis L., hydrogenated',
    inciNames: { fat: 'Hydrogenated Castor Oil' },
    profile: {
      source: 'ph-eur-8-to-11', obtained: 'memory',
    },
    limits: {
      saponificationValue: { 'usp-35-nf-30-2012': 'read' },
      acidValue: { 'usp-35-nf-30-2012': 'derived', 'ph-eur-8-to-11': 'memory' },
      iodineValue: { 'usp-35-nf-30-2012': 'read' },
    },
    notes: [
      'C18:0-OH is 12-hydroxystearic acid, C18:0-oxo 12-oxostearic acid. Hydroxyl value 154-162, melting range 85-88 °C (NF 30, read); 145-165 (European Pharmacopoeia, recalled).',
      'The acid value is worked out from the free-acid test of NF 30: 20 g needs at most 11.0 mL of 0.1 N alkali. The fatty acids are recalled.',
    ],
  },
  'hydrogenated-vegetable-oil-type-1': {
    origin: 'vegetable oils, hydrogenated',
    inciNames: { fat: 'Hydrogenated Vegetable Oil' },
    limits: {
      saponificationValue: { 'usp-29-nf-24-2006': 'read' },
      acidValue: { 'usp-28-nf-23-2005': 'read' },
      iodineValue: { 'usp-29-nf-24-2006': 'read' },
      unsaponifiable: { 'usp-28-nf-23-2005': 'read' },
    },
    notes: [
      'Fully hardened. Melting range 57-85 °C (read). A text of 2025 has the same table (read).',
    ],
  },
  'hydrogenated-vegetable-oil-type-2': {
    origin: 'vegetable oils, partly hydrogenated',
    inciNames: { fat: 'Hydrogenated Vegetable Oil' },
    limits: {
      saponificationValue: { 'usp-29-nf-24-2006': 'read' },
      acidValue: { 'usp-28-nf-23-2005': 'read' },
      iodineValue: { 'usp-29-nf-24-2006': 'read' },
      unsaponifiable: { 'usp-28-nf-23-2005': 'read' },
    },
    notes: [
      'Shortening type. Melting range 20-50 °C (read). The saponification value is 175-200 in the text; 185-200 had been recalled. A text of 2025 has the same table (read).',
    ],
  },
  'lauric-cocoa-butter-substitute': {
    origin: 'esterified coconut / palm kernel fatty acids',
    limits: {
      saponificationValue: { 'cfr-21-172-861': 'read' },
      acidValue: { 'cfr-21-172-861': 'read' },
      iodineValue: { 'cfr-21-172-861': 'read' },
    },
    notes: [
      'Esterified coconut or palm kernel fatty acids; melting range 30-44 °C. Stands for hydrogenated lauric fats.',
    ],
  },
  // Fatty acids
  'stearic-acid-50': {
    origin: 'animal or vegetable fats, split and fractionated',
    inciNames: { fat: 'Stearic Acid', sodiumSoap: 'Sodium Stearate' },
    profile: {
      source: 'nf-34-2016', obtained: 'derived',
      exceptions: [
        { acids: ['C18:0'], source: 'nf-34-2016', obtained: 'read' },
      ],
    },
    limits: {
      acidValue: { 'nf-34-2016': 'read', 'ph-eur-undated': 'read' },
      iodineValue: { 'ph-eur-undated': 'read' },
    },
    titre: { low: 53, high: 59, source: 'ph-eur-undated', obtained: 'read' },
    notes: [
      'C16:0 is worked out: stearic and palmitic acid together at least 90 %, and at most 100 minus the least stearic acid.',
      'The titre is the pharmacopoeial freezing point.',
      'The acid value is the same for all three types.',
    ],
  },
  'stearic-acid-70': {
    origin: 'animal or vegetable fats, split and fractionated',
    inciNames: { fat: 'Stearic Acid', sodiumSoap: 'Sodium Stearate' },
    profile: {
      source: 'nf-34-2016', obtained: 'derived',
      exceptions: [
        { acids: ['C18:0'], source: 'nf-34-2016', obtained: 'read' },
      ],
    },
    limits: {
      acidValue: { 'nf-34-2016': 'read', 'ph-eur-undated': 'read' },
      iodineValue: { 'ph-eur-undated': 'read' },
    },
    titre: { low: 57, high: 64, source: 'ph-eur-undated', obtained: 'read' },
    notes: [
      'C16:0 is worked out: stearic and palmitic acid together at least 90 %, and at most 100 minus the least stearic acid.',
      'The titre is the pharmacopoeial freezing point.',
      'The acid value is the same for all three types.',
      "The restatement prints the iodine limit as a 'minimum': a suspected slip for 'maximum'.",
    ],
  },
  'stearic-acid-95': {
    origin: 'animal or vegetable fats, split and fractionated',
    inciNames: { fat: 'Stearic Acid', sodiumSoap: 'Sodium Stearate' },
    profile: {
      source: 'nf-34-2016', obtained: 'derived',
      exceptions: [
        { acids: ['C18:0'], source: 'nf-34-2016', obtained: 'read' },
      ],
    },
    limits: {
      acidValue: { 'nf-34-2016': 'read', 'ph-eur-undated': 'read' },
      iodineValue: { 'ph-eur-undated': 'read' },
    },
    titre: { low: 64, high: 69, source: 'ph-eur-undated', obtained: 'read' },
    notes: [
      'C16:0 is worked out: stearic and palmitic acid together at least 96 %, and at most 100 minus the least stearic acid.',
      'The titre is the pharmacopoeial freezing point.',
      'The acid value is the same for all three types.',
      "The restatement prints the iodine limit as a 'minimum': a suspected slip for 'maximum'.",
    ],
  },
  'stearic-acid-purified': {
    origin: 'as stearic acid, at least 90 % C18:0',
    inciNames: { fat: 'Stearic Acid', sodiumSoap: 'Sodium Stearate' },
    profile: {
      source: 'usp-32-nf-27-2009', obtained: 'derived',
      exceptions: [
        { acids: ['C18:0'], source: 'usp-32-nf-27-2009', obtained: 'read' },
      ],
    },
    limits: {
      acidValue: { 'usp-32-nf-27-2009': 'read' },
      iodineValue: { 'usp-32-nf-27-2009': 'read' },
    },
    titre: { low: 66, high: 69, source: 'usp-32-nf-27-2009', obtained: 'read' },
    notes: [
      'Stearic and palmitic acid together at least 96.0 %; C16:0 is worked out from that and the least stearic acid.',
      'The titre is the congealing temperature.',
    ],
  },
  'palmitic-acid': {
    origin: 'vegetable or animal fats, split and fractionated',
    inciNames: { fat: 'Palmitic Acid', sodiumSoap: 'Sodium Palmitate' },
    profile: {
      source: 'usp-32-nf-27-2009', obtained: 'read',
    },
    limits: {
      saponificationValue: { 'fcc-4-to-6': 'memory' },
      acidValue: { 'usp-32-nf-27-2009': 'read', 'ph-eur-undated': 'read', 'fcc-4-to-6': 'memory' },
      iodineValue: { 'usp-32-nf-27-2009': 'read', 'fcc-4-to-6': 'memory' },
      unsaponifiable: { 'fcc-4-to-6': 'memory' },
    },
    titre: { low: 60, high: 66, source: 'usp-32-nf-27-2009', obtained: 'read' },
    notes: [
      'Two grades stand here together: the pharmacopoeial one (acid value 216-220, at least 92.0 % C16:0) and the looser recalled food grade (acid value 204-220, solidification 53.3-62 °C), to which the saponification value and the unsaponifiable matter belong.',
      'The titre is the congealing temperature of NF 27.',
    ],
  },
  'myristic-acid': {
    origin: 'vegetable or animal fats, split and fractionated',
    inciNames: { fat: 'Myristic Acid', sodiumSoap: 'Sodium Myristate' },
    profile: {
      source: 'usp-32-nf-27-2009', obtained: 'read',
    },
    limits: {
      saponificationValue: { 'usp-32-nf-27-2009': 'read' },
      acidValue: { 'usp-32-nf-27-2009': 'read' },
      iodineValue: { 'usp-32-nf-27-2009': 'read' },
      unsaponifiable: { 'usp-32-nf-27-2009': 'read' },
    },
    titre: { low: 48, high: 55.5, source: 'usp-32-nf-27-2009', obtained: 'read' },
    notes: [
      'All five constants, first recalled from the Food Chemicals Codex, were read with the same figures in NF 27, which adds at least 97.0 % C14:0. The titre is the congealing temperature.',
    ],
  },
  'lauric-acid': {
    origin: 'vegetable or animal fats, split and fractionated',
    inciNames: { fat: 'Lauric Acid', sodiumSoap: 'Sodium Laurate' },
    limits: {
      saponificationValue: { 'fcc-4-to-6': 'memory' },
      acidValue: { 'fcc-4-to-6': 'memory' },
      iodineValue: { 'fcc-4-to-6': 'memory' },
      unsaponifiable: { 'fcc-4-to-6': 'memory' },
    },
    titre: { low: 26, high: 44, source: 'fcc-4-to-6', obtained: 'memory' },
    notes: [
      'Nothing of this row could be read; recalled with moderate confidence. The recalled text sets no purity; C12:0 is the principal acid. The titre is the solidification point.',
      'Neutralization value of the pure acid 280.5 (Thomssen 1922, read).',
    ],
  },
  'oleic-acid': {
    origin: 'animal or vegetable fats',
    inciNames: { fat: 'Oleic Acid', sodiumSoap: 'Sodium Oleate' },
    profile: {
      source: 'bp-undated', obtained: 'read',
    },
    limits: {
      acidValue: { 'bp-undated': 'read', 'usp-32-nf-27-2009': 'read' },
      iodineValue: { 'bp-undated': 'read', 'usp-32-nf-27-2009': 'read' },
    },
    relativeDensity: {
      low: 0.892, high: 0.892, conditions: 'about, temperature not stated (20 °C usual)', source: 'bp-undated',
      obtained: 'read',
    },
    notes: [
      'C20:1 stands for all acids longer than C18 (at most 4.0).',
      'NF 27 (read): specific gravity 0.889-0.895, congealing 3-10 °C (animal) or 10-16 °C (vegetable).',
    ],
  },
  // Waxes
  'jojoba-oil': {
    origin: 'Simmondsia chinensis seed',
    inciNames: { fat: 'Simmondsia Chinensis (Jojoba) Seed Oil' },
    profile: {
      source: 'encyclopaedia-articles-undated', obtained: 'read',
    },
    limits: {
      observedSaponificationValue: { 'chemical-index-undated': 'read' },
    },
    relativeDensity: {
      low: 0.8642, high: 0.8642, conditions: '25 °C', source: 'chemical-index-undated', obtained: 'read',
    },
    refractiveIndex: {
      low: 1.4648, high: 1.4648, conditions: 'nD at 25 °C', source: 'chemical-index-undated', obtained: 'read',
    },
    observed: {
      acidValue: [[0.32, 0.32, 'chemical-index-undated', 'read']],
      iodineValue: [[81.7, 81.7, 'chemical-index-undated', 'read']],
    },
    notes: [
      'No standard sets limits for it: the figures are of one monograph. Esters of C20 and C22 monoenoic acids and alcohols of mean molar mass 606 (read), which makes 92.6. About half the mass is set free as fatty alcohol, which is not saponified.',
    ],
  },
  beeswax: {
    origin: 'Apis mellifera L. comb',
    inciNames: { fat: 'Cera Alba' },
    limits: {
      saponificationValue: { 'ph-eur-undated': 'read' },
      acidValue: { 'ph-eur-undated': 'read', 'usp-32-nf-27-2009': 'read' },
    },
    relativeDensity: {
      low: 0.96, high: 0.96, conditions: 'about, temperature not stated', source: 'ph-eur-undated', obtained: 'read',
    },
    notes: [
      'Ester value 70-80, drop point 61-66 °C (European Pharmacopoeia, read). NF: melting 62-65 °C (read), ester value 72-79 (recalled), so acid and ester value together 89 to 103. Only the acids and the acid part of the esters become soap; alcohols and hydrocarbons remain.',
    ],
  },
  lanolin: {
    origin: 'Ovis aries wool',
    inciNames: { fat: 'Lanolin' },
    limits: {
      saponificationValue: { 'bpc-1911': 'read', 'ph-eur-undated': 'memory', 'ph-eur-2012': 'derived' },
      acidValue: { 'usp-28-nf-23-2005': 'derived', 'ph-eur-undated': 'memory' },
    },
    observed: {
      saponificationValue: [[98.2, 102.4, 'thomssen-1922', 'read']],
      iodineValue: [[25, 28, 'thomssen-1922', 'read']],
    },
    notes: [
      'Anhydrous. Melting point 40-44.4 °C (1911, read), 38-44 °C (USP 28, read). Saponifies only with alcoholic potash under pressure.',
      'Hydrous wool fat, with 25 % water (European Pharmacopoeia 2012, read), has saponification value 67-79 after 4 h of boiling and acid value at most 0.8; divided by 0.75 the first is 89.3-105.3.',
      'A teaching text of pharmacognosy (read) has saponification value 92-106, iodine value 18-35, acid value below 1; it is not counted among the limits.',
      'The acid value is worked out from the acidity test of USP 28: 10.0 g needs at most 2.0 mL of 0.10 N alkali.',
    ],
  },
  // Rosins
  'rosin-ww': {
    origin: 'Pinus resin, American, grade W.W.',
    limits: {
      observedSaponificationValue: { 'simmons-appleton-1908': 'read' },
    },
    observed: {
      acidValue: [[119.1, 119.1, 'simmons-appleton-1908', 'read']],
      iodineValue: [[126.9, 126.9, 'simmons-appleton-1908', 'read']],
    },
    notes: [
      'One sample, page 38. The saponification value is the total acid number; the saponification equivalent printed beside it is 330.5.',
      'The free acid number 119.1 is doubtful: it stands far below the other rosins of the table (160 to 168), but it is what the page prints.',
    ],
  },
  'rosin-n': {
    origin: 'Pinus resin, American, grade N',
    limits: {
      observedSaponificationValue: { 'simmons-appleton-1908': 'read' },
    },
    observed: {
      acidValue: [[161.4, 161.4, 'simmons-appleton-1908', 'read']],
      iodineValue: [[137.8, 137.8, 'simmons-appleton-1908', 'read']],
    },
    notes: [
      'One sample, page 38. The saponification value is the total acid number; the saponification equivalent printed beside it is 312.3.',
    ],
  },
  'rosin-spanish': {
    origin: 'Pinus resin, Spanish',
    limits: {
      observedSaponificationValue: { 'simmons-appleton-1908': 'read' },
    },
    observed: {
      acidValue: [[160, 160, 'simmons-appleton-1908', 'read']],
      iodineValue: [[129.8, 129.8, 'simmons-appleton-1908', 'read']],
    },
    notes: [
      'One sample, page 38. The saponification value is the total acid number; the saponification equivalent printed beside it is 313.4.',
    ],
  },
};
