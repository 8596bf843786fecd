package dev.gantrywright.documentation;

import java.util.LinkedHashMap;
import java.util.Map;

/** An example for each verb of the generated page; they are run like all commands of the pages. */
final class VerbExamples {
  private static final Map<String, String> OF = new LinkedHashMap<>();

  static {
    put(
        "check",
        """
        check demo-profiles/heron.printer.json   # exit status 1: it has errors
        check demo-profiles/sandpiper.printer.json --format json
        """);
    put("names", "names demo-profiles/rookery-2.3 --out ~/learned.names.json");
    put(
        "patch",
        """
        patch demo-profiles/rookery-2.3 --profile demo-profiles/sandpiper.printer.json
        patch demo-profiles/rookery-2.3 --set LINE_RATE=250000
        """);
    put("macros", "macros demo-profiles/rookery-2.3/config/nest.h");
    put("build", "# needs=make,arm-none-eabi-gcc\nbuild demo-profiles/sandpiper.printer.json");
    put("image", "# no-run: needs an image\nimage out/fulmar_m4.bin --board fulmar-m4.board.json");
    put("load", "load --drives");
    put("ports", "ports");
    put("watch", "watch demo-profiles/sandpiper.printer.json --port practice: --for 1");
    put(
        "prove",
        """
        prove demo-profiles/sandpiper.printer.json --port practice:
        prove demo-profiles/sandpiper.printer.json --fault stored:x.stepsPerMm:82   # exit status 1: something differs
        """);
    put(
        "heat",
        "# no-run: asks for a word before it heats\nheat demo-profiles/sandpiper.printer.json hotend --port practice:");
    put("practice", "practice demo-profiles/sandpiper.printer.json --listen 0 --for 1");
    put("sheet", "sheet demo-profiles/sandpiper.printer.json --out ~/sandpiper.pdf");
    put(
        "history",
        """
        history demo-profiles/sandpiper.printer.json --note 'new belt on X'
        history demo-profiles/sandpiper.printer.json
        """);
    put("fleet", "fleet demo-profiles   # exit status 1: Heron has errors");
    put("compute steps-per-mm", "compute steps-per-mm --microsteps 16 --belt-pitch 2 --teeth 20");
    put("compute baud", "compute baud --uart avr --clock 16000000 --baud 115200");
    put("compute driver-current", "compute driver-current --driver A4988 --vref 0.8 --sense 0.1");
    put("compute ntc", "compute ntc --r25 100000 --beta 3950 --celsius 60");
    put("compute rtd", "compute rtd --r0 100 --celsius 200");
    put("compute step-rate", "compute step-rate --steps-per-mm 80 --speed 200");
    put("compute endstop", "compute endstop --contact NC --input pull-up");
    put("compute calibrate", "compute calibrate --current 80 --commanded 100 --measured 98.6");
    put(
        "compute step-response",
        "# no-run: needs a recording\ncompute step-response --record run.csv --power-step 0.5");
  }

  private VerbExamples() {}

  private static void put(String verb, String lines) {
    OF.put(verb, lines.strip());
  }

  /** The fenced block for a verb, empty where there is none. */
  static String block(String verb) {
    String lines = OF.getOrDefault(verb, "");
    if (lines.isEmpty()) {
      return "";
    }
    StringBuilder block = new StringBuilder("```sh");
    for (String line : lines.split("\n")) {
      block.append(
          line.startsWith("# ") ? " " + line.substring(2) : "\n" + ShownCommands.START + line);
    }
    return block.append("\n```\n\n").toString();
  }
}
