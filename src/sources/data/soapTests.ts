/** Publications behind the tests of soap and alkali: methods, limits, pH; and those that only their check values cite. */
export const soapTests = () =>
  ({
    'iso-456': {
      title: 'Surface active agents: analysis of soaps: determination of free caustic alkali, ISO 456',
      edition: '1973; principle read, formulas recalled',
    },
    'iso-684': {
      title: 'Analysis of soaps: determination of total free alkali, ISO 684',
      edition: '1974; scope read, formula recalled',
    },
    'iso-660': {
      title: 'Animal and vegetable fats and oils: determination of acid value and acidity, ISO 660',
      edition: '2020; scope and oleic acid as 282 g/mol read, the other conventional acids recalled',
    },
    'is-2888-2004': {
      title: 'Toilet soap: specification, IS 2888',
      edition: '2004, third revision; foreword read, requirements recalled',
    },
    'is-13498-1997': { title: 'Bathing bar: specification, IS 13498', edition: '1997; recalled' },
    'is-285': { title: 'Laundry soaps: specification, IS 285', edition: 'recalled' },
    'arcis-2020': {
      title: 'The ionization constant of water at elevated temperatures and pressures (title recalled)',
      authors: 'H. Arcis et al.',
      edition: 'Journal of Physical and Chemical Reference Data 49 (2020) 033103; constants read and evaluated',
    },
    'kanicky-2002': {
      title: 'Effect of degree, type, and position of unsaturation on the pKa of long-chain fatty acids',
      authors: 'J. R. Kanicky, D. O. Shah',
      edition: 'Journal of Colloid and Interface Science 256 (2002) 201-207',
      where: 'abstract',
    },

    // cited by check values only
    'tarun-2014': {
      title: 'Evaluation of pH of bathing soaps and shampoos for skin and hair care',
      authors: 'J. Tarun et al.',
      edition: 'Indian Journal of Dermatology 59 (2014) 442-444',
      where: 'abstract',
    },
    'mwanza-2020': {
      title: 'Comparative evaluation of some physicochemical properties on selected commercially available soaps',
      authors: 'Mwanza, Zombe',
      edition: 'Open Access Library Journal 7 (2020), doi:10.4236/oalib.1106147',
      where: 'abstract',
    },
    'onyango-soaps': {
      title: 'Physicochemical properties of selected commercial washing soaps (Kenya)',
      authors: 'Onyango et al.',
      edition: 'undated abstract',
    },
    'toilet-soaps-nigeria-2014': {
      title: 'Quality survey and safety of some toilet soaps in the Nigerian market',
      edition: '2014',
      where: 'abstract',
    },
    'prasetiyo-2020': {
      title: 'Transparent soap of palm kernel oil (article title not known)',
      authors: 'Prasetiyo, Hutagaol, Luziana',
      edition: 'Jurnal Jamu Indonesia 5 (2020), no. 2',
      where: 'abstract',
    },
    'astm-2001-cited': {
      title: 'pH of transparent soap, attributed to ASTM 2001 in a thesis (neither title known)',
      edition: 'second-hand citation',
    },
    'transparent-soap-institute-note': {
      title: 'Note on transparent soap of coconut oil by a postharvest research institute (Indonesia), title not known',
      edition: 'as reported, 2010',
    },
    'tungadi-2022': {
      title: 'Transparent soap with roselle extract (article title not known)',
      authors: 'Tungadi, Madania, Aini',
      edition: '2022',
      where: 'abstract',
    },
    'laboratory-report-fats-indonesia': {
      title: 'Student laboratory reports on acid value and saponification value (Indonesia), titles not known',
      edition: 'undated',
    },
    'laboratory-report-soap-indonesia': {
      title: 'Analysis of free alkali and unsaponified fat in soap (Indonesia), laboratory report, title not known',
      edition: 'undated',
    },
    'laboratory-sheet-free-alkali-2025': {
      title: 'Engineering chemistry laboratory sheet on free alkali in soap (India), title not known',
      edition: '2025',
    },
    'examination-problems-two-indicators': {
      title: 'Examination problems with solutions on titration with two indicators (India), titles not known',
      edition: 'one of 1992, the others undated',
    },
    'forum-titration-problems': {
      title: 'Titration problems with answers from students’ forums, titles not known',
      edition: 'undated',
    },
  }) as const;
