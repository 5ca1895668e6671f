// As much of a page as a box and a list need: elements with a value, attributes, events and focus.

class Part extends EventTarget {
  value = "";
  disabled = false;
  attributes = new Map();
  children = [];

  constructor(tag) {
    super();
    this.tag = tag;
  }

  setAttribute(name, value) {
    this.attributes.set(name, value);
    if (name === "value") this.value = value;
  }

  getAttribute(name) {
    return this.attributes.get(name) ?? null;
  }

  append(...more) {
    this.children.push(...more);
  }

  focus() {
    globalThis.document.activeElement = this;
  }
}

/** Lays the page; everything that is made from here on belongs to it. */
export function layPage() {
  globalThis.document = { activeElement: null, createElement: (tag) => new Part(tag) };
}

/** Types a text into a box. */
export function type(box, text) {
  box.focus();
  box.value = text;
  box.dispatchEvent(new Event("input"));
}

/** Chooses from a list. */
export function choose(list, value) {
  list.focus();
  list.value = value;
  list.dispatchEvent(new Event("change"));
}
