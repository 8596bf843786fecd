package dev.gantrywright.names;

import dev.gantrywright.machine.JsonFault;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Reads and writes {@code *.names.json} files. */
public final class NameMapJson {
  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(SerializationFeature.INDENT_OUTPUT)
          .defaultPrettyPrinter(
              new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT))
          .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
          .disable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  /** A map takes some hundred bytes a field; what is larger is none. */
  private static final int LARGEST_BYTES = 16 << 20;

  private NameMapJson() {}

  /**
   * Reads a name map.
   *
   * @throws NameMapException with one line that names file, line, column and key
   */
  public static NameMap read(Path file) throws NameMapException {
    try {
      if (Files.isDirectory(file)) {
        throw new NameMapException(file + ": is a folder; give the name map in it", null);
      }
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new NameMapException(file + ": is a pipe or a device; give a file", null);
      }
      return parse(text(file), file.toString());
    } catch (NoSuchFileException missing) {
      throw new NameMapException(
          file + ": there is no such file; give the name map's path", missing);
    } catch (IOException unreadable) {
      throw new NameMapException(
          file + ": cannot be read (" + unreadable.getMessage() + ")", unreadable);
    }
  }

  private static String text(Path file) throws IOException, NameMapException {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
      if (bytes.length > LARGEST_BYTES) {
        throw new NameMapException(file + ": is larger than 16 MiB, so it is no name map", null);
      }
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException wrong) {
      throw new NameMapException(file + ": is no UTF-8 text, so it is no name map", wrong);
    }
  }

  /** Reads a name map's text; {@code name} stands for the file in messages. */
  public static NameMap parse(String text, String name) throws NameMapException {
    try {
      NameMap map = JSON.readValue(text, NameMap.class);
      if (map == null) {
        throw new NameMapException(name + ": holds no name map, only null", null);
      }
      if (map.fields().isEmpty() && map.more().containsKey("format")) {
        throw new NameMapException(
            name + ": is a printer profile or a board sheet; give a name map, *.names.json", null);
      }
      return map;
    } catch (JacksonException wrong) {
      throw new NameMapException(line(name, wrong), wrong);
    }
  }

  /** The map as the text of its file. */
  public static String text(NameMap map) {
    return JSON.writeValueAsString(map) + "\n";
  }

  /**
   * Saves a map so that the file is the old or the new one at any moment.
   *
   * @throws NameMapException with one line, where the place cannot be written
   */
  public static void save(NameMap map, Path file) throws NameMapException {
    Path folder = file.toAbsolutePath().getParent();
    Path partial = folder.resolve("." + file.getFileName() + ".partial");
    try {
      Files.writeString(partial, text(map));
      Files.move(
          partial, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (IOException failed) {
      String why =
          failed instanceof NoSuchFileException
              ? "no such folder"
              : failed instanceof AccessDeniedException ? "permission denied" : failed.getMessage();
      throw new NameMapException(
          file + ": cannot be written (" + why + "); choose another place", failed);
    }
  }

  private static String line(String name, JacksonException wrong) {
    TokenStreamLocation at = wrong.getLocation();
    String where =
        at == null || at.getLineNr() < 1
            ? ""
            : ", line " + at.getLineNr() + ", column " + at.getColumnNr();
    String key =
        wrong instanceof DatabindException bound && !bound.getPath().isEmpty()
            ? ", key "
                + bound.getPath().stream()
                    .map(
                        step ->
                            step.getPropertyName() == null
                                ? "[" + step.getIndex() + "]"
                                : step.getPropertyName())
                    .collect(Collectors.joining("."))
            : "";
    return name + where + key + ": " + JsonFault.plain(wrong);
  }
}
