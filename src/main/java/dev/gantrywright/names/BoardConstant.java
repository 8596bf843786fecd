package dev.gantrywright.names;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;

/**
 * One controller board that the folder knows.
 *
 * @param constant its name in the headers
 * @param number the value that tells it from the others; null where it is a bare switch
 * @param comment what stands beside it
 * @param mcu the part named beside it; null where none is
 * @param targets build targets whose part fits
 * @param chosen whether the folder is set to it now
 * @param notes duplicates and near-misses, each one line
 */
public record BoardConstant(
    String constant,
    @JsonInclude(JsonInclude.Include.ALWAYS) String number,
    String comment,
    String mcu,
    String file,
    int line,
    List<String> targets,
    boolean chosen,
    List<String> notes) {
  public BoardConstant {
    targets = Ordered.list(targets);
    notes = Ordered.list(notes);
  }
}
