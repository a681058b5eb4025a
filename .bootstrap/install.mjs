import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { pnpm } from "./pnpm.mjs";
import { root } from "./run.mjs";

const stamp = join(root, "node_modules", ".landfast-install");

/**
 * Installs exactly what the lock file says, or nothing when that is already there: same lock file, same manifests,
 * same Node, and every direct dependency in its place.
 */
export function install() {
  const manifests = packageFolders().map((folder) => ({
    folder,
    manifest: JSON.parse(readFileSync(join(root, folder, "package.json"), "utf8")),
  }));
  const wanted = fingerprint(manifests);
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted && manifests.every(whole)) return;
  // Tools for building and testing are wanted whatever NODE_ENV says.
  pnpm("install", "--frozen-lockfile", "--prod=false", "--loglevel=warn");
  writeFileSync(stamp, wanted);
}

function packageFolders() {
  const inside = (parent) =>
    existsSync(join(root, parent)) ? readdirSync(join(root, parent)).map((name) => join(parent, name)) : [];
  return [".", "data", "tests", ...inside("packages"), ...inside("apps")].filter((folder) =>
    existsSync(join(root, folder, "package.json")),
  );
}

function fingerprint(manifests) {
  const hash = createHash("sha256");
  hash.update(`${process.platform} ${process.arch} ${process.versions.modules}\n`);
  for (const file of ["pnpm-lock.yaml", "pnpm-workspace.yaml"]) hash.update(readFileSync(join(root, file)));
  for (const { folder, manifest } of manifests) {
    const { packageManager, dependencies, devDependencies } = manifest;
    hash.update(JSON.stringify([folder, packageManager, dependencies, devDependencies]));
  }
  return hash.digest("hex");
}

function whole({ folder, manifest }) {
  const modules = join(root, folder, "node_modules");
  return Object.keys({ ...manifest.dependencies, ...manifest.devDependencies }).every(
    (name) =>
      existsSync(join(modules, name, "package.json")) &&
      (name !== "better-sqlite3" || existsSync(join(modules, name, "build", "Release", "better_sqlite3.node"))),
  );
}
