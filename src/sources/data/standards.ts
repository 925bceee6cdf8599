/**
 * The publications behind the table of fats: standards, pharmacopoeias, laws,
 * grading rules, trade specifications, handbooks. One row a publication; a page
 * that restates a standard is not a row of its own, the standard is. Whether a
 * figure was read or recalled is said at the figure.
 */
export const standards = () =>
  ({
    // Codex Alimentarius
    'codex-cxs-210-2024': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999',
      edition:
        'adopted 1999, revised and amended to 2024 (rows read in a text of 2019 or later that does not state its revision)',
      where: 'Table 1 (fatty acids), Table 2 (chemical and physical characteristics)',
    },
    'codex-cxs-210-2022': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999: amendments',
      edition: 'amendments of December 2022, corrigendum of February 2023',
      where: 'amended cells of Tables 1 and 2 (sunflowerseed oil; pistachio oil C16:1)',
    },
    'codex-cxs-210-2019': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999',
      edition: 'as it stood before the amendments of December 2022',
      where: 'Table 2, sunflowerseed oil',
    },
    'codex-cxs-210-2015': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999',
      edition: 'revised 2001, 2003, 2009; amended 2005, 2011, 2013, 2015',
      where: 'section 2.1 (product definitions); Table 1, palm and palm kernel columns',
    },
    'codex-cxs-210-2013': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999',
      edition: 'wording of the texts of 2005 to 2013 (inferred from the arachis row)',
      where: 'Table 1 (fatty acids)',
    },
    'codex-cxs-210-1999': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999',
      edition: 'text of 1999',
      where: 'Table 2 (chemical and physical characteristics)',
    },
    'codex-cxs-210-avocado-draft': {
      title: 'Standard for Named Vegetable Oils, CXS 210-1999: draft row for avocado oil',
      edition: 'draft before the adoption of November 2024',
    },
    'codex-cxs-211-2021': {
      title: 'Standard for Named Animal Fats, CXS 211-1999',
      edition: 'adopted 1999, amended 2009, 2013, 2015, 2019, 2021',
      where: 'section 3.1 (fatty acids); section 3 and appendix (characteristics)',
    },
    'codex-cxs-33-2013': {
      title: 'Standard for Olive Oils and Olive Pomace Oils, CXS 33-1981',
      edition: 'revised 2003, amended 2009 and 2013',
      where: 'section 3.9',
    },
    'codex-cxs-33-2017': {
      title: 'Standard for Olive Oils and Olive Pomace Oils, CXS 33-1981',
      edition: 'adopted 1981, revised and amended to 2017',
      where: 'section 3.9 and appendix',
    },
    'codex-cxs-325r-2017': {
      title: 'Regional Standard for Unrefined Shea Butter, CXS 325R-2017',
      edition: '2017',
      where: 'section 3.3, Table 2; section 3.4 (fatty acids)',
    },
    'codex-stan-86-1981': {
      title: 'Standard for Cocoa Butters, CODEX STAN 86-1981',
      edition: 'text of 1981',
      where: 'characteristics',
    },
    'codex-stan-86-2001': {
      title: 'Standard for Cocoa Butter, CODEX STAN 86-1981',
      edition: 'revised 2001',
      where: 'section 2.1',
    },
    // Pharmacopoeias
    'bp-2025': {
      title: 'British Pharmacopoeia',
      edition: '2025 (European Pharmacopoeia, supplement 11.6)',
      where: 'Virgin Castor Oil; Refined Almond Oil; Refined Safflower Oil',
    },
    'bp-1993': { title: 'British Pharmacopoeia', edition: '1993', where: 'Castor Oil' },
    'bp-undated': {
      title: 'British Pharmacopoeia',
      edition: 'year not stated where it was read',
      where: 'Oleic Acid (European Pharmacopoeia 0799); Almond Oil',
    },
    'bpc-1911': {
      title: 'British Pharmaceutical Codex',
      edition: '1911',
      where: 'Adeps Lanae; Adeps (lard); Linimentum Saponis Camphoratum',
    },
    'ph-eur-undated': {
      title: 'European Pharmacopoeia',
      edition: 'edition not stated where it was read, or recalled without it',
      where: 'Almond oil, refined; Stearic acid; Palmitic acid (1904); Beeswax, white; Wool fat',
    },
    'ph-eur-8-to-11': {
      title: 'European Pharmacopoeia',
      edition: '8th to 11th edition',
      where: 'Castor oil, virgin and refined; Castor oil, hydrogenated',
    },
    'ph-eur-2012': {
      title: 'European Pharmacopoeia',
      edition: 'monograph 04/2012:0135',
      where: 'Wool fat, hydrous',
    },
    'usp-28-nf-23-2005': {
      title: 'United States Pharmacopeia 28 and National Formulary 23',
      edition: '2005',
      where: 'Lanolin; Cocoa Butter; Hydrogenated Vegetable Oil',
    },
    'usp-29-nf-24-2006': {
      title: 'United States Pharmacopeia 29 and National Formulary 24',
      edition: '2006',
      where: 'Castor Oil; Almond Oil; Hydrogenated Vegetable Oil',
    },
    'usp-32-nf-27-2009': {
      title: 'United States Pharmacopeia 32 and National Formulary 27',
      edition: '2009',
      where: 'Safflower Oil; Purified Stearic Acid; Oleic Acid; Myristic Acid; Palmitic Acid; White Wax',
    },
    'usp-35-nf-30-2012': {
      title: 'United States Pharmacopeia 35 and National Formulary 30',
      edition: '2012',
      where: 'Hydrogenated Castor Oil; Peanut Oil; Coconut Oil',
    },
    'nf-34-2016': {
      title: 'National Formulary 34',
      edition: 'harmonised text, official May 2016',
      where: 'Stearic Acid',
    },
    'usp-nf-undated': {
      title: 'United States Pharmacopeia and National Formulary',
      edition: 'edition not stated where it was read',
      where: 'Almond Oil',
    },
    'international-pharmacopoeia-undated': {
      title: 'The International Pharmacopoeia',
      edition: 'edition not stated where it was read',
      where: 'Arachis oil, requirements',
    },
    'fcc-4-to-6': {
      title: 'Food Chemicals Codex',
      edition: '4th to 6th edition',
      where: 'Lauric Acid; Myristic Acid; Palmitic Acid',
    },
    // Laws, national standards, grading rules
    'canada-b-09-013-2022': {
      title: 'Food and Drug Regulations, Canada, C.R.C. c. 870, B.09.013 (lard)',
      edition: 'version of July 2022',
      where: 'B.09.013(b)',
    },
    'canada-b-09-003-2024': {
      title: 'Food and Drug Regulations, Canada, C.R.C. c. 870, B.09.003 (olive oil)',
      edition: 'current to February 2024',
      where: 'B.09.003(b), (d)',
    },
    'malaysia-regulation-181-1985': {
      title: 'Food Regulations 1985, Malaysia, regulation 181 (suet)',
      edition: '1985, as amended; revision not stated',
      where: 'regulation 181(2)',
    },
    'malaysia-cocoa-butter-undated': {
      title: 'Malaysian table of cocoa butter characteristics',
      edition: 'number and year not stated where it was read',
      where: 'Table 1',
    },
    'cfr-21-184-1702': {
      title: 'Code of Federal Regulations, United States, title 21, 184.1702 (sheanut oil)',
      edition: 'as in force June 2026',
      where: '(b)(1) to (b)(3)',
    },
    'cfr-21-172-861': {
      title:
        'Code of Federal Regulations, United States, title 21, 172.861 (cocoa butter substitute from coconut oil, palm kernel oil, or both oils)',
      edition: '1991, corrected 1992',
      where: '(b)',
    },
    'india-food-standards-undated': {
      title: 'Food Safety and Standards (Food Products Standards) Regulations, India',
      edition: 'not stated where it was read; that it is this table is inferred from its figures',
      where: 'fatty acids of vegetable oils',
    },
    'india-food-standards-2019': {
      title: 'Food Safety and Standards Regulations, India: milk fat products',
      edition: 'with an order of March 2019',
      where: 'ghee: compositional table, fatty acids',
    },
    'india-food-standards-draft-2017': {
      title: 'Food Safety and Standards Regulations, India: draft amendment on oils',
      edition: 'draft of July 2017',
      where: 'avocado oil',
    },
    'india-groundnut-2017': {
      title: 'Limits for groundnut oil of the Food Safety and Standards Regulations and IS 544, India',
      edition: 'as quoted in 2017',
      where: 'saponification value, iodine value, unsaponifiable matter',
    },
    'india-grading-rules-1955': {
      title: 'Vegetable Oils Grading and Marking Rules, India',
      edition: '1955, as amended; amendment not stated',
      where: 'grade tables: safflower, mustard, rice bran and palm olein oils',
    },
    'is-4765-1975': {
      title: 'IS 4765: Neem Kernel Oil, India',
      edition: '1975',
      where: 'requirements',
    },
    'astm-d12-1998': {
      title: 'ASTM D 12-88: Standard Specification for Raw Tung Oil',
      edition: '1988, reapproved 1998',
      where: 'Table 1',
    },
    'italy-grapeseed-data-sheet-undated': {
      title: 'Italian technical data sheet for grapeseed oil',
      edition: 'not stated where it was read',
      where: 'requirements: relative density, refractive index, iodine value',
    },
    'coconut-community-standard-undated': {
      title: 'Intergovernmental quality standard of coconut-growing countries',
      edition: 'not stated where it was read',
      where: 'crude coconut oil',
    },
    // Trade specifications
    'trade-specification-palm': {
      title: 'Trade specification of palm products (issuer not named)',
      edition: 'as restated 2016',
      where: 'items 4 to 7: palm olein',
    },
    'trade-specification-cocoa-butter': {
      title: 'Trade specification of cocoa butter (issuer not named)',
      edition: 'not stated',
      where: 'chemical parameters',
    },
    'trade-specification-castor': {
      title: 'Trade specification of castor oil grades (issuer not named)',
      edition: 'not stated',
    },
    // Handbooks and papers: observed figures, nobody's limits
    'simmons-appleton-1908': {
      title: 'The Handbook of Soap Manufacture',
      authors: 'W. H. Simmons, H. A. Appleton',
      edition: 'London, 1908',
      where: 'chapter III, pages 25 to 38',
    },
    'thomssen-1922': {
      title: 'Soap-Making Manual',
      authors: 'E. G. Thomssen',
      edition: 'New York, 1922',
      where: 'appendix, constants of fixed oils and fats',
    },
    'knapp-1920': {
      title: 'Cocoa and Chocolate',
      authors: 'A. W. Knapp',
      edition: '1920',
      where: 'analytical figures for cacao butter',
    },
    'jamieson-1943': {
      title: 'Vegetable Fats and Oils',
      authors: 'G. S. Jamieson',
      edition: '1943',
      where: 'hempseed oil',
    },
    'quantitative-agricultural-analysis-1920s': {
      title: 'Quantitative Agricultural Analysis',
      edition: 'early 1920s, year not stated where it was read',
      where: 'page 226, Table XX',
    },
    'applied-analytical-chemistry-undated': {
      title: 'Treatise on Applied Analytical Chemistry, volume 1',
      edition: 'early 20th century, year not stated where it was read',
      where: 'palm-kernel oil; tallow',
    },
    'fats-and-oils-handbook-1998': {
      title: 'Fats and Oils Handbook',
      edition: '1998',
      where: 'table 3.13 (mutton tallow)',
    },
    'oil-technology-handbooks': {
      title: 'Handbooks of oil technology, taken together',
      edition: 'various',
      where: 'tung oil, fatty acids',
    },
    'dairy-chemistry-handbooks': {
      title: 'Handbooks of dairy chemistry, taken together',
      edition: 'various',
      where: 'bovine milk fat, fatty acids',
    },
    'chemical-index-undated': {
      title: 'Monographs of a chemical index (index not named where they were read)',
      edition: 'not stated',
      where: 'jojoba oil; tallow; rice bran oil; prepared suet',
    },
    'museum-materials-encyclopaedia-undated': {
      title: 'Encyclopaedia of materials for museum conservation',
      edition: 'not stated',
      where: 'avocado oil; tallow',
    },
    'encyclopaedia-articles-undated': {
      title: 'Articles of general encyclopaedias, taken together',
      edition: 'not stated',
      where: 'neem oil, jojoba oil: fatty acids; hempseed oil; animal fat',
    },
    'hempseed-composition-undated': {
      title: 'Composition of hempseed oil, an Italian compilation of ranges',
      edition: 'not stated',
      where: 'fatty acids',
    },
    'kiralan-2010': {
      title: 'Spanish Journal of Agricultural Research 8(2), 385-390 (hempseed oils from Turkey)',
      authors: 'M. Kiralan, V. Gul, S. Metin Kara',
      edition: '2010',
      where: 'abstract',
    },
    'chen-2010': {
      title:
        'Analytical characterization of hempseed oil from eight regions in China, Journal of Dietary Supplements 7(2), 117-129',
      authors: 'Chen and others',
      edition: '2010',
      where: 'abstract',
    },
    'oil-palm-research-2013': {
      title: 'Journal of Oil Palm Research 25(2) (survey of Malaysian palm kernel products)',
      edition: '2013',
      where: 'abstract',
    },
    // Names
    inci: {
      title: 'International Nomenclature of Cosmetic Ingredients',
      edition: 'various',
      where: 'ingredient names',
    },
  }) as const;
