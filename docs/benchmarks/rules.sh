#!/usr/bin/env bash
# Times the rule book and "check" over many profiles. Run from the project's root after
# mvn -q -B -DskipTests package
set -eu
out=$(mktemp -d)
trap 'rm -rf "$out"' EXIT
mvn -o -q -B dependency:build-classpath -Dmdep.outputFile="$out/classpath" -Dmdep.includeScope=test
java -cp "target/test-classes:target/classes:$(cat "$out/classpath")" \
  dev.gantrywright.rules.RuleBookBenchmark
for count in 2500 5000 10000; do
  python3 docs/benchmarks/many-profiles.py "$count" "$out/$count"
  start=$(date +%s.%N)
  java -jar target/gantrywright.jar check "$out/$count" --format json >"$out/$count.json" || true
  end=$(date +%s.%N)
  echo "$count profiles: $(echo "$end - $start" | bc) s"
done
