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
  }) as const;
