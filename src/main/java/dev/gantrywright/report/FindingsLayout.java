package dev.gantrywright.report;

import java.util.List;

/**
 * How a report on many printers is laid out: a head, a part for each printer, a tail. Head, parts
 * with {@link #between} between them, and tail make one whole document, so that a long run is
 * written as it goes. Stateless, safe for several threads.
 */
public interface FindingsLayout {
  /**
   * A profile that could not be read.
   *
   * @param file as it was given
   * @param problem what, where, what to do, in one line
   */
  record Unread(String file, String problem) {}

  /** What stands before the first part. */
  String head();

  /** One printer's part; may be empty. */
  String part(ProfileFindings profile);

  /** Adds the same to a text. */
  default void write(ProfileFindings profile, Utf8Text text) {
    text.add(part(profile));
  }

  /** What stands between two parts that are not empty. */
  String between();

  /**
   * What stands after the last part.
   *
   * @param unread the profiles that could not be read
   * @param whole false where the run was stopped before its end
   */
  String tail(List<Unread> unread, boolean whole);

  /** The whole document where there is no printer to tell of. */
  default String empty(List<Unread> unread, boolean whole) {
    return head() + tail(unread, whole);
  }

  /** A whole document on printers that are all at hand. */
  default String document(List<ProfileFindings> profiles) {
    return profiles.stream()
        .map(this::part)
        .filter(part -> !part.isEmpty())
        .collect(java.util.stream.Collectors.joining(between(), head(), tail(List.of(), true)));
  }
}
