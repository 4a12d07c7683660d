"""Holds the bar on two pins against finite elements.

    pip install anastruct==1.7.0
    python3 tests/references/beam.py [PINLADDER]

Each row of beams.csv is built out of beam elements: two supports, a load at each end. Moment,
deflection at the loads and rise at mid-span must agree with the row, and with what
`PINLADDER solve bar` says when the program's path is given. Not part of `cargo test`.

Refuses: to say anything about a real bar. A guide, never a certificate.
"""

import csv
import json
import math
import pathlib
import subprocess
import sys

from anastruct import SystemElements

E_PA = 205e9
GRAVITY = 9.80665
ROWS = pathlib.Path(__file__).with_name("beams.csv")


def elements(d_m, span_m, overhang_m, force_n, sleeve_d_m=None, sleeve_m=0.0):
    """Moment between the supports, rise at mid-span, fall at the loads, by finite elements.

    With a sleeve the outer `sleeve_m` of each overhang is as stiff as a rod of its diameter.
    """
    frame = SystemElements(EA=E_PA * math.pi * d_m**2 / 4, EI=E_PA * math.pi * d_m**4 / 64)
    stops = [-overhang_m, -overhang_m + sleeve_m, 0, span_m / 2, span_m]
    stops += [span_m + overhang_m - sleeve_m, span_m + overhang_m]
    stops = sorted(set(stops))
    for left, right in zip(stops, stops[1:]):
        within = left >= span_m + overhang_m - sleeve_m or right <= -overhang_m + sleeve_m
        d = sleeve_d_m if sleeve_m and within else d_m
        inertia = math.pi * d**4 / 64
        frame.add_element([[left, 0], [right, 0]], EI=E_PA * inertia)
    node = {stop: at + 1 for at, stop in enumerate(stops)}
    frame.add_support_hinged(node[0])
    frame.add_support_roll(node[span_m])
    for end in (stops[0], stops[-1]):
        frame.point_load(node[end], Fy=-force_n)
    frame.solve()
    moved = {stop: frame.get_node_displacements(node[stop])["uy"] for stop in stops}
    moments = [abs(e["Mmax"]) for e in frame.get_element_results()]
    moments += [abs(e["Mmin"]) for e in frame.get_element_results()]
    return max(moments), moved[span_m / 2], -moved[stops[-1]]


def pinladder(program, row):
    """The same from the program."""
    span, overhang = float(row["span_m"]), float(row["overhang_m"])
    problem = {
        "shaft_diameter": f"{row['d_mm']} mm",
        "youngs_modulus_gpa": 205,
        "yield_mpa": 1000,
        "support_span": f"{span} m",
        "load_span": f"{round(span + 2 * overhang, 6)} m",
        "load_per_side": f"{float(row['total_kg']) / 2} kg",
    }
    run = subprocess.run(
        [program, "solve", "bar"], input=json.dumps(problem), capture_output=True, text=True
    )
    answer = json.loads(run.stdout)
    assert run.returncode == 0, answer
    mm = lambda name: float(answer[name].removesuffix(" mm"))
    return answer["moment_nm"], mm("deflection_at_mid_span"), mm("deflection_at_loads"), answer["stress_mpa"]


def main():
    program = sys.argv[1] if len(sys.argv) > 1 else None
    worst_table = worst_program = 0.0
    with ROWS.open() as lines:
        rows = list(csv.DictReader(line for line in lines if not line.startswith("#")))
    for row in rows:
        d, span, overhang = float(row["d_mm"]) / 1e3, float(row["span_m"]), float(row["overhang_m"])
        force = float(row["total_kg"]) / 2 * GRAVITY
        moment, rise, fall = elements(d, span, overhang, force)
        table = float(row["moment_nm"]), float(row["rise_mm"]) / 1e3, float(row["end_mm"]) / 1e3
        for got, wanted in zip((moment, rise, fall), table):
            worst_table = max(worst_table, abs(got / wanted - 1))
        if program:
            said = pinladder(program, row)
            stress = moment / (math.pi * d**3 / 32) / 1e6
            mine = moment, rise * 1e3, fall * 1e3, stress
            for got, wanted in zip(mine, said):
                worst_program = max(worst_program, abs(got / wanted - 1))
    print(f"{len(rows)} bars; finite elements off beams.csv by at most {worst_table:.2e}")
    if program:
        print(f"finite elements off {program} by at most {worst_program:.2e}")
    # How much the simplification leaves out: sleeves of 50 mm on the outer 405 of 480 mm.
    plain = elements(0.028, 1.0, 0.48, 980.665)
    sleeved = elements(0.028, 1.0, 0.48, 980.665, 0.05, 0.405)
    print(
        "with sleeves of 50 mm: moment x %.4f, rise x %.4f, fall at the loads x %.4f"
        % tuple(s / p for s, p in zip(sleeved, plain))
    )
    assert worst_table < 1e-3 and worst_program < 1e-6


if __name__ == "__main__":
    main()
