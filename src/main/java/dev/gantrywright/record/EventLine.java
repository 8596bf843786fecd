package dev.gantrywright.record;

import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** An event as a line of the file: one JSON object. */
final class EventLine {
  /** The format that this version writes. */
  static final int FORMAT = 1;

  private static final JsonMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .build();

  private EventLine() {}

  /** The line is no event; the message says why, without file and line number. */
  static final class NoEvent extends Exception {
    private static final long serialVersionUID = 1L;

    NoEvent(String why) {
      super(why);
    }
  }

  /**
   * The line, without its end.
   *
   * @param withText whether the profile's text goes into it
   */
  static byte[] bytes(Draft draft, boolean withText) {
    ObjectNode line = JSON.createObjectNode();
    line.put("format", FORMAT);
    line.put("time", draft.time().truncatedTo(ChronoUnit.MILLIS).toString());
    line.put("kind", draft.kind().word());
    line.put("by", draft.by());
    line.put("state", draft.state().sha256());
    if (withText) {
      line.put("text", draft.state().text());
    }
    line.set("facts", draft.facts());
    return JSON.writeValueAsBytes(line);
  }

  /** Reads a line. */
  static Event read(int number, byte[] line) throws NoEvent {
    JsonNode json;
    try {
      json = JSON.readTree(line);
    } catch (JacksonException broken) {
      throw new NoEvent("is no whole JSON object");
    }
    if (!json.isObject() || !json.path("format").isInt()) {
      throw new NoEvent("is no event: it says no \"format\"");
    }
    int format = json.path("format").asInt();
    if (format != FORMAT) {
      throw new NoEvent("has format " + format + "; this version reads " + FORMAT);
    }
    return new Event(
        number,
        Sha256.of(line).substring(0, Event.ID_DIGITS),
        time(json),
        text(json, "kind").orElseThrow(() -> new NoEvent("is no event: it says no \"kind\"")),
        text(json, "by").orElse(""),
        text(json, "state")
            .filter(state -> state.matches("[0-9a-f]{64}"))
            .orElseThrow(() -> new NoEvent("is no event: its \"state\" is no SHA-256")),
        sound(json),
        json.path("facts"));
  }

  private static Instant time(JsonNode json) throws NoEvent {
    try {
      return Instant.parse(text(json, "time").orElse(""));
    } catch (DateTimeException wrong) {
      throw new NoEvent("is no event: its \"time\" is no UTC time such as 2026-01-31T12:00:00Z");
    }
  }

  /** The profile's text, if it is the one that the fingerprint was made of. */
  private static Optional<String> sound(JsonNode json) throws NoEvent {
    Optional<String> text = text(json, "text");
    if (text.isPresent()
        && !Sha256.of(text.get().getBytes(StandardCharsets.UTF_8))
            .equals(json.path("state").asString(""))) {
      throw new NoEvent("was changed: its profile does not fit its fingerprint");
    }
    return text;
  }

  private static Optional<String> text(JsonNode json, String key) {
    return json.path(key).isString() ? Optional.of(json.path(key).asString("")) : Optional.empty();
  }
}
