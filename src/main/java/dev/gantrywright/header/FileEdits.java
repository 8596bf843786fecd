package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The edits of one file: sorted, disjoint, bound to the bytes that they were made for.
 *
 * @param path the file, relative to its folder
 * @param sha256 fingerprint of the bytes that the edits apply to
 * @param edits in file order
 */
public record FileEdits(String path, String sha256, List<Edit> edits) {
  /**
   * Sorts the edits and checks that they are disjoint.
   *
   * @throws IllegalArgumentException when two overlap; it names both
   */
  public FileEdits {
    List<Edit> sorted = new ArrayList<>(edits);
    sorted.sort(
        Comparator.comparingInt((Edit e) -> e.span().start())
            .thenComparingInt(e -> e.span().end()));
    for (int i = 1; i < sorted.size(); i++) {
      Span before = sorted.get(i - 1).span();
      Span span = sorted.get(i).span();
      boolean twice = before.equals(span) && span.length() == 0;
      if (span.start() < before.end() || twice) {
        throw new IllegalArgumentException(
            path + ": " + sorted.get(i - 1).words() + " and " + sorted.get(i).words() + " overlap");
      }
    }
    edits = List.copyOf(sorted);
  }

  /** Edits of the given bytes. */
  public static FileEdits of(String path, byte[] input, List<Edit> edits) {
    return new FileEdits(path, Digest.sha256(input), edits);
  }

  /**
   * The bytes after the edits.
   *
   * @throws IllegalArgumentException when the input is not what the edits were made for
   */
  public byte[] apply(byte[] input) {
    check(input);
    for (Edit edit : edits) {
      if (edit.span().end() > input.length) {
        throw new IllegalArgumentException(path + ": an edit lies behind the end of the file");
      }
    }
    return spliced(input, edits);
  }

  /** The bytes after sorted, disjoint edits that are known to be meant for them. */
  static byte[] spliced(byte[] input, List<Edit> edits) {
    int length = input.length;
    for (Edit edit : edits) {
      length += edit.growth();
    }
    byte[] out = new byte[length];
    int from = 0;
    int to = 0;
    for (Edit edit : edits) {
      int kept = edit.span().start() - from;
      System.arraycopy(input, from, out, to, kept);
      byte[] replacement = edit.replacement();
      System.arraycopy(replacement, 0, out, to + kept, replacement.length);
      to += kept + replacement.length;
      from = edit.span().end();
    }
    System.arraycopy(input, from, out, to, input.length - from);
    return out;
  }

  /** The edits that turn the result back into the given input. */
  public FileEdits inverse(byte[] input) {
    byte[] result = apply(input);
    List<Edit> back = new ArrayList<>();
    int shift = 0;
    for (Edit edit : edits) {
      int start = edit.span().start() + shift;
      byte[] old = java.util.Arrays.copyOfRange(input, edit.span().start(), edit.span().end());
      back.add(new Edit(new Span(start, start + edit.span().length() + edit.growth()), old));
      shift += edit.growth();
    }
    return of(path, result, back);
  }

  private void check(byte[] input) {
    if (!Digest.sha256(input).equals(sha256)) {
      throw new IllegalArgumentException(
          path + " is not the file that these edits were made for; read the folder again");
    }
  }
}
