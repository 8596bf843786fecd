package dev.gantrywright.image;

import java.util.function.Consumer;

/** One question about an image; adds a remark for each fault, nothing where all is well. */
@FunctionalInterface
interface ImageCheck {
  void check(Examination e, Consumer<Remark> out);
}
