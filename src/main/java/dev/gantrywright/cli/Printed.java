package dev.gantrywright.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** What a verb prints: text lines, or one JSON document. */
final class Printed {
  /** Made at the first document: the mapper takes longer to come up than most verbs to run. */
  private static final class Json {
    static final JsonMapper MAPPER =
        JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
  }

  private Printed() {}

  static PrintWriter out(CommandSpec spec) {
    return spec.commandLine().getOut();
  }

  static PrintWriter err(CommandSpec spec) {
    return spec.commandLine().getErr();
  }

  /** Prints the value (records, maps, lists) as one JSON document. */
  static void json(CommandSpec spec, Object value) {
    out(spec).println(Json.MAPPER.writeValueAsString(value));
  }
}
