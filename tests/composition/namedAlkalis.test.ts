/** What alkalis and acids are called in the trade. */
import { describe, expect, it } from 'vitest';
import { isNamedSpirit, namedAcid } from '../../src/composition/namedAdditions.js';
import { isNamedAlkali, namedAlkali } from '../../src/composition/namedAlkalis.js';

describe('sodium hydroxide goes by the name of', () => {
  it.each([
    'sodium hydroxide', 'NaOH, 50 %', 'Caustic-Soda', 'caustic  soda', 'Lye', 'Natriumhydroxid', 'Ätznatron', 'Aetznatron', 'Natronlauge 30 %', 'Seifenstein',
    'soude caustique', 'Hydroxyde de sodium', 'lessive de soude', 'sosa cáustica', 'hidróxido de sodio', 'Soda Caustica', 'idrossido di sodio',
    'soda cáustica', 'hidróxido de sódio', 'natronloog', 'natriumhydroxide', 'bijtende soda', 'lejía de sosa', 'A\u0308tznatron',
  ])('%s', (name) => {
    expect(namedAlkali(name)).toBe('naoh');
  }); // prettier-ignore
});

describe('potassium hydroxide goes by the name of', () => {
  it.each([
    'potassium hydroxide', 'Lye (KOH)', 'caustic potash', 'Kaliumhydroxid', 'Ätzkali', 'Kalilauge', 'potasse caustique', 'hydroxyde de potassium',
    'lessive de potasse', 'potasa cáustica', 'hidróxido de potasio', 'hidróxido potásico', 'hidróxido potássico', 'potassa caustica', 'idrossido di potassio', 'hidróxido de potássio', 'kaliloog', 'kaliumhydroxide',
  ])('%s', (name) => {
    expect(namedAlkali(name)).toBe('koh');
  }); // prettier-ignore
});

describe('a weaker alkali, or one of unknown strength, goes by the name of', () => {
  it.each([
    'potash', 'Pearl ash', 'soda ash', 'washing soda', 'Sodium carbonate', 'potassium carbonate', 'sodium silicate', 'waterglass', 'water glass',
    'slaked lime', 'quicklime', 'borax', 'ammonia', 'Pottasche', 'Waschsoda', 'Soda', 'Soda (!)', 'Natriumkarbonat', 'Natronwasserglas', 'Löschkalk', 'Salmiakgeist', 'Lauge',
    'carbonate de soude', 'cristaux de soude', 'chaux éteinte', 'ammoniaque', 'carbonato de sodio', 'cal apagada', 'amoníaco', 'carbonato di potassio', 'calce',
    'borace', 'barrilha', 'bórax', 'potas', 'kristalsoda', 'natriumcarbonaat', 'gebluste kalk', 'loog', 'soude',
  ])('%s', (name) => {
    expect(namedAlkali(name)).toBe('other');
    expect(isNamedAlkali(name)).toBe(true);
  }); // prettier-ignore
});

describe('no alkali is', () => {
  it.each([
    'colour', 'polyethylene scent', 'alkohol', 'salt of soda', 'lime oil', 'key lime scent', 'lime blossom', 'baking soda', 'bicarbonate de soude', 'club soda', 'calcium carbonate',
    'lye-free soap', 'potash soap', 'soft soap', 'savon de soude', 'sodium citrate', 'lyeing', 'chaucer', '', 'Kalk', '苛性ソーダ',
  ])('%s', (name) => {
    expect(namedAlkali(name)).toBeUndefined();
    expect(isNamedAlkali(name)).toBe(false);
  }); // prettier-ignore
});

describe('a spirit goes by the name of', () => {
  it.each([
    'Alcohol, denatured', 'rubbing alcohols', 'spirit', 'mineral spirits', 'Ethanol 96 %', 'methanol', 'propanol', '2-Propanol', 'isopropanol', 'isopropyl',
    'IPA', 'IMS', 'meths', 'methylated', 'vodka', 'gin', 'rum', 'brandy', 'tincture of benzoin', 'tinctures',
  ])('%s', (name) => {
    expect(isNamedSpirit(name)).toBe(true);
  }); // prettier-ignore

  it.each([
    'alcohol-free scent', 'spirit vinegar', 'cetyl alcohol', 'fatty alcohols', 'sugar alcohol', 'Cetearyl Alcohol', 'ginger', 'rumba red', 'inspiriting', 'thanol',
  ])('but not by %s', (name) => {
    expect(isNamedSpirit(name)).toBe(false);
  }); // prettier-ignore
});

describe('an acid goes by the name of', () => {
  it.each([
    ['Citric acid, powder', 'citric'], ['Zitronensäure', 'citric'], ['Zitronensaeure', 'citric'], ['acide citrique', 'citric'], ['ácido cítrico', 'citric'], ['acido citrico', 'citric'], ['citroenzuur', 'citric'],
    ['lactic acid', 'lactic'], ['Milchsäure 80 %', 'lactic'], ['acide lactique', 'lactic'], ['ácido láctico', 'lactic'], ['ácido lático', 'lactic'], ['acido lattico', 'lactic'], ['melkzuur', 'lactic'],
    ['stearic acid', 'other'], ['vinegar', 'other'], ['vinaigre', 'other'], ['Essig', 'other'], ['Ölsäure', 'other'], ['azijn', 'other'],
    ['colour', undefined], ['citrus oil', undefined], ['treasure', undefined],
  ] as const)('%s: %s', (name, acid) => {
    expect(namedAcid(name)).toBe(acid);
  }); // prettier-ignore
});
