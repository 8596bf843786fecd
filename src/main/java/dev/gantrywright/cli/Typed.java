package dev.gantrywright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.Charset;

/** What the user answers to a question in the terminal. */
final class Typed {
  private Typed() {}

  /** One line without the space around it; empty where the input has ended. */
  static String line() {
    try {
      String line =
          new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset())).readLine();
      return line == null ? "" : line.strip();
    } catch (IOException ended) {
      return "";
    }
  }
}
