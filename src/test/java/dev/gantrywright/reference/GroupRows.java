package dev.gantrywright.reference;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Evaluates the handbook rows of one group with the program's own code. */
public abstract class GroupRows {
  private final String group;
  private final Map<String, Function<HandbookRow, Use>> formulas = new LinkedHashMap<>();

  protected GroupRows(String group) {
    this.group = group;
  }

  public final String group() {
    return group;
  }

  /** Rows with this formula are evaluated so, by this class of the program. */
  protected final void formula(String name, Class<?> by, ToDoubleFunction<HandbookRow> value) {
    formulas.put(name, row -> Use.number(value.applyAsDouble(row), by));
  }

  /** Rows with this formula are looked up so. */
  protected final void lookUp(String name, Function<HandbookRow, Use> use) {
    formulas.put(name, use);
  }

  /** Rows with this formula have no counterpart in the program. */
  protected final void unused(String name, String why) {
    formulas.put(name, row -> Use.none(why));
  }

  /** What the program says about a row that is a plain fact. */
  protected abstract Use fact(HandbookRow row);

  public final Use use(HandbookRow row) {
    if (row.fact()) {
      return fact(row);
    }
    Function<HandbookRow, Use> formula = formulas.get(row.formula());
    return formula == null
        ? Use.none("no part of the program computes " + row.formula())
        : formula.apply(row);
  }
}
