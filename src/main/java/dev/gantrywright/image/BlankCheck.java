package dev.gantrywright.image;

import java.util.function.Consumer;

/** Is there a program at all? Erased flash, zeros and plain text are none. */
final class BlankCheck implements ImageCheck {
  private static final int LEAST_BYTES = 64;

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    long[] count = new long[256];
    for (Segment s : e.image().contents().segments()) {
      for (int i = 0; i < s.length(); i++) {
        count[s.at(i)]++;
      }
    }
    long all = e.image().contents().byteCount();
    if (count[0xFF] + count[0x00] == all) {
      out.accept(
          Remark.error(
              "image-blank",
              "The image is empty: every byte is 0x00 or 0xFF.",
              all + " bytes",
              "Build again; this is erased memory, not a program.",
              Remark.PRACTICE));
    } else if (all < LEAST_BYTES) {
      out.accept(
          Remark.error(
              "image-tiny",
              "The image is too small to be a program.",
              all + " bytes; a vector table alone takes " + LEAST_BYTES,
              "Build or copy it again.",
              Remark.PRACTICE));
    } else if (text(count) == all) {
      out.accept(
          Remark.error(
              "image-is-text",
              "The file is plain text, not a program.",
              "all " + all + " bytes are printable",
              "Give the image that the build wrote; this may be a web page or a log.",
              Remark.PRACTICE));
    }
  }

  private static long text(long[] count) {
    long n = count['\t'] + count['\n'] + count['\r'];
    for (int c = ' '; c < 127; c++) {
      n += count[c];
    }
    return n;
  }
}
