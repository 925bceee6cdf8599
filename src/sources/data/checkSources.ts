/** Publications that only the check values cite: textbooks, papers and exercises with a printed answer. */
export const checkSources = () =>
  ({
    'talbot-1921': {
      title: 'An Introductory Course of Quantitative Chemical Analysis',
      authors: 'H. P. Talbot',
      edition: '6th edition, 1921',
      where: 'Problems, volumetric analysis',
    },
    'silberberg-2009': {
      title: 'Chemistry: The Molecular Nature of Matter and Change',
      authors: 'M. S. Silberberg',
      edition: '5th edition (author and year recalled)',
    },
    'usda-sr26-2013': {
      title: 'National Nutrient Database for Standard Reference',
      authors: 'United States Department of Agriculture, Agricultural Research Service',
      edition: 'Release 26, 2013',
      where: 'fats and oils',
    },
    'ifct-2017': {
      title: 'Indian Food Composition Tables',
      authors: 'T. Longvah et al., National Institute of Nutrition, Hyderabad',
      edition: '2017',
      where: 'group T, edible oils and fats',
    },
    'taco-2011': {
      title: 'Tabela Brasileira de Composição de Alimentos',
      authors: 'University of Campinas',
      edition: '4th edition, 2011 (edition recalled)',
      where: 'group of oils and fats',
    },
    'ryan-1984': {
      title: 'The effects of vegetable oil properties on injection and combustion in two different diesel engines',
      authors: 'T. W. Ryan, L. G. Dodge, T. J. Callahan',
      edition: 'Journal of the American Oil Chemists’ Society 61 (1984) 1610-1619',
    },
    'karaosmanoglu-1999': {
      title: 'Fuel properties of cottonseed oil',
      authors: 'F. Karaosmanoglu et al.',
      edition: 'Energy Sources 21 (1999) 821-828',
    },
    'ziejewski-1983': {
      title: 'Laboratory endurance test of a sunflower oil blend in a diesel engine',
      authors: 'M. Ziejewski, K. R. Kaufman',
      edition: 'Journal of the American Oil Chemists’ Society 60 (1983) 1567-1573',
    },
    'demirbas-1998': {
      title:
        'Values of vegetable oils (article title not known), with profiles of Fuel properties of eleven vegetable oils',
      authors: 'A. Demirbas; profiles by C. E. Goering et al.',
      edition:
        'Fuel 77 (1998) 1117-1120, or the same author 2003; profiles: Transactions of the ASAE 25 (1982) 1472-1483',
    },
    'lagenaria-abstract': {
      title: 'Physico-chemical properties and fatty acid composition of Lagenaria siceraria seed oil',
      edition: 'abstract; journal and year not known',
    },
    'moringa-abstract': {
      title: 'Physicochemical properties and fatty acid composition of Moringa oleifera seed oil',
      edition: 'abstract; journal and year not known',
    },
    'muchiri-2012': {
      title: 'Studies on mango kernel fat of Kenya (article title not known)',
      authors: 'D. R. Muchiri, S. M. Mahungu, S. N. Gituanja',
      edition: 'Journal of the American Oil Chemists’ Society 89 (2012) 1567-1575, doi:10.1007/s11746-012-2054-6',
      where: 'abstract',
    },
    'salimon-2010': {
      title: 'Castor oil of Malaysia (article title not known)',
      authors: 'J. Salimon et al.',
      edition: 'Sains Malaysiana 39 (2010) 761-764',
      where: 'abstract',
    },
    'panhwar-2019': {
      title: 'Physicochemical composition and FTIR characterization of castor seed oil',
      authors: 'T. Panhwar et al.',
      edition: '2019; journal not known',
      where: 'abstract',
    },
    'albasha-abstract': {
      title: 'Physic nut oils of Sudan (article title not known)',
      authors: 'Albasha et al.',
      edition: 'abstract; journal and year not known',
    },
    'nrc-2003': {
      title: 'Nutrient Requirements of Nonhuman Primates (title recalled)',
      authors: 'National Research Council',
      edition: '2nd revised edition, 2003 (recalled)',
      where: 'Table 12-6, characteristics of various sources of fats and oils, p. 258',
    },
    'biology-data-book-1964': {
      title:
        'Fats and oils: constants and component acids, CRC Handbook of Chemistry and Physics, after the Biology Data Book',
      authors: 'P. L. Altman, D. S. Dittmer (editors of the Biology Data Book)',
      edition: 'editions of the 1960s to 1980s; Biology Data Book 1964',
    },
    'azam-2005': {
      title:
        'Prospects and potential of fatty acid methyl esters of some non-traditional seed oils for use as biodiesel in India',
      authors: 'M. Mohibbe Azam, A. Waris, N. M. Nahar',
      edition: 'Biomass and Bioenergy 29 (2005) 293-302',
      where: 'Tables 1 and 2',
    },
    'school-exercise-vietnam': {
      title: 'Secondary-school chemistry exercises with solutions (Vietnam), titles not known',
      edition: 'undated',
    },
    'school-exercise-france': {
      title: 'Chemistry exercise on fats with solution (France), title not known',
      edition: 'undated',
    },
    'school-exercise-russia': {
      title: 'Secondary-school chemistry problems with solutions (Russia), titles not known',
      edition: 'undated',
    },
    'school-exercise-romania': {
      title: 'Secondary-school chemistry problems with solutions (Romania), titles not known',
      edition: 'undated',
    },
    'school-exercise-dilution': {
      title: 'Exercise on the dilution of sodium hydroxide of 50 % with answer, title not known',
      edition: 'undated',
    },
    'school-worksheet-soap': {
      title: 'School worksheet on soap with answers, title not known',
      edition: 'undated',
    },
    'laboratory-page-germany-2022': {
      title: 'Laboratory reference on the saponification value with worked examples (Germany), title not known',
      edition: '2022',
    },
    'suffrage-cook-book-1915': {
      title: 'The Suffrage Cook Book',
      edition: 'Pittsburgh, 1915',
      where: 'Economical Soap, p. 244',
    },
    'mountain-recipes-1966': {
      title: 'Ma’s Cookin’ Mountain Recipes',
      edition: '1966, as quoted elsewhere; the book itself was not seen',
      where: 'Home Made Soap',
    },
    'technical-brief-8': {
      title: 'Technical brief no. 8, Making soap, newsletter of a development agency',
      edition: 'undated',
    },
    'school-procedure-lard': {
      title: 'School procedure for the preparation of soap from lard, copied in an encyclopaedia, title not known',
      edition: 'undated',
    },
    'school-exercise-cameroon': {
      title: 'Upper-secondary chemistry examination with a preparation of soap (Cameroon), title not known',
      edition: 'undated',
    },
  }) as const;
