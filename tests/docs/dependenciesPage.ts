/** The guide of dependencies, written from the bill of materials and the built package. */
import { execFileSync } from 'node:child_process';
import { entries, packagesLoadedBy } from '../package/loaded.js';
import { root } from '../package/packed.js';

export interface Component {
  readonly name: string;
  readonly version: string;
  readonly licenses: readonly { readonly license: { readonly id: string } }[];
}

export interface Bill {
  readonly metadata: { readonly component: Component };
  readonly components: readonly Component[];
  readonly dependencies: readonly { readonly ref: string; readonly dependsOn: readonly string[] }[];
}

export const billOfMaterials = (): Bill =>
  JSON.parse(execFileSync('node', ['.config/sbom.js'], { cwd: root, encoding: 'utf8' })) as Bill;

/** Why each is there; one without a reason is a fault. */
const WHY: Readonly<Record<string, string>> = {
  'decimal.js':
    'The arithmetic. Figures are worked out to 34 digits, so that what is printed on a certificate is taken as printed and rounding is done once, at the end; a Decimal of our own would be a second library to prove right.',
  leven:
    'Finds the word that was meant, for the error that refuses one. It is the whole of a small, settled job; a copy of our own would be hidden from audits.',
  valibot:
    'Reads the shape of a recipe, which is input from strangers. The same schema gives the JSON Schema, so that the two cannot part. The main entry does not load it.',
};

const licencesOf = ({ licenses }: Component): string => licenses.map(({ license }) => license.id).join(', ');

export async function dependenciesPage({ components, metadata }: Bill): Promise<string> {
  const loaded = await Promise.all(entries.map(async (entry) => ({ entry, packages: await packagesLoadedBy(entry) })));
  const rows = components.map((component) => {
    const { name, version } = component;
    const why = WHY[name];
    if (why === undefined) throw new Error(`${name} is a runtime dependency, and no reason is given for it`);
    const by = loaded
      .filter(({ packages }) => packages.includes(name))
      .map(({ entry }) => (entry === 'index' ? '`laurate`' : `\`laurate/${entry}\``));
    return `| ${name} | ${version} | ${licencesOf(component)} | ${by.join(', ')} | ${why} |`;
  });
  return `---
title: Dependencies
---

# Dependencies

What comes into a program with \`laurate\`, and why. The packages of this table are all: they bring none of their own, and
none runs a script when it is installed. The package itself holds no copy of them.

| package | version | licence | loaded by | why |
| --- | --- | --- | --- | --- |
${rows.join('\n')}

\`laurate\` itself is under the ${licencesOf(metadata.component)} licence. A bundle that
carries these packages has to carry their notices too.

Versions are exact: a result does not depend on the day of the installation. The price is that a fault mended in one of
them reaches you with a release of ours, so that a change of any is a reason for a release. A program with a decimal.js of
another version gets a second copy; Decimals of either are read.

\`npm run sbom\` prints the bill of materials in CycloneDX form, with the hash of every package, from the lock file of a
clone. Tools that build, test and document the project are not published and stand in \`package.json\` only.

This page is written by \`npx vitest -u tests/docs\` from that bill and the built package, and the tests compare the two.
`;
}
