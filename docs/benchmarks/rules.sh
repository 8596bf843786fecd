#!/usr/bin/env bash
# Times the rule book (JMH) and "check" over many profiles. Run from the project's root after
# mvn -q -B -DskipTests package
# With "jmh" or "many" as argument only that half. The figures of the last run: rules-figures.md.
set -eu
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
jar=target/gantrywright.jar

jmh() {
  mvn -q -B -Pbenchmark dependency:build-classpath -Dmdep.outputFile="$out/classpath" -Dmdep.includeScope=test
  classpath="target/classes:$(cat "$out/classpath")"
  mkdir -p "$out/classes"
  javac -d "$out/classes" -cp "$classpath" -processorpath "$classpath" docs/benchmarks/RuleBookBenchmark.java
  java -cp "$out/classes:$classpath" org.openjdk.jmh.Main -f 1 -foe true -rf text -rff "$out/jmh.txt" >"$out/jmh.log"
  grep -E 'Benchmark|p0.50|p0.95|[a-zA-Z] +(N/A|[a-z])[^:]* sample' "$out/jmh.txt"
}

# Elapsed and processor time of one call; its answers are thrown away, as a file would take them.
timed() {
  label=$1; shift
  start=$(date +%s.%N)
  status=0
  TIMEFORMAT='%R s, processor %U + %S s'
  echo -n "$label: "
  { time java "$@" >/dev/null 2>&1 || status=$?; } 2>&1
}

many() {
  for kind in alike varied; do
    for count in 1000 2500 5000 10000; do
      python3 docs/benchmarks/many-profiles.py "$count" "$out/$kind-$count" "$kind"
    done
    for count in 1000 2500 5000 10000 10000; do
      timed "$count $kind profiles, text" -jar "$jar" check "$out/$kind-$count"
    done
  done
  for format in json sarif junit; do
    timed "10000 alike profiles, $format" -jar "$jar" check "$out/alike-10000" --format "$format"
  done
  timed "10000 alike profiles as a fleet" -jar "$jar" fleet "$out/alike-10000"
  for count in 1000 10000; do
    timed "$count alike profiles in 48 MiB of heap, sarif" -Xmx48m -jar "$jar" check "$out/alike-$count" --format sarif
    java -Xmx48m -Xlog:gc:file="$out/gc.log" -jar "$jar" check "$out/alike-$count" >/dev/null || true
    echo "  largest heap before a collection: $(grep -oE '[0-9]+M->' "$out/gc.log" | tr -d 'M>-' | sort -n | tail -1) MiB, after one: $(grep -oE '>[0-9]+M' "$out/gc.log" | tr -d 'M>' | sort -n | tail -1) MiB"
  done
}

case ${1:-all} in
  jmh) jmh ;;
  many) many ;;
  *) jmh; many ;;
esac
