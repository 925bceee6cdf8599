/** Publications behind the temperatures, times and heats of the work. */
export const processSources = () =>
  ({
    // temperatures and times
    'suhadi-rasmito-2019': {
      title: 'Effect of sugar and alcohol on transparent bath soap (article title not known)',
      authors: 'Suhadi, A. Rasmito',
      edition: 'JTIK 1 (2019), no. 2, 30-35, doi:10.54980/jtik.v1i2.56',
      where: 'abstract',
    },
    'jp-2010-180381': {
      title: 'Method for making a transparent solid soap composition (in Japanese), JP 2010-180381 A',
      edition: '2010',
      where: 'abstract',
    },
    // heats
    'crc-aqueous-ions': {
      title: 'CRC Handbook of Chemistry and Physics',
      edition: 'edition not stated in the copy read',
      where: 'Thermodynamic Properties of Aqueous Ions',
    },
    'crc-heat-of-vaporization': {
      title: 'CRC Handbook of Chemistry and Physics',
      edition: 'edition not stated in the copy read',
      where: 'Enthalpy of Vaporization',
    },
    'vdi-evaporation': {
      title: 'VDI Heat Atlas',
      edition: '2nd English edition, equation evaluated',
      where: 'enthalpies of vaporization',
    },
    'heat-capacities-of-liquids': {
      title: 'Heat Capacity of Liquids: critical review and recommended values',
      authors: 'M. Zábranský et al.',
      edition: 'Journal of Physical and Chemical Reference Data, monograph and supplements, equations evaluated',
    },
    'fasina-colley-2008': {
      title: 'Viscosity and specific heat of vegetable oils as a function of temperature',
      authors: 'O. O. Fasina, Z. Colley',
      edition: 'International Journal of Food Properties 11 (2008) 738-746',
      where: 'specific heats at 35 °C as quoted in an engineering table',
    },
  }) as const;
