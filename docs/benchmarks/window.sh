#!/usr/bin/env bash
# Measures the window, headless: keystroke to findings in a folder of 10,000 settings, the trace of
# twelve strips at 50 Hz, and the first window against a bare one.
# usage: docs/benchmarks/window.sh   (after: mvn -q -B test-compile)
set -eu
cd "$(dirname "$0")/../.."
mvn -o -q -B dependency:build-classpath -Dmdep.includeScope=test -Dmdep.outputFile=target/test.classpath
run() {
  java -Xmx1500m -Dglass.platform=Monocle -Dmonocle.platform=Headless -Dprism.order=sw \
    -Djava.awt.headless=true -Dheadless.geometry=2000x1200-32 \
    -cp "target/classes:target/test-classes:$(cat target/test.classpath)" \
    dev.gantrywright.ui.WindowBenchmark "$1" 2>/dev/null
}
uptime
run keystroke
run trace
for i in 1 2 3 4 5; do run bare; run window; done
