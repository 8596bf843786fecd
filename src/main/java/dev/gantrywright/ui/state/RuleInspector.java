package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.rules.RuleBook;
import java.util.List;
import java.util.function.Supplier;

/** Runs the rule book and turns its findings into margin notes. */
public final class RuleInspector implements Inspector {
  private final Supplier<RuleBook> book;
  private final Supplier<Catalog> catalog;

  /** Both are first asked for where the first printer is checked. */
  public RuleInspector(Supplier<RuleBook> book, Supplier<Catalog> catalog) {
    this.book = book;
    this.catalog = catalog;
  }

  @Override
  public List<MarginNote> inspect(OpenPrinter printer) {
    return follow().inspect(printer);
  }

  @Override
  public Inspection follow() {
    return new FollowedRules(book, catalog);
  }
}
