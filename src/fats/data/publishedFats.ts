import type { FattyAcid } from '../../chemistry/index.js';
import type { SourceId } from '../../sources/index.js';
import type { PublishedFatId } from './fatNames.js';

/** Limits as printed, with the publication that sets them; null where it sets none on that side. */
export type PublishedLimits = readonly [low: number | null, high: number | null, source: SourceId];

/** The figures of a fat that the calculations use. How each was obtained is in `publishedFatRecords`. */
export interface PublishedFat {
  /** Percent of total fatty acids, by mass; acids looked for and not found are in the record. */
  readonly profile?: Readonly<Partial<Record<FattyAcid, readonly [low: number, high: number]>>>;
  /** Publications behind the profile, the chief one first. */
  readonly profileSource?: readonly SourceId[];
  /** Saponification value, mg KOH per g; every standard's own limits, the leading one first. */
  readonly saponificationValue?: readonly PublishedLimits[];
  /** One observed saponification value, mg KOH per g, where no standard sets limits. */
  readonly observedSaponificationValue?: readonly [value: number, source: SourceId];
  /** Acid value, mg KOH per g. */
  readonly acidValue?: readonly PublishedLimits[];
  /** Iodine value, g iodine per 100 g. */
  readonly iodineValue?: readonly PublishedLimits[];
  /** Unsaponifiable matter, percent by mass. */
  readonly unsaponifiable?: readonly (readonly [low: number | null, maximum: number, source: SourceId])[];
}

/**
 * The published fats: limits of standards, not averages. A lot inside any of them is lawful, so bounds are the union.
 * Laid out by hand, a line a quantity. A function, so that the table is made when the first fat is asked for.
 */
// prettier-ignore
export const publishedFats = (): Readonly<Record<PublishedFatId, PublishedFat>> => ({
  // Vegetable oils
  'coconut-oil': {
    profile: {
      'C6:0': [0, 0.7], 'C8:0': [4.6, 10], 'C10:0': [5, 8], 'C12:0': [45.1, 53.2], 'C14:0': [16.8, 21],
      'C16:0': [7.5, 10.2], 'C18:0': [2, 4], 'C18:1': [5, 10], 'C18:2': [1, 2.5], 'C18:3': [0, 0.2], 'C20:0': [0, 0.2],
      'C20:1': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[248, 265, 'codex-cxs-210-2024'], [250, 264, 'coconut-community-standard-undated']],
    iodineValue: [[6.3, 10.6, 'codex-cxs-210-2024'], [7.5, 10.5, 'coconut-community-standard-undated']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'palm-oil': {
    profile: {
      'C12:0': [0, 0.5], 'C14:0': [0.5, 2], 'C16:0': [39.3, 47.5], 'C16:1': [0, 0.6], 'C17:0': [0, 0.2],
      'C18:0': [3.5, 6], 'C18:1': [36, 44], 'C18:2': [9, 12], 'C18:3': [0, 0.5], 'C20:0': [0, 1], 'C20:1': [0, 0.4],
      'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[190, 209, 'codex-cxs-210-2024']],
    iodineValue: [[50, 55, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.2, 'codex-cxs-210-2024']],
  },
  'palm-oil-high-oleic': {
    profile: {
      'C12:0': [0, 0.6], 'C14:0': [0, 0.8], 'C16:0': [23, 38], 'C16:1': [0, 0.8], 'C17:0': [0, 0.2],
      'C18:0': [1.5, 4.5], 'C18:1': [48, 60], 'C18:2': [9, 17], 'C18:3': [0, 0.6], 'C20:0': [0, 0.4], 'C20:1': [0, 0.2],
      'C20:2': [0, 0.5], 'C22:0': [0, 0.3], 'C24:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[189, 199, 'codex-cxs-210-2024']],
    iodineValue: [[58, 75, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.2, 'codex-cxs-210-2024']],
  },
  'palm-kernel-oil': {
    profile: {
      'C6:0': [0, 0.8], 'C8:0': [2.4, 6.2], 'C10:0': [2.6, 5], 'C12:0': [45, 55], 'C14:0': [14, 18], 'C16:0': [6.5, 10],
      'C16:1': [0, 0.2], 'C18:0': [1, 3], 'C18:1': [12, 19], 'C18:2': [1, 3.5], 'C18:3': [0, 0.2], 'C20:0': [0, 0.2],
      'C20:1': [0, 0.2], 'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2015'],
    saponificationValue: [[230, 254, 'codex-cxs-210-2024']],
    iodineValue: [[14.1, 21, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1, 'codex-cxs-210-2024']],
  },
  'babassu-oil': {
    profile: {
      'C8:0': [2.6, 7.3], 'C10:0': [1.2, 7.6], 'C12:0': [40, 55], 'C14:0': [11, 27], 'C16:0': [5.2, 11],
      'C18:0': [1.8, 7.4], 'C18:1': [9, 20], 'C18:2': [1.4, 6.6],
    },
    profileSource: ['codex-cxs-210-2024'],
  },
  'olive-oil': {
    profile: {
      'C14:0': [0, 0.05], 'C16:0': [7.5, 20], 'C16:1': [0.3, 3.5], 'C17:0': [0, 0.3], 'C17:1': [0, 0.3],
      'C18:0': [0.5, 5], 'C18:1': [55, 83], 'C18:2': [3.5, 21], 'C18:3': [0, 1], 'C20:0': [0, 0.6], 'C20:1': [0, 0.4],
      'C22:0': [0, 0.2], 'C24:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-33-2013', 'codex-cxs-33-2017'],
    saponificationValue: [[184, 196, 'codex-cxs-33-2017']],
    iodineValue: [[75, 94, 'codex-cxs-33-2017']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-33-2017']],
  },
  'olive-pomace-oil': {
    profile: {
      'C14:0': [0, 0.05], 'C16:0': [7.5, 20], 'C16:1': [0.3, 3.5], 'C17:0': [0, 0.3], 'C17:1': [0, 0.3],
      'C18:0': [0.5, 5], 'C18:1': [55, 83], 'C18:2': [3.5, 21], 'C18:3': [0, 1], 'C20:0': [0, 0.6], 'C20:1': [0, 0.4],
      'C22:0': [0, 0.3], 'C24:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-33-2013', 'codex-cxs-33-2017'],
    saponificationValue: [[182, 193, 'codex-cxs-33-2017']],
    iodineValue: [[75, 92, 'codex-cxs-33-2017']],
    unsaponifiable: [[null, 3, 'codex-cxs-33-2017']],
  },
  'sunflower-oil': {
    profile: {
      'C12:0': [0, 0.1], 'C14:0': [0, 0.2], 'C16:0': [5, 7.6], 'C16:1': [0, 0.3], 'C17:0': [0, 0.2], 'C17:1': [0, 0.1],
      'C18:0': [2.7, 6.5], 'C18:1': [14, 43], 'C18:2': [45.4, 74], 'C18:3': [0, 0.3], 'C20:0': [0.1, 0.5],
      'C20:1': [0, 0.3], 'C22:0': [0.3, 1.5], 'C22:1': [0, 0.3], 'C22:2': [0, 0.3], 'C24:0': [0, 0.5],
    },
    profileSource: ['codex-cxs-210-2013', 'codex-cxs-210-2022'],
    saponificationValue: [[187, 194, 'codex-cxs-210-2022'], [188, 194, 'codex-cxs-210-2019']],
    iodineValue: [[118, 141, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'sunflower-oil-mid-oleic': {
    profile: {
      'C14:0': [0, 1], 'C16:0': [4, 5.5], 'C16:1': [0, 0.05], 'C17:0': [0, 0.05], 'C17:1': [0, 0.06], 'C18:0': [2.1, 5],
      'C18:1': [43.1, 71.8], 'C18:2': [18.7, 45.3], 'C18:3': [0, 0.5], 'C20:0': [0.2, 0.4], 'C20:1': [0.2, 0.3],
      'C22:0': [0.6, 1.1], 'C22:2': [0, 0.09], 'C24:0': [0.3, 0.4],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[190, 191, 'codex-cxs-210-2024']],
    iodineValue: [[94, 122, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'sunflower-oil-high-oleic': {
    profile: {
      'C14:0': [0, 0.1], 'C16:0': [2.6, 5], 'C16:1': [0, 0.1], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [2.9, 6.2], 'C18:1': [75, 90.7], 'C18:2': [2.1, 17], 'C18:3': [0, 0.3], 'C20:0': [0.2, 0.5],
      'C20:1': [0.1, 0.5], 'C22:0': [0.5, 1.6], 'C22:1': [0, 0.3], 'C24:0': [0, 0.5],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[182, 194, 'codex-cxs-210-2024']],
    iodineValue: [[78, 90, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'safflower-oil': {
    profile: {
      'C14:0': [0, 0.2], 'C16:0': [5.3, 8], 'C16:1': [0, 0.2], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [1.9, 2.9], 'C18:1': [8.4, 21.3], 'C18:2': [67.8, 83.2], 'C18:3': [0, 0.1], 'C20:0': [0.2, 0.4],
      'C20:1': [0.1, 0.3], 'C22:0': [0, 1], 'C22:1': [0, 1.8], 'C24:0': [0, 0.2], 'C24:1': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2013'],
    saponificationValue: [[189, 195, 'india-grading-rules-1955'], [186, 198, 'codex-cxs-210-2024']],
    iodineValue: [
      [138, 148, 'india-grading-rules-1955'], [135, 150, 'usp-32-nf-27-2009'], [136, 148, 'codex-cxs-210-2024'],
    ],
    unsaponifiable: [
      [null, 1.5, 'usp-32-nf-27-2009'], [null, 1, 'india-grading-rules-1955'], [null, 1.5, 'codex-cxs-210-2024'],
    ],
  },
  'safflower-oil-high-oleic': {
    profile: {
      'C12:0': [0, 0.2], 'C14:0': [0, 0.2], 'C16:0': [3.6, 6], 'C16:1': [0, 0.2], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [1.5, 2.4], 'C18:1': [70, 83.7], 'C18:2': [9, 19.9], 'C18:3': [0, 1.2], 'C20:0': [0.3, 0.6],
      'C20:1': [0.1, 0.5], 'C22:0': [0, 0.4], 'C22:1': [0, 0.3], 'C24:0': [0, 0.3], 'C24:1': [0, 0.3],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[186, 194, 'codex-cxs-210-2024']],
    iodineValue: [[80, 100, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1, 'codex-cxs-210-2024']],
  },
  'soybean-oil': {
    profile: {
      'C12:0': [0, 0.1], 'C14:0': [0, 0.2], 'C16:0': [8, 13.5], 'C16:1': [0, 0.2], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [2, 5.4], 'C18:1': [17, 30], 'C18:2': [48, 59], 'C18:3': [4.5, 11], 'C20:0': [0.1, 0.6],
      'C20:1': [0, 0.5], 'C20:2': [0, 0.1], 'C22:0': [0, 0.7], 'C22:1': [0, 0.3], 'C24:0': [0, 0.5],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[189, 195, 'codex-cxs-210-2024']],
    iodineValue: [[124, 139, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'corn-oil': {
    profile: {
      'C12:0': [0, 0.3], 'C14:0': [0, 0.3], 'C16:0': [8.6, 16.5], 'C16:1': [0, 0.5], 'C17:0': [0, 0.1],
      'C17:1': [0, 0.1], 'C18:0': [0, 3.3], 'C18:1': [20, 42.2], 'C18:2': [34, 65.6], 'C18:3': [0, 2],
      'C20:0': [0.3, 1], 'C20:1': [0.2, 0.6], 'C20:2': [0, 0.1], 'C22:0': [0, 0.5], 'C22:1': [0, 0.3],
      'C24:0': [0, 0.5],
    },
    profileSource: ['codex-cxs-210-2024'],
  },
  'cottonseed-oil': {
    profile: {
      'C12:0': [0, 0.2], 'C14:0': [0.6, 1], 'C16:0': [21.4, 26.4], 'C16:1': [0, 1.2], 'C17:0': [0, 0.1],
      'C17:1': [0, 0.1], 'C18:0': [2.1, 3.3], 'C18:1': [14.7, 21.7], 'C18:2': [46.7, 58.2], 'C18:3': [0, 0.4],
      'C20:0': [0.2, 0.5], 'C20:1': [0, 0.1], 'C20:2': [0, 0.1], 'C22:0': [0, 0.6], 'C22:1': [0, 0.3],
      'C22:2': [0, 0.1], 'C24:0': [0, 0.1],
    },
    profileSource: ['codex-cxs-210-2024'],
  },
  'canola-oil': {
    profile: {
      'C14:0': [0, 0.2], 'C16:0': [2.5, 7], 'C16:1': [0, 0.6], 'C17:0': [0, 0.3], 'C17:1': [0, 0.3], 'C18:0': [0.8, 3],
      'C18:1': [51, 70], 'C18:2': [15, 30], 'C18:3': [5, 14], 'C20:0': [0.2, 1.2], 'C20:1': [0.1, 4.3],
      'C20:2': [0, 0.1], 'C22:0': [0, 0.6], 'C22:1': [0, 2], 'C22:2': [0, 0.1], 'C24:0': [0, 0.3], 'C24:1': [0, 0.4],
    },
    profileSource: ['codex-cxs-210-2024'],
  },
  'rapeseed-oil-high-erucic': {
    profile: {
      'C14:0': [0, 0.2], 'C16:0': [1.5, 6], 'C16:1': [0, 3], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1], 'C18:0': [0.5, 3.1],
      'C18:1': [8, 60], 'C18:2': [11, 23], 'C18:3': [5, 13], 'C20:0': [0, 3], 'C20:1': [3, 15], 'C20:2': [0, 1],
      'C22:0': [0, 2], 'C22:1': [2, 60], 'C22:2': [0, 2], 'C24:0': [0, 2], 'C24:1': [0, 3],
    },
    profileSource: ['codex-cxs-210-2013'],
    saponificationValue: [[168, 181, 'codex-cxs-210-2024']],
    iodineValue: [[94, 120, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 2, 'codex-cxs-210-2024']],
  },
  'mustardseed-oil': {
    profile: {
      'C14:0': [0, 1], 'C16:0': [0.5, 4.5], 'C16:1': [0, 0.5], 'C18:0': [0.5, 2], 'C18:1': [8, 23], 'C18:2': [10, 24],
      'C18:3': [6, 18], 'C20:0': [0, 1.5], 'C20:1': [5, 13], 'C20:2': [0, 1], 'C22:0': [0.2, 2.5], 'C22:1': [22, 50],
      'C22:2': [0, 1], 'C24:0': [0, 0.5], 'C24:1': [0.5, 2.5],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[168, 184, 'codex-cxs-210-2024'], [169, 177, 'india-grading-rules-1955']],
    iodineValue: [[92, 125, 'codex-cxs-210-2024'], [98, 110, 'india-grading-rules-1955']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024'], [null, 1.2, 'india-grading-rules-1955']],
  },
  'peanut-oil': {
    profile: {
      'C12:0': [0, 0.1], 'C14:0': [0, 0.1], 'C16:0': [5, 14], 'C16:1': [0, 0.2], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [1, 4.5], 'C18:1': [35, 80], 'C18:2': [4, 43], 'C18:3': [0, 0.5], 'C20:0': [0.7, 2], 'C20:1': [0.7, 3.2],
      'C22:0': [1.5, 4.5], 'C22:1': [0, 0.6], 'C24:0': [0.5, 2.5], 'C24:1': [0, 0.3],
    },
    profileSource: ['codex-cxs-210-2013', 'codex-cxs-210-2024'],
    saponificationValue: [
      [188, 196, 'india-groundnut-2017'], [187, 196, 'codex-cxs-210-2024'],
      [185, 195, 'international-pharmacopoeia-undated'],
    ],
    iodineValue: [
      [85, 99, 'india-groundnut-2017'], [77, 107, 'codex-cxs-210-2024'], [86, 107, 'codex-cxs-210-1999'],
      [83, 103, 'international-pharmacopoeia-undated'],
    ],
    unsaponifiable: [
      [null, 1, 'india-groundnut-2017'], [null, 1, 'codex-cxs-210-2024'],
      [null, 1.5, 'international-pharmacopoeia-undated'],
    ],
  },
  'rice-bran-oil': {
    profile: {
      'C12:0': [0, 0.2], 'C14:0': [0, 1], 'C16:0': [14, 23], 'C16:1': [0, 0.5], 'C18:0': [0.9, 4], 'C18:1': [38, 48],
      'C18:2': [21, 42], 'C18:3': [0.1, 2.9], 'C20:0': [0, 0.9], 'C20:1': [0, 0.8], 'C22:0': [0, 1], 'C24:0': [0, 0.9],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[180, 199, 'codex-cxs-210-2024'], [180, 195, 'india-grading-rules-1955']],
    iodineValue: [[90, 115, 'codex-cxs-210-2024'], [90, 105, 'india-grading-rules-1955']],
    unsaponifiable: [[null, 6.5, 'codex-cxs-210-2024'], [null, 3.5, 'india-grading-rules-1955']],
  },
  'sesame-oil': {
    profile: {
      'C14:0': [0, 0.1], 'C16:0': [7.9, 12], 'C16:1': [0, 0.2], 'C17:0': [0, 0.2], 'C17:1': [0, 0.1],
      'C18:0': [4.5, 6.7], 'C18:1': [34.4, 45.5], 'C18:2': [36.9, 47.9], 'C18:3': [0.2, 1], 'C20:0': [0.3, 0.7],
      'C20:1': [0, 0.3], 'C22:0': [0, 1.1], 'C24:0': [0, 0.3],
    },
    profileSource: ['codex-cxs-210-2024'],
  },
  'grapeseed-oil': {
    profile: {
      'C14:0': [0, 0.3], 'C16:0': [5.5, 11], 'C16:1': [0, 1.2], 'C17:0': [0, 0.2], 'C17:1': [0, 0.1], 'C18:0': [3, 6.5],
      'C18:1': [12, 28], 'C18:2': [58, 78], 'C18:3': [0, 1], 'C20:0': [0, 1], 'C20:1': [0, 0.3], 'C22:0': [0, 0.5],
      'C22:1': [0, 0.3], 'C24:0': [0, 0.4],
    },
    profileSource: ['codex-cxs-210-2013'],
    saponificationValue: [[188, 194, 'codex-cxs-210-2024']],
    iodineValue: [
      [128, 150, 'italy-grapeseed-data-sheet-undated'], [128, 150, 'codex-cxs-210-2024'],
      [130, 138, 'codex-cxs-210-1999'],
    ],
    unsaponifiable: [[null, 2, 'codex-cxs-210-2024']],
  },
  'linseed-oil': {
    profile: {
      'C12:0': [0, 0.3], 'C14:0': [0, 0.2], 'C16:0': [4, 11.3], 'C16:1': [0, 0.5], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [2, 8], 'C18:1': [9.8, 36], 'C18:2': [8.3, 30], 'C18:3': [43.8, 70], 'C20:0': [0, 1], 'C20:1': [0, 1.2],
      'C22:0': [0, 0.5], 'C22:1': [0, 1.2], 'C24:0': [0, 0.3],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[185, 197, 'codex-cxs-210-2024']],
    iodineValue: [[170, 211, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 2, 'codex-cxs-210-2024']],
  },
  'walnut-oil': {
    profile: {
      'C16:0': [6, 8], 'C16:1': [0, 0.4], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1], 'C18:0': [1, 3], 'C18:1': [14, 23],
      'C18:2': [54, 65], 'C18:3': [9, 15.4], 'C20:0': [0, 0.3], 'C20:1': [0, 0.3], 'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[189, 198, 'codex-cxs-210-2024']],
    iodineValue: [[132, 162, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 2, 'codex-cxs-210-2024']],
  },
  'almond-oil': {
    profile: {
      'C16:0': [4, 9], 'C16:1': [0, 0.8], 'C17:0': [0, 0.2], 'C17:1': [0, 0.2], 'C18:0': [0, 3], 'C18:1': [62, 86],
      'C18:2': [20, 30], 'C18:3': [0, 0.4], 'C20:0': [0, 0.2], 'C20:1': [0, 0.3], 'C22:0': [0, 0.2], 'C22:1': [0, 0.1],
      'C24:0': [0, 0.2],
    },
    profileSource: ['ph-eur-undated', 'bp-2025'],
    saponificationValue: [
      [190, 200, 'usp-nf-undated'], [183, 207, 'codex-cxs-210-2024'], [185, 200, 'bp-undated'],
      [190, 195, 'ph-eur-undated'],
    ],
    iodineValue: [
      [95, 105, 'usp-nf-undated'], [95, 110, 'usp-nf-undated'], [85, 109, 'codex-cxs-210-2024'],
      [95, 109, 'ph-eur-undated'],
    ],
    unsaponifiable: [[null, 0.9, 'bp-2025'], [null, 2, 'codex-cxs-210-2024']],
  },
  'hazelnut-oil': {
    profile: {
      'C14:0': [0, 0.1], 'C16:0': [4.2, 8.9], 'C16:1': [0, 0.5], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1],
      'C18:0': [0.8, 3.2], 'C18:1': [74.2, 86.7], 'C18:2': [5.2, 18.7], 'C18:3': [0, 0.6], 'C20:0': [0, 0.3],
      'C20:1': [0, 0.3], 'C22:0': [0, 0.2], 'C22:1': [0, 0.1],
    },
    profileSource: ['codex-cxs-210-2024'],
    saponificationValue: [[188, 198, 'codex-cxs-210-2024']],
    iodineValue: [[81, 95, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'pistachio-oil': {
    profile: {
      'C14:0': [0, 0.6], 'C16:0': [8, 13], 'C16:1': [0, 2], 'C17:0': [0, 0.1], 'C17:1': [0, 0.1], 'C18:0': [0.5, 3.5],
      'C18:1': [50, 70], 'C18:2': [8, 34], 'C18:3': [0.1, 1], 'C20:0': [0, 0.3], 'C20:1': [0, 0.6], 'C22:0': [0, 1],
    },
    profileSource: ['codex-cxs-210-2024', 'codex-cxs-210-2022'],
    saponificationValue: [[187, 196, 'codex-cxs-210-2024']],
    iodineValue: [[84, 98, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 3, 'codex-cxs-210-2024']],
  },
  'avocado-oil': {
    profile: {
      'C14:0': [0, 0.3], 'C16:0': [7, 35], 'C16:1': [2, 16.8], 'C17:0': [0, 0.3], 'C17:1': [0, 0.3], 'C18:0': [0, 1.5],
      'C18:1': [36, 80], 'C18:2': [6, 21.2], 'C18:3': [0, 3], 'C20:0': [0, 0.5], 'C20:1': [0, 0.2], 'C24:0': [0, 0.1],
    },
    profileSource: ['india-food-standards-undated'],
    saponificationValue: [[177, 198, 'india-food-standards-draft-2017'], [170, 202, 'codex-cxs-210-avocado-draft']],
    acidValue: [[null, 2, 'india-food-standards-draft-2017']],
    iodineValue: [[63, 95, 'india-food-standards-draft-2017'], [78, 95, 'codex-cxs-210-avocado-draft']],
    unsaponifiable: [[null, 12, 'india-food-standards-draft-2017']],
  },
  'castor-oil': {
    profile: {
      'C16:0': [0, 2], 'C18:0': [0, 2.5], 'C18:1': [2.5, 6], 'C18:1-OH': [85, 92], 'C18:2': [2.5, 7], 'C18:3': [0, 1],
      'C20:1': [0, 1],
    },
    profileSource: ['ph-eur-8-to-11'],
    saponificationValue: [[176, 187, 'bp-1993'], [177, 185, 'trade-specification-castor']],
    acidValue: [[null, 1.5, 'bp-2025']],
    iodineValue: [[82, 90, 'bp-1993'], [82, 90, 'trade-specification-castor']],
    unsaponifiable: [[null, 0.8, 'bp-2025']],
  },
  'hempseed-oil': {
    profile: {
      'C16:0': [6, 9], 'C18:0': [2, 3.5], 'C18:1': [11.4, 15.9], 'C18:2': [55.4, 56.9], 'C18:3': [17.1, 21.5],
      'C18:4': [0.3, 0.5], 'C20:0': [0.8, 3], 'C20:1': [0, 0.5],
    },
    profileSource: ['hempseed-composition-undated', 'kiralan-2010'],
  },
  'neem-oil': {
    profile: { 'C16:0': [16, 33], 'C18:0': [9, 24], 'C18:1': [25, 54], 'C18:2': [6, 16] },
    profileSource: ['encyclopaedia-articles-undated'],
    saponificationValue: [[180, 205, 'is-4765-1975']],
    iodineValue: [[65, 80, 'is-4765-1975']],
    unsaponifiable: [[null, 2, 'is-4765-1975']],
  },
  'tung-oil': {
    profile: { 'C16:0': [2, 4], 'C18:0': [1.5, 3], 'C18:1': [4, 11], 'C18:2': [8, 15], 'C18:3-conj': [69, 82] },
    profileSource: ['oil-technology-handbooks'],
    saponificationValue: [[189, 195, 'astm-d12-1998']],
    acidValue: [[null, 5, 'astm-d12-1998']],
    iodineValue: [[163, null, 'astm-d12-1998']],
    unsaponifiable: [[null, 0.75, 'astm-d12-1998']],
  },
  // Butters
  'cocoa-butter': {
    profile: {
      'C14:0': [0, 0.2], 'C16:0': [23, 30], 'C16:1': [0, 0.5], 'C18:0': [31, 37], 'C18:1': [31, 38],
      'C18:2': [1.6, 4.8], 'C18:3': [0, 0.5], 'C20:0': [0, 1.3], 'C22:0': [0, 0.2],
    },
    profileSource: ['usp-28-nf-23-2005'],
    saponificationValue: [
      [188, 198, 'malaysia-cocoa-butter-undated'], [188, 198, 'trade-specification-cocoa-butter'],
      [188, 198, 'codex-stan-86-1981'],
    ],
    acidValue: [[null, 2.8, 'usp-28-nf-23-2005']],
    iodineValue: [
      [32, 42, 'trade-specification-cocoa-butter'], [32, 36, 'malaysia-cocoa-butter-undated'],
      [33, 42, 'codex-stan-86-1981'],
    ],
    unsaponifiable: [[null, 0.7, 'codex-stan-86-2001']],
  },
  'shea-butter': {
    profile: {
      'C12:0': [0, 1], 'C14:0': [0, 0.7], 'C16:0': [2, 10], 'C16:1': [0, 0.3], 'C18:0': [25, 50], 'C18:1': [32, 62],
      'C18:2': [1, 11], 'C18:3': [0, 1], 'C20:0': [0, 3.5],
    },
    profileSource: ['codex-cxs-325r-2017'],
    saponificationValue: [[160, 195, 'codex-cxs-325r-2017']],
    iodineValue: [[30, 75, 'codex-cxs-325r-2017']],
    unsaponifiable: [[1, 19, 'codex-cxs-325r-2017']],
  },
  'sheanut-oil-refined': {
    saponificationValue: [[185, 195, 'cfr-21-184-1702']],
    iodineValue: [[28, 43, 'cfr-21-184-1702']],
    unsaponifiable: [[null, 1.5, 'cfr-21-184-1702']],
  },
  // Fractions
  'palm-olein': {
    profile: {
      'C12:0': [0.1, 0.5], 'C14:0': [0.5, 1.5], 'C16:0': [38, 43.5], 'C16:1': [0, 0.6], 'C17:0': [0, 0.2],
      'C17:1': [0, 0.1], 'C18:0': [3.5, 5], 'C18:1': [39.8, 46], 'C18:2': [10, 13.5], 'C18:3': [0, 0.6],
      'C20:0': [0, 0.6], 'C20:1': [0, 0.4], 'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2015'],
    saponificationValue: [[195, 205, 'india-grading-rules-1955'], [194, 202, 'codex-cxs-210-2024']],
    iodineValue: [
      [56, null, 'trade-specification-palm'], [56, null, 'codex-cxs-210-2024'], [50, 62, 'india-grading-rules-1955'],
    ],
    unsaponifiable: [
      [null, 1.2, 'india-grading-rules-1955'], [null, 1, 'india-grading-rules-1955'], [null, 1.3, 'codex-cxs-210-2024'],
    ],
  },
  'palm-superolein': {
    profile: {
      'C12:0': [0.1, 0.5], 'C14:0': [0.5, 1.5], 'C16:0': [30, 39], 'C16:1': [0, 0.5], 'C17:0': [0, 0.1],
      'C18:0': [2.8, 4.5], 'C18:1': [43, 49.5], 'C18:2': [10.5, 15], 'C18:3': [0.2, 1], 'C20:0': [0, 0.4],
      'C20:1': [0, 0.2], 'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2015'],
    saponificationValue: [[180, 205, 'codex-cxs-210-2024']],
    iodineValue: [[60, null, 'codex-cxs-210-2015']],
    unsaponifiable: [[null, 1.3, 'codex-cxs-210-2024']],
  },
  'palm-stearin': {
    profile: {
      'C12:0': [0.1, 0.5], 'C14:0': [1, 2], 'C16:0': [48, 74], 'C16:1': [0, 0.2], 'C17:0': [0, 0.2], 'C17:1': [0, 0.1],
      'C18:0': [3.9, 6], 'C18:1': [15.5, 36], 'C18:2': [3, 10], 'C18:3': [0, 0.5], 'C20:0': [0, 1], 'C20:1': [0, 0.4],
      'C22:0': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2015'],
  },
  'palm-kernel-olein': {
    profile: {
      'C6:0': [0, 0.7], 'C8:0': [2.9, 6.3], 'C10:0': [2.7, 4.5], 'C12:0': [39.7, 47], 'C14:0': [11.5, 15.5],
      'C16:0': [6.2, 10.6], 'C16:1': [0, 0.1], 'C18:0': [1.7, 3], 'C18:1': [14.4, 24.6], 'C18:2': [2.4, 4.3],
      'C18:3': [0, 0.3], 'C20:0': [0, 0.5], 'C20:1': [0, 0.2],
    },
    profileSource: ['codex-cxs-210-2015'],
    saponificationValue: [[231, 244, 'codex-cxs-210-2024']],
    iodineValue: [[20, 28, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  'palm-kernel-stearin': {
    profile: {
      'C6:0': [0, 0.2], 'C8:0': [1.3, 3], 'C10:0': [2.4, 3.3], 'C12:0': [52, 59.7], 'C14:0': [20, 25],
      'C16:0': [6.7, 10], 'C18:0': [1, 3], 'C18:1': [4.1, 8], 'C18:2': [0.5, 1.5], 'C18:3': [0, 0.1], 'C20:0': [0, 0.5],
      'C20:1': [0, 0.1],
    },
    profileSource: ['codex-cxs-210-2015'],
    saponificationValue: [[244, 255, 'codex-cxs-210-2024']],
    iodineValue: [[4, 8.5, 'codex-cxs-210-2024']],
    unsaponifiable: [[null, 1.5, 'codex-cxs-210-2024']],
  },
  // Animal fats
  lard: {
    profile: {
      'C12:0': [0, 0.5], 'C14:0': [1, 2.5], 'C14:0-iso': [0, 0.1], 'C14:1': [0, 0.2], 'C15:0': [0, 0.2],
      'C15:0-anteiso': [0, 0.1], 'C15:0-iso': [0, 0.1], 'C16:0': [20, 30], 'C16:0-iso': [0, 0.1], 'C16:1': [2, 4],
      'C16:2': [0, 0.1], 'C17:0': [0, 1], 'C17:0-anteiso': [0, 0.1], 'C17:0-iso': [0, 0.1], 'C17:1': [0, 1],
      'C18:0': [8, 22], 'C18:1': [35, 55], 'C18:2': [4, 12], 'C18:3': [0, 1.5], 'C20:0': [0, 1], 'C20:1': [0, 1.5],
      'C20:2': [0, 1], 'C20:4': [0, 1], 'C22:0': [0, 0.1], 'C22:1': [0, 0.5],
    },
    profileSource: ['codex-cxs-211-2021'],
    saponificationValue: [[192, 203, 'canada-b-09-013-2022'], [192, 203, 'codex-cxs-211-2021'], [195, 203, 'bpc-1911']],
    acidValue: [[null, 2.5, 'canada-b-09-013-2022'], [null, 1.3, 'codex-cxs-211-2021']],
    iodineValue: [[45, 70, 'canada-b-09-013-2022'], [55, 65, 'codex-cxs-211-2021'], [50, 64, 'bpc-1911']],
    unsaponifiable: [[null, 1.2, 'canada-b-09-013-2022'], [null, 1, 'codex-cxs-211-2021']],
  },
  'rendered-pork-fat': {
    profile: {
      'C12:0': [0, 0.5], 'C14:0': [1, 2.5], 'C14:0-iso': [0, 0.1], 'C14:1': [0, 0.2], 'C15:0': [0, 0.2],
      'C15:0-anteiso': [0, 0.1], 'C15:0-iso': [0, 0.1], 'C16:0': [20, 30], 'C16:0-iso': [0, 0.1], 'C16:1': [2, 4],
      'C16:2': [0, 0.1], 'C17:0': [0, 1], 'C17:0-anteiso': [0, 0.1], 'C17:0-iso': [0, 0.1], 'C17:1': [0, 1],
      'C18:0': [8, 22], 'C18:1': [35, 55], 'C18:2': [4, 12], 'C18:3': [0, 1.5], 'C20:0': [0, 1], 'C20:1': [0, 1.5],
      'C20:2': [0, 1], 'C20:4': [0, 1], 'C22:0': [0, 0.1], 'C22:1': [0, 0.5],
    },
    profileSource: ['codex-cxs-211-2021'],
    saponificationValue: [[192, 203, 'codex-cxs-211-2021']],
    acidValue: [[null, 2.5, 'codex-cxs-211-2021']],
    iodineValue: [[60, 72, 'codex-cxs-211-2021']],
    unsaponifiable: [[null, 1.2, 'codex-cxs-211-2021']],
  },
  tallow: {
    profile: {
      'C12:0': [0, 0.5], 'C14:0': [2, 6], 'C14:0-iso': [0, 0.3], 'C14:1': [0.5, 1.5], 'C15:0': [0.2, 1],
      'C15:0-iso': [0, 1.5], 'C16:0': [20, 30], 'C16:0-iso': [0, 0.5], 'C16:1': [1, 5], 'C16:2': [0, 1],
      'C17:0': [0.5, 2], 'C17:0-iso': [0, 1.5], 'C17:1': [0, 1], 'C18:0': [15, 30], 'C18:1': [30, 45], 'C18:2': [1, 6],
      'C18:3': [0, 1.5], 'C20:0': [0, 0.5], 'C20:1': [0, 0.5], 'C20:2': [0, 0.1], 'C20:4': [0, 0.5], 'C22:0': [0, 0.1],
    },
    profileSource: ['codex-cxs-211-2021'],
    saponificationValue: [[190, 202, 'fats-and-oils-handbook-1998'], [190, 202, 'codex-cxs-211-2021']],
    acidValue: [[null, 2.5, 'codex-cxs-211-2021']],
    iodineValue: [[40, 53, 'codex-cxs-211-2021']],
    unsaponifiable: [[null, 1.2, 'codex-cxs-211-2021']],
  },
  'premier-jus': {
    profile: {
      'C12:0': [0, 0.5], 'C14:0': [2, 6], 'C14:0-iso': [0, 0.3], 'C14:1': [0.5, 1.5], 'C15:0': [0.2, 1],
      'C15:0-iso': [0, 1.5], 'C16:0': [20, 30], 'C16:0-iso': [0, 0.5], 'C16:1': [1, 5], 'C16:2': [0, 1],
      'C17:0': [0.5, 2], 'C17:0-iso': [0, 1.5], 'C17:1': [0, 1], 'C18:0': [15, 30], 'C18:1': [30, 45], 'C18:2': [1, 6],
      'C18:3': [0, 1.5], 'C20:0': [0, 0.5], 'C20:1': [0, 0.5], 'C20:2': [0, 0.1], 'C20:4': [0, 0.5], 'C22:0': [0, 0.1],
    },
    profileSource: ['codex-cxs-211-2021'],
    saponificationValue: [[190, 200, 'codex-cxs-211-2021']],
    acidValue: [[null, 2, 'codex-cxs-211-2021']],
    iodineValue: [[36, 47, 'codex-cxs-211-2021']],
    unsaponifiable: [[null, 1, 'codex-cxs-211-2021']],
  },
  suet: {
    saponificationValue: [[190, 200, 'malaysia-regulation-181-1985']],
    acidValue: [[null, 2, 'malaysia-regulation-181-1985']],
    iodineValue: [[32, 47, 'malaysia-regulation-181-1985']],
    unsaponifiable: [[null, 1, 'malaysia-regulation-181-1985']],
  },
  butterfat: {
    profile: {
      'C4:0': [1, 5], 'C6:0': [0.5, 2.2], 'C8:0': [1, 1.9], 'C10:0': [2.1, 4], 'C12:0': [2.3, 4.7],
      'C14:0': [8.5, 12.8], 'C14:1': [0.6, 1.5], 'C15:0': [0.9, 1.5], 'C16:0': [22, 38], 'C16:1': [1.3, 2.8],
      'C17:0': [0.5, 0.9], 'C18:0': [8, 19], 'C18:1': [19, 32], 'C18:2': [1.2, 3], 'C18:3': [0.3, 1.5],
    },
    profileSource: ['dairy-chemistry-handbooks', 'india-food-standards-2019'],
    saponificationValue: [[205, 235, 'india-food-standards-2019']],
    iodineValue: [[25, 38, 'india-food-standards-2019']],
  },
  // Hardened fats
  'castor-oil-hydrogenated': {
    profile: { 'C16:0': [0, 2], 'C18:0': [7, 14], 'C18:0-OH': [78, 91], 'C18:0-oxo': [0, 5], 'C20:0': [0, 1] },
    profileSource: ['ph-eur-8-to-11'],
    saponificationValue: [[176, 182, 'usp-35-nf-30-2012']],
    acidValue: [[null, 3.1, 'usp-35-nf-30-2012'], [null, 4, 'ph-eur-8-to-11']],
    iodineValue: [[null, 5, 'usp-35-nf-30-2012']],
  },
  'hydrogenated-vegetable-oil-type-1': {
    saponificationValue: [[175, 200, 'usp-29-nf-24-2006']],
    acidValue: [[null, 4, 'usp-28-nf-23-2005']],
    iodineValue: [[0, 5, 'usp-29-nf-24-2006']],
    unsaponifiable: [[null, 0.8, 'usp-28-nf-23-2005']],
  },
  'hydrogenated-vegetable-oil-type-2': {
    saponificationValue: [[175, 200, 'usp-29-nf-24-2006']],
    acidValue: [[null, 4, 'usp-28-nf-23-2005']],
    iodineValue: [[55, 80, 'usp-29-nf-24-2006']],
    unsaponifiable: [[null, 0.8, 'usp-28-nf-23-2005']],
  },
  'lauric-cocoa-butter-substitute': {
    saponificationValue: [[220, 260, 'cfr-21-172-861']],
    acidValue: [[null, 0.5, 'cfr-21-172-861']],
    iodineValue: [[null, 3, 'cfr-21-172-861']],
  },
  // Fatty acids
  'stearic-acid-50': {
    profile: { 'C16:0': [30, 60], 'C18:0': [40, 60] },
    profileSource: ['nf-34-2016'],
    acidValue: [[194, 212, 'nf-34-2016'], [194, 212, 'ph-eur-undated']],
    iodineValue: [[null, 4, 'ph-eur-undated']],
  },
  'stearic-acid-70': {
    profile: { 'C16:0': [10, 40], 'C18:0': [60, 80] },
    profileSource: ['nf-34-2016'],
    acidValue: [[194, 212, 'nf-34-2016'], [194, 212, 'ph-eur-undated']],
    iodineValue: [[null, 4, 'ph-eur-undated']],
  },
  'stearic-acid-95': {
    profile: { 'C16:0': [0, 10], 'C18:0': [90, 100] },
    profileSource: ['nf-34-2016'],
    acidValue: [[194, 212, 'nf-34-2016'], [194, 212, 'ph-eur-undated']],
    iodineValue: [[null, 1.5, 'ph-eur-undated']],
  },
  'stearic-acid-purified': {
    profile: { 'C16:0': [0, 10], 'C18:0': [90, 100] },
    profileSource: ['usp-32-nf-27-2009'],
    acidValue: [[195, 200, 'usp-32-nf-27-2009']],
    iodineValue: [[null, 1.5, 'usp-32-nf-27-2009']],
  },
  'palmitic-acid': {
    profile: { 'C16:0': [92, 100], 'C18:0': [0, 6] },
    profileSource: ['usp-32-nf-27-2009'],
    saponificationValue: [[205, 221, 'fcc-4-to-6']],
    acidValue: [[216, 220, 'usp-32-nf-27-2009'], [216, 220, 'ph-eur-undated'], [204, 220, 'fcc-4-to-6']],
    iodineValue: [[null, 1, 'usp-32-nf-27-2009'], [null, 2, 'fcc-4-to-6']],
    unsaponifiable: [[null, 1.5, 'fcc-4-to-6']],
  },
  'myristic-acid': {
    profile: { 'C14:0': [97, 100] },
    profileSource: ['usp-32-nf-27-2009'],
    saponificationValue: [[242, 251, 'usp-32-nf-27-2009']],
    acidValue: [[242, 249, 'usp-32-nf-27-2009']],
    iodineValue: [[null, 1, 'usp-32-nf-27-2009']],
    unsaponifiable: [[null, 1, 'usp-32-nf-27-2009']],
  },
  'lauric-acid': {
    saponificationValue: [[253, 287, 'fcc-4-to-6']],
    acidValue: [[252, 287, 'fcc-4-to-6']],
    iodineValue: [[null, 3, 'fcc-4-to-6']],
    unsaponifiable: [[null, 0.3, 'fcc-4-to-6']],
  },
  'oleic-acid': {
    profile: {
      'C14:0': [0, 5], 'C16:0': [0, 16], 'C16:1': [0, 8], 'C18:0': [0, 6], 'C18:1': [65, 88], 'C18:2': [0, 18],
      'C18:3': [0, 4], 'C20:1': [0, 4],
    },
    profileSource: ['bp-undated'],
    acidValue: [[195, 204, 'bp-undated'], [196, 204, 'usp-32-nf-27-2009']],
    iodineValue: [[89, 105, 'bp-undated'], [85, 95, 'usp-32-nf-27-2009']],
  },
  // Waxes
  'jojoba-oil': {
    profile: { 'C18:1': [10, 13], 'C20:1': [66, 71], 'C22:1': [14, 20] },
    profileSource: ['encyclopaedia-articles-undated'],
    observedSaponificationValue: [92.2, 'chemical-index-undated'],
  },
  beeswax: {
    saponificationValue: [[87, 104, 'ph-eur-undated']],
    acidValue: [[17, 24, 'ph-eur-undated'], [17, 24, 'usp-32-nf-27-2009']],
  },
  lanolin: {
    saponificationValue: [[90, 102, 'bpc-1911'], [90, 105, 'ph-eur-undated'], [89.3, 105.3, 'ph-eur-2012']],
    acidValue: [[null, 1.1, 'usp-28-nf-23-2005'], [null, 1, 'ph-eur-undated']],
  },
  // Rosins
  'rosin-ww': {
    observedSaponificationValue: [169.7, 'simmons-appleton-1908'],
  },
  'rosin-n': {
    observedSaponificationValue: [179.6, 'simmons-appleton-1908'],
  },
  'rosin-spanish': {
    observedSaponificationValue: [179, 'simmons-appleton-1908'],
  },
});
