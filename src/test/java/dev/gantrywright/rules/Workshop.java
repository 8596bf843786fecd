package dev.gantrywright.rules;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import dev.gantrywright.header.HeaderDocument;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The demo printers as rules see them, whole or with a patch. A patch is a JSON Merge Patch on the
 * profile; its keys {@code $sheet}, {@code $names} and {@code $headers} patch the board sheet, the
 * name map (boards by constant, targets by name) and lines of the firmware folder; {@code $folder}
 * as null takes the folder away.
 */
final class Workshop {
  static final List<String> CLEAN = List.of("sandpiper", "guillemot");
  static final Path DEMO = Path.of("demo-profiles");
  static final Catalog CATALOG = Catalog.shipped();
  static final FirmwareFolder FOLDER = open();
  private static final String GONE = "rookery-2.3: there is no such folder; check the path";
  private static final JsonMapper JSON = JsonMapper.shared();

  private Workshop() {}

  static CheckInput printer(String name) {
    return printer(name, JSON.createObjectNode());
  }

  static CheckInput printer(String name, String patch) {
    return printer(name, (ObjectNode) JSON.readTree(patch));
  }

  static CheckInput printer(String name, ObjectNode patch) {
    try {
      PrinterProfile profile = profile(name, patch);
      String sheetFile = ProfileStore.read(DEMO.resolve(name + ".printer.json")).board().sheet();
      return new CheckInput(
          profile,
          patch.has("$sheet") && patch.get("$sheet").isNull() ? null : sheet(sheetFile, patch),
          gone(patch) ? null : folder(patch),
          names(patch),
          CATALOG,
          gone(patch) ? new UnreadFolder(profile.build().folder(), GONE) : null);
    } catch (Exception e) {
      throw new IllegalStateException(name + " with " + patch + ": " + e.getMessage(), e);
    }
  }

  static PrinterProfile profile(String name, ObjectNode patch) throws Exception {
    ObjectNode own = patch.deepCopy();
    own.remove(List.of("$sheet", "$names", "$headers", "$folder"));
    JsonNode tree = MergePatch.apply(tree(DEMO.resolve(name + ".printer.json")), own);
    return ProfileStore.parse(name, bytes(tree));
  }

  private static boolean gone(ObjectNode patch) {
    return patch.has("$folder") && patch.get("$folder").isNull();
  }

  private static BoardSheet sheet(String file, ObjectNode patch) throws Exception {
    JsonNode tree = tree(DEMO.resolve(file));
    if (patch.has("$sheet")) {
      tree = MergePatch.apply(tree, patch.get("$sheet"));
    }
    return BoardStore.parse(file, bytes(tree));
  }

  private static NameMap names(ObjectNode patch) throws Exception {
    ObjectNode tree = (ObjectNode) namesTree();
    if (patch.has("$names")) {
      ObjectNode change = (ObjectNode) patch.get("$names");
      keyed(tree, change, "boards", "constant");
      keyed(tree, change, "targets", "name");
      if (change.has("fields")) {
        tree.set("fields", MergePatch.apply(tree.get("fields"), change.get("fields")));
      }
    }
    return NameMapJson.parse(tree.toString(), "names");
  }

  private static FirmwareFolder folder(ObjectNode patch) {
    FirmwareFolder folder = FOLDER;
    if (!patch.has("$headers")) {
      return folder;
    }
    for (var file : patch.get("$headers").properties()) {
      String text = new String(bytes(folder, file.getKey()), StandardCharsets.ISO_8859_1);
      for (var change : file.getValue().properties()) {
        if (!text.contains(change.getKey())) {
          throw new IllegalArgumentException(file.getKey() + " lacks " + change.getKey());
        }
        text = text.replace(change.getKey(), change.getValue().asString());
      }
      folder = folder.with(file.getKey(), text.getBytes(StandardCharsets.ISO_8859_1));
    }
    return folder;
  }

  private static byte[] bytes(FirmwareFolder folder, String file) {
    return folder
        .header(file)
        .map(HeaderDocument::bytes)
        .or(
            () ->
                folder.buildSettings().stream()
                    .filter(settings -> settings.path().equals(file))
                    .map(IniDocument::bytes)
                    .findFirst())
        .orElseThrow();
  }

  private static FirmwareFolder open() {
    try {
      return FirmwareFolder.read(DEMO.resolve("rookery-2.3"));
    } catch (FolderException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void keyed(ObjectNode tree, ObjectNode change, String list, String key) {
    if (!change.has(list)) {
      return;
    }
    ArrayNode entries = (ArrayNode) tree.get(list);
    for (int at = 0; at < entries.size(); at++) {
      JsonNode patch = change.get(list).get(entries.get(at).get(key).asString());
      if (patch != null) {
        entries.set(at, MergePatch.apply(entries.get(at), patch));
      }
    }
  }

  private static JsonNode namesTree() {
    return tree(DEMO.resolve("rookery-2.3.names.json"));
  }

  private static JsonNode tree(Path file) {
    try {
      return JSON.readTree(Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] bytes(JsonNode tree) {
    return tree.toString().getBytes(StandardCharsets.UTF_8);
  }
}
