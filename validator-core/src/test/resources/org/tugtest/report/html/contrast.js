// Lists texts whose contrast with what lies behind them is under 4.5, or under 3 when they are large.
const parse = colour => (colour.match(/[\d.]+/g) || [0, 0, 0, 0]).map(Number);
const light = ([r, g, b]) => [r, g, b]
  .map(c => c / 255).map(c => (c <= 0.03928 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4))
  .reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
const over = (top, below) => {
  const a = top.length > 3 ? top[3] : 1;
  return [0, 1, 2].map(i => top[i] * a + below[i] * (1 - a));
};
const behind = node => {
  const layers = [];
  for (let up = node; up; up = up.parentElement) layers.push(parse(getComputedStyle(up).backgroundColor));
  return layers.reverse().reduce((below, top) => over(top, below), [255, 255, 255]);
};
const bad = new Set();
for (const node of document.body.querySelectorAll('*')) {
  const own = [...node.childNodes].some(child => child.nodeType === 3 && child.data.trim());
  if (!own || node.closest('script, style, noscript, [hidden]') || !node.checkVisibility()) continue;
  const style = getComputedStyle(node);
  const back = behind(node);
  let front = parse(style.color);
  for (let up = node; up; up = up.parentElement) {
    const opacity = Number(getComputedStyle(up).opacity);
    if (opacity < 1) front = [...front.slice(0, 3), (front[3] ?? 1) * opacity];
  }
  const [a, b] = [light(over(front, back)), light(back)].sort((x, y) => y - x);
  const large = parseFloat(style.fontSize) >= 24;
  if ((a + 0.05) / (b + 0.05) < (large ? 3 : 4.5)) bad.add(node.tagName + '.' + node.className + ' ' + style.color);
}
return [...bad].join(', ');
