import { frozen } from '../../numbers/index.js';
import type { FatKind } from '../fatKind.js';

/** Name of a fat on file. */
export type PublishedFatId =
  | 'coconut-oil'
  | 'palm-oil'
  | 'palm-oil-high-oleic'
  | 'palm-kernel-oil'
  | 'babassu-oil'
  | 'olive-oil'
  | 'olive-pomace-oil'
  | 'sunflower-oil'
  | 'sunflower-oil-mid-oleic'
  | 'sunflower-oil-high-oleic'
  | 'safflower-oil'
  | 'safflower-oil-high-oleic'
  | 'soybean-oil'
  | 'corn-oil'
  | 'cottonseed-oil'
  | 'canola-oil'
  | 'rapeseed-oil-high-erucic'
  | 'mustardseed-oil'
  | 'peanut-oil'
  | 'rice-bran-oil'
  | 'sesame-oil'
  | 'grapeseed-oil'
  | 'linseed-oil'
  | 'walnut-oil'
  | 'almond-oil'
  | 'hazelnut-oil'
  | 'pistachio-oil'
  | 'avocado-oil'
  | 'castor-oil'
  | 'hempseed-oil'
  | 'neem-oil'
  | 'tung-oil'
  | 'cocoa-butter'
  | 'shea-butter'
  | 'sheanut-oil-refined'
  | 'palm-olein'
  | 'palm-superolein'
  | 'palm-stearin'
  | 'palm-kernel-olein'
  | 'palm-kernel-stearin'
  | 'lard'
  | 'rendered-pork-fat'
  | 'tallow'
  | 'premier-jus'
  | 'suet'
  | 'butterfat'
  | 'castor-oil-hydrogenated'
  | 'hydrogenated-vegetable-oil-type-1'
  | 'hydrogenated-vegetable-oil-type-2'
  | 'lauric-cocoa-butter-substitute'
  | 'stearic-acid-50'
  | 'stearic-acid-70'
  | 'stearic-acid-95'
  | 'stearic-acid-purified'
  | 'palmitic-acid'
  | 'myristic-acid'
  | 'lauric-acid'
  | 'oleic-acid'
  | 'jojoba-oil'
  | 'beeswax'
  | 'lanolin'
  | 'rosin-ww'
  | 'rosin-n'
  | 'rosin-spanish';

/** How a published fat is called, and what it is chemically. */
export interface FatListing {
  readonly id: PublishedFatId;
  /** Plain name of the trade. */
  readonly name: string;
  readonly kind: FatKind;
  /** Other names a maker would type. A name that could mean two fats of different lye demand is left out. */
  readonly synonyms: readonly string[];
}

/** The published fats, fatty acids, waxes and rosins that {@link fat} knows, by name. */
// prettier-ignore
export const fats: readonly FatListing[] = /* @__PURE__ */ listed([
  // Vegetable oils
  {
    id: 'coconut-oil', name: 'Coconut oil', kind: 'triglyceride',
    synonyms: [
      'coco oil', 'coconut fat', 'copra oil', 'Cocos nucifera oil', 'virgin coconut oil', 'refined coconut oil',
      'coconut oil 76',
    ],
  },
  {
    id: 'palm-oil', name: 'Palm oil', kind: 'triglyceride',
    synonyms: ['red palm oil', 'refined palm oil', 'palm fruit oil', 'dende oil', 'Elaeis guineensis palm oil'],
  },
  {
    id: 'palm-oil-high-oleic', name: 'High-oleic palm oil', kind: 'triglyceride',
    synonyms: ['palm oil with a higher content of oleic acid', 'hybrid palm oil', 'OxG palm oil'],
  },
  {
    id: 'palm-kernel-oil', name: 'Palm kernel oil', kind: 'triglyceride',
    synonyms: ['PKO', 'palm nut oil', 'palm kernel fat', 'Elaeis guineensis kernel oil'],
  },
  {
    id: 'babassu-oil', name: 'Babassu oil', kind: 'triglyceride',
    synonyms: ['babacu oil', 'Orbignya oleifera oil', 'Attalea speciosa oil', 'babassu kernel oil'],
  },
  {
    id: 'olive-oil', name: 'Olive oil', kind: 'triglyceride',
    synonyms: ['Olea europaea oil', 'virgin olive oil', 'extra virgin olive oil', 'refined olive oil'],
  },
  {
    id: 'olive-pomace-oil', name: 'Olive-pomace oil', kind: 'triglyceride',
    synonyms: ['olive residue oil', 'orujo oil', 'sansa oil'],
  },
  {
    id: 'sunflower-oil', name: 'Sunflower oil', kind: 'triglyceride',
    synonyms: ['sunflower seed oil', 'Helianthus annuus oil', 'high-linoleic sunflower oil'],
  },
  {
    id: 'sunflower-oil-mid-oleic', name: 'Mid-oleic sunflower oil', kind: 'triglyceride',
    synonyms: ['mid-oleic sunflower seed oil'],
  },
  {
    id: 'sunflower-oil-high-oleic', name: 'High-oleic sunflower oil', kind: 'triglyceride',
    synonyms: ['high-oleic sunflower seed oil'],
  },
  {
    id: 'safflower-oil', name: 'Safflower oil', kind: 'triglyceride',
    synonyms: ['safflower seed oil', 'Carthamus tinctorius oil', 'high-linoleic safflower oil'],
  },
  {
    id: 'safflower-oil-high-oleic', name: 'High-oleic safflower oil', kind: 'triglyceride',
    synonyms: ['high-oleic safflower seed oil'],
  },
  {
    id: 'soybean-oil', name: 'Soybean oil', kind: 'triglyceride',
    synonyms: ['soya oil', 'soya bean oil', 'soy oil', 'Glycine max oil', 'Glycine soja oil'],
  },
  {
    id: 'corn-oil', name: 'Corn oil', kind: 'triglyceride',
    synonyms: ['maize oil', 'corn germ oil', 'maize germ oil', 'Zea mays oil'],
  },
  {
    id: 'cottonseed-oil', name: 'Cottonseed oil', kind: 'triglyceride',
    synonyms: ['cotton oil', 'Gossypium oil', 'Gossypium hirsutum oil', 'Gossypium herbaceum oil'],
  },
  {
    id: 'canola-oil', name: 'Canola oil', kind: 'triglyceride',
    synonyms: [
      'canola', 'low-erucic rapeseed oil', 'low erucic acid rapeseed oil', 'rapeseed oil, low erucic acid',
      'double-low rapeseed oil', 'LEAR oil',
    ],
  },
  {
    id: 'rapeseed-oil-high-erucic', name: 'High-erucic rapeseed oil', kind: 'triglyceride',
    synonyms: ['HEAR oil', 'erucic rapeseed oil', 'rapeseed oil, erucic type'],
  },
  {
    id: 'mustardseed-oil', name: 'Mustard seed oil', kind: 'triglyceride',
    synonyms: ['mustard oil', 'Brassica alba oil', 'Brassica nigra oil', 'Sinapis alba oil'],
  },
  {
    id: 'peanut-oil', name: 'Peanut oil', kind: 'triglyceride',
    synonyms: ['arachis oil', 'groundnut oil', 'Arachis hypogaea oil', 'earthnut oil', 'monkey nut oil'],
  },
  {
    id: 'rice-bran-oil', name: 'Rice bran oil', kind: 'triglyceride',
    synonyms: ['rice oil', 'Oryza sativa oil'],
  },
  {
    id: 'sesame-oil', name: 'Sesame oil', kind: 'triglyceride',
    synonyms: ['sesame seed oil', 'gingelly oil', 'til oil', 'benne oil', 'Sesamum indicum oil'],
  },
  {
    id: 'grapeseed-oil', name: 'Grapeseed oil', kind: 'triglyceride',
    synonyms: ['grape stone oil', 'grape kernel oil', 'Vitis vinifera oil'],
  },
  {
    id: 'linseed-oil', name: 'Linseed oil', kind: 'triglyceride',
    synonyms: ['flaxseed oil', 'flax oil', 'Linum usitatissimum oil'],
  },
  {
    id: 'walnut-oil', name: 'Walnut oil', kind: 'triglyceride',
    synonyms: ['English walnut oil', 'Juglans regia oil'],
  },
  {
    id: 'almond-oil', name: 'Almond oil', kind: 'triglyceride',
    synonyms: [
      'sweet almond oil', 'almond kernel oil', 'Prunus amygdalus oil', 'Prunus dulcis oil',
      'Prunus amygdalus dulcis oil',
    ],
  },
  {
    id: 'hazelnut-oil', name: 'Hazelnut oil', kind: 'triglyceride',
    synonyms: ['filbert oil', 'cobnut oil', 'Corylus avellana oil'],
  },
  {
    id: 'pistachio-oil', name: 'Pistachio oil', kind: 'triglyceride',
    synonyms: ['pistachio nut oil', 'pistachio kernel oil', 'Pistacia vera oil'],
  },
  {
    id: 'avocado-oil', name: 'Avocado oil', kind: 'triglyceride',
    synonyms: [
      'avocado pear oil', 'avocado pulp oil', 'alligator pear oil', 'Persea americana oil', 'Persea gratissima oil',
    ],
  },
  {
    id: 'castor-oil', name: 'Castor oil', kind: 'triglyceride',
    synonyms: ['ricinus oil', 'castor bean oil', 'castor seed oil', 'oleum ricini', 'Ricinus communis oil'],
  },
  {
    id: 'hempseed-oil', name: 'Hempseed oil', kind: 'triglyceride',
    synonyms: ['hemp oil', 'Cannabis sativa oil'],
  },
  {
    id: 'neem-oil', name: 'Neem oil', kind: 'triglyceride',
    synonyms: ['margosa oil', 'nim oil', 'neem seed oil', 'neem kernel oil', 'Azadirachta indica oil'],
  },
  {
    id: 'tung-oil', name: 'Tung oil', kind: 'triglyceride',
    synonyms: ['China wood oil', 'Chinese wood oil', 'Aleurites fordii oil', 'Vernicia fordii oil'],
  },
  // Butters
  {
    id: 'cocoa-butter', name: 'Cocoa butter', kind: 'triglyceride',
    synonyms: [
      'cacao butter', 'theobroma oil', 'oleum theobromatis', 'Theobroma cacao butter', 'Theobroma cacao seed butter',
    ],
  },
  {
    id: 'shea-butter', name: 'Shea butter', kind: 'triglyceride',
    synonyms: [
      'unrefined shea butter', 'raw shea butter', 'karite butter', 'shea nut butter', 'Vitellaria paradoxa butter',
    ],
  },
  {
    id: 'sheanut-oil-refined', name: 'Refined sheanut oil', kind: 'triglyceride',
    synonyms: ['sheanut oil, food grade'],
  },
  // Fractions
  {
    id: 'palm-olein', name: 'Palm olein', kind: 'triglyceride',
    synonyms: ['palm oleine'],
  },
  {
    id: 'palm-superolein', name: 'Palm superolein', kind: 'triglyceride',
    synonyms: ['double-fractionated palm olein'],
  },
  {
    id: 'palm-stearin', name: 'Palm stearin', kind: 'triglyceride',
    synonyms: ['palm stearine'],
  },
  {
    id: 'palm-kernel-olein', name: 'Palm kernel olein', kind: 'triglyceride',
    synonyms: ['palm kernel oleine'],
  },
  {
    id: 'palm-kernel-stearin', name: 'Palm kernel stearin', kind: 'triglyceride',
    synonyms: ['palm kernel stearine'],
  },
  // Animal fats
  {
    id: 'lard', name: 'Lard', kind: 'triglyceride',
    synonyms: ['pig fat', 'hog fat', 'hog lard', 'pork lard', 'adeps suillus'],
  },
  {
    id: 'rendered-pork-fat', name: 'Rendered pork fat', kind: 'triglyceride',
    synonyms: ['pork dripping'],
  },
  {
    id: 'tallow', name: 'Tallow', kind: 'triglyceride',
    synonyms: ['beef tallow', 'mutton tallow', 'edible tallow', 'sheep tallow', 'dripping', 'beef dripping'],
  },
  {
    id: 'premier-jus', name: 'Premier jus', kind: 'triglyceride',
    synonyms: ['oleo stock'],
  },
  {
    id: 'suet', name: 'Suet', kind: 'triglyceride',
    synonyms: ['beef suet', 'mutton suet', 'kidney fat'],
  },
  {
    id: 'butterfat', name: 'Milk fat', kind: 'triglyceride',
    synonyms: ['anhydrous milk fat', 'butter fat, anhydrous', 'butter oil', 'ghee', 'clarified butter'],
  },
  // Hardened fats
  {
    id: 'castor-oil-hydrogenated', name: 'Hydrogenated castor oil', kind: 'triglyceride',
    synonyms: ['castor wax', 'hardened castor oil'],
  },
  {
    id: 'hydrogenated-vegetable-oil-type-1', name: 'Hydrogenated vegetable oil, type I', kind: 'triglyceride',
    synonyms: ['fully hydrogenated vegetable oil', 'fully hardened vegetable oil'],
  },
  {
    id: 'hydrogenated-vegetable-oil-type-2', name: 'Hydrogenated vegetable oil, type II', kind: 'triglyceride',
    synonyms: ['partly hydrogenated vegetable oil', 'vegetable shortening'],
  },
  {
    id: 'lauric-cocoa-butter-substitute', name: 'Lauric cocoa butter substitute', kind: 'triglyceride',
    synonyms: ['lauric CBS'],
  },
  // Fatty acids
  {
    id: 'stearic-acid-50', name: 'Stearic acid, type 50', kind: 'free-fatty-acid',
    synonyms: ['triple-pressed stearic acid'],
  },
  {
    id: 'stearic-acid-70', name: 'Stearic acid, type 70', kind: 'free-fatty-acid',
    synonyms: [],
  },
  {
    id: 'stearic-acid-95', name: 'Stearic acid, type 95', kind: 'free-fatty-acid',
    synonyms: [],
  },
  {
    id: 'stearic-acid-purified', name: 'Stearic acid, purified', kind: 'free-fatty-acid',
    synonyms: ['purified stearic acid'],
  },
  {
    id: 'palmitic-acid', name: 'Palmitic acid', kind: 'free-fatty-acid',
    synonyms: ['hexadecanoic acid'],
  },
  {
    id: 'myristic-acid', name: 'Myristic acid', kind: 'free-fatty-acid',
    synonyms: ['tetradecanoic acid'],
  },
  {
    id: 'lauric-acid', name: 'Lauric acid', kind: 'free-fatty-acid',
    synonyms: ['dodecanoic acid'],
  },
  {
    id: 'oleic-acid', name: 'Oleic acid', kind: 'free-fatty-acid',
    synonyms: ['cis-9-octadecenoic acid', 'oleine (acid)', 'olein (acid)'],
  },
  // Waxes
  {
    id: 'jojoba-oil', name: 'Jojoba oil', kind: 'wax-ester',
    synonyms: ['jojoba wax', 'liquid jojoba wax', 'Simmondsia chinensis oil', 'Buxus chinensis oil'],
  },
  {
    id: 'beeswax', name: 'Beeswax', kind: 'wax-ester',
    synonyms: ['white beeswax', 'yellow beeswax', 'cera alba', 'cera flava'],
  },
  {
    id: 'lanolin', name: 'Lanolin', kind: 'wax-ester',
    synonyms: ['wool fat', 'wool wax', 'anhydrous lanolin', 'adeps lanae'],
  },
  // Rosins
  {
    id: 'rosin-ww', name: 'Rosin, American water white', kind: 'rosin',
    synonyms: ['water white rosin', 'rosin grade WW', 'WW rosin', 'colophony WW', 'gum rosin WW'],
  },
  {
    id: 'rosin-n', name: 'Rosin, American N (extra pale)', kind: 'rosin',
    synonyms: ['N rosin', 'rosin grade N', 'extra pale rosin', 'colophony N'],
  },
  {
    id: 'rosin-spanish', name: 'Rosin, Spanish', kind: 'rosin',
    synonyms: ['Spanish colophony', 'Spanish gum rosin'],
  },
]);

/** The list is handed out to everybody, so that nobody may write in it. */
function listed(rows: readonly FatListing[]): readonly FatListing[] {
  for (const row of rows) {
    frozen(row);
    frozen(row.synonyms);
  }
  return frozen(rows);
}
