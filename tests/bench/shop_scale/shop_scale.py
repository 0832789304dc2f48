#!/usr/bin/env python3
"""The table of generated shops: shop_scale.py PROGRAM [PIECES...]. PROGRAM is shop_scale; each order is planned quickly, then with 1 and 10 s.

Also prints how the time of the quick plan and the memory grow: the exponent e of pieces^e between the smallest and the largest order of 10 or more.
"""
import math
import subprocess
import sys


def line(program, *options):
    done = subprocess.run([program, *map(str, options)], capture_output=True, text=True, check=False)
    if done.stderr:
        print(done.stderr, file=sys.stderr, end="")
    return done.stdout.strip().split(",")


def exponent(first, last):
    return math.log(last[1] / first[1]) / math.log(last[0] / first[0])


def main():
    program, sizes = sys.argv[1], [int(n) for n in sys.argv[2:]] or [1, 10, 30, 100, 300]
    print("| drying places | pieces | events | quick: s | days | gap | 1 s: s | days | gap | 10 s: s | days | gap | MB |")
    print("|---|---|---|---|---|---|---|---|---|---|---|---|---|")
    for shop in ([], ["--narrow"]):
        times, memory = [], []
        for pieces in sizes:
            row = [line(program, "--pieces", pieces, "--seconds", s, *shop) for s in (0, 1, 10)]
            cells = [cell for r in row for cell in (r[3], r[5], r[6] + " %" + (" proven" if r[7] == "yes" else ""))]
            print("| %s | %d | %s | %s | %s |" % (row[0][0], pieces, row[0][4], " | ".join(cells), row[0][8]), flush=True)
            if pieces >= 10:
                times.append((pieces, float(row[0][3])))
                memory.append((pieces, float(row[0][8])))
        if len(times) > 1:
            print("time grows by the power %.1f, memory by %.1f" % (exponent(times[0], times[-1]), exponent(memory[0], memory[-1])))


if __name__ == "__main__":
    main()
