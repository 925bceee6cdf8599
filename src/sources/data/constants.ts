/** Publications behind atomic weights, units and the rules of calculation. */
export const constants = () =>
  ({
    'iupac-2021': {
      title: 'Standard atomic weights of the elements 2021 (IUPAC Technical Report)',
      authors: 'T. Prohaska et al.',
      edition: 'Pure and Applied Chemistry 94 (2022) 573-600, doi:10.1515/pac-2019-0603',
      where: 'Table of abridged standard atomic weights',
    },
    'si-brochure-2019': {
      title: 'The International System of Units (SI Brochure)',
      authors: 'Bureau International des Poids et Mesures',
      edition: '9th edition, 2019',
    },
    'nist-sp-811-2008': {
      title: 'Guide for the Use of the International System of Units (SI), NIST Special Publication 811',
      authors: 'A. Thompson, B. N. Taylor',
      edition: '2008',
      where: 'Appendix B, factors for units listed alphabetically',
    },
    'tanaka-2001': {
      title: 'Recommended table for the density of water between 0 °C and 40 °C based on recent experimental reports',
      authors: 'M. Tanaka, G. Girard, R. Davis, A. Peuto, N. Bignell',
      edition: 'Metrologia 38 (2001) 301-309',
    },
    'iso-3657': {
      title: 'Animal and vegetable fats and oils: determination of saponification value, ISO 3657',
      edition: '2023',
      where: 'definition: mg of KOH to saponify 1 g of fat',
    },
    'iso-3961': {
      title: 'Animal and vegetable fats and oils: determination of iodine value, ISO 3961',
      edition: '2018',
      where: 'definition: g of halogen, as iodine, taken up by 100 g of fat',
    },
    'aocs-cd-1c-85': {
      title: 'Calculated iodine value, AOCS Official Method Cd 1c-85',
      edition: 'reapproved 2009',
    },
    'oiml-r-22': {
      title: 'International alcoholometric tables, OIML R 22',
      edition: '1975',
    },
    'ghs-naoh': {
      title: 'Harmonised classification and labelling of sodium hydroxide (Regulation (EC) No 1272/2008, Annex VI)',
      edition: 'as summarised by industry, undated',
    },
    'common-practice': {
      title: 'Common practice of the trade, no source',
      edition: 'not published',
    },
    'laurate-convention': {
      title: 'Convention of this library, named and explained in its guides',
      // the edition of the figures, to which conventions belong
      edition: '2026.1',
    },
  }) as const;
