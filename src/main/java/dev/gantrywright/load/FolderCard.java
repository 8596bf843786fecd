package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A mounted card or drive. */
public final class FolderCard implements Card {
  private final Path folder;
  private final PageCache cache;

  public FolderCard(Path folder) {
    this(folder, PageCache.ofSystem());
  }

  FolderCard(Path folder, PageCache cache) {
    this.folder = folder;
    this.cache = cache;
  }

  @Override
  public String shown() {
    return folder.toString();
  }

  @Override
  public long freeBytes() throws IOException {
    return Files.getFileStore(folder).getUsableSpace();
  }

  @Override
  public List<Entry> list() throws IOException {
    List<Entry> out = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path f : files.sorted().toList()) {
        if (Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS)) {
          out.add(
              new Entry(
                  f.getFileName().toString(),
                  Files.size(f),
                  Files.getLastModifiedTime(f).toInstant()));
        }
      }
    }
    return out;
  }

  @Override
  public void write(String name, byte[] bytes) throws IOException {
    // A fresh file of our own: written through a link that lay there, the bytes would leave the
    // card.
    Files.deleteIfExists(folder.resolve(name));
    try (FileChannel out =
        FileChannel.open(
            folder.resolve(name), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(bytes);
      while (buffer.hasRemaining()) {
        out.write(buffer);
      }
      out.force(true);
    }
  }

  @Override
  public boolean forgetCached(String name) {
    return cache.forget(folder.resolve(name));
  }

  @Override
  public InputStream read(String name) throws IOException {
    return Files.newInputStream(folder.resolve(name), LinkOption.NOFOLLOW_LINKS);
  }

  @Override
  public void rename(String from, String to) throws IOException {
    try {
      Files.move(folder.resolve(from), folder.resolve(to), StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(folder.resolve(from), folder.resolve(to), StandardCopyOption.REPLACE_EXISTING);
    }
    syncFolder();
  }

  @Override
  public void delete(String name) throws IOException {
    Files.deleteIfExists(folder.resolve(name));
    syncFolder();
  }

  /** A name lies in the folder, so the folder must reach the card too. Windows has no such call. */
  private void syncFolder() {
    try (FileChannel dir = FileChannel.open(folder, StandardOpenOption.READ)) {
      dir.force(true);
    } catch (IOException e) {
      // Nothing more can be done here; the check that follows reads the name again.
      return;
    }
  }
}
