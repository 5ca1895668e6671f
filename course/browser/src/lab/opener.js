// Shows the forms and rigs of a course notebook as soon as it is opened.
//
// A notebook that says {"twoshaft": {"open": true}} in its metadata has its cells tagged setup,
// form or rig run once the kernel is ready. Only cells whose text is a released one are run, and
// only where the server's page configuration says that an apprentice works here: a notebook from
// elsewhere runs nothing. For staff one notebook is opened so, the desk, by its place and its text:
// nothing else runs on their machine.

/** @typedef {(name: string) => Promise<any>} Need gives one of JupyterLab's packages */

import { placeOf } from "../logic/places.js";
import { closest, make } from "../page/dom.js";
import { addBar, addSkipLink } from "./bar.js";
import { failed, isQuiet, isSetup, openable, tagsOf, workIn } from "./cells.js";
import { keepKernel } from "./kernel.js";
import { layOut } from "./layout.js";
import { keepLegible } from "./legible.js";
import { giveWay, narrowShell } from "./narrow.js";
import { keepInReach } from "./reach.js";
import { atRest } from "./rest.js";

export const NAME = "twoshaft-opener";
const IF_MISSING = "if-missing";
const OPENING = "twoshaft-opening"; // while it is there, the place of each form says so
const SHOWING = ["form", "rig"];
const TRIES = 3;
const PAUSE_MS = 300;

/**
 * The extension's plugins.
 *
 * @param {Need} need
 */
export async function plugins(need) {
  const [{ PageConfig, URLExt }, { NotebookActions }, { IConnectionLost }, { Widget }] =
    await Promise.all([
      need("@jupyterlab/coreutils"),
      need("@jupyterlab/notebook"),
      need("@jupyterlab/application"),
      need("@lumino/widgets"),
    ]);
  const tree = URLExt.join(PageConfig.getBaseUrl(), "lab/tree");
  const opener = plugin(PageConfig, NotebookActions, { Widget, tree });
  if (PageConfig.getOption("twoshaftRole") !== "apprentice") return [opener];
  // The screens say it, once: no box in the way of the work.
  const quiet = {
    id: `${NAME}:line`,
    description: "Leaves it to the course's screens to say that the server cannot be reached.",
    autoStart: true,
    provides: IConnectionLost,
    activate: () => async () => {},
  };
  return [opener, quiet];
}

/**
 * The plugin that opens course notebooks.
 *
 * @param {any} PageConfig
 * @param {any} NotebookActions
 * @param {{ Widget: any, tree: string }} page
 */
function plugin(PageConfig, NotebookActions, page) {
  const files = `${PageConfig.getOption("fullLabextensionsUrl")}/${NAME}/static`;
  return {
    id: `${NAME}:plugin`,
    description: "Shows the forms and rigs of a course notebook as soon as it is opened.",
    autoStart: true,
    /** @param {any} app */
    activate: (app) => {
      loadScreens(files);
      const learners = PageConfig.getOption("twoshaftRole") === "apprentice";
      const desk = PageConfig.getOption("twoshaftDesk");
      if (!learners && !desk) return;
      document.head.append(make("style", {}, LAB_STYLES));
      if (learners) followLinks(app);
      /** @type {string[]} */
      const known = JSON.parse(PageConfig.getOption("twoshaftReleased") || "[]");
      const released = learners ? releasedCells(files, known) : Promise.resolve(new Set(known));
      app.restored.then(() => {
        app.shell.collapseLeft?.();
        app.shell.collapseRight?.();
        addSkipLink();
        narrowShell(app.shell);
        if (learners) app.shell.addButtonEnabled = false; // new notebooks are not one key away
      });
      app.docRegistry.addWidgetExtension("Notebook", {
        /**
         * @param {any} panel
         * @param {any} context
         */
        createNew: (panel, context) => {
          if (!learners && context.path !== desk) return;
          panel.toggleClass("twoshaft-desk-notebook", !learners);
          follow(panel, context, released, NotebookActions, app);
          dressCourse(panel, context, { ...page, contents: app.serviceManager.contents });
        },
      });
    },
  };
}

/**
 * Loads the screens for every form and rig of this page (see loader.js).
 *
 * @param {string} files address of the extension's files
 */
function loadScreens(files) {
  globalThis.twoshaftScreens ??= new Map();
  const loading = import(`${files}/screens.js?v=${SCREENS_ID}`);
  globalThis.twoshaftScreens.set(SCREENS_ID, loading);
  loading.catch((error) => {
    globalThis.twoshaftScreens?.delete(SCREENS_ID); // the kernel is asked for them
    console.warn(`${NAME}: the screens could not be loaded`, error);
  });
}

/** @param {any} app */
function followLinks(app) {
  // Links of ours to a notebook open it here, as a tab.
  document.addEventListener("click", (event) => {
    const link = closest(event, "a[data-twoshaft-open]");
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
}

/**
 * Digests of the cells that may be run: the list shipped beside this file, and what the server's
 * settings add to it.
 *
 * @param {string} files address of the extension's files
 * @param {string[]} known
 */
async function releasedCells(files, known) {
  const cells = new Set(known);
  try {
    const answer = await fetch(`${files}/released-cells.json`);
    if (answer.ok) for (const cell of (await answer.json()).cells) cells.add(cell);
  } catch (error) {
    console.warn(`${NAME}: the list of released cells could not be read`, error);
  }
  return cells;
}

/**
 * Waits until the kernel of a notebook has nothing to do.
 *
 * @param {any} session the notebook's session context
 * @returns {Promise<void>}
 */
function idle(session) {
  return new Promise((resolve, reject) => {
    const look = () => {
      if (session.isDisposed) done(() => reject(new Error("closed")));
      else if (session.session?.kernel?.status === "idle") done(resolve);
    };
    /** @param {() => void} how */
    const done = (how) => {
      session.statusChanged.disconnect(look);
      session.disposed.disconnect(look);
      how();
    };
    session.statusChanged.connect(look);
    session.disposed.connect(look);
    look();
  });
}

/**
 * Runs the released cells that have not been run.
 *
 * @param {any} panel
 * @param {Set<string>} released
 * @param {any} NotebookActions
 */
async function run(panel, released, NotebookActions) {
  const session = panel.sessionContext;
  for (let tries = 0; tries < TRIES; tries += 1) {
    await idle(session);
    const waiting = openable(panel, released).filter(({ model }) => model.executionCount === null);
    if (!waiting.length) return;
    // Set-up first, by itself: a kernel may run what reaches it after a cell that failed.
    const setups = waiting.filter(({ model }) => isSetup(model));
    for (const cells of [setups, waiting.filter((cell) => !setups.includes(cell))]) {
      if (!cells.length) continue;
      await NotebookActions.runCells(panel.content, cells, session);
      if (cells.some(failed)) return;
    }
    // A run asked for at the very moment the kernel became ready may be dropped: look again.
    await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
  }
}

/**
 * Whether a cell was run, and what it showed and its count were then taken away.
 *
 * @param {any} cell
 */
const isCleared = ({ model }) =>
  model.executionCount === null && model.executionState !== "running" && !model.outputs.length;

/** @param {any} panel */
const isCourse = (panel) => Boolean(panel.content.model?.getMetadata("twoshaft")?.open);

/**
 * Gives a notebook the course's look.
 *
 * @param {any} panel
 */
function calm(panel) {
  if (panel.isDisposed || !panel.content.model) return;
  const course = isCourse(panel);
  panel.toggleClass("twoshaft-notebook", course);
  if (!course) return;
  for (const cell of panel.content.widgets) {
    cell.toggleClass("twoshaft-quiet", isQuiet(cell.model));
    cell.toggleClass("twoshaft-if-missing", tagsOf(cell.model).includes(IF_MISSING));
    cell.toggleClass(
      "twoshaft-shows",
      tagsOf(cell.model).some((tag) => SHOWING.includes(tag)),
    );
  }
}

/**
 * Gives a course notebook its bar and its layout.
 *
 * @param {any} panel
 * @param {any} context
 * @param {{ Widget: any, tree: string, contents: any }} lab
 */
async function dressCourse(panel, context, lab) {
  await context.ready;
  if (panel.isDisposed || !isCourse(panel)) return;
  if (placeOf(context.path).kind !== "start") layOut(panel);
  atRest(panel, (root) => {
    keepInReach(root);
    keepLegible(root);
  });
  giveWay(panel);
  await addBar(panel, context, lab);
}

/**
 * Takes the mark of unsaved work away where a learner would lose nothing.
 *
 * @param {any} panel
 * @param {any} context
 */
function keepClean(panel, context) {
  let saved = workIn(panel);
  /** @type {(sender: unknown, state: string) => void} */
  const onSave = (_, state) => {
    if (state === "completed") saved = workIn(panel);
  };
  const look = () => {
    if (panel.isDisposed || !context.model.dirty || workIn(panel) !== saved) return;
    context.model.dirty = false;
  };
  /** @type {(sender: unknown, change: { name: string, newValue: unknown }) => void} */
  const onState = (_, { name, newValue }) => {
    if (name === "dirty" && newValue) setTimeout(look, 0);
  };
  context.saveState.connect(onSave);
  context.model.stateChanged.connect(onState);
  look();
}

/**
 * Kernels in which a document's cells have been run, so that a second view runs nothing again.
 *
 * @type {WeakMap<object, Set<string>>}
 */
const seen = new WeakMap();

/**
 * Follows a notebook as long as it is open.
 *
 * @param {any} panel
 * @param {any} context
 * @param {Promise<Set<string>>} released
 * @param {any} NotebookActions
 * @param {any} app
 */
async function follow(panel, context, released, NotebookActions, app) {
  await context.ready;
  if (panel.isDisposed) return;
  calm(panel);
  panel.content.model.cells.changed.connect(() => setTimeout(() => calm(panel), 0));
  if (!isCourse(panel)) return;
  keepClean(panel, context);
  const session = panel.sessionContext;
  /** @type {Set<string>} */
  const kernels = seen.get(context) ?? new Set();
  seen.set(context, kernels);
  const kernelId = () => session.session?.kernel?.id;
  let opening = 0;
  const open = async () => {
    opening += 1;
    panel.addClass(OPENING);
    try {
      await session.ready;
      await idle(session);
      const kernel = kernelId();
      if (panel.isDisposed || kernels.has(kernel)) return;
      kernels.add(kernel);
      const cells = await released;
      // Counts kept from an earlier kernel say nothing about this one.
      for (const { model } of openable(panel, cells)) model.executionCount = null;
      await run(panel, cells, NotebookActions);
    } finally {
      opening -= 1;
      panel.toggleClass(OPENING, opening > 0);
      bringBack();
    }
  };
  // Forms that were cleared away, folded or read anew from the file come back by themselves.
  /** @type {number | undefined} */
  let soon;
  const bringBack = () => {
    clearTimeout(soon);
    soon = window.setTimeout(async () => {
      if (opening || panel.isDisposed || session.session?.kernel?.status !== "idle") return;
      const cells = openable(panel, await released);
      for (const cell of cells) {
        if (cell.outputHidden) cell.outputHidden = false;
        watchCell(cell);
      }
      const { model } = panel.content;
      if (!kernels.has(kernelId()) || model?.isDisposed) return;
      if (!cells.some(isCleared) || cells.some(failed)) return;
      opening += 1;
      try {
        await run(panel, await released, NotebookActions);
      } finally {
        opening -= 1;
      }
    }, PAUSE_MS);
  };
  const watched = new WeakSet();
  /** @param {any} cell */
  const watchCell = ({ model }) => {
    if (watched.has(model)) return;
    watched.add(model);
    model.outputs.changed.connect(bringBack);
  };
  panel.content.model.cells.changed.connect(bringBack);
  app.commands.commandExecuted.connect(bringBack);
  // A form asks for it when what its task is drawn from has changed.
  panel.node.addEventListener("twoshaft-redraw", async () => {
    const cells = openable(panel, await released);
    if (!panel.isDisposed) await NotebookActions.runCells(panel.content, cells, session);
  });
  const openQuietly = () =>
    open()
      .catch((error) => {
        if (!panel.isDisposed) console.warn(`${NAME}: the forms could not be shown`, error);
      })
      .finally(() => keepKernel(panel, session, app.serviceManager.sessions));
  /** @type {(sender: unknown, status: string) => void} */
  const onStatus = (_, status) => {
    if (status !== "restarting" && status !== "autorestarting") return;
    kernels.delete(kernelId());
    openQuietly();
  };
  session.statusChanged.connect(onStatus);
  session.kernelChanged.connect((/** @type {unknown} */ _, /** @type {any} */ { newValue }) => {
    if (newValue) openQuietly();
  });
  openQuietly();
}
