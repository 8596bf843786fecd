package dev.gantrywright.report.sheet;

import java.util.List;

/**
 * A part of the sheet under a heading of its own.
 *
 * @param id its anchor
 */
public record Section(String id, String title, List<Block> blocks) {
  public Section {
    blocks = List.copyOf(blocks);
  }

  /** Whether something in it has not been done. */
  public boolean open() {
    return blocks.stream().anyMatch(block -> block instanceof Block.Missing);
  }
}
