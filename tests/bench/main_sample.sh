#!/usr/bin/env bash
# Processor time of the whole program on the main sample: the best and the median of 21 runs, in milliseconds.
cd "$(dirname "$0")/../.." || exit 1
for _ in $(seq 21); do
  (TIMEFORMAT='%3U %3S'; time build/coatday plan samples/library-table/order.yaml >/dev/null) 2>&1
done | awk '{print ($1 + $2) * 1000}' | sort -n | awk '{v[NR] = $1} END {printf "best %.0f ms, median %.0f ms\n", v[1], v[int((NR + 1) / 2)]}'
