package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.ChangedFields;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.Checked;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.Waivers;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Runs only the rules that read what an edit changed; the findings of the others stand. */
final class FollowedRules implements Inspection {
  private final Supplier<RuleBook> book;
  private final Supplier<Catalog> catalog;
  private Checked checked;
  private PrinterProfile inspected;
  private Map<Finding, MarginNote> notes = new IdentityHashMap<>();
  private volatile Map<String, String> evidence = Map.of();

  FollowedRules(Supplier<RuleBook> book, Supplier<Catalog> catalog) {
    this.book = book;
    this.catalog = catalog;
  }

  @Override
  public List<MarginNote> inspect(OpenPrinter printer) {
    CheckInput input =
        new CheckInput(
            printer.profile(),
            printer.sheet(),
            printer.folder(),
            printer.names(),
            catalog.get(),
            printer.unreadFolder());
    checked =
        checked == null
            ? book.get().run(input)
            : book.get().rerun(checked, input, ChangedFields.between(inspected, printer.profile()));
    inspected = printer.profile();
    List<Finding> open = Waivers.sort(printer.profile(), checked.findings()).open();
    Map<Finding, MarginNote> next = new IdentityHashMap<>();
    for (Finding finding : open) {
      MarginNote known = notes.get(finding);
      next.put(finding, known == null ? FoundNote.of(finding) : known);
    }
    notes = next;
    evidence =
        open.stream()
            .collect(Collectors.toMap(Finding::key, Finding::evidence, (first, other) -> first));
    return open.stream().map(next::get).toList();
  }

  @Override
  public Optional<String> evidence(String key) {
    return Optional.ofNullable(evidence.get(key));
  }
}
