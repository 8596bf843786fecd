package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.rules.RuleBook;
import java.util.List;

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
    return follow().inspect(printer);
  }

  @Override
  public Inspection follow() {
    return new FollowedRules(book, catalog);
  }
}
