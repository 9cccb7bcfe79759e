// The page of the live proof: shows the leaves the server tells of, keeps the place, and finds what stands where.
"use strict";

const WHOLE = 10000;          // places on a leaf are ten-thousandths of its width or height
const POINTS_TO_PX = 96 / 72;
const STEP = 1.15;            // between one size and the next
const NEAR = "900px";         // leaves so far outside the window are made ready
const AGAIN_MS = 2000;        // after a page could not be had
const LONGEST_ENTRY = 40;     // leaves

const by = id => document.getElementById(id);
const pages = by("pages");
const one = by("one");
const narrow = matchMedia("(max-width: 900px)");

let now = { number: -1, change: 0, leaves: [], entries: [], findings: [], sheet: [595, 794], state: "setting", title: "", changed: "", doing: "", trouble: "" };
let entries = new Map();      // by anchor
let worst = new Map();        // severity by anchor
let chosen = "";              // anchor
let scale = 0;                // of life size; 0: as wide as there is room
let only = false;             // one entry instead of the book
let followed = 0;             // the change that was gone to last

// ---- small things

function make(tag, properties, ...inside) {
  const element = Object.assign(document.createElement(tag), properties);
  element.append(...inside);
  return element;
}

async function ask(address) {
  const answer = await fetch(address, { cache: "no-store" });
  if (!answer.ok) {
    throw new Error(answer.status);
  }
  return answer.json();
}

// Whoever was at a button inside stays at the one that has come in its place.
function fill(element, ...inside) {
  const at = [...element.querySelectorAll("button")].indexOf(document.activeElement);
  element.replaceChildren(...inside);
  if (at >= 0) {
    const buttons = element.querySelectorAll("button");
    (buttons[Math.min(at, buttons.length - 1)] ?? element.closest("section")).focus({ preventScroll: true });
  }
}

// For those who do not see the page.
function say(words) {
  by("said").textContent = words;
}

const plural = (count, word) => count + " " + word + (count === 1 ? "" : "s");
const nameOf = entry => entry.number ? (entry.number.includes("–") ? "Nos. " : "No. ") + entry.number : entry.words;
const placeOf = thing => thing.file + (thing.line > 0 ? ":" + thing.line + (thing.column > 0 ? ":" + thing.column : "") : "");

function remember(key, value) {
  try {
    localStorage.setItem("proof-" + key, value);
  } catch (e) {
    return; // a browser that keeps nothing works as well
  }
}

function remembered(key, usual) {
  try {
    return localStorage.getItem("proof-" + key) ?? usual;
  } catch (e) {
    return usual;
  }
}

// ---- sizes

function size() {
  const [width, height] = now.sheet.map(points => points * POINTS_TO_PX);
  const room = (only ? one : pages).clientWidth - 44;
  const times = scale || Math.max(0.3, Math.min(1.25, room / width));
  return { times, width: Math.round(width * times), height: Math.round(height * times) };
}

function layOut() {
  const { times, width, height } = size();
  document.documentElement.style.setProperty("--width", width + "px");
  document.documentElement.style.setProperty("--height", height + "px");
  by("size").textContent = Math.round(times * 100) + " %";
  pages.classList.toggle("facing", pages.clientWidth >= 2 * width + 60);
}

function resize(to) {
  const place = standsAt();
  scale = to;
  layOut();
  goBackTo(place);
  for (const leaf of pages.children) {
    fitLines(leaf);
    if (leaf.near) {
      draw(leaf);
    }
  }
  if (only) {
    showOne();
  }
}

const dpi = () => Math.ceil(size().times * 96 * Math.min(3, window.devicePixelRatio || 1));

// ---- leaves

const observer = new IntersectionObserver(seen => seen.forEach(entry => {
  entry.target.near = entry.isIntersecting;
  if (entry.isIntersecting) {
    draw(entry.target);
  }
}), { root: pages, rootMargin: NEAR });

function newLeaf() {
  const sheet = make("div", { className: "sheet" }, make("img", { alt: "" }), make("div", { className: "areas" }), make("div", { className: "lines" }));
  const leaf = make("section", { className: "leaf" }, make("h2"), sheet);
  observer.observe(leaf);
  return leaf;
}

function layLeaves() {
  while (pages.children.length > now.leaves.length) {
    observer.unobserve(pages.lastChild);
    pages.lastChild.remove();
  }
  while (pages.children.length < now.leaves.length) {
    pages.append(newLeaf());
  }
  now.leaves.forEach((told, i) => {
    const leaf = pages.children[i];
    leaf.name = told.name;
    leaf.classList.toggle("fresh", told.fresh);
    leaf.setAttribute("aria-label", "Page " + told.folio);
    head(leaf, told);
    if (leaf.near) {
      draw(leaf);
    }
  });
  by("last").textContent = now.leaves.length ? "of " + plural(now.leaves.length, "leaf").replace("leafs", "leaves") : "";
}

function head(leaf, told) {
  const fresh = now.state === "setting" ? " · just saved; the rest of the book is being set" : " · newer than the rest of the book";
  leaf.firstChild.textContent = "p. " + told.folio + (told.fresh ? fresh : "") + (leaf.failed === leaf.name ? " · this picture is of before" : "");
}

// The old picture stays until the new one is there, so that nothing flickers.
async function draw(leaf) {
  const wanted = leaf.name + "@" + dpi();
  if (leaf.drawn === wanted || leaf.asked === wanted) {
    return;
  }
  leaf.asked = wanted;
  const name = leaf.name;
  try {
    const picture = new Image();
    picture.alt = "";
    picture.src = "/leaf/" + name + ".png?dpi=" + dpi();
    const [told] = await Promise.all([leaf.told === name ? leaf.tells : ask("/leaf/" + name), picture.decode()]);
    if (leaf.asked !== wanted) {
      return;
    }
    leaf.querySelector("img").replaceWith(picture);
    leaf.drawn = wanted;
    if (leaf.failed) {
      leaf.failed = "";
      head(leaf, now.leaves[[...pages.children].indexOf(leaf)]);
    }
    if (leaf.told !== name) {
      leaf.told = name;
      leaf.tells = told;
      layAreas(leaf);
      layLines(leaf);
    }
  } catch (e) {
    leaf.asked = "";
    setTimeout(() => again(leaf, name), AGAIN_MS);
  }
}

// Mostly the page has been set anew meanwhile, and the news of it has come.
function again(leaf, name) {
  if (leaf.isConnected && leaf.name === name && leaf.near && now.number >= 0) {
    leaf.failed = name;
    head(leaf, now.leaves[[...pages.children].indexOf(leaf)]);
    draw(leaf);
  }
}

function put(element, at) {
  const [left, top, right, bottom] = at.map(share => share / WHOLE * 100);
  Object.assign(element.style, { left: left + "%", top: top + "%", width: right - left + "%", height: bottom - top + "%" });
  return element;
}

function layAreas(leaf) {
  const inside = leaf.querySelector(".areas");
  if (inside.contains(document.activeElement)) {
    (only ? one : pages).focus({ preventScroll: true });
  }
  inside.replaceChildren();
  for (const area of leaf.tells.areas) {
    const entry = entries.get(area.anchor);
    if (entry) {
      const button = put(make("button", { type: "button", className: "area", tabIndex: -1, title: nameOf(entry) + " · " + placeOf(entry) }), area.at);
      button.dataset.anchor = area.anchor;
      button.setAttribute("aria-label", nameOf(entry) + ", " + entry.id + ", " + placeOf(entry));
      button.classList.toggle("coin", entry.entry !== entry.anchor);
      button.onclick = () => choose(area.anchor, false);
      button.ondblclick = () => { choose(area.anchor, false); show(true); };
      inside.append(button);
    }
  }
  markAreas();
}

function markAreas() {
  document.querySelectorAll(".area").forEach(area => {
    area.classList.toggle("chosen", area.dataset.anchor === chosen);
    area.classList.toggle("error", worst.get(area.dataset.anchor) === "error");
    area.classList.toggle("warning", worst.get(area.dataset.anchor) === "warning");
  });
}

// The words over their picture, unseen: to be read aloud, copied, and found by the browser itself.
function layLines(leaf) {
  leaf.querySelector(".lines").replaceChildren(...leaf.tells.lines.map(line => {
    const words = make("span", { className: "line", textContent: line.text + "\n" });
    words.at = line.at;
    return words;
  }));
  fitLines(leaf);
}

function fitLines(leaf) {
  const { width, height } = size();
  const lines = [...leaf.querySelectorAll(".line")];
  lines.forEach(line => {
    const [left, top, , bottom] = line.at;
    Object.assign(line.style, { left: left / WHOLE * width + "px", top: top / WHOLE * height + "px", fontSize: (bottom - top) / WHOLE * height + "px", transform: "" });
  });
  const wide = lines.map(line => line.offsetWidth);
  lines.forEach((line, i) => {
    line.style.transform = "scaleX(" + (line.at[2] - line.at[0]) / WHOLE * width / (wide[i] || 1) + ")";
  });
}

// ---- keeping the place

const topOf = leaf => leaf.offsetTop - pages.offsetTop;

function leafInView() {
  const middle = pages.scrollTop + pages.clientHeight / 3;
  return Math.max(0, [...pages.children].filter(leaf => topOf(leaf) <= middle).length - 1);
}

// The leaf in the window, how far down it the window begins, and an entry by which it is known again.
function standsAt() {
  const number = leafInView();
  const leaf = pages.children[number];
  const entry = entries.get(leaf?.tells?.areas.find(area => entries.has(area.anchor))?.anchor);
  return leaf && { leaf: number, down: (pages.scrollTop - topOf(leaf)) / leaf.offsetHeight, anchor: entry?.anchor, was: entry?.leaf };
}

// Where leaves have come in or gone before it, it is another leaf of the same entries.
function goBackTo(place) {
  const entry = entries.get(place?.anchor);
  const moved = entry && entry.leaf >= 0 ? entry.leaf - place.was : 0;
  const leaf = place && pages.children[Math.min(place.leaf + moved, pages.children.length - 1)];
  if (leaf) {
    pages.scrollTop = topOf(leaf) + place.down * leaf.offsetHeight;
  }
}

function goTo(leafNumber, at) {
  const leaf = pages.children[leafNumber];
  if (!leaf) {
    return;
  }
  const top = topOf(leaf) + (at ? leaf.lastChild.offsetTop + at[1] / WHOLE * size().height - pages.clientHeight / 4 : 0);
  pages.scrollTop = Math.max(0, top);
  if (narrow.matches) {
    pages.scrollIntoView({ block: "nearest" });
  }
}

// ---- one entry chosen

async function tellsOf(leafNumber) {
  const leaf = pages.children[leafNumber];
  if (leaf.told !== leaf.name) {
    leaf.tells = await ask("/leaf/" + leaf.name);
    leaf.told = leaf.name;
    layAreas(leaf);
    layLines(leaf);
  }
  return leaf.tells;
}

// @param going whether to turn to its page
async function choose(anchor, going) {
  const entry = entries.get(anchor);
  if (!entry) {
    return;
  }
  chosen = anchor;
  markAreas();
  sayEntry();
  say([nameOf(entry), entry.number ? entry.id : "", entry.leaf >= 0 ? "page " + now.leaves[entry.leaf].folio : "not on a page yet",
      placeOf(entry)].filter(Boolean).join(", "));
  listFindings();
  if (only) {
    await showOne();
  } else if (going && entry.leaf >= 0) {
    const number = now.number;
    let at = (await tellsOf(entry.leaf)).areas.find(area => area.anchor === anchor)?.at;
    if (number === now.number && !isInView(entry.leaf, at)) {
      goTo(entry.leaf, at);
    }
  }
}

function isInView(leafNumber, at) {
  const leaf = pages.children[leafNumber];
  if (!leaf || !at) {
    return false;
  }
  const box = leaf.lastChild.getBoundingClientRect();
  const window = pages.getBoundingClientRect();
  const top = box.top + at[1] / WHOLE * box.height;
  return top >= window.top && top + 20 <= window.bottom;
}

function sayEntry() {
  const entry = entries.get(chosen);
  const says = by("entry-says");
  if (!entry) {
    fill(says, make("p", { className: "quiet", textContent: "Click an entry or a coin on a page, or go through them." }), turning());
    return;
  }
  const within = entries.get(entry.entry);
  const folio = entry.leaf >= 0 ? now.leaves[entry.leaf].folio : "";
  const copy = make("button", { type: "button", textContent: "Copy the place" });
  copy.onclick = async () => {
    try {
      await navigator.clipboard.writeText(placeOf(entry));
      copy.textContent = "Copied";
    } catch (e) {
      copy.textContent = "Cannot be copied";
    }
    say(copy.textContent);
  };
  fill(says,
      make("p", { className: "name", textContent: nameOf(entry) + (entry.number ? " · " + entry.id : "") }),
      make("p", { className: "words", textContent: [entry.number ? within.words : "", folio ? "p. " + folio : "not on a page yet"].filter(Boolean).join(" · ") }),
      make("p", { className: "where", id: "place", textContent: placeOf(entry) }), turning(copy));
}

function turning(...more) {
  return make("div", { className: "turning" }, button("Previous", () => step(-1)), button("Next", () => step(1)), ...more);
}

function button(text, action) {
  const made = make("button", { type: "button", textContent: text });
  made.onclick = action;
  return made;
}

function step(by) {
  const shown = now.entries.filter(entry => entry.leaf >= 0 && (!only || entry.entry === entry.anchor));
  const from = only ? entries.get(chosen)?.entry : chosen;
  let at = shown.findIndex(entry => entry.anchor === from);
  if (at < 0) {
    at = shown.findIndex(entry => entry.leaf >= leafInView()) - (by > 0 ? 1 : 0);
  }
  const next = shown[Math.max(0, Math.min(shown.length - 1, at + by))];
  if (next) {
    choose(next.anchor, true);
  }
}

// ---- one-entry view

async function show(oneEntry) {
  if (only === oneEntry) {
    return;
  }
  only = oneEntry;
  by("book").setAttribute("aria-pressed", String(!only));
  by("single").setAttribute("aria-pressed", String(only));
  pages.hidden = only;
  one.hidden = !only;
  layOut();
  if (!only) {
    await choose(chosen, true);
  } else if (entries.has(chosen)) {
    await showOne();
  } else {
    step(1);
  }
}

async function showOne() {
  const entry = entries.get(entries.get(chosen)?.entry);
  if (!entry || entry.leaf < 0) {
    one.replaceChildren(make("p", { className: "caption", textContent: entry ? "This entry is on no page yet." : "No entry is chosen." }));
    return;
  }
  const number = now.number;
  const parts = [];
  try {
    for (let i = entry.leaf; i < Math.min(now.leaves.length, entry.leaf + LONGEST_ENTRY); i++) {
      const tells = await tellsOf(i);
      const area = tells.areas.find(area => area.anchor === entry.anchor);
      if (!area) {
        break;
      }
      parts.push(await crop(i, area.at, tells));
    }
  } catch (e) {
    return; // set anew meanwhile
  }
  if (number === now.number && only) {
    const place = one.scrollTop;
    one.replaceChildren(...parts.flat());
    one.scrollTop = place;
    sayFolio();
    markAreas();
  }
}

async function crop(leafNumber, at, tells) {
  const { width, height } = size();
  const told = now.leaves[leafNumber];
  const above = Math.max(0, at[1] / WHOLE * height - 6);
  const below = Math.min(height, at[3] / WHOLE * height + 10);
  const picture = make("img", { alt: "", src: "/leaf/" + told.name + ".png?dpi=" + dpi() });
  await picture.decode();
  const leaf = make("div", { className: "sheet" }, picture, make("div", { className: "areas" }), make("div", { className: "lines" }));
  Object.assign(leaf.style, { top: -above + "px", position: "absolute", left: "0" });
  const frame = make("div", { className: "crop" }, leaf);
  Object.assign(frame.style, { width: width + "px", height: below - above + "px" });
  const inside = line => line.at[1] >= at[1] - 60 && line.at[3] <= at[3] + 60;
  leaf.tells = { areas: tells.areas.filter(area => area.at[1] >= at[1] && area.at[3] <= at[3]), lines: tells.lines.filter(inside) };
  layAreas(leaf);
  requestAnimationFrame(() => layLines(leaf));
  return [make("p", { className: "caption", textContent: "p. " + told.folio + (told.fresh ? " · just saved" : "") }), frame];
}

// ---- findings

function listFindings() {
  const entry = entries.get(chosen);
  const ofEntry = by("only").checked && entry;
  const files = new Set(now.entries.filter(other => entry && other.entry === entry.entry).map(other => other.file));
  const listed = now.findings.filter(finding => !ofEntry || files.has(finding.file));
  by("findings-head").textContent = "Findings (" + listed.length + (ofEntry ? " of " + now.findings.length : "") + ")";
  fill(by("list"), ...(listed.length ? listed.map(findingItem) : [make("li", { className: "quiet", textContent: "None." })]));
}

function findingItem(finding) {
  const entry = entries.get(finding.anchor);
  const where = (entry ? nameOf(entry) + " · " : "") + placeOf(finding);
  const item = make("li", { className: finding.severity },
      make("p", { className: "what" }, make("span", { className: "severity", textContent: finding.severity + ": " }), finding.what),
      make("p", { className: "remedy", textContent: finding.remedy }),
      make("p", { className: "code", textContent: finding.code }));
  const head = entry && entry.leaf >= 0 ? button(where, () => choose(finding.anchor, true)) : make("p", { className: "where", textContent: where });
  item.prepend(head);
  return item;
}

// ---- finding words

let lastAsked = 0;
let sought = "";              // what the list was made for

// @param unasked for new pages, which nobody has asked for
async function find(words, unasked) {
  const asked = ++lastAsked;
  sought = words;
  document.querySelectorAll(".hit").forEach(hit => hit.remove());
  by("found").hidden = !words.trim();
  if (!words.trim()) {
    return;
  }
  if (!unasked) {
    by("found-head").textContent = "Looking for it …"; // a thick book that was just set takes seconds
  }
  let told;
  try {
    told = await ask("/find?q=" + encodeURIComponent(words));
  } catch (e) {
    return; // the proof has been stopped, which the top says
  }
  if (asked !== lastAsked) {
    return;
  }
  told.hits = told.hits.filter(hit => now.leaves[hit.leaf]);
  by("found-head").textContent = "Found (" + (told.all > told.hits.length ? "the first " + told.hits.length + " of " + told.all : told.all) + ")";
  fill(by("hits"), ...(told.hits.length ? told.hits.map(hitItem) : [make("li", { className: "quiet", textContent: "Nothing in this book." })]));
  if (!unasked) {
    say(told.all ? plural(told.all, "place") + " found" : "Nothing in this book.");
  }
}

function hitItem(hit) {
  const go = button("p. " + now.leaves[hit.leaf].folio, async () => {
    await show(false);
    document.querySelectorAll(".hit").forEach(mark => mark.remove());
    if (hit.anchor && entries.has(hit.anchor)) {
      await choose(hit.anchor, !hit.at);
    }
    if (hit.at) {
      goTo(hit.leaf, hit.at);
      pages.children[hit.leaf]?.lastChild.append(put(make("div", { className: "hit" }), hit.at));
    }
  });
  const entry = entries.get(hit.anchor);
  const words = make("p", { className: "what", textContent: hit.text });
  return make("li", {}, go, words, ...(entry && hit.at ? [make("p", { className: "where", textContent: nameOf(entry) })] : []));
}

// ---- news

function sayState() {
  const counts = plural(now.errors, "error") + ", " + plural(now.warnings, "warning");
  const says = { "setting": now.leaves.length ? "Setting the book again" : "Setting the book", "as-saved": "As saved", "of-before": "Pages of before" }[now.state];
  by("state").textContent = (now.doing || says) + " · " + counts;
  by("state").className = now.state;
  by("title").textContent = now.title;
  document.title = (now.errors ? "(" + now.errors + ") " : "") + "Proof" + (now.title ? " · " + now.title : "");
  const notice = now.trouble || (now.errors ? "These are the last pages that could be set: " + plural(now.errors, "error")
      + " in the source must be mended first. See the findings." : "");
  by("notice").hidden = !notice;
  by("notice").textContent = notice;
}

let newest = -1;              // number of the proof that was last heard of

async function take() {
  if (newest === now.number) {
    return;
  }
  const told = await ask("/now");
  if (told.number === now.number) {
    return;
  }
  const place = standsAt();
  const firstPages = !now.leaves.length && told.leaves.length;
  now = told;
  entries = new Map(now.entries.map(entry => [entry.anchor, entry]));
  worst = new Map();
  for (const finding of now.findings) {
    if (finding.severity === "error" || finding.severity === "warning" && worst.get(finding.anchor) !== "error") {
      worst.set(finding.anchor, finding.severity);
    }
  }
  layOut();
  layLeaves();
  sayState();
  sayEntry();
  listFindings();
  markAreas();
  if (only) {
    await showOne();
  } else if (!firstPages) {
    goBackTo(place);
  }
  sayFolio();
  if (sought.trim() && now.state === "as-saved") {
    await find(sought, true); // on the pages of now, which may be others
  }
  const ready = now.changed && entries.has(now.changed) && now.leaves.length;
  const isNew = now.change !== followed && (now.state === "as-saved" || now.leaves.some(leaf => leaf.fresh));
  if (ready && isNew) {
    followed = now.change;
    if (by("follow").checked) {
      await choose(now.changed, true);
    }
  }
}

let taking = Promise.resolve();

// A proof that is started again counts its pages from the beginning: what this page has drawn is of none of them.
function lost(words) {
  by("state").textContent = words;
  by("state").className = "of-before";
  now.number = -1;
  followed = 0;
  for (const leaf of pages.children) {
    leaf.drawn = leaf.asked = leaf.told = undefined;
  }
}

function listen() {
  const news = new EventSource("/news");
  news.onmessage = message => {
    newest = Number(message.data);
    taking = taking.then(take).catch(() => lost("The pages cannot be shown as they are now. Load this page again."));
  };
  news.onerror = () => {
    lost("The proof has been stopped. Start it again, and this page goes on.");
    if (news.readyState === EventSource.CLOSED) {
      setTimeout(listen, 2000);
    }
  };
}

// ---- keys and buttons

const KEYS = {
  "/": () => by("words").focus(),
  "n": () => step(1),
  "p": () => step(-1),
  "e": () => show(!only),
  "s": () => choose(now.changed, true),
  "f": () => by("findings").focus(),
  "+": () => resize(size().times * STEP),
  "-": () => resize(size().times / STEP)
};

document.addEventListener("keydown", event => {
  if (event.key === "Escape" && !by("keys").open) {
    (only ? one : pages).focus();
    return;
  }
  const typing = event.target.matches("input:not([type=checkbox])") || by("keys").open;
  if (typing || event.ctrlKey || event.metaKey || event.altKey || !by("single-keys").checked || !KEYS[event.key]) {
    return;
  }
  event.preventDefault();
  KEYS[event.key]();
});

// While Alt is held the words can be marked; else the entries can be clicked. Whoever goes to another window with Alt lets it go there.
const reading = on => document.body.classList.toggle("reading", on);
addEventListener("keydown", event => event.key === "Alt" && reading(true));
addEventListener("keyup", event => event.key === "Alt" && reading(false));
addEventListener("blur", () => reading(false));

by("ask").onsubmit = event => {
  event.preventDefault();
  find(by("words").value);
};
let waiting = 0;
by("words").oninput = () => {
  clearTimeout(waiting);
  waiting = setTimeout(() => find(by("words").value), 200);
};
by("turn").onsubmit = async event => {
  event.preventDefault();
  const wanted = now.leaves.findIndex(leaf => leaf.folio === by("folio").value.trim());
  by("folio").setAttribute("aria-invalid", String(wanted < 0));
  by("wrong").textContent = wanted < 0 ? "No page has the number “" + by("folio").value.trim() + "”." : "";
  if (wanted >= 0) {
    await show(false);
    goTo(wanted);
    pages.focus();
  }
};
function sayFolio() {
  const leaf = now.leaves[only ? entries.get(chosen)?.leaf : leafInView()];
  if (leaf && document.activeElement !== by("folio")) {
    by("folio").value = leaf.folio;
    by("folio").removeAttribute("aria-invalid");
    by("wrong").textContent = "";
  }
}

pages.addEventListener("scroll", sayFolio, { passive: true });
by("book").onclick = () => show(false);
by("single").onclick = () => show(true);
by("smaller").onclick = () => KEYS["-"]();
by("larger").onclick = () => KEYS["+"]();
by("size").onclick = () => resize(1);
by("help").onclick = () => by("keys").showModal();
by("only").onchange = listFindings;
for (const choice of ["single-keys", "follow"]) {
  by(choice).checked = remembered(choice, "true") === "true";
  by(choice).onchange = () => remember(choice, by(choice).checked);
}
addEventListener("resize", () => resize(scale));

layOut();
listen();
