package dev.gantrywright.record;

import java.time.Instant;
import tools.jackson.databind.JsonNode;

/**
 * An event that is to be kept.
 *
 * @param by who did it; empty where that is not known
 * @param state the profile at that time
 */
public record Draft(Instant time, EventKind kind, String by, ProfileState state, JsonNode facts) {}
