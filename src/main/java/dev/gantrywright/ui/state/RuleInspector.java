package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.machine.Waiver;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.Waivers;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Runs the rule book and turns its findings into margin notes. */
public final class RuleInspector implements Inspector {
  private final RuleBook book;
  private final Catalog catalog;

  public RuleInspector(RuleBook book, Catalog catalog) {
    this.book = book;
    this.catalog = catalog;
  }

  @Override
  public List<Remark> inspect(OpenPrinter printer) {
    return Waivers.sort(printer.profile(), findings(printer)).open().stream()
        .map(RuleInspector::remark)
        .toList();
  }

  private List<Finding> findings(OpenPrinter printer) {
    return book.check(
        new CheckInput(
            printer.profile(), printer.sheet(), printer.folder(), printer.names(), catalog));
  }

  /** The profile with a remark set aside; the same where the remark is no longer there. */
  public PrinterProfile waived(OpenPrinter printer, Remark remark, String reason, String date) {
    PrinterProfile p = printer.profile();
    Map<String, Waiver> waivers = new LinkedHashMap<>(p.waivers());
    for (Finding finding : findings(printer)) {
      if (finding.key().equals(remark.key())) {
        waivers.put(finding.key(), Waivers.waive(finding, reason, date));
      }
    }
    return new PrinterProfile(
        p.format(),
        p.name(),
        p.notes(),
        p.board(),
        p.serial(),
        p.kinematics(),
        p.axes(),
        p.endstops(),
        p.heaters(),
        p.supply(),
        p.build(),
        p.link(),
        waivers,
        p.printing(),
        p.more());
  }

  private static Remark remark(Finding finding) {
    boolean field = finding.path().indexOf(':') < 0;
    return new Remark(
        finding.id(),
        finding.slug(),
        finding.family().title(),
        Gravity.valueOf(finding.level().name()),
        finding.path(),
        field ? PlaceNames.field(finding.path()) : finding.path(),
        sentence(finding.evidence()),
        sentence(finding.summary()) + " " + Texts.of("remark.source", finding.source()),
        finding.remedies().stream().map(RuleInspector::fix).toList());
  }

  /** Begins with a capital and ends with a stop, as a remark in a margin does. */
  private static String sentence(String words) {
    String text = words.strip();
    if (text.isEmpty()) {
      return text;
    }
    String begun = Character.toUpperCase(text.charAt(0)) + text.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  private static Remark.Fix fix(Remedy remedy) {
    boolean ours =
        remedy.applicable()
            && remedy.edits().stream().allMatch(edit -> edit instanceof Remedy.SetField);
    Remark.Safety safety =
        ours ? Remark.Safety.valueOf(remedy.safety().name()) : Remark.Safety.SHOW_ONLY;
    return new Remark.Fix(remedy.title(), safety, profile -> apply(remedy, profile));
  }

  private static PrinterProfile apply(Remedy remedy, PrinterProfile profile) {
    PrinterProfile now = profile;
    for (Remedy.Edit edit : remedy.edits()) {
      if (edit instanceof Remedy.SetField set) {
        try {
          now = ProfileValues.with(now, set.path(), set.value());
        } catch (ProfileProblem refused) {
          // A remedy that the field does not take changes nothing; the remark stays.
          return profile;
        }
      }
    }
    return now;
  }
}
