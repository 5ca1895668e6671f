// Making and filling elements.

/** @import { Point } from "../types.js" */

const SVG_NS = "http://www.w3.org/2000/svg";

/** @typedef {string | number | boolean | null | undefined | ((event: any) => void)} Attribute */

/**
 * An HTML element. An attribute `onNAME` is a listener; false, null and undefined leave one out.
 *
 * @template {keyof HTMLElementTagNameMap} K
 * @param {K} tag
 * @param {Record<string, Attribute>} [attributes]
 * @param {...(Node | string | null | undefined | false)} children those that are missing are left out
 * @returns {HTMLElementTagNameMap[K]}
 */
export function make(tag, attributes = {}, ...children) {
  const node = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") node.addEventListener(name.slice(2), value);
    else if (value === true) node.setAttribute(name, "");
    else if (value !== false && value != null) node.setAttribute(name, String(value));
  }
  node.append(...there(children));
  return node;
}

/**
 * An element of a drawing.
 *
 * @template {keyof SVGElementTagNameMap} K
 * @param {K} tag
 * @param {Record<string, string | number | null | undefined>} [attributes]
 * @param {...(Node | string)} children
 * @returns {SVGElementTagNameMap[K]}
 */
export function draw(tag, attributes = {}, ...children) {
  const node = document.createElementNS(SVG_NS, tag);
  setAll(node, attributes);
  node.append(...children);
  return node;
}

/**
 * Sets attributes; null and undefined leave one out.
 *
 * @param {Element} node
 * @param {Record<string, string | number | null | undefined>} attributes
 */
export function setAll(node, attributes) {
  for (const [name, value] of Object.entries(attributes)) {
    if (value != null) node.setAttribute(name, String(value));
  }
}

/**
 * A button of the course's look.
 *
 * @param {string} text
 * @param {(event: any) => void} action
 * @param {Record<string, Attribute>} [attributes]
 */
export function button(text, action, attributes = {}) {
  return make(
    "button",
    { type: "button", class: "ts-button", onclick: action, ...attributes },
    text,
  );
}

/**
 * A choice out of a list.
 *
 * @param {Record<string, Attribute>} attributes
 * @param {Iterable<readonly [string | number, string]>} pairs value and words of each option
 */
export function choiceBox(attributes, pairs) {
  return make("select", { class: "ts-box", ...attributes }, ...optionsOf(pairs));
}

/**
 * Rows of a definition list.
 *
 * @param {readonly [string, string][]} pairs
 */
export function factRows(pairs) {
  return pairs.flatMap(([word, text]) => [make("dt", {}, word), make("dd", {}, text)]);
}

/**
 * The shape that goes with a colour, for those who do not see the colour.
 *
 * @param {string} sign
 */
export function shape(sign) {
  return make("span", { class: "ts-shape", "aria-hidden": "true" }, sign);
}

/**
 * Leaves out what is missing: the page would write it out as a word.
 *
 * @template T
 * @param {readonly (T | null | undefined | false)[]} list
 * @returns {T[]}
 */
export function there(list) {
  return /** @type {T[]} */ (list.filter((one) => one != null && one !== false));
}

let idCount = 0;

/**
 * An id that no other element of the page has.
 *
 * @param {string} stem
 */
export function freshId(stem) {
  idCount += 1;
  return `twoshaft-${stem}-${idCount}-${Math.random().toString(36).slice(2, 7)}`;
}

/**
 * The element that a selector finds; it must be there.
 *
 * @template {Element} [T=HTMLElement]
 * @param {ParentNode} root
 * @param {string} selector
 * @returns {T}
 */
export function find(root, selector) {
  const found = root.querySelector(selector);
  if (!found) throw new Error(`nothing matches ${selector}`);
  return /** @type {T} */ (found);
}

/**
 * All elements that a selector finds.
 *
 * @template {Element} [T=HTMLElement]
 * @param {ParentNode} root
 * @param {string} selector
 * @returns {T[]}
 */
export function findAll(root, selector) {
  return /** @type {T[]} */ ([...root.querySelectorAll(selector)]);
}

/**
 * The next element up that the pointer or the keyboard meant.
 *
 * @template {Element} [T=HTMLElement]
 * @param {Event} event
 * @param {string} selector
 * @returns {T | null}
 */
export function closest(event, selector) {
  const { target } = event;
  return target instanceof Element ? /** @type {T | null} */ (target.closest(selector)) : null;
}

/**
 * The arrow, Home, End and Enter keys belong to a screen only when pressed alone.
 *
 * @param {KeyboardEvent} event
 */
export function withOrder(event) {
  return event.ctrlKey || event.metaKey || event.altKey;
}

/**
 * Nothing in a screen can be worked any more.
 *
 * @param {HTMLElement} el
 */
export function stopControls(el) {
  const controls = findAll(el, "button, input, select");
  for (const node of /** @type {HTMLInputElement[]} */ (controls)) node.disabled = true;
}

/**
 * The element that scrolls a node.
 *
 * @param {Element} node
 * @returns {Element}
 */
export function scrollParent(node) {
  for (let up = node.parentElement; up; up = up.parentElement) {
    const flow = getComputedStyle(up).overflowY;
    if ((flow === "auto" || flow === "scroll") && up.scrollHeight > up.clientHeight) return up;
  }
  return document.scrollingElement ?? document.documentElement;
}

/**
 * Distance of two points.
 *
 * @param {Point} a
 * @param {Point} b
 */
export function distance(a, b) {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

/**
 * A button whose name is more than what stands on it.
 *
 * @param {string} text
 * @param {(event: any) => void} action
 * @param {string} [label]
 */
export function namedButton(text, action, label = text) {
  return button(text, action, { "aria-label": label });
}

/**
 * The options of a choice.
 *
 * @param {Iterable<readonly [string | number, string]>} pairs value and words of each
 */
export function optionsOf(pairs) {
  return [...pairs].map(([value, words]) => make("option", { value }, words));
}

/**
 * The items of a list.
 *
 * @param {readonly string[]} texts
 */
export function itemsOf(texts) {
  return texts.map((text) => make("li", {}, text));
}

/**
 * A picture with what works on it at its side; one below the other where there is no room.
 *
 * @param {(Node | null | undefined | false)[]} picture
 * @param {(Node | null | undefined | false)[]} work
 * @param {"" | "even" | "wide" | "widest" | "list"} [share] what of the room the picture takes; a
 *   list of work goes below what is beside it
 */
export const beside = (picture, work, share = "") =>
  make(
    "div",
    // a class, since a rule that asks what stands inside has all of it styled anew at each change
    { class: `ts-beside ${share && `ts-beside-${share}`}` },
    make("div", {}, ...there(picture)),
    make("div", {}, ...there(work)),
  );
