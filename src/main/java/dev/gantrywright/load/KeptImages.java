package dev.gantrywright.load;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Images that were replaced on one board's cards, kept on this computer to go back to. */
public final class KeptImages {
  /** Larger files on a card are no firmware. */
  public static final long LARGEST_BYTES = 64L << 20;

  private static final int MOST = 10;
  private static final DateTimeFormatter STAMP =
      DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private final Path folder;
  private final Clock clock;

  public KeptImages(Path folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  /** Keeps an image; the same bytes are kept once. The oldest beyond ten are let go. */
  public Path keep(String name, byte[] image) throws IOException {
    Files.createDirectories(folder);
    String mark = Hashes.of(image).substring(0, 12);
    for (Path p : all()) {
      if (p.getFileName().toString().contains("-" + mark + "-")) {
        return p;
      }
    }
    String safe = name.replaceAll("[^A-Za-z0-9._-]", "_");
    Path file = folder.resolve(STAMP.format(clock.instant()) + "-" + mark + "-" + safe);
    Path working = folder.resolve("." + mark + ".new");
    try (FileChannel out =
        FileChannel.open(
            working,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(image);
      while (buffer.hasRemaining()) {
        out.write(buffer);
      }
      out.force(true);
    }
    Files.move(working, file, StandardCopyOption.ATOMIC_MOVE);
    List<Path> all = all();
    for (Path old : all.subList(Math.min(MOST, all.size()), all.size())) {
      Files.deleteIfExists(old);
    }
    return file;
  }

  /** Every kept image, newest first. */
  public List<Path> all() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> out =
          new ArrayList<>(
              files.filter(f -> f.getFileName().toString().matches("\\d{8}-\\d{6}-.*")).toList());
      out.sort(Comparator.comparing((Path f) -> f.getFileName().toString()).reversed());
      return out;
    }
  }

  /** The one to go back to. */
  public Optional<Path> latest() throws IOException {
    return all().stream().findFirst();
  }
}
