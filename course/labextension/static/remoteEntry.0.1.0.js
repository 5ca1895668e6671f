// Shows the forms and rigs of a course notebook as soon as it is opened.
//
// A notebook that says {"twoshaft": {"open": true}} in its metadata has its cells tagged setup,
// form or rig run once the kernel is ready. Only cells whose text is a released one are run, and
// only where the server's page configuration says that an apprentice works here: a notebook from
// elsewhere runs nothing, and nothing runs on a member of staff's machine.
(() => {
  const NAME = "twoshaft-opener";
  const RUN_TAGS = ["setup", "form", "rig"];
  // Collapsed cells of these are not shown at all; those that work points out are not run here.
  const QUIET_TAGS = [...RUN_TAGS, "mark"];
  const QUIET = "twoshaft-quiet";
  const IF_MISSING = "if-missing";
  const TRIES = 3;
  let shared;

  // SHA-256 (FIPS 180-4). The browser's own is missing on a plain http address of a hub.
  function sha256(text) {
    const fraction = (x) => ((x - Math.floor(x)) * 4294967296) | 0;
    const k = [], h = [];
    for (let n = 2; k.length < 64; n++) {
      let prime = true;
      for (let d = 2; d * d <= n; d++) if (n % d === 0) { prime = false; break; }
      if (!prime) continue;
      if (h.length < 8) h.push(fraction(Math.sqrt(n)));
      k.push(fraction(Math.cbrt(n)));
    }
    const raw = new TextEncoder().encode(text);
    const bytes = new Uint8Array(((raw.length + 72) >> 6) << 6);
    bytes.set(raw);
    bytes[raw.length] = 0x80;
    const view = new DataView(bytes.buffer);
    view.setUint32(bytes.length - 8, Math.floor(raw.length / 536870912));
    view.setUint32(bytes.length - 4, raw.length << 3);
    const right = (x, n) => (x >>> n) | (x << (32 - n));
    const w = new Int32Array(64);
    for (let at = 0; at < bytes.length; at += 64) {
      for (let i = 0; i < 16; i++) w[i] = view.getInt32(at + 4 * i);
      for (let i = 16; i < 64; i++) {
        const x = w[i - 15], y = w[i - 2];
        w[i] = w[i - 16] + w[i - 7] + (right(x, 7) ^ right(x, 18) ^ (x >>> 3)) +
          (right(y, 17) ^ right(y, 19) ^ (y >>> 10));
      }
      let [a, b, c, d, e, f, g, z] = h;
      for (let i = 0; i < 64; i++) {
        const t1 = (z + (right(e, 6) ^ right(e, 11) ^ right(e, 25)) + ((e & f) ^ (~e & g)) +
          k[i] + w[i]) | 0;
        const t2 = ((right(a, 2) ^ right(a, 13) ^ right(a, 22)) +
          ((a & b) ^ (a & c) ^ (b & c))) | 0;
        z = g; g = f; f = e; e = (d + t1) | 0; d = c; c = b; b = a; a = (t1 + t2) | 0;
      }
      [a, b, c, d, e, f, g, z].forEach((value, i) => { h[i] = (h[i] + value) | 0; });
    }
    return h.map((value) => (value >>> 0).toString(16).padStart(8, "0")).join("");
  }

  const digest = (source) => sha256(source.replace(/\r\n?/g, "\n").replace(/\n+$/, ""));

  async function need(name) {
    const versions = Object.values(shared[name] || {});
    if (!versions.length) throw new Error(`${name} is not there`);
    const entry = versions.find((version) => version.loaded) || versions[0];
    return (await entry.get())();
  }

  const tagsOf = (model) => model.getMetadata("tags") || [];
  const isCourse = (panel) => Boolean((panel.content.model?.getMetadata("twoshaft") || {}).open);

  // The list shipped beside this file, and what the server's settings add to it.
  async function releasedCells(PageConfig) {
    const cells = new Set(JSON.parse(PageConfig.getOption("twoshaftReleased") || "[]"));
    try {
      const base = PageConfig.getOption("fullLabextensionsUrl");
      const answer = await fetch(`${base}/${NAME}/static/released-cells.json`);
      if (answer.ok) (await answer.json()).cells.forEach((cell) => cells.add(cell));
    } catch (error) {
      console.warn(`${NAME}: the list of released cells could not be read`, error);
    }
    return cells;
  }

  function idle(session) {
    return new Promise((resolve, reject) => {
      const look = () => {
        if (session.isDisposed) return done(reject, new Error("closed"));
        if (session.session?.kernel?.status === "idle") done(resolve);
      };
      const done = (how, what) => {
        session.statusChanged.disconnect(look);
        session.disposed.disconnect(look);
        how(what);
      };
      session.statusChanged.connect(look);
      session.disposed.connect(look);
      look();
    });
  }

  function openable(panel, released) {
    return panel.content.widgets.filter((cell) =>
      cell.model.type === "code" &&
      tagsOf(cell.model).some((tag) => RUN_TAGS.includes(tag)) &&
      released.has(digest(cell.model.sharedModel.getSource())));
  }

  function failed(cell) {
    const outputs = cell.model.outputs;
    for (let i = 0; i < outputs.length; i++) if (outputs.get(i).type === "error") return true;
    return false;
  }

  async function run(panel, released, NotebookActions) {
    const session = panel.sessionContext;
    for (let tries = 0; tries < TRIES; tries++) {
      await idle(session);
      const waiting = openable(panel, released).filter((cell) => cell.model.executionCount === null);
      if (!waiting.length) return;
      await NotebookActions.runCells(panel.content, waiting, session);
      if (waiting.some(failed)) return;
      // A run asked for at the very moment the kernel became ready may be dropped: look again.
      await new Promise((resolve) => setTimeout(resolve, 300));
    }
  }

  function calm(panel) {
    if (panel.isDisposed || !panel.content.model) return;
    const course = isCourse(panel);
    panel.toggleClass("twoshaft-notebook", course);
    if (!course) return;
    for (const cell of panel.content.widgets) {
      const tags = tagsOf(cell.model);
      cell.toggleClass(QUIET, tags.some((tag) => QUIET_TAGS.includes(tag)));
      cell.toggleClass("twoshaft-if-missing", tags.includes(IF_MISSING));
    }
  }

  const STYLE = `
.twoshaft-notebook { --jp-cell-prompt-width: 52px; }
.twoshaft-notebook .twoshaft-if-missing,
.twoshaft-notebook .twoshaft-quiet .jp-InputCollapser,
.twoshaft-notebook .twoshaft-quiet .jp-OutputCollapser,
.twoshaft-notebook .twoshaft-quiet .jp-Cell-inputWrapper:has(.jp-InputPlaceholder),
.twoshaft-notebook .twoshaft-quiet .jp-OutputPrompt,
.twoshaft-notebook .twoshaft-quiet .jp-OutputArea-promptOverlay,
.twoshaft-notebook .jp-MarkdownCell .jp-InputPrompt,
.twoshaft-notebook .jp-Notebook-footer { display: none; }
.twoshaft-notebook .twoshaft-quiet:not(:has(.jp-OutputArea-child)):has(.jp-InputPlaceholder) {
  height: 0; min-height: 0; padding: 0; overflow: hidden;
}
.twoshaft-notebook .twoshaft-quiet .jp-Cell-outputArea { padding-left: 14px; }
.twoshaft-notebook .jp-RenderedMarkdown > :is(p, ul, ol, blockquote, h1, h2, h3, h4) {
  max-width: 70ch;
}
.twoshaft-notebook :is(.jp-MarkdownCell, .twoshaft-quiet).jp-Cell.jp-mod-active,
.twoshaft-notebook :is(.jp-MarkdownCell, .twoshaft-quiet).jp-Cell.jp-mod-selected {
  border-color: transparent; box-shadow: none; background: none;
}
.twoshaft-notebook .jp-MarkdownCell .jp-RenderedMarkdown { border-color: transparent; }
.twoshaft-notebook :is(.jp-MarkdownCell, .twoshaft-quiet) .jp-Collapser { visibility: hidden; }
@media (max-width: 700px) {
  /* In a narrow window, or at 400 % zoom, pictures stay readable and are moved sideways. */
  .twoshaft-notebook .jp-RenderedImage, .twoshaft-notebook .jp-RenderedHTML figure { overflow-x: auto; }
  .twoshaft-notebook .jp-RenderedHTML figure { min-width: 0; max-width: 100%; }
  .twoshaft-notebook :is(.jp-RenderedImage img, .jp-RenderedHTML figure > svg) { max-width: none; }
}
`;

  async function plugin() {
    const [{ PageConfig }, { NotebookActions }] = await Promise.all(
      [need("@jupyterlab/coreutils"), need("@jupyterlab/notebook")]);
    return {
      id: `${NAME}:plugin`,
      description: "Shows the forms and rigs of a course notebook as soon as it is opened.",
      autoStart: true,
      activate: (app) => {
        if (PageConfig.getOption("twoshaftRole") !== "apprentice") return;
        const style = document.createElement("style");
        style.textContent = STYLE;
        document.head.append(style);
        // Links of ours to a notebook open it here, as a tab.
        document.addEventListener("click", (event) => {
          const link = event.target.closest?.("a[data-twoshaft-open]");
          if (!link || event.ctrlKey || event.metaKey || event.shiftKey) return;
          event.preventDefault();
          app.commands.execute("docmanager:open", { path: link.dataset.twoshaftOpen });
        });
        // Whoever signs in next must not find the work of the one before on the screen.
        document.addEventListener("twoshaft-signed-out", () => {
          for (const other of [...app.shell.widgets("main")]) {
            if (other !== app.shell.currentWidget) other.close();
          }
        });
        const released = releasedCells(PageConfig);
        app.restored.then(() => {
          app.shell.collapseLeft?.();
          app.shell.collapseRight?.();
        });
        app.docRegistry.addWidgetExtension("Notebook", {
          createNew: (panel, context) => { follow(panel, context, released, NotebookActions); },
        });
      },
    };
  }

  // What a learner would lose with the notebook: text of cells, and runs of cells of their own.
  // Forms keep their answers elsewhere, so showing them must not make the notebook ask to be saved,
  // nor two windows quarrel about its file.
  function workIn(panel) {
    return JSON.stringify(panel.content.widgets.map(({ model }) => [
      model.sharedModel.getSource(),
      tagsOf(model).some((tag) => QUIET_TAGS.includes(tag)) ? null : model.executionCount ?? null,
    ]));
  }

  function keepClean(panel, context) {
    let saved = workIn(panel);
    context.saveState.connect((_, state) => { if (state === "completed") saved = workIn(panel); });
    const look = () => {
      if (panel.isDisposed || !context.model.dirty || workIn(panel) !== saved) return;
      context.model.dirty = false;
    };
    context.model.stateChanged.connect((_, change) => {
      if (change.name === "dirty" && change.newValue) setTimeout(look, 0);
    });
    look();
  }

  // Kernels in which a document's cells have been run, so that a second view runs nothing again.
  const seen = new WeakMap();

  async function follow(panel, context, released, NotebookActions) {
    await context.ready;
    if (panel.isDisposed) return;
    calm(panel);
    panel.content.model.cells.changed.connect(() => setTimeout(() => calm(panel), 0));
    if (!isCourse(panel)) return;
    keepClean(panel, context);
    const session = panel.sessionContext;
    const open = async () => {
      await session.ready;
      await idle(session);
      const kernel = session.session?.kernel?.id;
      if (!seen.has(context)) seen.set(context, new Set());
      if (panel.isDisposed || seen.get(context).has(kernel)) return;
      seen.get(context).add(kernel);
      const cells = await released;
      // Counts kept from an earlier kernel say nothing about this one.
      openable(panel, cells).forEach((cell) => { cell.model.executionCount = null; });
      await run(panel, cells, NotebookActions);
    };
    // A form asks for it when what its task is drawn from has changed.
    panel.node.addEventListener("twoshaft-redraw", async () => {
      const cells = openable(panel, await released);
      if (!panel.isDisposed) await NotebookActions.runCells(panel.content, cells, session);
    });
    const openQuietly = () => open().catch((error) => {
      if (!panel.isDisposed) console.warn(`${NAME}: the forms could not be shown`, error);
    });
    session.statusChanged.connect((_, status) => {
      if (status === "restarting" || status === "autorestarting") {
        seen.get(context)?.delete(session.session?.kernel?.id);
        openQuietly();
      }
    });
    session.kernelChanged.connect((_, { newValue }) => { if (newValue) openQuietly(); });
    openQuietly();
  }

  window._JUPYTERLAB = window._JUPYTERLAB || {};
  window._JUPYTERLAB[NAME] = {
    init: (scope) => { shared = scope; },
    get: async (module) => {
      if (module !== "./extension") throw new Error(`${NAME} has no ${module}`);
      const made = await plugin();
      return () => ({ __esModule: true, default: made });
    },
  };
})();
