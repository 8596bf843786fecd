package dev.gantrywright.image;

/** The file formats that a firmware image comes in. */
public enum ImageFormat {
  RAW("raw binary", false),
  INTEL_HEX("Intel HEX", true),
  S_RECORD("S-record", true),
  ELF("ELF", true),
  UF2("UF2", true);

  private final String words;
  private final boolean addressed;

  ImageFormat(String words, boolean addressed) {
    this.words = words;
    this.addressed = addressed;
  }

  /** The trade's name. */
  public String words() {
    return words;
  }

  /** Whether the file itself says where its bytes go. */
  public boolean addressed() {
    return addressed;
  }
}
