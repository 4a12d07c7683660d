// Drives the floor board's script through weeks on a TV: refusals, dead lines, another version, a
// page that moved under TLS; on a clock and a network of its own. Needs Node alone.
//
//     node tests/references/board.mjs
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import vm from "node:vm";

const SCRIPT = readFileSync(new URL("../../app/share/src/board.js", import.meta.url), "utf8");

/** A TV that has loaded the board; `network()` says what becomes of each attempt to follow. */
class Tv {
  constructor(network, moved = () => false) {
    this.now = 0;
    this.timers = new Map();
    this.next = 1;
    this.attempts = [];
    this.loads = 0;
    const tv = this;
    const element = () => ({
      dataset: { waiting: "waiting", version: "1" }, textContent: "", className: "",
      append() {}, replaceChildren() {},
    });
    const parts = { racks: element(), clock: element(), state: element(), title: element() };
    this.parts = parts;
    class EventSource {
      static CONNECTING = 0;
      static OPEN = 1;
      static CLOSED = 2;
      constructor() {
        this.heard = {};
        this.readyState = 0;
        tv.live = this;
        tv.attempts.push(tv.now);
        tv.later(() => network(tv, this), 10);
      }
      addEventListener(kind, take) { this.heard[kind] = take; }
      close() { this.readyState = 2; }
      say(kind, data) {
        if (this.readyState === 2) return;
        this.readyState = 1;
        if (kind === "message") this.onmessage({ data }); else this.heard[kind]({ data });
      }
      refuse() { this.readyState = 2; this.onerror(); }
      breakOff() { if (this.readyState !== 2) { this.readyState = 0; this.onerror(); } }
    }
    const world = {
      document: {
        documentElement: element(), body: element(), title: "",
        getElementById: (name) => parts[name], createElement: element,
      },
      location: { reload: () => { tv.loads += 1; } },
      fetch: async () => {
        if (moved()) return { type: "opaqueredirect" };
        throw new TypeError("unreachable");
      },
      setTimeout: (deed, ms) => tv.later(deed, ms), clearTimeout: (no) => tv.timers.delete(no),
      Math: Object.assign(Object.create(Math), { random: () => 0.5, min: Math.min }),
      EventSource, JSON,
    };
    vm.runInNewContext(SCRIPT, world);
  }

  later(deed, ms) {
    const no = this.next++;
    this.timers.set(no, { at: this.now + ms, deed });
    return no;
  }

  async run(ms) {
    const end = this.now + ms;
    for (;;) {
      const due = [...this.timers].filter(([, one]) => one.at <= end);
      if (due.length === 0) break;
      due.sort(([a, one], [b, other]) => one.at - other.at || a - b);
      const [no, one] = due[0];
      this.timers.delete(no);
      this.now = one.at;
      one.deed();
      await null;
    }
    this.now = end;
  }
}

const BOARD = JSON.stringify({
  language: "en", title: "Floor", waiting: "waiting", clock: "18:42", empty: "", racks: [],
});
const lives = (tv, line) => { line.say("version", "1"); line.say("message", BOARD); };

// 1. Refused again and again, then a seat: it comes back, ever more slowly and for ever.
{
  let free = false;
  const tv = new Tv((tv, line) => (free ? lives(tv, line) : line.refuse()));
  await tv.run(3_600_000);
  const gaps = tv.attempts.slice(1).map((at, n) => at - tv.attempts[n]);
  assert.ok(gaps[0] < 3_000 && gaps.at(-1) < 60_000, `${gaps.slice(0, 8)}`);
  assert.ok(gaps.every((gap, n) => n === 0 || gap >= gaps[n - 1]), "backs off");
  assert.ok(tv.attempts.length < 120, `${tv.attempts.length} in an hour`);
  assert.equal(tv.parts.state.textContent, "waiting");
  free = true;
  await tv.run(60_000);
  assert.equal(tv.parts.state.textContent, "");
  assert.equal(tv.parts.clock.textContent, "18:42");
  assert.equal(tv.loads, 0, "an unreachable page is never loaded again");
}

// 2. A line that goes dead without a word.
{
  const tv = new Tv(lives);
  await tv.run(1_000);
  assert.equal(tv.attempts.length, 1);
  for (let n = 0; n < 100; n++) { tv.live.say("alive", "1"); await tv.run(15_000); }
  assert.equal(tv.attempts.length, 1, "the kiosk only has nothing new");
  await tv.run(60_000);
  assert.ok(tv.attempts.length >= 2, "forty seconds without a word are too many");
  assert.equal(tv.parts.state.textContent, "");
}

// 3. The browser mends a short break by itself, and nobody is told.
{
  const tv = new Tv(lives);
  await tv.run(1_000);
  tv.live.breakOff();
  await tv.run(2_000);
  assert.equal(tv.parts.state.textContent, "", "too short to be told");
  lives(tv, tv.live);
  await tv.run(10_000);
  assert.equal(tv.parts.state.textContent, "");
  tv.live.breakOff();
  await tv.run(5_000);
  assert.equal(tv.parts.state.textContent, "waiting", "a long one is");
}

// 4. A kiosk of another version: the page is loaded anew, once.
{
  const tv = new Tv((tv, line) => { line.say("version", "2"); });
  await tv.run(1_000);
  assert.equal(tv.loads, 1);
}

// 5. The page moved under TLS: the page is loaded anew, which leads on to it.
{
  const tv = new Tv((tv, line) => line.refuse(), () => true);
  await tv.run(1_000);
  assert.equal(tv.loads, 1);
}

// 6. Three weeks with a kiosk that starts anew every night: one board at a time, never dead.
{
  let up = true;
  const tv = new Tv((tv, line) => (up ? lives(tv, line) : line.refuse()));
  for (let day = 0; day < 21; day++) {
    for (let n = 0; n < 200; n++) { tv.live.say("alive", "1"); await tv.run(15_000); }
    up = false;
    tv.live.refuse();
    await tv.run(120_000);
    up = true;
    await tv.run(61_000);
    assert.equal(tv.parts.state.textContent, "", `day ${day}`);
    assert.ok(tv.timers.size <= 2, `${tv.timers.size} timers`);
  }
}
console.log("the board came back every time");
