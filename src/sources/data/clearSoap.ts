/** Publications behind the published formulas and windows of clear soap that stand on no other shelf. */
export const clearSoap = () =>
  ({
    'us-5417876': {
      title: 'Transparent soap formulations and methods of making same, US 5,417,876',
      edition: '1995, part of the description read',
      where: 'Example 2',
    },
    'csj-kinki-q60': {
      title: 'Question and answer no. 60, on transparent soap (in Japanese)',
      authors: 'Chemical Society of Japan, Kinki branch',
      edition: 'undated',
    },
    'surbakti-2022': {
      title: 'Transparent soap of coconut and castor oil with aloe extract (article title not known)',
      authors: 'Surbakti, Bahri, Dewi',
      edition: 'Chemical Engineering Journal Storage 2 (2022), no. 4, 48-58',
      where: 'abstract',
    },
    'afrozi-jitk': {
      title: 'Transparent soap of virgin coconut oil and palm oil (article title not known)',
      authors: 'Afrozi, Safitri, Nurhasanah',
      edition: 'JITK, article 7082, undated',
      where: 'abstract',
    },
    'widyasanti-hasna': {
      title: 'Transparent soap of virgin coconut oil with white tea extract (article title not known)',
      authors: 'Widyasanti, Hasna',
      edition: 'TCRJ, article 102, undated',
      where: 'abstract',
    },
    'usp-35-glycerin-suppositories': {
      title: 'United States Pharmacopeia 35 and National Formulary 30',
      edition: '2012 (year recalled); the working formula as two teaching notes restate it',
      where: 'Glycerin Suppositories',
    },
    'ep-521579': {
      title: 'Cosmetic stick, EP 521579',
      edition: 'undated, as abridged in a handbook of chemical formulas (in Chinese)',
    },
    'us-5798094': {
      title: 'Clear cosmetic stick composition with alkali chelate, US 5,798,094',
      edition: '1998',
      where: 'background, listing earlier sticks',
    },
    'codex-opodeldoch': {
      title: 'French Codex, baume opodeldoch',
      edition: 'as restated in a medical dictionary',
    },
    'cooley-1880': {
      title: 'Cooley’s Cyclopaedia of Practical Receipts, volume II',
      authors: 'A. J. Cooley, R. V. Tuson',
      edition: '6th edition, 1880',
    },
    'itb-62782': {
      title: 'Ethanol, sorbitol and glycerol in transparent soap of virgin coconut oil (undergraduate thesis, Bandung)',
      edition: 'record 62782, undated',
      where: 'abstract',
    },
    'laboratory-report-clear-soap': {
      title:
        'Transparent soap with ethanol, sugar and glycerol, university laboratory report (Indonesia), title not known',
      edition: 'undated',
      where: 'abstract',
    },
    'suhadi-rasmito-2019': {
      title: 'Effect of sugar and alcohol on transparent bath soap (article title not known)',
      authors: 'Suhadi, Rasmito',
      edition: 'JTIK 1 (2019), no. 2, 30-35, doi:10.54980/jtik.v1i2.56',
      where: 'abstract',
    },
    'laboratory-sheet-clear-soap': {
      title: 'Transparent soap: one charge and six variables, university laboratory sheet (Indonesia), title not known',
      edition: 'undated; the table of observations is cut off',
    },

    // windows only
    'jp-6087463': {
      title: 'Transparent soap with metal foil, JP 6087463 B2 (in Japanese; title not known)',
      edition: 'undated',
      where: 'paragraph 0008',
    },
    'jp-2009-144069': { title: 'Transparent solid soap, JP 2009-144069 A (in Japanese)', edition: '2009' },
    'jp-2010-180381': {
      title: 'Method of making a transparent solid soap composition, JP 2010-180381 A (in Japanese)',
      edition: '2010',
      where: 'abstract',
    },
    'jp-h08-13999': {
      title: 'Transparent soap, JP H08-13999 B2 (title not known)',
      edition: '1996 (by its number)',
      where: 'prior art',
    },
    'us-4468338': {
      title: 'Transparent bar of sodium and triethanolamine soaps, US 4,468,338 (title not known)',
      edition: 'undated',
      where: 'abstract and background',
    },
    'handout-clear-soap-brazil': {
      title: 'Handout on transparent soap (in Portuguese), title not known',
      edition: 'undated, headings shared with a technical dossier of 2011',
      where: 'calculation of solvents',
    },
    'jongko-2014-cited': {
      title:
        'Transparent soap by solution in spirit, attributed to Jongko 2014 in a pharmacy thesis (neither title known)',
      edition: 'second-hand citation',
    },
  }) as const;
