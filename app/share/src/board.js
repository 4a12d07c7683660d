// The floor board: draws what the kiosk sends. Text is always set as text, never as markup.
"use strict";
const racks = document.getElementById("racks");
const clock = document.getElementById("clock");
const state = document.getElementById("state");
const title = document.getElementById("title");

function add(parent, tag, name, text) {
  const element = document.createElement(tag);
  element.className = name;
  element.textContent = text;
  parent.append(element);
  return element;
}

function turn(parent, one, name) {
  const box = add(parent, "article", name, "");
  const head = add(box, "header", "", "");
  add(head, "span", "lifter", one.lifter);
  add(head, "span", "word", one.word);
  add(box, "p", "lift", one.lift);
  const load = add(box, "p", "load", "");
  add(load, "span", "kilos", one.load);
  add(load, "span", "reps", one.reps);
  add(box, "p", "spot", one.gear ? one.spot + ", " + one.gear : one.spot);
  if (one.change && name !== "then") add(box, "p", "change", one.change);
}

function show(board) {
  document.documentElement.lang = board.language;
  document.title = title.textContent = board.title;
  state.dataset.waiting = board.waiting;
  clock.textContent = board.clock;
  racks.replaceChildren();
  if (board.empty) add(racks, "p", "empty", board.empty);
  for (const rack of board.racks) {
    const section = add(racks, "section", "rack", "");
    add(section, "h2", "", rack.name);
    if (rack.up) turn(section, rack.up, "up");
    if (rack.next) turn(section, rack.next, "next");
    for (const one of rack.then) turn(section, one, "then");
  }
}

// A browser tries again by itself where the line breaks, but never after an answer that refuses.
const AGAIN_MS = 5000;
function follow() {
  const live = new EventSource("/board/live");
  live.onmessage = (event) => { state.textContent = ""; show(JSON.parse(event.data)); };
  live.onerror = () => {
    state.textContent = state.dataset.waiting;
    if (live.readyState === EventSource.CLOSED) setTimeout(follow, AGAIN_MS);
  };
}
follow();
