package dev.gantrywright.header;

import java.util.Locale;
import java.util.Map;

/** The language that a file is preprocessed as, told from the end of its name. */
enum Language {
  C(Map.of("__STDC__", "1", "__STDC_VERSION__", "201710L", "__STDC_HOSTED__", "1")),
  CPP(Map.of("__cplusplus", "201703L", "__STDC_HOSTED__", "1"));

  private final Map<String, String> mandatory;

  Language(Map<String, String> mandatory) {
    this.mandatory = mandatory;
  }

  /** The mandatory macros with a fixed value: C17 6.10.8.1, C++17 [cpp.predefined]. */
  Map<String, String> mandatory() {
    return mandatory;
  }

  static Language of(String path) {
    int dot = path.lastIndexOf('.');
    String end = dot < 0 ? "" : path.substring(dot + 1);
    if (end.equals("H") || end.equals("C")) {
      return CPP;
    }
    return switch (end.toLowerCase(Locale.ROOT)) {
      case "hpp", "hh", "hxx", "h++", "cpp", "cc", "cxx", "c++", "ino", "tcc", "ipp" -> CPP;
      default -> C;
    };
  }
}
