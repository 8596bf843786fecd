package dev.gantrywright.image;

/**
 * What a check found.
 *
 * @param id the fault, in words joined by hyphens; never reused
 * @param level how much it weighs
 * @param text what is wrong, one sentence
 * @param evidence the figures that show it
 * @param todo what to do about it
 * @param source the document that says so, or "common practice, no published source"
 */
public record Remark(
    String id, Level level, String text, String evidence, String todo, String source) {
  static final String PRACTICE = "common practice, no published source";

  static Remark error(String id, String text, String evidence, String todo, String source) {
    return new Remark(id, Level.ERROR, text, evidence, todo, source);
  }

  static Remark warning(String id, String text, String evidence, String todo, String source) {
    return new Remark(id, Level.WARNING, text, evidence, todo, source);
  }

  static Remark note(String id, String text, String evidence, String todo, String source) {
    return new Remark(id, Level.NOTE, text, evidence, todo, source);
  }
}
