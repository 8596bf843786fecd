package dev.gantrywright.ui.state;

import dev.gantrywright.app.OpenPrinter;
import java.util.List;

/** Finds what does not fit together; runs off the view's thread. */
public interface Inspector {
  /** Remarks, worst first. */
  List<Remark> inspect(OpenPrinter printer);

  /** For a printer that is being edited. */
  Inspection follow();
}
