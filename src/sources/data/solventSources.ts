/** Publications behind solvents, polyols and sugars and their mixtures with water, and those that only their check values cite. */
export const solventSources = () =>
  ({
    'crc-organic-constants': {
      title: 'CRC Handbook of Chemistry and Physics',
      edition: 'edition not stated in the copy read',
      where: 'Physical Constants of Organic Compounds',
    },
    'vdi-heat-atlas': {
      title: 'VDI Heat Atlas',
      edition: '2nd English edition, equation evaluated',
      where: 'D3.1, densities of saturated liquids',
    },
    'perry-8-densities': {
      title: 'Perry’s Chemical Engineers’ Handbook',
      edition: '8th edition, equation evaluated',
      where: 'Table 2-32, densities of inorganic and organic liquids',
    },
    'lange-15': {
      title: 'Lange’s Handbook of Chemistry',
      authors: 'J. A. Dean (editor)',
      edition: '15th edition',
      where: 'Table 5.13, aqueous antifreeze solutions',
    },
    'melinder-2010': {
      title: 'Properties of Secondary Working Fluids for Indirect Systems',
      authors: 'Å. Melinder',
      edition: 'International Institute of Refrigeration, 2010, coefficients as restated, evaluated',
      where: 'aqueous glycerol and propylene glycol, density',
    },
    'bosart-snoddy-1927': {
      title: 'New tables for glycerol; Specific gravity of glycerol',
      authors: 'L. W. Bosart, A. O. Snoddy',
      edition: 'Industrial and Engineering Chemistry 19 (1927) 506 and 20 (1928) 1377, recalled',
    },
    'glycerol-glycol-densities': {
      title: 'Density of glycerol and 1,2-propanediol at 25 °C',
      edition: 'Journal of Chemical and Engineering Data, doi:10.1021/je060496l, table as quoted',
    },
    'usp-29-alcoholometric': {
      title: 'United States Pharmacopeia 29 and National Formulary 24',
      edition: '2006',
      where: 'Alcoholometric table (from Bulletin 9 of the National Bureau of Standards)',
    },
    'nf-diluted-alcohol': {
      title: 'United States Pharmacopeia 29 and National Formulary 24',
      edition: '2006',
      where: 'Diluted Alcohol',
    },
    'usp-29-glycerin': {
      title: 'United States Pharmacopeia 29 and National Formulary 24',
      edition: '2006',
      where: 'Glycerin',
    },
    'usp-28-sorbitol-solution': {
      title: 'United States Pharmacopeia 28 and National Formulary 23',
      edition: '2005',
      where: 'Sorbitol Solution; Noncrystallizing Sorbitol Solution',
    },
    'ph-eur-6-sorbitol': {
      title: 'European Pharmacopoeia',
      edition: '6.0, monograph 01/2008:0435',
      where: 'Sorbitol',
    },
    'pharmacopoeias-recalled': {
      title: 'Monographs of the European and United States pharmacopoeias, no edition',
      edition: 'recalled',
    },
    'codex-stan-212': {
      title: 'Codex standard for sugars',
      authors: 'Codex Alimentarius Commission',
      edition: 'CODEX STAN 212-1999, recalled',
    },
    'iec-60079-20-1': {
      title: 'Explosive atmospheres: material characteristics for gas and vapour classification',
      edition: 'IS/IEC 60079-20-1, 2010',
    },
    'nfpa-497': {
      title: 'Recommended practice for the classification of flammable liquids, gases, or vapors, NFPA 497',
      edition: '2008',
    },
    'dippr-flash-points': {
      title: 'Compilation of flash points of pure compounds (after the DIPPR database)',
      authors: 'F. Z. Serat et al.',
      edition: 'as restated',
    },
    'sorbitol-syrup-lot': {
      title: 'Trade listing of sorbitol syrup with the certificate of one lot',
      edition: 'undated',
    },
    'alditols-2010': {
      title: 'Physicochemical properties of alditols at 25 °C (review)',
      edition: '2010, PMC2836749',
      where: 'Table 3',
    },

    // printed formulas, for check values
    'formulas-1914': {
      title: 'Twentieth Century Formulas, Recipes and Processes',
      authors: 'G. D. Hiscox (editor)',
      edition: '1914',
      where: 'Soaps',
    },
    'clear-soap-patent-1995': {
      title: 'Transparent soap formulations and methods of making same (US patent)',
      edition: '1995, US 5,417,876 or US 5,529,714, both of this title',
      where: 'claim 1',
    },
    'jp-5774951': {
      title: 'Transparent solid soap composition (in Japanese), JP 5774951 B2',
      edition: '2015',
      where: 'Example 1, paragraphs 0042 to 0045',
    },
    'perfumery-1857': {
      title: 'The Art of Perfumery',
      authors: 'G. W. S. Piesse',
      edition: 'American edition, Philadelphia, 1857',
      where: 'section VIII; transparent soft soap',
    },
    'kings-1898': {
      title: 'King’s American Dispensatory',
      authors: 'H. W. Felter, J. U. Lloyd',
      edition: '1898',
    },
    'drogisten-praxis-1893': {
      title: 'Handbuch der Drogisten-Praxis, part 2 (in German)',
      authors: 'G. A. Buchheister',
      edition: '1893',
    },
  }) as const;
