#!/usr/bin/env bash
# Time and memory to prove many practice boards at once, each on an RFC 2217 port of its own.
# usage: docs/benchmarks/many-boards.sh [BOARDS] [AT_ONCE]     (after: mvn -q -B test-compile)
set -eu
cd "$(dirname "$0")/../.."
[ -f target/test.classpath ] || mvn -q -o -B dependency:build-classpath -Dmdep.includeScope=test -Dmdep.outputFile=target/test.classpath
java -XX:+UseSerialGC -Xmx256m ${JAVA_MORE:-} -cp "target/classes:target/test-classes:$(cat target/test.classpath)" \
  dev.gantrywright.app.ManyBoardsBenchmark "${1:-200}" "${2:-32}"
