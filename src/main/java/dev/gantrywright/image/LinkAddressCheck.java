package dev.gantrywright.image;

import java.util.Optional;
import java.util.function.Consumer;

/** Raw Cortex-M binaries: is the address that they were linked for the one they are loaded to? */
final class LinkAddressCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (e.image().format().addressed() || !e.chip().core().cortexM() || e.inFlash().isEmpty()) {
      return;
    }
    Optional<LinkAddress> linked =
        LinkAddress.of(e.image().contents().flat(0xFF), e.chip().flash());
    if (linked.isPresent() && linked.get().address() != e.programStart()) {
      out.accept(
          Remark.error(
              "linked-elsewhere",
              "The image is linked for another address than the loader starts it at.",
              String.format(
                  "%d of its code pointers fit %s, %d at most any other place; it starts at %s",
                  linked.get().hits(),
                  Hex.word(linked.get().address()),
                  linked.get().runnerUp(),
                  Hex.word(e.programStart())),
              "Build for offset "
                  + Hex.word(e.loader().startBytes())
                  + ", or correct the offset in the board sheet.",
              "worked out from the image; no published source"));
    }
  }
}
