package dev.gantrywright.image;

import java.util.function.Consumer;

/** Does the image lie where the bootloader leaves room, and start where it starts the program? */
final class PlaceCheck implements ImageCheck {
  private static final String SOURCE = "flash size and address: the part's data sheet";

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    Contents flash = e.inFlash();
    Range room = e.programFlash();
    outside(e, out);
    if (flash.isEmpty()) {
      return;
    }
    Range span = flash.span();
    if (span.end() > room.end() || beyondFlash(e)) {
      long end = Math.max(span.end(), e.image().contents().span().end());
      long over = (e.image().placed() ? end : span.end()) - room.end();
      out.accept(
          Remark.error(
              "image-too-large",
              "The image does not fit: over by " + over + " bytes.",
              String.format(
                  "it ends at %s; %s has %d bytes of flash, less %d for the bootloader",
                  Hex.word(end - 1),
                  e.chip().part(),
                  e.chip().flash().size(),
                  e.loader().startBytes() + e.loader().endBytes()),
              "Switch off features, or build for size.",
              SOURCE));
    }
    if (!e.image().format().addressed()) {
      return;
    }
    if (span.start() < e.programStart()) {
      out.accept(
          Remark.error(
              "image-over-bootloader",
              "The image would overwrite the bootloader.",
              "it starts at "
                  + Hex.word(span.start())
                  + "; the bootloader ends at "
                  + Hex.word(e.programStart() - 1),
              "Build for the offset that the board sheet gives.",
              Remark.PRACTICE));
    } else if (span.start() > e.programStart()) {
      out.accept(
          Remark.error(
              "image-behind-start",
              "The image starts behind the place where the program is started.",
              "it starts at "
                  + Hex.word(span.start())
                  + "; the program is started at "
                  + Hex.word(e.programStart()),
              "Build for the offset that the board sheet gives, or correct the sheet.",
              Remark.PRACTICE));
    }
  }

  private static boolean beyondFlash(Examination e) {
    return e.image().contents().segments().stream()
        .map(Segment::range)
        .anyMatch(r -> r.start() < e.chip().flash().end() && r.end() > e.chip().flash().end());
  }

  private static void outside(Examination e, Consumer<Remark> out) {
    // Other cores map their flash to several windows; the catalogue holds one address only.
    if (!e.chip().core().cortexM() && e.chip().core() != Core.AVR) {
      return;
    }
    for (Segment s : e.image().contents().segments()) {
      if (s.range().overlaps(e.chip().flash())) {
        continue;
      }
      if (e.chip().core() == Core.AVR && s.address() >= AvrProgram.DATA_SPACE) {
        out.accept(
            Remark.note(
                "image-beside-flash",
                "The file also carries " + AvrProgram.spaceName(s.address()) + " bytes.",
                s.length() + " bytes at " + Hex.word(s.address()),
                "They are not part of the program; a loader for flash leaves them out.",
                "avr-libc linker scripts"));
        continue;
      }
      out.accept(
          Remark.error(
              "image-outside-flash",
              "Part of the image lies outside the flash of " + e.chip().part() + ".",
              s.range() + "; flash is " + e.chip().flash(),
              "Check the build target: this looks built for another controller.",
              SOURCE));
    }
  }
}
