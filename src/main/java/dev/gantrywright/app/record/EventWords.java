package dev.gantrywright.app.record;

import dev.gantrywright.record.Event;
import dev.gantrywright.record.EventKind;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** An event in one line for people. */
public final class EventWords {
  private EventWords() {}

  /** What was done and what came of it, without time and name. */
  public static String of(Event event) {
    Optional<EventKind> kind = EventKind.of(event.kind());
    JsonNode facts = event.facts();
    return kind.map(
            k ->
                switch (k) {
                  case EXPORT -> export(facts);
                  case BUILD -> build(facts);
                  case LOAD -> load(facts);
                  case PROOF -> proof(facts);
                  case TOUCH_TEST -> touchTest(facts);
                  case CALIBRATION -> calibration(facts);
                  case HEAT_UP -> heatUp(facts);
                  case RETURN -> "back to the state of " + facts.path("of").asString("?");
                  case NOTE -> facts.path("text").asString("");
                })
        .orElse("kept by a newer version");
  }

  private static String export(JsonNode facts) {
    int refused = facts.path("refused").size();
    return facts.path("firmware").path("release").asString("?")
        + ": "
        + count(facts.path("lines").size(), "line")
        + " changed"
        + (refused == 0 ? "" : ", " + count(refused, "value") + " not written");
  }

  private static String build(JsonNode facts) {
    JsonNode image = facts.path("image");
    String what =
        facts.path("outcome").asString("?")
            + ", "
            + count(facts.path("errors").asInt(0), "error")
            + ", "
            + count(facts.path("warnings").asInt(0), "warning");
    return image.isObject()
        ? what
            + String.format(Locale.ROOT, ", %,d bytes", image.path("fileBytes").asLong(0))
            + ", image "
            + brief(image.path("sha256").asString(""))
            + (facts.path("good").asBoolean(false) ? "" : ", not fit to load")
        : what;
  }

  private static String load(JsonNode facts) {
    return "image "
        + brief(facts.path("sha256").asString(""))
        + " by "
        + facts.path("way").asString("?")
        + (facts.path("readBack").asBoolean(false) ? ", read back and equal" : ", not read back");
  }

  private static String proof(JsonNode facts) {
    int all = facts.path("checks").size();
    int differ = 0;
    for (JsonNode check : facts.path("checks")) {
      differ += check.path("verdict").asString("").equals("fail") ? 1 : 0;
    }
    return where(facts)
        + (facts.path("passed").asBoolean(false)
            ? count(all, "comparison") + ", none differs"
            : differ + " of " + count(all, "comparison") + (differ == 1 ? " differs" : " differ"));
  }

  private static String touchTest(JsonNode facts) {
    int works = 0;
    for (JsonNode result : facts.path("results")) {
      works += result.path("verdict").asString("").equals("works") ? 1 : 0;
    }
    return where(facts) + works + " of " + count(facts.path("results").size(), "endstop") + " work";
  }

  private static String calibration(JsonNode facts) {
    return String.format(
        Locale.ROOT,
        "%s %s, measured %.3f ± %.3f",
        facts.path("path").asString("?"),
        number(facts.path("current").asDouble(0)),
        facts.path("stepsPerMm").asDouble(0),
        facts.path("plusMinus").asDouble(0));
  }

  private static String heatUp(JsonNode facts) {
    String ending =
        switch (facts.path("ending").asString("")) {
          case "limit" -> ", up to its limit";
          case "stopped" -> ", ended by hand";
          default -> "";
        };
    return where(facts)
        + String.format(
            Locale.ROOT,
            "%s at %.0f %% of its power, %.1f to %.1f °C in %.1f s%s; readings in %s",
            facts.path("heater").asString("?"),
            100 * facts.path("powerShare").asDouble(0),
            facts.path("firstCelsius").asDouble(0),
            facts.path("lastCelsius").asDouble(0),
            facts.path("seconds").asDouble(0),
            ending,
            facts.path("file").asString("?"));
  }

  private static String where(JsonNode facts) {
    return (facts.path("practice").asBoolean(false)
            ? "practice board"
            : facts.path("port").asString("?"))
        + ": ";
  }

  private static String number(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String brief(String sha256) {
    return sha256.isEmpty()
        ? "of unknown hash"
        : sha256.substring(0, Math.min(12, sha256.length()));
  }

  private static String count(int count, String word) {
    return count + " " + word + (count == 1 ? "" : "s");
  }
}
