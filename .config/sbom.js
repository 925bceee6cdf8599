// Prints the bill of materials of what is published, as CycloneDX: what the lock file holds, without what only develops it.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const cwd = fileURLToPath(new URL('..', import.meta.url));
const { name } = JSON.parse(readFileSync(`${cwd}package.json`, 'utf8'));
const bill = JSON.parse(
  execFileSync('npm', ['sbom', '--sbom-format', 'cyclonedx', '--package-lock-only'], {
    cwd,
    encoding: 'utf8',
    maxBuffer: 2 ** 26,
  }),
);

// npm's own --omit dev leaves out valibot as well, because a tool of ours asks for it too.
const components = bill.components.filter(({ scope }) => scope === 'required');
const kept = new Set([bill.metadata.component['bom-ref'], ...components.map((each) => each['bom-ref'])]);
const dependencies = bill.dependencies
  .filter(({ ref }) => kept.has(ref))
  .map(({ ref, dependsOn }) => ({ ref, dependsOn: dependsOn.filter((other) => kept.has(other)) }));
// npm names the root after its folder.
const metadata = { ...bill.metadata, component: { ...bill.metadata.component, name } };
console.log(JSON.stringify({ ...bill, metadata, components, dependencies }, null, 2));
