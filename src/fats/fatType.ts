import type { Remark } from '../numbers/index.js';
import type { Estimate, Fraction, IodineValue, SaponificationValue } from '../quantities/index.js';
import type { SourceId } from '../sources/index.js';
import type { FatKind } from './fatKind.js';
import type { FattyAcidProfile } from './profile.js';

/** Where a fat's saponification value is from. */
export type SaponificationValueOrigin = 'certificate' | 'standard' | 'observation' | 'profile' | 'blend';

interface FatBase {
  /** Name in the registry of published fats, where the fat is from there. */
  readonly id?: string;
  readonly name: string;
  /** Bounds hold for every lawful lot; a certificate narrows them to one lot. */
  readonly saponificationValue: Estimate<SaponificationValue>;
  readonly from: SaponificationValueOrigin;
  /** What was assumed, scaled or found to disagree. */
  readonly notes: readonly Remark[];
  /** The publications behind the figures. */
  readonly basis: readonly SourceId[];
  /** Edition of the figures. */
  readonly edition: string;
}

/** One fat, fatty acid, wax or rosin. A fat is a value: plain, frozen and complete; it survives JSON by `readFat`. */
export interface SingleFat extends FatBase {
  readonly kind: FatKind;
  /** Free acid, mg KOH per g; of a free fatty acid or rosin it equals the saponification value. */
  readonly acidValue: SaponificationValue;
  /** Unsaponifiable matter, share of the fat by mass; the alcohols of a wax are not counted here. */
  readonly unsaponifiable: Estimate<Fraction>;
  /** Water in the fat, share by mass. */
  readonly moisture: Estimate<Fraction>;
  readonly iodineValue?: Estimate<IodineValue>;
  /** Shares of total fatty acids. */
  readonly profile?: FattyAcidProfile;
}

/** One fat of a blend. */
export interface BlendPart {
  readonly fat: SingleFat;
  /** Share of the blend by mass. */
  readonly share: Fraction;
}

/** A blend keeps its parts; every calculation looks through it to them. */
export interface FatBlend extends FatBase {
  readonly kind: 'blend';
  readonly from: 'blend';
  readonly parts: readonly BlendPart[];
}

/** A fat as the calculations take it. */
export type Fat = SingleFat | FatBlend;
