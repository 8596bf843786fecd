package dev.gantrywright.ui;

import dev.gantrywright.ui.theme.Mode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.text.Text;

/**
 * The pictures of the documentation, and beside each what can be read in it and where: from that a
 * test tells, on any machine, whether they still show the program as it is.
 */
final class DocPictures {
  /** The documentation's name of each picture. */
  private static final Map<String, String> NAMES =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("start", "start-light-1280"),
              Map.entry("describe", "describe-light-1280"),
              Map.entry("board", "describe-board-light-1280"),
              Map.entry("endstop-dark", "describe-endstops-zMin-dark-1280"),
              Map.entry("check", "check-light-1280"),
              Map.entry("write", "write-light-1280"),
              Map.entry("build", "build-done-light-1280"),
              Map.entry("load", "load-done-light-1280"),
              Map.entry("names", "names-light-1280"),
              Map.entry("prove", "prove-proof-light-1280"),
              Map.entry("trace", "prove-held-light-1280")));

  private static final String CONTENTS = "contents.txt";

  private final Path folder;
  private final Map<String, List<String>> read = new TreeMap<>();
  private final Map<String, byte[]> images = new TreeMap<>();

  DocPictures(Path folder) {
    this.folder = folder;
  }

  static List<String> names() {
    return List.copyOf(NAMES.keySet());
  }

  /** Walks through the window; the toolkit runs already. */
  void take() throws Exception {
    new Pictures(NAMES::containsValue, this::taken).take();
  }

  private void taken(String shot, Scene scene) {
    NAMES.forEach(
        (name, of) -> {
          if (of.equals(shot)) {
            List<String> lines = new ArrayList<>();
            lines.add("tones " + tones());
            texts(scene.getRoot(), name, lines);
            read.put(name, lines);
            images.put(name, image(scene));
          }
        });
  }

  private static byte[] image(Scene scene) {
    try {
      Path file = Files.createTempFile("picture", ".png");
      Pictures.save(file, scene);
      byte[] bytes = Files.readAllBytes(file);
      Files.delete(file);
      return bytes;
    } catch (IOException failed) {
      throw new java.io.UncheckedIOException(failed);
    }
  }

  /** Every text that can be seen, with the place where it begins. */
  private static void texts(Node node, String name, List<String> lines) {
    if (!node.isVisible()) {
      return;
    }
    if (node instanceof Text text && !text.getText().isBlank()) {
      var at = text.localToScene(text.getLayoutBounds());
      if (!node.getScene().getRoot().getLayoutBounds().intersects(at)) {
        return;
      }
      String words = lasting(text.getText().replace('\n', ' '), name);
      // What the tools said is as wide as their figures; its place says nothing.
      boolean placed = !byTools(name);
      if (!words.isEmpty()) {
        lines.add(
            (placed ? Math.round(at.getMinX()) + " " + Math.round(at.getMinY()) : "0 0")
                + " "
                + words);
      }
    } else if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> texts(child, name, lines));
    }
  }

  private static boolean byTools(String name) {
    return name.equals("build") || name.equals("load");
  }

  /**
   * Without what another moment, or another compiler, gives otherwise; empty where nothing is left.
   */
  private static String lasting(String text, String name) {
    boolean ofTheLine =
        text.matches("\\d\\d:\\d\\d:\\d\\d.*")
            || text.matches("[\\d.]+ Hz.*")
            || text.startsWith("M119");
    if (ofTheLine || text.matches("\\d{4}-\\d\\d.*")) {
      return "";
    }
    if (text.matches("(no|\\d+) changes?")) {
      return "# changes";
    }
    if (name.equals("trace")) {
      // Where the mark stands hangs on the moment.
      return text.equals("1") ? "" : text.replaceAll("\\d[\\d:.]*\\d|\\d+ s ago", "#");
    }
    return byTools(name)
        ? text.replaceAll("SHA-256 [0-9a-f]+", "SHA-256 #").replaceAll("[0-9]+([., ][0-9]+)*", "#")
        : text;
  }

  /** A fingerprint of how everything is coloured and sized. */
  private static String tones() {
    StringBuilder all = new StringBuilder();
    for (String file : List.of("tokens.json", "workbench.css")) {
      try (InputStream in = Mode.class.getResourceAsStream("/dev/gantrywright/ui/theme/" + file)) {
        all.append(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException failed) {
        throw new java.io.UncheckedIOException(failed);
      }
    }
    return digest(all.toString().getBytes(StandardCharsets.UTF_8));
  }

  static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes), 0, 8);
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** What can be read in each picture now. */
  Map<String, List<String>> read() {
    return read;
  }

  /** Writes the pictures with what can be read in them. */
  void write() throws IOException {
    StringBuilder out = new StringBuilder();
    for (String name : names()) {
      Files.write(folder.resolve(name + ".png"), images.get(name));
      out.append("# ").append(name).append(' ').append(digest(images.get(name))).append('\n');
      read.get(name).forEach(line -> out.append(line).append('\n'));
    }
    Files.writeString(folder.resolve(CONTENTS), out);
  }

  /** What could be read in each picture when it was taken; the first line is its heading. */
  static Map<String, List<String>> kept(Path folder) throws IOException {
    Map<String, List<String>> kept = new TreeMap<>();
    List<String> lines = new ArrayList<>();
    for (String line : Files.readAllLines(folder.resolve(CONTENTS))) {
      if (line.startsWith("# ")) {
        lines = new ArrayList<>();
        kept.put(line.split(" ")[1], lines);
      }
      lines.add(line);
    }
    return kept;
  }
}
