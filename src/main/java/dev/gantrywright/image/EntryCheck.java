package dev.gantrywright.image;

import java.util.OptionalLong;
import java.util.function.Consumer;

/** Does the file's own entry address lie inside what it loads? */
final class EntryCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    OptionalLong entry = e.image().entry();
    // S-records close with 0 where the linker gave no entry; ELF and HEX mean what they say.
    if (entry.isEmpty() || entry.getAsLong() == 0) {
      return;
    }
    long at = e.chip().core().cortexM() ? entry.getAsLong() & ~1L : entry.getAsLong();
    if (!e.inImage(at)) {
      out.accept(
          Remark.warning(
              "entry-outside-image",
              "The file's entry address lies outside the image.",
              "entry "
                  + Hex.word(entry.getAsLong())
                  + "; the image covers "
                  + e.image().contents().span(),
              "Look at the linker script's entry symbol.",
              "System V gABI, e_entry; Intel HEX record types 03 and 05"));
    }
  }
}
