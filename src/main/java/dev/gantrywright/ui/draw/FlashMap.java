package dev.gantrywright.ui.draw;

import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.catalog.RamBank;
import dev.gantrywright.image.MemoryPicture;
import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.ui.quantity.Shown;
import dev.gantrywright.ui.state.Texts;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;

/** The part's flash and RAM to scale, with the boot loader's share and the last image. */
public final class FlashMap extends Region {
  private static final double BAR = 76;

  /** Where the bars of RAM begin, right of the longest label of flash. */
  private static final double RAM_X = 216;

  private final Sketch sketch = new Sketch();
  private Optional<Mcu> mcu = Optional.empty();
  private long offset;
  private BuiltImage image;
  private Optional<MemoryPicture> picture = Optional.empty();

  public FlashMap() {
    getChildren().add(sketch);
    setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    setMinHeight(220);
  }

  /**
   * @param offset bytes of flash that the boot loader keeps
   * @param image what the last build left
   * @param picture the image that was built just now, as the judge laid it out
   */
  public void show(
      Optional<Mcu> part, long offset, BuiltImage image, Optional<MemoryPicture> picture) {
    this.picture = picture;
    this.mcu = part;
    this.offset = offset;
    this.image = image;
    draw();
  }

  @Override
  protected void layoutChildren() {
    draw();
    sketch.dress();
  }

  private void draw() {
    sketch.clear();
    if (mcu.isEmpty()) {
      sketch.text(Texts.of("build.noMcu"), 0, 24, 0, "quiet");
      setAccessibleText(Texts.of("build.noMcu"));
      return;
    }
    Mcu part = mcu.get();
    double high = Math.max(160, Math.min(420, getHeight() - 60));
    if (picture.isPresent()) {
      banks(picture.get(), high);
      return;
    }
    flash(part, high);
    ram(part, high);
    String words =
        Texts.of(
            "build.map",
            part.part(),
            Shown.grouped(part.flashBytes() / 1024.0),
            Shown.grouped(part.ram().stream().mapToLong(RamBank::bytes).sum() / 1024.0));
    sketch.text(words, 0, high + 44, 0, "small");
    setAccessibleText(words);
  }

  /** Every bank with what fills it, flash at full height and RAM beside it. */
  private void banks(MemoryPicture memory, double high) {
    double y = 20;
    boolean first = true;
    for (MemoryPicture.Bank bank : memory.banks()) {
      double x = first ? 0 : RAM_X;
      double tall = first ? high : Math.max(40, high / Math.max(1, memory.banks().size()));
      String used =
          bank.measured()
              ? Shown.rough(100.0 * bank.usedBytes() / bank.range().size()) + " %"
              : Texts.of("build.notMeasured");
      sketch.text(bank.name() + "  " + used, x, y - 8, 0, "strong");
      bank(bank, x, y, tall);
      y += first ? 0 : tall + 28;
      first = false;
    }
    setAccessibleText(Texts.of("build.memory"));
  }

  private void bank(MemoryPicture.Bank bank, double x, double y, double tall) {
    sketch.box(x, y, BAR, tall, "ink", "paper");
    double scale = tall / bank.range().size();
    double lastLabel = Double.POSITIVE_INFINITY;
    for (MemoryPicture.Fill fill : bank.fills()) {
      double top = y + tall - (fill.range().end() - bank.range().start()) * scale;
      double height = Math.max(2, fill.range().size() * scale);
      String style =
          switch (fill.kind()) {
            case BOOTLOADER -> "wash-box";
            case PROGRAM, VARIABLES -> "image-box";
            case CLEARED -> "cleared-box";
            case OVER -> "over-box";
            default -> "";
          };
      if (!style.isEmpty()) {
        sketch.box(x, Math.max(y - 6, top), BAR, height, style);
        double at = Math.min(top + height / 2, lastLabel - 15);
        lastLabel = at;
        sketch.text(
            fill.label() + ", " + Shown.rough(fill.range().size() / 1024.0) + " KiB",
            x + BAR + 8,
            at + 4,
            0,
            "small");
      }
    }
  }

  private void flash(Mcu part, double high) {
    sketch.text(Texts.of("build.flash"), 0, 12, 0, "strong");
    sketch.box(0, 20, BAR, high, "ink", "paper");
    double scale = high / part.flashBytes();
    double bottom = 20 + high;
    if (offset > 0) {
      double share = Math.max(3, offset * scale);
      sketch.box(0, bottom - share, BAR, share, "wash-box");
      label(
          bottom - Math.max(18, share / 2),
          Texts.of("build.loader", Shown.grouped(offset / 1024.0)));
    }
    address(part.flashBase(), bottom);
    address(part.flashBase() + part.flashBytes(), 20);
    if (image.bytes() != null) {
      double from = bottom - offset * scale;
      double tall = Math.min(high, Math.max(2, image.bytes() * scale));
      sketch.box(0, from - tall, BAR, tall, "image-box");
      label(
          from - tall / 2,
          Texts.of(
              "build.image",
              Shown.rough(image.bytes() / 1024.0),
              Shown.rough(100.0 * image.bytes() / (part.flashBytes() - offset))));
    } else {
      label(20 + high * 0.4, Texts.of("build.noImage"));
    }
  }

  private void ram(Mcu part, double high) {
    double x = RAM_X;
    sketch.text(Texts.of("build.ram"), x, 12, 0, "strong");
    double y = 20;
    long all = part.ram().stream().mapToLong(RamBank::bytes).sum();
    for (RamBank bank : part.ram()) {
      double tall = Math.max(22, (high - 8 * part.ram().size()) * 0.62 * bank.bytes() / all);
      sketch.box(x, y, BAR, tall, "ink", "paper");
      sketch.text(Shown.grouped(bank.bytes() / 1024.0) + " KiB", x + 8, y + 15, 0, "small");
      y += tall + 8;
    }
  }

  private void label(double y, String words) {
    sketch.line(BAR, y, BAR + 8, y, "hair");
    sketch.text(words, BAR + 12, y + 4, 0, "small");
  }

  private void address(long at, double y) {
    sketch.text(String.format(Locale.ROOT, "0x%08X", at), BAR + 12, y + 4, 0, "mono", "quiet");
  }
}
