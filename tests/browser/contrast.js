// Texts and marks within an element that stand out too little from their ground, each after its ratio.
//
// WCAG 2.2, success criterion 1.4.3 with its relative luminance and contrast ratio: at least 4.5:1
// for text; 1.4.11: at least 3:1 for a mark, here a text without letter or digit. What cannot be
// used (a disabled control) is exempt. Text in a drawing stands on shapes: it is not looked at.
root => {
  // The last two are JupyterLab's own: code, and the numbers beside cells.
  const LEFT_OUT = 'svg, :disabled, [aria-disabled=true], .cm-editor, [class*=Prompt]';
  // Any colour that CSS can say, see-through or not, painted on one pixel and read back.
  const pen = Object.assign(document.createElement('canvas'), {width: 1, height: 1})
    .getContext('2d', {willReadFrequently: true});
  const painted = colours => {
    pen.clearRect(0, 0, 1, 1);
    for (const colour of colours) { pen.fillStyle = colour; pen.fillRect(0, 0, 1, 1); }
    return pen.getImageData(0, 0, 1, 1).data;
  };
  const luminance = rgb => [0.2126, 0.7152, 0.0722].reduce((sum, weight, i) => {
    const c = rgb[i] / 255;
    return sum + weight * (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
  }, 0);
  const texts = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
  const faint = [];
  let seen = 0;
  while (texts.nextNode()) {
    const node = texts.currentNode.parentElement;
    if (!texts.currentNode.data.trim() || node.closest(LEFT_OUT)) continue;
    if (!node.checkVisibility({visibilityProperty: true}) || !node.getClientRects().length) continue;
    const grounds = [];
    for (let up = node; up; up = up.parentElement) {
      grounds.unshift(getComputedStyle(up).backgroundColor);
    }
    const ground = luminance(painted(grounds));
    const ink = luminance(painted([...grounds, getComputedStyle(node).color]));
    const ratio = (Math.max(ink, ground) + 0.05) / (Math.min(ink, ground) + 0.05);
    const least = /[\p{L}\p{N}]/u.test(texts.currentNode.data) ? 4.5 : 3;
    seen += 1;
    if (ratio < least) faint.push(`${ratio.toFixed(2)}: ${texts.currentNode.data.trim()}`);
  }
  return {seen, faint};
}
