"""Sets the rotation planner's plans and bounds for many lifters beside OR-Tools CP-SAT's.

    pip install ortools==9.15.6755
    python3 tests/references/crowds.py PINLADDER [--size 8x6]... [--any] [--count 10] [--limit 60]

Each problem is made from a seed; ours gets `--within 2`, CP-SAT 60 s with two workers on the model
of cp_sat/rotation.py. A line each, and the medians of how far each plan lies above each bound. Exit 1
when one's plan ends before the other's bound. Not part of `cargo test`.
"""

import argparse
import json
import statistics
import subprocess
import sys

from ortools.sat.python import cp_model

from cp_sat import problems, rotation


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("pinladder")
    parser.add_argument("--size", action="append", help="such as 6x6; several may be given")
    parser.add_argument("--any", action="store_true", help="plates in any order")
    parser.add_argument("--count", type=int, default=10)
    parser.add_argument("--limit", type=float, default=60.0, help="seconds for CP-SAT")
    args = parser.parse_args()
    crossed = 0
    for size in args.size or ["6x6", "8x6", "10x5"]:
        lifters, turns = map(int, size.split("x"))
        rows = []
        for seed in range(1, args.count + 1):
            problem = problems.rotation(seed, lifters, turns, 7, not args.any)
            ours, theirs = ask(args.pinladder, problem), solve(problem, args.limit)
            best, least = min(ours[0], theirs[0]), max(ours[1], theirs[1])
            crossed += best < least
            rows.append((ours, theirs))
            print(f"{size} {seed}: ours {ours[0]:.0f} s, at least {ours[1]:.0f} s; "
                  f"CP-SAT {theirs[0]:.0f} s, at least {theirs[1]:.0f} s", flush=True)
        gap = lambda of: statistics.median(100 * (of(r)[0] / of(r)[1] - 1) for r in rows)
        lead = statistics.median(100 * (r[1][0] / r[0][0] - 1) for r in rows)
        print(f"{size}: plan over bound at the median, ours {gap(lambda r: r[0]):.1f} %, "
              f"CP-SAT {gap(lambda r: r[1]):.1f} %; CP-SAT's plan over ours {lead:.1f} %")
    sys.exit(1 if crossed else 0)


def ask(program, problem):
    run = subprocess.run([program, "solve", "rotation", "--within", "2"],
                         input=json.dumps(problem), capture_output=True, text=True, check=True)
    answer = json.loads(run.stdout)
    assert abs(answer["ends_s"] - float(rotation.recounted(problem, answer))) < 1e-9
    return answer["ends_s"], answer["at_least_s"]


def solve(problem, limit):
    scaled, model = rotation.ordered(problem)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    solver.parameters.max_time_in_seconds = limit
    status = solver.solve(model)
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    ends = scaled.seconds(solver.objective_value) if found else float("inf")
    return float(ends), float(scaled.seconds(solver.best_objective_bound))


if __name__ == "__main__":
    main()
