"""Times the planners against OR-Tools CP-SAT on the same problems, and holds their optima equal.

    pip install ortools==9.15.6755
    python3 tests/references/cp_sat.py PINLADDER [--quick] [--kind NAME]... [--limit SECONDS]

Problems are made from seeds and written to tests/references/problems/, so that each can be run
again: `pinladder solve ladder --times 50 < FILE`. CP-SAT gets each of its models (see the folder
cp_sat) with one worker and with two, and the better of both counts: with one worker the
processor's time, with two the time that passed, so that a busy machine is no disadvantage to it.
Building the model does not count. Ours is the median of many runs on one thread, as it passed.
Exit 1 when two proven optima differ. Not part of `cargo test`.

Refuses: to call a time a ratio's end when CP-SAT was cut off; then the ratio is "at least".
"""

import argparse
import json
import pathlib
import platform
import resource
import statistics
import subprocess
import sys
from fractions import Fraction

import ortools
from ortools.sat.python import cp_model

from cp_sat import ladder, problems, rotation

FOLDER = pathlib.Path(__file__).with_name("problems")
WAYS = {"counts": ladder.counts, "positions": ladder.positions, "stays": ladder.stays,
        "order": rotation.ordered}

# Name, planner, problem from a seed, how many, CP-SAT's models.
KINDS = [
    ("ladder-inside-6x7-kg", "ladder", lambda s: problems.ladder(s, 6, 7, "kg", True), 20,
     ("counts", "stays")),
    ("ladder-inside-6x7-lb", "ladder", lambda s: problems.ladder(s, 6, 7, "lb", True), 10,
     ("counts", "stays")),
    ("ladder-any-3x4-kg", "ladder", lambda s: problems.ladder(s, 3, 4, "kg", False), 10,
     ("positions", "stays")),
    ("ladder-any-6x7-kg", "ladder", lambda s: problems.ladder(s, 6, 7, "kg", False), 4,
     ("positions", "stays")),
    ("ladder-loaded-inside-6x7-kg", "ladder",
     lambda s: problems.ladder(s, 6, 7, "kg", True, loaded=True), 10, ("counts", "stays")),
    ("ladder-loaded-any-3x4-kg", "ladder",
     lambda s: problems.ladder(s, 3, 4, "kg", False, loaded=True), 10, ("positions", "stays")),
    ("ladder-loaded-any-6x7-kg", "ladder",
     lambda s: problems.ladder(s, 6, 7, "kg", False, loaded=True), 4, ("stays",)),
    ("rotation-2x3", "rotation", lambda s: problems.rotation(s, 2, 3, 7), 10, ("order",)),
    ("rotation-3x4", "rotation", lambda s: problems.rotation(s, 3, 4, 7), 4, ("order",)),
    ("rotation-4x6", "rotation", lambda s: problems.rotation(s, 4, 6, 7), 4, ("order",)),
    # Over four denominations alone, so that CP-SAT proves some, too.
    ("rotation-any-2x3-few", "rotation", lambda s: problems.rotation(s, 2, 3, 4, False), 10,
     ("order",)),
    ("rotation-any-2x3", "rotation", lambda s: problems.rotation(s, 2, 3, 7, False), 4,
     ("order",)),
    ("rotation-any-4x6", "rotation", lambda s: problems.rotation(s, 4, 6, 7, False), 4,
     ("order",)),
]


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("pinladder")
    parser.add_argument("--quick", action="store_true", help="three problems a kind, 5 s each")
    parser.add_argument("--kind", action="append", choices=[kind[0] for kind in KINDS])
    parser.add_argument("--limit", type=float, default=60.0, help="seconds that CP-SAT may take")
    args = parser.parse_args()
    limit = 5.0 if args.quick else args.limit
    print(f"{processor()}; Python {platform.python_version()}, OR-Tools {ortools.__version__}; "
          f"CP-SAT is cut off after {limit:g} s\n")
    print("| problem | CP-SAT's model | problems | ours, median | ours, most | CP-SAT, median |"
          " ratio of medians | both proved, equal | ours proved | CP-SAT proved |")
    print("|---|---|---|---|---|---|---|---|---|---|")
    differ = []
    for name, planner, make, count, ways in KINDS:
        if not args.kind or name in args.kind:
            count = min(count, 3) if args.quick else count
            differ += compare(args.pinladder, name, planner, make, count, ways, limit)
    for line in differ:
        print(line)
    sys.exit(1 if differ else 0)


def compare(program, name, planner, make, count, ways, limit):
    """One row a model; gives the problems whose proven optima differ."""
    asked = [(file_of(name, seed), make(seed)) for seed in range(1, count + 1)]
    ours = [ask(program, planner, file, problem) for file, problem in asked]
    differ = []
    for way in ways:
        theirs = [better(WAYS[way], problem, limit) for _, problem in asked]
        both = [(a, b) for a, b in zip(ours, theirs) if a["proven"] and b["proven"]]
        equal = sum(a["cost"] == b["cost"] for a, b in both)
        for (file, _), a, b in zip(asked, ours, theirs):
            wrong = b["proven"] and (a["cost"] < b["cost"] or (a["proven"] and a["cost"] > b["cost"]))
            # What CP-SAT found without a proof must not beat what we call proven either.
            if wrong or (a["proven"] and b["cost"] is not None and b["cost"] < a["cost"]):
                differ.append(f"{file.name}, {way}: ours {float(a['cost'])} s, "
                              f"CP-SAT {float(b['cost'])} s")
        mine = statistics.median(row["seconds"] for row in ours)
        least = statistics.median(row["seconds"] for row in theirs)
        proved = sum(row["proven"] for row in theirs)
        # The median is known when more than half were proven.
        at_least = "" if 2 * proved > count else "at least "
        print(f"| {name} | {way} | {count} | {told(mine)} | {told(max(r['seconds'] for r in ours))}"
              f" | {at_least}{told(least)} | {at_least}{least / mine:,.0f} | {equal} of {len(both)} |"
              f" {sum(row['proven'] for row in ours)} | {proved} |", flush=True)
    return differ


def file_of(name, seed):
    return FOLDER / f"{name}-{seed:02}.json"


def ask(program, planner, file, problem):
    """What our planner says, and its median time; the file is what it was asked."""
    FOLDER.mkdir(exist_ok=True)
    file.write_text(json.dumps(problem, indent=1) + "\n")
    times = "50" if planner == "ladder" else "5"
    run = subprocess.run(
        [program, "solve", planner, "--times", times, "--within", "30"],
        input=json.dumps(problem), capture_output=True, text=True, check=False,
    )
    answer = json.loads(run.stdout, parse_float=Fraction, parse_int=Fraction)
    assert run.returncode == 0, f"{file.name}: {answer}"
    # Whole numbers again where they count turns.
    plain = json.loads(run.stdout)
    if planner == "ladder":
        cost, recounted, proven = answer["cost_s"], ladder.recounted(problem, plain), True
    else:
        cost, recounted = answer["ends_s"], rotation.recounted(problem, plain)
        proven = plain["proven"]
    assert cost == recounted, f"{file.name}: said {float(cost)} s, counted {float(recounted)} s"
    return {"cost": cost, "proven": proven, "seconds": float(answer["median_us"]) / 1e6}


def better(way, problem, limit):
    """CP-SAT with one worker and with two: the one that proved sooner; if neither did, the one
    that had less of the processor, so that "at least" is no overstatement."""
    runs = [solve(way, problem, limit, workers) for workers in (1, 2)]
    return min(runs, key=lambda run: (not run["proven"], run["seconds"]))


def solve(way, problem, limit, workers):
    scaled, model = way(problem)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = workers
    solver.parameters.max_time_in_seconds = limit
    before = processor_s()
    status = solver.solve(model)
    used = processor_s() - before
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    assert status != cp_model.INFEASIBLE, "CP-SAT says that it cannot be done"
    return {
        "proven": status == cp_model.OPTIMAL,
        "cost": scaled.seconds(solver.objective_value) if found else None,
        "seconds": min(used, solver.wall_time) if workers == 1 else solver.wall_time,
    }


def processor_s():
    used = resource.getrusage(resource.RUSAGE_SELF)
    return used.ru_utime + used.ru_stime


def processor():
    with open("/proc/cpuinfo", encoding="utf-8") as lines:
        names = [line.split(":")[1].strip() for line in lines if line.startswith("model name")]
    return f"{names[0]}, {len(names)} cores"


def told(seconds):
    for unit, size in (("s", 1), ("ms", 1e-3)):
        if seconds >= size:
            return f"{seconds / size:.3g} {unit}"
    return f"{seconds / 1e-6:.3g} us"


if __name__ == "__main__":
    main()
