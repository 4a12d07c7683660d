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

// A browser tries again by itself where the line breaks, but never after an answer that refuses,
// and it waits for ever on a line that went dead without a word.
const AGAIN_MS = [1000, 2000, 5000, 10000, 30000];
// The kiosk says something every 15 s.
const SILENT_MS = 40000;
// A short break is not told.
const TOLD_MS = 4000;
let live;
let failed = 0;
let silence;
let telling;

function heard() {
  failed = 0;
  clearTimeout(telling);
  telling = undefined;
  state.textContent = "";
  clearTimeout(silence);
  silence = setTimeout(again, SILENT_MS);
}

function lost() {
  telling ||= setTimeout(() => { state.textContent = state.dataset.waiting; }, TOLD_MS);
}

function again() {
  lost();
  live.close();
  clearTimeout(silence);
  const wait = AGAIN_MS[Math.min(failed, AGAIN_MS.length - 1)];
  failed += 1;
  // Not all boards of a gym at once.
  setTimeout(follow, wait * (1 + Math.random()));
  // A page that has moved under TLS leads on to it; one that cannot be reached stays as it is.
  fetch("/board", { redirect: "manual", cache: "no-store" }).then(
    (answer) => { if (answer.type === "opaqueredirect") location.reload(); },
    () => {},
  );
}

function follow() {
  live = new EventSource("/board/live");
  live.addEventListener("version", (event) => {
    if (event.data !== state.dataset.version) location.reload();
  });
  live.addEventListener("alive", heard);
  live.onmessage = (event) => { heard(); show(JSON.parse(event.data)); };
  live.onerror = () => { lost(); if (live.readyState === EventSource.CLOSED) again(); };
  clearTimeout(silence);
  silence = setTimeout(again, SILENT_MS);
}
follow();
