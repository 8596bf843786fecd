package dev.gantrywright.image;

import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** UF2: is it for this controller's family, and aligned as the loader needs it? */
final class Uf2Check implements ImageCheck {
  private static final String SOURCE = "UF2 specification, family ID and payload sizes";

  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (!(e.image().details() instanceof ImageDetails.Uf2 uf2)) {
      return;
    }
    Set<Long> families = new TreeSet<>(uf2.families().keySet());
    List<Long> wanted = e.chip().uf2Families();
    if (!wanted.isEmpty() && families.equals(Set.of(0L))) {
      out.accept(
          Remark.warning(
              "uf2-without-family",
              "The file names no family: some loaders refuse it, others take any.",
              "no block carries a family number; " + e.chip().part() + " is " + names(wanted),
              "Convert it with the family number.",
              SOURCE));
    } else if (!wanted.isEmpty() && wanted.stream().noneMatch(families::contains)) {
      out.accept(
          Remark.error(
              "uf2-other-family",
              "The file is for another family of controllers; the loader would ignore it.",
              "it names " + names(families) + "; " + e.chip().part() + " is " + names(wanted),
              "Check the build target.",
              SOURCE));
    }
    boolean odd =
        e.image().contents().segments().stream()
            .anyMatch(s -> s.address() % 4 != 0 || s.length() % 4 != 0);
    if (odd) {
      out.accept(
          Remark.warning(
              "uf2-misaligned",
              "Blocks are not aligned to four bytes.",
              "addresses and payload sizes should be multiples of 4",
              "Convert it again with 256-byte payloads.",
              SOURCE));
    }
  }

  private static String names(Collection<Long> families) {
    return families.stream()
        .map(
            f ->
                f == 0 ? "none" : Uf2Families.name(f).orElse("an unlisted one") + " " + Hex.word(f))
        .collect(Collectors.joining(", "));
  }
}
