// A course notebook has a kernel as long as it is open: one that is lost, with the server or
// without, is found again or started anew as soon as the server answers.

const PAUSE_MS = 1000;

/** @param {any} session the notebook's session context */
function atWork(session) {
  const kernel = session.session?.kernel;
  return (
    kernel?.connectionStatus === "connected" && !["dead", "terminating"].includes(kernel.status)
  );
}

/** @type {WeakSet<object>} */
const kept = new WeakSet();

/**
 * Sees to it, until the notebook is closed.
 *
 * @param {any} panel
 * @param {any} session the notebook's session context
 * @param {any} sessions JupyterLab's sessions
 */
export function keepKernel(panel, session, sessions) {
  if (kept.has(panel) || panel.isDisposed) return;
  kept.add(panel);
  let trying = false;
  const find = async () => {
    if (trying) return;
    trying = true;
    while (!panel.isDisposed) {
      // A moment first: a short interruption mends itself.
      await new Promise((resolve) => setTimeout(resolve, PAUSE_MS));
      if (panel.isDisposed || atWork(session)) break;
      try {
        await sessions.refreshRunning(); // fails while the server is away; forgets what ended with it
        const kernel = session.session?.kernel;
        if (atWork(session)) break;
        if (!kernel || ["dead", "terminating"].includes(kernel.status)) await session.startKernel();
        else if (kernel.connectionStatus === "disconnected") await kernel.reconnect();
      } catch {
        /* not yet */
      }
    }
    trying = false;
  };
  const look = () => {
    if (!panel.isDisposed && !atWork(session) && !session.isRestarting) find();
  };
  session.connectionStatusChanged.connect(look);
  session.statusChanged.connect(look);
  session.sessionChanged.connect(look);
  session.kernelChanged.connect(look);
  look();
}
