#!/usr/bin/env bash
# The header engine in process: JMH on scanning, reading, and evaluation after one edit; what a folder
# keeps in memory; the fuzz run; how time grows with the size of hostile texts. Needs avr-libc. Run
# from the project's root after "mvn -q -B -DskipTests package", on a machine with nothing else to do.
# With "jmh", "memory", "fuzz" or "growth" as argument only that part; "fuzz COUNT SEED" and
# "growth PART-OF-A-ROW…" for a run of its own.
set -eu
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
headers=/usr/lib/avr/include/avr

jmh() {
  mvn -q -B -Pbenchmark dependency:build-classpath -Dmdep.outputFile="$out/classpath" -Dmdep.includeScope=test
  classpath="target/classes:$(cat "$out/classpath")"
  mkdir -p "$out/classes"
  javac -d "$out/classes" -cp "$classpath" -processorpath "$classpath" docs/benchmarks/HeaderBenchmark.java
  java -cp "$out/classes:$classpath" org.openjdk.jmh.Main -foe true -jvmArgs "-Dheaders=$headers" \
    -rf csv -rff "$out/jmh.csv" >"$out/jmh.log"
  megabytes=$(cat "$headers"/io*.h | wc -c | awk '{ print $1 / 1e6 }')
  echo "$(ls "$headers"/io*.h | wc -l) device headers, $megabytes MB, one thread, mean and 99.9 % interval:"
  awk -F, -v mb="$megabytes" '
    { gsub(/"/, "") }
    $1 ~ /HeaderBenchmark\.[a-z_]+$/ {
      sub(/.*\./, "", $1)
      printf "%-26s %8.3f ms (+- %.3f)", $1, $5, $6
      print ($1 ~ /^(scan|read)/ ? sprintf(" = %.0f MB/s", mb / $5 * 1000) : "")
    }
    $1 ~ /edit_evaluate.*p0.99$/ { sub(/:.*/, "", $1); sub(/.*\./, "", $1); printf "%-26s %8.3f ms at p99\n", $1, $5 }
  ' "$out/jmh.csv"
}

memory() { java -cp target/classes docs/benchmarks/HeaderMemory.java "$headers"; }
fuzz() { java -cp target/classes docs/benchmarks/FuzzHeaders.java "${1:-200000}" "${2:-1}"; }
growth() { java -cp target/classes docs/benchmarks/GrowHeaders.java "$@"; }

case ${1:-all} in
  jmh) jmh ;;
  memory) memory ;;
  fuzz) shift; fuzz "$@" ;;
  growth) shift; growth "$@" ;;
  *) jmh; memory; fuzz; growth ;;
esac
