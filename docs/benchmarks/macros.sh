#!/usr/bin/env bash
# Whole-process times, in turns: the verb macros over all device headers of avr-libc, started with the
# launcher target/gantrywright and with plain "java -jar", and Universal Ctags listing their definitions.
# Needs bash, avr-libc, universal-ctags; run from the project's root on a machine with nothing else to
# do, after "mvn -q -B -DskipTests package". usage: docs/benchmarks/macros.sh [RUNS]
set -eu
runs=${1:-9}
files=(/usr/lib/avr/include/avr/io*.h)
launcher() { target/gantrywright macros "${files[@]}"; }
plain() { java -jar target/gantrywright.jar macros "${files[@]}"; }
ctags_() { ctags --languages=C --langmap=C:.h --kinds-C=d -f /dev/null "${files[@]}"; }
ms() { # milliseconds of one command
  local from to
  from=$(date +%s%N)
  "$@" > /dev/null 2>&1
  to=$(date +%s%N)
  echo $(((to - from) / 1000000))
}
out=$(mktemp -d)
for ((i = 0; i <= runs; i++)); do
  for peer in launcher plain ctags_; do
    took=$(ms "$peer")
    [ "$i" -eq 0 ] || echo "$took" >> "$out/$peer"
  done
done
echo "${#files[@]} files, $(cat "${files[@]}" | wc -c) bytes, $runs runs each in turn, first round not counted"
for peer in launcher plain ctags_; do
  sort -n "$out/$peer" | awk -v peer="${peer%_}" \
    '{v[NR] = $1} END {printf "%-9s median %d ms (%d to %d)\n", peer, v[int((NR + 1) / 2)], v[1], v[NR]}'
done
rm -r "$out"
