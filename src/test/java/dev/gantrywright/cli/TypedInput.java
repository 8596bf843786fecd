package dev.gantrywright.cli;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;

/** Runs a verb for which somebody types. */
final class TypedInput {
  private TypedInput() {}

  static CommandRun typing(String words, String... call) {
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(words.getBytes(StandardCharsets.UTF_8)));
    try {
      return CommandRun.of(call);
    } finally {
      System.setIn(before);
    }
  }
}
