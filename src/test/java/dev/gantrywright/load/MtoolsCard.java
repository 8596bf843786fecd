package dev.gantrywright.load;

import dev.gantrywright.board.Tool;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A FAT image in a file, read and written through mtools as any other system would see it. */
final class MtoolsCard implements Card {
  private final Path image;
  private final Path work;

  MtoolsCard(Path image) throws IOException {
    this.image = image;
    this.work = Files.createTempDirectory(image.getParent(), "mtools");
  }

  /** A freshly formatted card. */
  static MtoolsCard formatted(Path folder, int kibibytes, int fatBits) throws IOException {
    Tool.need("mkfs.vfat", "mcopy");
    Path image = folder.resolve("card.img");
    Tool.mustRun(folder, "mkfs.vfat", "-C", "-F", "" + fatBits, image.toString(), "" + kibibytes);
    return new MtoolsCard(image);
  }

  private String mtools(String program, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(program, "-i", image.toString()));
    command.addAll(List.of(arguments));
    Tool.Output out = Tool.run(work, command.toArray(String[]::new));
    if (out.exit() != 0) {
      throw new IOException(out.out().strip());
    }
    return out.out();
  }

  @Override
  public String shown() {
    return image.getFileName().toString();
  }

  @Override
  public long freeBytes() throws IOException {
    Matcher m = Pattern.compile("([0-9 ]+) bytes free").matcher(mtools("mdir", "::"));
    if (!m.find()) {
      throw new IOException("mdir tells no free space");
    }
    return Long.parseLong(m.group(1).replace(" ", ""));
  }

  @Override
  public List<Entry> list() throws IOException {
    List<Entry> out = new ArrayList<>();
    Matcher m =
        Pattern.compile("(?m)^(\\S+) +(?:(\\S+) +)?(\\d+) (\\d{4}-\\d\\d-\\d\\d) +\\d+:\\d+")
            .matcher(mtools("mdir", "::"));
    while (m.find()) {
      String name = m.group(2) == null ? m.group(1) : m.group(1) + "." + m.group(2);
      out.add(
          new Entry(name, Long.parseLong(m.group(3)), Instant.parse(m.group(4) + "T00:00:00Z")));
    }
    return out;
  }

  @Override
  public void write(String name, byte[] bytes) throws IOException {
    Path file = work.resolve("out");
    Files.write(file, bytes);
    mtools("mcopy", "-o", file.toString(), "::" + name);
  }

  @Override
  public boolean forgetCached(String name) {
    return true;
  }

  @Override
  public InputStream read(String name) throws IOException {
    Path file = work.resolve("in");
    Files.deleteIfExists(file);
    mtools("mcopy", "-n", "::" + name, file.toString());
    return new ByteArrayInputStream(Files.readAllBytes(file));
  }

  @Override
  public void rename(String from, String to) throws IOException {
    if (find(to).isPresent()) {
      mtools("mdel", "::" + to);
    }
    mtools("mren", "::" + from, "::" + to);
  }

  @Override
  public void delete(String name) throws IOException {
    mtools("mdel", "::" + name);
  }
}
