// Does something to a notebook whenever its cells or its width have changed and it has come to rest.

const PAUSE_MS = 300; // what is drawn anew all the time is looked at once it rests

/**
 * @param {any} panel
 * @param {(root: HTMLElement) => void} act
 */
export function atRest(panel, act) {
  const root = panel.content.node;
  let asked = 0;
  const ask = () => {
    clearTimeout(asked);
    asked = setTimeout(() => act(root), PAUSE_MS);
  };
  const changes = new MutationObserver(ask);
  changes.observe(root, { childList: true, subtree: true });
  const sizes = new ResizeObserver(ask);
  sizes.observe(root);
  panel.disposed.connect(() => {
    clearTimeout(asked);
    changes.disconnect();
    sizes.disconnect();
  });
}
