/** Publications behind the tables of lyes (density, freezing, heats), and those that only their check values cite. */
export const lyeTables = () =>
  ({
    'crc-102-2021': {
      title: 'CRC Handbook of Chemistry and Physics',
      authors: 'J. R. Rumble (editor)',
      edition: '102nd edition, 2021, read in a copy of the printed table',
      where: 'section 5, Concentrative Properties of Aqueous Solutions',
    },
    'perry-densities': {
      title: 'Perry’s Chemical Engineers’ Handbook (densities after International Critical Tables, volume III)',
      edition: '7th or 8th edition, recalled',
      where: 'section 2, densities of aqueous inorganic solutions',
    },
    'kell-1975': {
      title: 'Density, thermal expansivity, and compressibility of liquid water from 0 to 150 °C',
      authors: 'G. S. Kell',
      edition: 'Journal of Chemical and Engineering Data 20 (1975) 97-105',
      where: 'polynomial for the density of water, constants as restated with the correlations of 2009',
    },
    'laliberte-2009': {
      title: 'A model for calculating the heat capacity of aqueous solutions, with updated density and viscosity data',
      authors: 'M. Laliberté',
      edition: 'Journal of Chemical and Engineering Data 54 (2009) 1725-1760',
      where: 'constants for potassium hydroxide',
    },
    'olsson-1997': {
      title: 'Thermophysical properties of aqueous NaOH-H2O solutions at high concentrations',
      authors: 'J. Olsson, Å. Jernqvist, G. Aly',
      edition: 'International Journal of Thermophysics 18 (1997) 779-793',
      where: 'correlations for density, vapour pressure and enthalpy, evaluated',
    },
    'wang-2008': {
      title: 'Cellulose fiber dissolution in sodium hydroxide solution at low temperature (thesis)',
      authors: 'Wang',
      edition: '2008, the diagram digitised by others',
      where: 'phase diagram of sodium hydroxide and water',
    },
    koretsky: {
      title: 'Engineering and Chemical Thermodynamics',
      authors: 'M. D. Koretsky',
      edition: '2nd edition, read in a copy of the table',
      where: 'Table 6.1, enthalpy of solution at 25 °C',
    },
    'felder-rousseau': {
      title: 'Elementary Principles of Chemical Processes',
      authors: 'R. M. Felder, R. W. Rousseau',
      edition: '3rd edition, recalled but for one entry',
      where: 'Table B.11, integral heats of solution and mixing at 25 °C',
    },
    'parker-1965': {
      title: 'Thermal Properties of Aqueous Uni-univalent Electrolytes, NSRDS-NBS 2',
      authors: 'V. B. Parker',
      edition: '1965, as reproduced in the CRC Handbook',
      where: 'enthalpy of solution of electrolytes at infinite dilution',
    },
    'sonntag-5': {
      title: 'Fundamentals of Thermodynamics (specific heat of liquids, as restated in an engineering table)',
      authors: 'R. E. Sonntag, C. Borgnakke, G. J. Van Wylen',
      edition: '5th edition',
    },
    'crc-thermodynamic-properties': {
      title: 'CRC Handbook of Chemistry and Physics',
      edition: 'edition not stated in the copy read',
      where: 'Standard Thermodynamic Properties of Chemical Substances',
    },
    'handbooks-recalled': {
      title: 'General knowledge of chemical handbooks, no edition',
      edition: 'recalled',
    },

    // cited by check values only
    'naoh-density-estimates': {
      title: 'Density of NaOH(aq): estimated absolute densities consistent with the standard formulation for water',
      edition: 'undated table',
    },
    'densities-18-polish': {
      title: 'Densities of aqueous solutions at 18 °C, physics tables of a university (in Polish), title not known',
      edition: 'undated',
    },
    'caustic-lye-text-german': {
      title: 'Reference text on caustic lye (in German), title not known',
      edition: 'undated',
    },
    'laboratory-page-caustic': {
      title: 'Laboratory calculation of the molarity of sodium hydroxide of 50 %, title not known',
      edition: 'undated',
    },
    'assaying-textbook': {
      title: 'A Textbook of Assaying (author and edition not stated where it was read)',
      edition: 'undated copy',
    },
  }) as const;
