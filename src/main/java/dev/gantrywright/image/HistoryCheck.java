package dev.gantrywright.image;

import java.util.function.Consumer;

/** Is the image older than the folder it was built from, or the one already on the board? */
final class HistoryCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    Circumstances a = e.around();
    if (a.builtAt().isPresent()
        && a.newestSource().isPresent()
        && a.builtAt().get().isBefore(a.newestSource().get().written())) {
      out.accept(
          Remark.error(
              "image-stale",
              "The image is older than the patched folder.",
              a.newestSource().get().file()
                  + " was written at "
                  + a.newestSource().get().written()
                  + ", the image at "
                  + a.builtAt().get(),
              "Build again, so that the image holds the settings that you see.",
              Remark.PRACTICE));
    }
    if (a.lastLoadedSha256().filter(h -> h.equalsIgnoreCase(e.image().sha256())).isPresent()) {
      out.accept(
          Remark.note(
              "image-already-loaded",
              "This is the image that was loaded last; loading it again changes nothing.",
              "SHA-256 " + e.image().sha256(),
              "Build again if a setting was changed since.",
              Remark.PRACTICE));
    }
  }
}
