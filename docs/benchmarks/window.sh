#!/usr/bin/env bash
# Measures the window, headless: a keystroke to findings and plan with 10,000 settings more in the
# folder, in a header of their own and in the header that is edited; twelve strips at 50 Hz; a log of
# 1,000,000 lines, as fast as full-speed USB carries them and as fast as they are read; the first window against a bare one, without and with an archive of classes.
# usage: docs/benchmarks/window.sh [keystroke|keystroke-own|keystroke-same|streams|start|classes]   (after: mvn -q -B test-compile)
set -eu
cd "$(dirname "$0")/../.."
mvn -o -q -B dependency:build-classpath -Dmdep.includeScope=test -Dmdep.outputFile=target/test.classpath
[ -f target/window-benchmark.jar ] && rm target/window-benchmark.jar
# Only classes in jars go into an archive.
jar -c -f target/window-benchmark.jar -C target/classes . -C target/test-classes dev/gantrywright/ui
classes="target/window-benchmark.jar:$(cat target/test.classpath)"
run() {
  # The collector, the room for what is new and the room for classes are those with which the application image starts.
  java -Xmx1500m -XX:+UseSerialGC -Xmn256m -XX:MetaspaceSize=128m ${archive:-} -Dglass.platform=Monocle -Dmonocle.platform=Headless -Dprism.order=sw \
    -Djava.awt.headless=true -Dheadless.geometry=2000x1200-32 -cp "$classes" \
    dev.gantrywright.ui.WindowBenchmark "$1" 2>/dev/null
}
what=${1:-all}
if [ "$what" = classes ]; then
  # What the toolkit's thread loads until the demo printer stands there, in that order: WarmUp's list.
  archive="-Xlog:class+load:file=target/classes.log:tid" run classes > target/classes.out
  thread=$(grep -F ' dev.gantrywright.ui.WorkbenchWindow ' target/classes.log | sed 's/\].*/]/')
  grep -F "$thread" target/classes.log | grep 'source: file:' | sed 's/^\[[0-9]*\] //; s/ source:.*//' \
    | grep -vE '^com\.sun\.(glass|prism)\.|/0x|Benchmark|Figures' > src/main/resources/dev/gantrywright/ui/first-classes.txt
  wc -l src/main/resources/dev/gantrywright/ui/first-classes.txt
  exit
fi
uptime
case $what in all | keystroke | keystroke-own) run keystroke ;; esac
case $what in all | keystroke | keystroke-same) run keystroke-same ;; esac
if [ "$what" = all ] || [ "$what" = streams ]; then
  run trace
  run log-usb
  run log
fi
if [ "$what" = all ] || [ "$what" = start ]; then
  for i in 1 2 3 4 5; do run bare; run window; run demo; done
  archive="-XX:ArchiveClassesAtExit=target/bare.jsa" run bare > /dev/null
  archive="-XX:ArchiveClassesAtExit=target/window.jsa" run window > /dev/null
  echo "with an archive of classes"
  for i in 1 2 3 4 5; do
    archive="-XX:SharedArchiveFile=target/bare.jsa" run bare
    archive="-XX:SharedArchiveFile=target/window.jsa" run window
  done
fi
