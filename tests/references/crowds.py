"""Sets the rotation planner's plans and bounds for many lifters beside OR-Tools CP-SAT's.

    pip install ortools==9.15.6755
    python3 tests/references/crowds.py solve [--size 8x6]... [--any] [--count 10] [--seconds 60]
    cargo run --release -p domain --example rotation_evenings 10 8x6 2s > ours
    python3 tests/references/crowds.py join ours...

Both get the seeded evenings of app/domain/tests/rotation/random.rs. `solve` gives CP-SAT two workers
and so many seconds of a processor for each (a busy machine takes longer by the clock), with the
model of cp_sat/rotation.py, and keeps what it found in cp_sat/crowds.csv; what is there is not
solved again. `join` sets our figures beside it. Exit 1 when one's plan ends before the other's
bound. Not part of `cargo test`.
"""

import argparse
import csv
import pathlib
import re
import statistics
import sys
import threading
import time

KEPT = pathlib.Path(__file__).parent / "cp_sat" / "crowds.csv"
FIELDS = ["size", "order", "seed", "ends_s", "at_least_s", "processor_s", "clock_s"]
WORKERS = 2


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("task", choices=["solve", "join"])
    parser.add_argument("ours", nargs="*", help="what rotation_evenings printed")
    parser.add_argument("--size", action="append", help="such as 6x6; several may be given")
    parser.add_argument("--any", action="store_true", help="plates in any order")
    parser.add_argument("--count", type=int, default=10)
    parser.add_argument("--seconds", type=float, default=60.0, help="of each worker")
    args = parser.parse_args()
    if args.task == "join":
        sys.exit(join(args.ours))
    order = "any" if args.any else "big inside"
    for size in args.size or ["6x6", "8x6", "10x5"]:
        for seed in range(args.count):
            if (size, order, seed) not in kept():
                keep(solve(size, order, seed, args.seconds))


def kept():
    if not KEPT.exists():
        return {}
    with KEPT.open() as file:
        return {(r["size"], r["order"], int(r["seed"])): r for r in csv.DictReader(file)}


def keep(row):
    new = not KEPT.exists()
    with KEPT.open("a", newline="") as file:
        rows = csv.DictWriter(file, FIELDS, lineterminator="\n")
        if new:
            rows.writeheader()
        rows.writerow(row)
    print(row, flush=True)


def solve(size, order, seed, seconds):
    from ortools.sat.python import cp_model

    from cp_sat import evenings, rotation

    lifters, turns = map(int, size.split("x"))
    problem = evenings.evening(seed, lifters, turns, order == "big inside")
    scaled, model = rotation.ordered(problem)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = WORKERS
    started, clock = time.process_time(), time.monotonic()
    ended = threading.Event()

    def watch():
        # By the processor, so that what else runs takes nothing from it.
        while not ended.wait(0.2):
            if time.process_time() - started > WORKERS * seconds:
                solver.stop_search()

    watcher = threading.Thread(target=watch)
    watcher.start()
    status = solver.solve(model)
    ended.set()
    watcher.join()
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    return {
        "size": size, "order": order, "seed": seed,
        "ends_s": float(scaled.seconds(solver.objective_value)) if found else "",
        "at_least_s": float(scaled.seconds(solver.best_objective_bound)),
        "processor_s": round(time.process_time() - started, 1),
        "clock_s": round(time.monotonic() - clock, 1),
    }


def told(path):
    """Size, order, and by seed end and bound of what rotation_evenings printed."""
    text = pathlib.Path(path).read_text()
    row = r"^(\d+): ends ([\d.]+) s, at least ([\d.]+) s"
    rows = {int(s): (float(e), float(b)) for s, e, b in re.findall(row, text, re.M)}
    lifters, turns, order = re.search(r"evenings of (\d+) x (\d+), (big inside|any)", text).groups()
    return f"{lifters}x{turns}", order, rows


def join(paths):
    theirs, crossed = kept(), 0
    for path in paths:
        size, order, rows = told(path)
        both = []
        for seed, ours in rows.items():
            row = theirs.get((size, order, seed))
            if row:
                ends = float(row["ends_s"] or "inf")
                both.append((ours, (ends, float(row["at_least_s"]))))
                crossed += min(ours[0], ends) < max(ours[1], both[-1][1][1])
        if not both:
            continue
        over = lambda at: statistics.median(100 * (b[at][0] / b[at][1] - 1) for b in both)
        lead = statistics.median(100 * (b[1][0] / b[0][0] - 1) for b in both)
        bound = statistics.median(100 * (b[0][1] / b[1][1] - 1) for b in both)
        print(f"{size}, {order}, {len(both)} evenings: plan over bound at the median, ours "
              f"{over(0):.1f} %, CP-SAT {over(1):.1f} %; CP-SAT's plan over ours {lead:.1f} %, our "
              f"bound over CP-SAT's {bound:.1f} %")
    return 1 if crossed else 0


if __name__ == "__main__":
    main()
