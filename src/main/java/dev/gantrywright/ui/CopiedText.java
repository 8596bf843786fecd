package dev.gantrywright.ui;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.ProfileText;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Puts what is open on the clipboard as text. */
final class CopiedText {
  private CopiedText() {}

  static void profile(PrinterDesk desk) {
    ClipboardContent content = new ClipboardContent();
    content.putString(ProfileText.of(desk));
    Clipboard.getSystemClipboard().setContent(content);
  }
}
