package dev.gantrywright.ui.state;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/** Edits that are not saved yet, kept apart from the profile's own file against a crash. */
public final class RecoveryStore {
  private final Path folder;

  public RecoveryStore(Path folder) {
    this.folder = folder;
  }

  /**
   * Loads what keeping needs. Without it the first edit of a run waits for that: measured with
   * nothing loaded, 0.2 s of a free core, of which a busy machine makes more than a second.
   *
   * @return length of the profile's text, bytes
   */
  public int prepare(PrinterProfile profile) {
    return ProfileStore.bytes(profile).length;
  }

  /** Keeps a profile as it stands now; atomic, so that a kill leaves the one before. */
  public void keep(Path file, PrinterProfile profile) {
    try {
      Files.createDirectories(folder);
      ProfileStore.save(profile, place(file));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  /** What was kept for this file; empty where nothing was, or it cannot be read. */
  public Optional<PrinterProfile> find(Path file) {
    Path kept = place(file);
    if (!Files.isRegularFile(kept)) {
      return Optional.empty();
    }
    try {
      return Optional.of(ProfileStore.read(kept));
    } catch (ProfileProblem unreadable) {
      return Optional.empty();
    }
  }

  /** Forgets what was kept: the edits are saved, or no longer wanted. */
  public void drop(Path file) {
    try {
      Files.deleteIfExists(place(file));
      Files.deleteIfExists(place(file).resolveSibling(place(file).getFileName() + ".previous"));
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    }
  }

  private Path place(Path file) {
    String path = file.toAbsolutePath().normalize().toString();
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(path.getBytes(StandardCharsets.UTF_8));
      String name = HexFormat.of().formatHex(digest, 0, 8);
      return folder.resolve(name + "-" + file.getFileName());
    } catch (NoSuchAlgorithmException impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
