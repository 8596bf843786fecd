#!/usr/bin/env bash
# Whole-process times, in turns: the verb macros over all device headers of avr-libc, and Universal
# Ctags listing their definitions. Needs bash, avr-libc, universal-ctags; run from the project's root
# after "mvn -q -B -DskipTests package". usage: docs/benchmarks/macros.sh [RUNS] [JAVA OPTIONS...]
set -eu
runs=${1:-9}
[ $# -gt 0 ] && shift
files=(/usr/lib/avr/include/avr/io*.h)
ms() { # milliseconds of one command
  local from to
  from=$(date +%s%N)
  "$@" > /dev/null 2>&1
  to=$(date +%s%N)
  echo $(((to - from) / 1000000))
}
median() { sort -n | awk '{v[NR] = $1} END {print v[int((NR + 1) / 2)] " ms (" v[1] " to " v[NR] ")"}'; }
a=$(mktemp) b=$(mktemp)
for ((i = 0; i <= runs; i++)); do
  x=$(ms java "$@" -jar target/gantrywright.jar macros "${files[@]}")
  y=$(ms ctags --languages=C --langmap=C:.h --kinds-C=d -f /dev/null "${files[@]}")
  [ "$i" -eq 0 ] || { echo "$x" >> "$a"; echo "$y" >> "$b"; }
done
echo "${#files[@]} files, $(cat "${files[@]}" | wc -c) bytes, $runs runs each in turn, first pair not counted"
echo "macros: median $(median < "$a")"
echo "ctags:  median $(median < "$b")"
