// In a narrow or low window, as at 400 % zoom, JupyterLab's own bars give way to the course.

const small = window.matchMedia("(max-width: 600px), (max-height: 400px)");

/**
 * Hides the side bars as long as the window is small.
 *
 * @param {any} shell JupyterLab's
 */
export function narrowShell(shell) {
  const look = () => {
    for (const side of ["left", "right"]) {
      if (shell.isSideTabBarVisible?.(side) === small.matches) {
        shell.toggleSideTabBarVisibility(side);
      }
    }
  };
  small.addEventListener("change", look);
  look();
}

/**
 * Hides a notebook's toolbar as long as the window is small.
 *
 * @param {any} panel
 */
export function giveWay(panel) {
  const look = () => {
    panel.toolbar.setHidden(small.matches);
    panel.fit(); // bars are as high as their styles now say
  };
  small.addEventListener("change", look);
  panel.disposed.connect(() => small.removeEventListener("change", look));
  look();
}
