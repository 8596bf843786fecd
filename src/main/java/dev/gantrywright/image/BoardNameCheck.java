package dev.gantrywright.image;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Do strings in the image name another board than the one it is meant for? */
final class BoardNameCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (e.around().otherNames().isEmpty()) {
      return;
    }
    List<String> strings = EmbeddedText.strings(e.image().contents());
    boolean own =
        strings.stream()
            .anyMatch(s -> e.around().ownNames().stream().anyMatch(n -> EmbeddedText.names(s, n)));
    List<String> others = new ArrayList<>();
    for (String name : e.around().otherNames()) {
      strings.stream()
          .filter(s -> EmbeddedText.names(s, name))
          // "Fulmar M4 v2" also holds "Fulmar M4": a name inside the own one is no other board.
          .filter(s -> e.around().ownNames().stream().noneMatch(n -> inside(s, n, name)))
          .findFirst()
          .ifPresent(s -> others.add(name + " in \"" + s + "\""));
    }
    if (others.isEmpty()) {
      return;
    }
    String seen = String.join("; ", others);
    String todo = "Check board constant and build target, then build again.";
    out.accept(
        own
            ? Remark.warning(
                "names-other-board-too",
                "The image names this board and another one.",
                seen,
                todo,
                Remark.PRACTICE)
            : Remark.error(
                "names-other-board",
                "The image names another board, and not this one.",
                seen,
                todo,
                Remark.PRACTICE));
  }

  private static boolean inside(String text, String ownName, String otherName) {
    return EmbeddedText.names(ownName, otherName) && EmbeddedText.names(text, ownName);
  }
}
