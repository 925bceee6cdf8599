/** Publications behind the heats of the work; those of its temperatures and times stand with clear soap. */
export const processSources = () =>
  ({
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
