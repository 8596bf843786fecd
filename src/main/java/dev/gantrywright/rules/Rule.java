package dev.gantrywright.rules;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** What a rule says about itself. Its page stands under {@code <family>/<slug>.md}. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface Rule {
  /** {@code GW-}, the family's letter, three digits; never used again once given up. */
  String id();

  /** Names the fault, never the remedy. */
  String slug();

  Level level();

  Family family();

  /** The best that its remedies offer. */
  Fix fix() default Fix.NONE;

  /** One line without a full stop. */
  String summary();

  /**
   * Profile fields that it reads, as patterns: {@code *} is one segment, {@code **} the rest. A
   * change of any other field cannot change what it finds.
   */
  String[] reads();

  /** Where the fact behind the rule is published. */
  String source();

  /** Whether a rule offers a remedy, and of which kind. */
  enum Fix {
    NONE,
    SHOW_ONLY,
    REVIEW,
    SAFE
  }
}
