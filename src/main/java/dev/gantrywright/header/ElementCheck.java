package dev.gantrywright.header;

import java.nio.charset.Charset;
import java.util.List;

/** Judges new text for one element of a brace list. */
final class ElementCheck {
  private ElementCheck() {}

  /** What keeps the text from being exactly one element, or null. */
  static String fault(String text, Charset charset) {
    String fault = ValueCheck.fault(text, charset);
    if (fault != null) {
      return fault;
    }
    byte[] list = ("{" + text + "}").getBytes(charset);
    List<Span> elements = BraceList.elements(list, 0, list.length);
    boolean one = elements.size() == 1 && elements.get(0).equals(new Span(1, list.length - 1));
    return one ? null : "\"" + text + "\" is not one element of a list";
  }
}
