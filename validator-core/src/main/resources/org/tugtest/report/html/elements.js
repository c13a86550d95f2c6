'use strict';
// What every page with a script needs: its data and its elements. Texts only ever become text nodes.
const Elements = (() => {
  const byId = id => document.getElementById(id);
  const data = JSON.parse(byId('data').textContent);
  document.documentElement.classList.add('js');

  function el(tag, attributes, ...inner) {
    const node = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes || {})) {
      if (value !== null && value !== false) node.setAttribute(name, value === true ? '' : value);
    }
    node.append(...inner.flat(3).filter(part => part !== null && part !== undefined && part !== ''));
    return node;
  }

  function sign(name) {
    const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg');
    const use = document.createElementNS('http://www.w3.org/2000/svg', 'use');
    svg.setAttribute('class', 'sign sign-' + name);
    svg.setAttribute('aria-hidden', 'true');
    use.setAttribute('href', '#i-' + name);
    svg.append(use);
    return svg;
  }

  return {byId, data, el, sign};
})();
