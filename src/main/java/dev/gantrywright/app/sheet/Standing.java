package dev.gantrywright.app.sheet;

import dev.gantrywright.app.record.EventWords;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.StateDifference;
import dev.gantrywright.report.FindingsText;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Sign;
import dev.gantrywright.rules.Level;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far the work on a printer has come, a line for each stage from Check to Prove. */
final class Standing {
  private final Subject subject;

  private Standing(Subject subject) {
    this.subject = subject;
  }

  static List<Block.Fact> of(Subject subject) {
    Standing standing = new Standing(subject);
    List<Block.Fact> lines = new ArrayList<>();
    lines.add(standing.check());
    lines.add(standing.write());
    lines.add(standing.build());
    lines.add(standing.load());
    lines.add(standing.prove());
    return lines;
  }

  private Block.Fact check() {
    Sign sign =
        subject.findings().count(Level.ERROR) > 0
            ? Sign.ERROR
            : subject.findings().count(Level.WARNING) > 0 ? Sign.WARNING : Sign.FINE;
    return Texts.fact("Check", FindingsText.counts(subject.findings()), sign);
  }

  private Block.Fact write() {
    Optional<Event> export = subject.last(EventKind.EXPORT);
    if (export.isEmpty()) {
      return open("Write");
    }
    int changed = changedSince(export.get());
    return changed == 0
        ? done("Write", export.get())
        : Texts.fact(
            "Write",
            Texts.when(export.get())
                + "; since then "
                + (changed < 0 ? "the profile has changed" : changed(changed)),
            Sign.WARNING);
  }

  private static String changed(int count) {
    return Texts.count(count, "value")
        + " of the profile "
        + (count == 1 ? "has changed" : "have changed");
  }

  /** How many values differ from what they were; -1 where that state is not kept. */
  private int changedSince(Event event) {
    if (event.state().equals(subject.state().sha256())) {
      return 0;
    }
    Optional<ProfileState> then = subject.past().state(event);
    if (then.isEmpty()) {
      return -1;
    }
    try {
      PrinterProfile before = then.get().profile();
      return StateDifference.of(before, subject.profile()).size();
    } catch (ProfileProblem newer) {
      return -1;
    }
  }

  private Block.Fact build() {
    Optional<Event> build = subject.last(EventKind.BUILD);
    if (build.isEmpty()) {
      return open("Build");
    }
    if (!build.get().facts().path("good").asBoolean(false)) {
      return Texts.fact("Build", words(build.get()), Sign.ERROR);
    }
    return after(EventKind.EXPORT, build.get())
        ? done("Build", build.get())
        : Texts.fact("Build", words(build.get()) + "; older than the patched folder", Sign.WARNING);
  }

  private Block.Fact load() {
    Optional<Event> load = subject.last(EventKind.LOAD);
    if (load.isEmpty()) {
      return open("Load");
    }
    boolean known =
        subject
            .goodBuild()
            .map(build -> build.facts().path("image").path("sha256"))
            .filter(load.get().facts().path("sha256")::equals)
            .isPresent();
    return known
        ? done("Load", load.get())
        : Texts.fact(
            "Load", words(load.get()) + "; not the image of the last good build", Sign.WARNING);
  }

  private Block.Fact prove() {
    Optional<Event> proof = subject.last(EventKind.PROOF);
    if (proof.isEmpty()) {
      return open("Prove");
    }
    if (!proof.get().facts().path("passed").asBoolean(false)) {
      return Texts.fact("Prove", words(proof.get()), Sign.ERROR);
    }
    if (proof.get().facts().path("practice").asBoolean(false)) {
      return Texts.fact("Prove", words(proof.get()) + "; the machine itself not yet", Sign.WARNING);
    }
    return after(EventKind.LOAD, proof.get())
        ? done("Prove", proof.get())
        : Texts.fact("Prove", words(proof.get()) + "; older than the load", Sign.WARNING);
  }

  /** Whether an event stands behind the last one of a kind; where there is none, it does. */
  private boolean after(EventKind kind, Event event) {
    return subject.last(kind).map(last -> last.number() < event.number()).orElse(true);
  }

  private static String words(Event event) {
    return Texts.when(event) + ": " + EventWords.of(event);
  }

  private static Block.Fact done(String stage, Event event) {
    return Texts.fact(stage, words(event), Sign.FINE);
  }

  private static Block.Fact open(String stage) {
    return Texts.fact(stage, "not done yet", Sign.OPEN);
  }
}
