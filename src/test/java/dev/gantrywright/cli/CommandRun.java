package dev.gantrywright.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** One run of the command line inside the test, with what it printed. */
public record CommandRun(int status, String out, String err) {
  public static CommandRun of(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int status = Cli.run(new PrintWriter(out), new PrintWriter(err), args);
    return new CommandRun(status, out.toString(), err.toString());
  }

  public JsonNode json() {
    return JsonMapper.shared().readTree(out);
  }
}
