package dev.gantrywright.cli;

import dev.gantrywright.image.ElfSection;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageDetails;
import dev.gantrywright.image.MemoryPicture;
import dev.gantrywright.image.Range;
import dev.gantrywright.image.Remark;
import dev.gantrywright.image.Segment;
import dev.gantrywright.image.Verdict;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** An image and what is said of it, as the JSON document that {@code image} prints. */
final class ImageJson {
  private ImageJson() {}

  static Map<String, Object> of(Path file, Image read, Optional<Verdict> verdict) {
    Image image = verdict.map(v -> v.examination().image()).orElse(read);
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("file", file.toString());
    document.put("format", image.format().words());
    document.put("fileBytes", image.fileBytes());
    document.put("sha256", image.sha256());
    document.put("placed", image.placed());
    document.put("start", image.contents().span().start());
    document.put("end", image.contents().span().end());
    document.put("bytes", image.contents().byteCount());
    document.put("entry", image.entry().isPresent() ? image.entry().getAsLong() : null);
    document.put("segments", image.contents().segments().stream().map(ImageJson::segment).toList());
    details(document, image.details());
    document.put("looksLike", image.guess());
    verdict.ifPresent(v -> judged(document, v));
    return document;
  }

  private static void details(Map<String, Object> document, ImageDetails details) {
    if (details instanceof ImageDetails.Elf elf) {
      document.put("machine", elf.machine().words());
      document.put(
          "use",
          Map.of("text", elf.use().text(), "data", elf.use().data(), "bss", elf.use().bss()));
      document.put("sections", elf.sections().stream().map(ImageJson::section).toList());
    }
    if (details instanceof ImageDetails.Uf2 uf2) {
      document.put("blocks", uf2.blocks());
      document.put("skippedBlocks", uf2.skipped());
      document.put("families", uf2.families().keySet().stream().sorted().toList());
      document.put("device", uf2.device().orElse(null));
      document.put("version", uf2.version().orElse(null));
    }
  }

  private static void judged(Map<String, Object> document, Verdict verdict) {
    document.put("mcu", verdict.examination().chip().part());
    document.put("offset", verdict.examination().loader().startBytes());
    document.put("refused", verdict.refused());
    document.put("remarks", verdict.remarks().stream().map(ImageJson::remark).toList());
    document.put("memory", verdict.picture().banks().stream().map(ImageJson::bank).toList());
  }

  static Map<String, Object> remark(Remark r) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("id", r.id());
    row.put("level", r.level().word());
    row.put("text", r.text());
    row.put("evidence", r.evidence());
    row.put("todo", r.todo());
    row.put("source", r.source());
    return row;
  }

  private static Map<String, Object> segment(Segment s) {
    return range(new LinkedHashMap<>(), s.range());
  }

  private static Map<String, Object> section(ElfSection s) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", s.name());
    row.put("address", s.address());
    row.put("loadAddress", s.loadAddress());
    row.put("bytes", s.size());
    row.put("stored", s.stored());
    return row;
  }

  private static Map<String, Object> bank(MemoryPicture.Bank bank) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("name", bank.name());
    range(row, bank.range());
    row.put("used", bank.usedBytes());
    row.put("measured", bank.measured());
    row.put("fills", bank.fills().stream().map(ImageJson::fill).toList());
    return row;
  }

  private static Map<String, Object> fill(MemoryPicture.Fill fill) {
    Map<String, Object> row = new LinkedHashMap<>();
    row.put("kind", fill.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    row.put("label", fill.label());
    return range(row, fill.range());
  }

  private static Map<String, Object> range(Map<String, Object> row, Range range) {
    row.put("start", range.start());
    row.put("end", range.end());
    return row;
  }

  /** The ids of errors, for other documents that carry a verdict. */
  static List<Map<String, Object>> remarks(Verdict verdict) {
    return verdict.remarks().stream().map(ImageJson::remark).toList();
  }
}
