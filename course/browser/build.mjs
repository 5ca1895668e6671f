// Bundles the browser side: `node build.mjs FOLDER`, style properties on standard input.
//
//   screens.js           every screen, kind and style sheet; the page loads it once
//   solids.js            solids in space; only who looks at them loads it
//   loader.js            what each form and rig brings along: it looks for the screens
//   remoteEntry.X.js     the JupyterLab extension
//
// The same source gives the same bytes: names and order depend on nothing else.

import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";

const SRC = join(import.meta.dirname, "src");
const target = ["es2022"];

/** A style sheet with all that it imports. */
async function styles(name) {
  const options = { bundle: true, minify: true, write: false, target: ["chrome120"] };
  const made = await build({ ...options, entryPoints: [join(SRC, "styles", name)] });
  return made.outputFiles[0].text.trim();
}

/** A script with all that it imports. */
async function script(entry, options) {
  const made = await build({
    bundle: true,
    minify: true,
    write: false,
    charset: "utf8",
    legalComments: "inline",
    lineLimit: 120, // a change stays one in the bundle
    target,
    ...entry,
    ...options,
  });
  return made.outputFiles[0].text;
}

const [folder] = process.argv.slice(2);
const properties = readFileSync(0, "utf8");
const kinds = readdirSync(join(SRC, "kinds"))
  .filter((name) => name.endsWith(".js"))
  .sort();
const contents = [
  ...kinds.map((name) => `import "./kinds/${name}";`),
  'export { screens } from "./screens.js";',
].join("\n");
const screens = await script(
  { stdin: { contents, resolveDir: SRC, sourcefile: "all.js" } },
  {
    format: "esm",
    define: { STYLES: JSON.stringify(`${properties.trim()}\n${await styles("index.css")}`) },
  },
);
const solids = await script({ entryPoints: [join(SRC, "solids", "solids.js")] }, { format: "esm" });
const id = createHash("sha256").update(screens).digest("hex").slice(0, 16);
const SCREENS_ID = JSON.stringify(id);
const loader = await script(
  { entryPoints: [join(SRC, "loader.js")] },
  { format: "esm", define: { SCREENS_ID } },
);
const extension = await script(
  { entryPoints: [join(SRC, "lab", "extension.js")] },
  {
    format: "iife",
    define: {
      SCREENS_ID,
      LAB_STYLES: JSON.stringify(`${properties.trim()}\n${await styles("notebook.css")}`),
    },
  },
);
const { version } = JSON.parse(readFileSync(join(import.meta.dirname, "package.json"), "utf8"));

mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, "screens.js"), screens);
writeFileSync(join(folder, "solids.js"), solids);
writeFileSync(join(folder, "loader.js"), loader);
writeFileSync(join(folder, `remoteEntry.${version}.js`), extension);
