package dev.gantrywright.app.record;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.HeaderDocument;
import dev.gantrywright.header.IniDocument;
import dev.gantrywright.record.Sha256;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/**
 * Which release of a firmware a folder holds: the folder's own name, and a fingerprint of the files
 * that are read in it, so that two folders of one name are told apart.
 *
 * @param name of the folder, such as {@code rookery-2.3}
 * @param sha256 over path and SHA-256 of every header and build-settings file, by path
 * @param files how many those are
 */
public record FirmwareRelease(String name, String sha256, int files) {
  public static FirmwareRelease of(FirmwareFolder folder) {
    Map<String, byte[]> files = new TreeMap<>();
    for (HeaderDocument header : folder.headers()) {
      files.put(header.path(), header.bytes());
    }
    for (IniDocument ini : folder.buildSettings()) {
      files.put(ini.path(), ini.bytes());
    }
    StringBuilder list = new StringBuilder();
    files.forEach(
        (path, bytes) -> list.append(Sha256.of(bytes)).append("  ").append(path).append('\n'));
    return new FirmwareRelease(
        folder.root().toAbsolutePath().normalize().getFileName().toString(),
        Sha256.of(list.toString().getBytes(StandardCharsets.UTF_8)),
        files.size());
  }
}
