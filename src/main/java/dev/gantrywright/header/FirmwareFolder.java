package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A firmware folder as read at one moment: its headers under one evaluation, its build settings.
 * Immutable; {@link #with} gives the folder that an edit would make.
 */
public final class FirmwareFolder {
  private final Path root;
  private final Map<String, String> predefined;
  private final TreeMap<String, SourceFile> sources;
  private final TreeMap<String, IniDocument> buildSettings;
  private final List<Problem> readProblems;
  private FirmwareFolder like;
  private volatile Evaluated evaluated;

  /** What one evaluation gives, worked out when it is first asked for. */
  private record Evaluated(
      TreeMap<String, HeaderDocument> headers,
      FolderEvaluation run,
      Map<String, List<Setting>> named) {}

  private FirmwareFolder(
      Path root,
      Map<String, String> predefined,
      TreeMap<String, SourceFile> sources,
      TreeMap<String, IniDocument> buildSettings,
      List<Problem> readProblems,
      FirmwareFolder like) {
    this.root = root;
    this.predefined = predefined;
    this.sources = sources;
    this.buildSettings = buildSettings;
    this.readProblems = readProblems;
    // One that was never evaluated would only hold on to those before it.
    this.like = like == null || like.evaluated == null ? null : like;
  }

  private Evaluated evaluated() {
    Evaluated known = evaluated;
    return known == null ? evaluate() : known;
  }

  /** A folder that only carries bytes between two edits is never evaluated. */
  private synchronized Evaluated evaluate() {
    if (evaluated == null) {
      FolderEvaluation run =
          like == null ? null : like.evaluated.run().carried(like.sources, sources);
      if (run == null) {
        run = FolderEvaluation.of(sources.values(), predefined);
      }
      TreeMap<String, HeaderDocument> headers = new TreeMap<>();
      for (SourceFile file : sources.values()) {
        if (FolderReader.kindOf(file.path()) == FolderReader.FileKind.HEADER) {
          headers.put(file.path(), HeaderDocument.within(file, run.visits()));
        }
      }
      evaluated = new Evaluated(headers, run, new ConcurrentHashMap<>());
      like = null;
    }
    return evaluated;
  }

  private TreeMap<String, HeaderDocument> headersByPath() {
    return evaluated().headers();
  }

  /** Reads a folder with no name predefined. */
  public static FirmwareFolder read(Path dir) throws FolderException {
    return read(dir, Map.of(), Progress.none());
  }

  /**
   * Reads every header, source and build-settings file below a folder.
   *
   * @param predefined names that the build defines, with their values
   * @throws FolderException with one clear line, when the folder cannot be read or has no header
   */
  public static FirmwareFolder read(Path dir, Map<String, String> predefined, Progress progress)
      throws FolderException {
    FolderReader.Contents contents = FolderReader.read(dir, progress);
    FirmwareFolder folder = of(dir, contents.files(), predefined, contents.problems());
    if (folder.headersByPath().isEmpty()) {
      String more = contents.problems().isEmpty() ? "" : "; " + contents.problems().get(0);
      throw new FolderException(
          dir
              + ": there is no C header (*.h) below this folder; open the firmware's folder"
              + more);
    }
    return folder;
  }

  /** A folder that was read elsewhere: paths relative to it, with {@code /}, and bytes. */
  public static FirmwareFolder of(
      Path root, Map<String, byte[]> files, Map<String, String> predefined) {
    return of(root, files, predefined, List.of());
  }

  private static FirmwareFolder of(
      Path root,
      Map<String, byte[]> files,
      Map<String, String> predefined,
      List<Problem> problems) {
    TreeMap<String, SourceFile> sources = new TreeMap<>();
    TreeMap<String, IniDocument> settings = new TreeMap<>();
    files.forEach(
        (path, bytes) -> {
          switch (FolderReader.kindOf(path)) {
            case HEADER, SOURCE -> sources.put(path, SourceFile.of(path, bytes));
            case BUILD_SETTINGS -> settings.put(path, IniDocument.of(path, bytes));
            default -> {}
          }
        });
    FirmwareFolder folder =
        new FirmwareFolder(root, Map.copyOf(predefined), sources, settings, problems, null);
    folder.evaluate();
    return folder;
  }

  /** The folder that results when one file has other bytes; the others are not read again. */
  public FirmwareFolder with(String path, byte[] bytes) {
    return with(Map.of(path, bytes));
  }

  /** The folder that results when some files have other bytes. */
  public FirmwareFolder with(Map<String, byte[]> changed) {
    Map<String, byte[]> own = new TreeMap<>();
    changed.forEach((path, bytes) -> own.put(path, bytes.clone()));
    return with(own, this);
  }

  /**
   * The same with bytes that the caller does not change afterwards.
   *
   * @param like a folder which the result is nearly like; what the two share is not worked out
   *     again
   */
  FirmwareFolder with(Map<String, byte[]> changed, FirmwareFolder like) {
    TreeMap<String, SourceFile> files = new TreeMap<>(sources);
    TreeMap<String, IniDocument> settings = new TreeMap<>(buildSettings);
    changed.forEach(
        (path, bytes) -> {
          switch (FolderReader.kindOf(path)) {
            case HEADER, SOURCE -> {
              SourceFile near = like.sources.get(path);
              files.put(path, near == null ? SourceFile.of(path, bytes) : near.with(bytes));
            }
            case BUILD_SETTINGS -> settings.put(path, IniDocument.of(path, bytes));
            default -> throw new IllegalArgumentException(path + " is no header");
          }
        });
    return new FirmwareFolder(root, predefined, files, settings, readProblems, like);
  }

  /** The folder that was read. */
  public Path root() {
    return root;
  }

  /** All headers by path. */
  public Collection<HeaderDocument> headers() {
    return List.copyOf(headersByPath().values());
  }

  /** The header at a path relative to the folder. */
  public Optional<HeaderDocument> header(String path) {
    return Optional.ofNullable(headersByPath().get(path));
  }

  /** All build-settings files by path. */
  public List<IniDocument> buildSettings() {
    return List.copyOf(buildSettings.values());
  }

  /** All settings of all headers, by path and then in file order; made anew at each access. */
  public List<Setting> settings() {
    List<List<Setting>> lists = new ArrayList<>();
    headersByPath().values().forEach(header -> lists.add(header.settings()));
    return new JoinedList<>(lists);
  }

  /** Every setting of a name, live, dead and commented out; read once for each name. */
  public List<Setting> named(String name) {
    return evaluated().named().computeIfAbsent(name, this::find);
  }

  private List<Setting> find(String name) {
    String key = key(name);
    List<Setting> out = new ArrayList<>();
    for (HeaderDocument header : headersByPath().values()) {
      if (!header.binary()) {
        for (int row : header.source().names().rows(key)) {
          out.add(header.setting(row));
        }
      }
    }
    return List.copyOf(out);
  }

  /** The setting whose definition of the name is in force at the end, if that is certain. */
  public Optional<Setting> live(String name) {
    MacroTable.Symbol symbol = evaluated().run().macros().find(key(name));
    if (symbol == null || !symbol.defined()) {
      return Optional.empty();
    }
    HeaderDocument header = headersByPath().get(symbol.file().path());
    boolean here = header != null && !header.binary();
    return here ? Optional.of(header.setting(symbol.directive())) : Optional.empty();
  }

  /** What the tables call a name: its UTF-8 bytes as ISO-8859-1. */
  private static String key(String name) {
    byte[] utf8 = name.getBytes(StandardCharsets.UTF_8);
    return new String(utf8, StandardCharsets.ISO_8859_1);
  }

  /** What is wrong with the folder: unreadable files, cut-off headers, faulty conditions. */
  public List<Problem> problems() {
    List<Problem> out = new ArrayList<>(readProblems);
    headersByPath().values().forEach(header -> out.addAll(header.problems()));
    buildSettings.values().forEach(ini -> out.addAll(ini.problems()));
    out.addAll(evaluated().run().problems());
    return List.copyOf(out);
  }

  /** The bytes of a header or build-settings file, or null if the folder has none at the path. */
  byte[] bytesOf(String path) {
    SourceFile file = editable(path);
    return file == null ? null : file.bytes();
  }

  /** A header or build-settings file; null if the folder has none at the path. */
  SourceFile editable(String path) {
    if (FolderReader.kindOf(path) == FolderReader.FileKind.HEADER) {
      return sources.get(path);
    }
    IniDocument ini = buildSettings.get(path);
    return ini == null ? null : ini.source();
  }
}
