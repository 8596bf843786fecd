package dev.gantrywright.link.practice;

import dev.gantrywright.link.practice.EndstopInput.Level;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the practice board's inputs read at a moment: wiring, touches and faults together. */
final class Contacts {
  private record Touch(boolean touched, long since) {}

  private final PracticeSetup setup;
  private final long start;
  private final long seed;
  private final Map<String, Touch> byHand = new HashMap<>();

  Contacts(PracticeSetup setup, long start, long seed) {
    this.setup = setup;
    this.start = start;
    this.seed = seed;
    setup.touched().forEach(name -> byHand.put(name, new Touch(true, start)));
  }

  void touch(String name, boolean touched, long now) {
    byHand.put(name, new Touch(touched, now));
  }

  /** What the firmware reads: its input's level, turned round where it was told so. */
  boolean reads(EndstopInput input, List<Fault> faults, long now) {
    Level level = level(input, faults, now);
    boolean high =
        level == Level.FLOATING ? noise(input.name(), now, 3_000_000L) : level == Level.HIGH;
    return high != input.inverted();
  }

  private Level level(EndstopInput input, List<Fault> faults, long now) {
    String source = input.name();
    for (Fault fault : faults) {
      if (fault instanceof Fault.Broken b && b.endstop().equals(input.name())) {
        return input.open();
      }
      if (fault instanceof Fault.Swapped s) {
        if (s.one().equals(input.name())) {
          source = s.other();
        } else if (s.other().equals(input.name())) {
          source = s.one();
        }
      }
    }
    EndstopInput wired = named(source).orElse(input);
    EndstopInput plugged =
        new EndstopInput(
            input.name(), wired.contact(), input.pull(), wired.sensor(), input.inverted());
    return plugged.level(touched(source, faults, now));
  }

  private Optional<EndstopInput> named(String name) {
    return setup.endstops().stream().filter(e -> e.name().equals(name)).findFirst();
  }

  private boolean touched(String name, List<Fault> faults, long now) {
    Touch touch = touchOf(name, now);
    boolean touched = touch.touched();
    for (Fault fault : faults) {
      if (fault instanceof Fault.Shared s) {
        String other = s.one().equals(name) ? s.other() : s.other().equals(name) ? s.one() : null;
        touched |= other != null && touchOf(other, now).touched();
      }
    }
    for (Fault fault : faults) {
      if (fault instanceof Fault.Stuck s && s.endstop().equals(name)) {
        return s.touched();
      }
      if (fault instanceof Fault.Bounce b
          && b.endstop().equals(name)
          && now - touch.since() < b.millis() * 1e6
          && touch.since() != start) {
        touched = noise(name, now, 500_000L);
      }
      if (fault instanceof Fault.Noise n && n.endstop().equals(name) && anotherTouched(name, now)) {
        touched = noise(name, now, 2_000_000L);
      }
    }
    return touched;
  }

  private boolean anotherTouched(String name, long now) {
    return setup.endstops().stream()
        .anyMatch(e -> !e.name().equals(name) && touchOf(e.name(), now).touched());
  }

  private Touch touchOf(String name, long now) {
    Touch last = byHand.getOrDefault(name, new Touch(false, start));
    for (Press press : setup.presses()) {
      if (press.name().equals(name)) {
        long from = start + (long) (press.fromSeconds() * 1e9);
        long until = start + (long) (press.untilSeconds() * 1e9);
        if (now >= from && from >= last.since()) {
          last = now < until ? new Touch(true, from) : new Touch(false, until);
        }
      }
    }
    return last;
  }

  /** The same every time for the same moment: a mixed hash (SplitMix64 finaliser). */
  private boolean noise(String name, long now, long stepNanos) {
    long z = seed + name.hashCode() * 0x9E3779B97F4A7C15L + (now - start) / stepNanos;
    z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
    z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
    return ((z ^ (z >>> 31)) & 1) == 0;
  }
}
