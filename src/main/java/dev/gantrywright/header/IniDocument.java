package dev.gantrywright.header;

import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One build-settings file ({@code [section]}, {@code key = value}, comments with {@code ;} and
 * {@code #}, values over several indented lines), read without loss. Immutable.
 */
public final class IniDocument {
  /**
   * One key.
   *
   * @param section the section that it stands in; empty before the first
   * @param key its name
   * @param value its value; lines of a longer one are separated by {@code \n}, comments are left
   *     out
   * @param line line of the key, counted from 1
   * @param keySpan the key
   * @param valueSpan the value from its first to its last byte; where it would go if it is empty
   * @param lineSpans each line of the value
   * @param choices the values that the comment above or beside it lists; empty if it lists none
   * @param unit the unit that the comment names, or empty
   * @param range the range that the comment gives, or null
   */
  public record Entry(
      String section,
      String key,
      String value,
      int line,
      Span keySpan,
      Span valueSpan,
      List<Span> lineSpans,
      List<String> choices,
      String unit,
      ValueRange range) {
    public Entry {
      lineSpans = List.copyOf(lineSpans);
      choices = List.copyOf(choices);
    }
  }

  private record Name(String section, String key) {}

  private final SourceFile source;
  private final IniReader.Reading reading;
  private volatile Map<Name, Entry> deciding;

  private IniDocument(SourceFile source) {
    this.source = source;
    this.reading = IniReader.read(source);
  }

  /** Reads the bytes; they are copied. */
  public static IniDocument of(String path, byte[] bytes) {
    return new IniDocument(SourceFile.unscanned(path, bytes.clone()));
  }

  /** The path that the document was read under. */
  public String path() {
    return source.path();
  }

  /** A copy of the bytes as they were read. */
  public byte[] bytes() {
    return source.bytes().clone();
  }

  /** The SHA-256 of the bytes, in lower-case hexadecimal. */
  public String sha256() {
    return source.sha256();
  }

  SourceFile source() {
    return source;
  }

  /** The names of all sections in file order; the empty one if keys stand before the first. */
  public List<String> sections() {
    return List.copyOf(new LinkedHashSet<>(reading.sections()));
  }

  /** All keys in file order. */
  public List<Entry> entries() {
    return reading.entries();
  }

  /** The key of a section that decides: the last of that name. */
  public Optional<Entry> entry(String section, String key) {
    return Optional.ofNullable(deciding().get(new Name(section, key)));
  }

  private Map<Name, Entry> deciding() {
    Map<Name, Entry> known = deciding;
    if (known == null) {
      Map<Name, Entry> last = new HashMap<>();
      entries().forEach(entry -> last.put(new Name(entry.section(), entry.key()), entry));
      known = last;
      deciding = last;
    }
    return known;
  }

  /** What is wrong with the file as it stands. */
  public List<Problem> problems() {
    return reading.problems();
  }

  /** The offset behind the last line of a section that holds more than blanks, or -1. */
  int endOf(String section) {
    return reading.ends().getOrDefault(section, -1);
  }
}
