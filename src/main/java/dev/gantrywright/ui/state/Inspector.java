package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import java.util.List;

/** Finds what does not fit together; runs off the view's thread. */
public interface Inspector {
  /** Notes, worst first. */
  List<MarginNote> inspect(OpenPrinter printer);

  /** For a printer that is being edited. */
  Inspection follow();
}
