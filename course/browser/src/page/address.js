/**
 * An address of this JupyterLab.
 *
 * @param {string} kind
 * @param {string} path
 */
export function address(kind, path) {
  const config = document.getElementById("jupyter-config-data");
  let base = "/";
  try {
    base = JSON.parse(config?.textContent ?? "").baseUrl || "/";
  } catch {
    /* another front end */
  }
  return `${base}${kind}/${path.split("/").map(encodeURIComponent).join("/")}`;
}
